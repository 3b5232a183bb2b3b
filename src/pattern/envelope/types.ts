import type { MeasureId } from '../../body/types.ts';
import type { ClothAdvice, Pattern } from '../types.ts';

/** A figure of a chart for one size, mm: one length, or from and to. Null where the envelope prints none. */
export type Figure = number | readonly [low: number, high: number] | null;

/**
 * What a row of a chart of finished measurements is of: round the finished garment at a level, or a
 * length of it. `other` keeps a row nobody can judge by, under the words it is printed with.
 */
export type FinishedOf =
  | 'bust'
  | 'waist'
  | 'hip'
  | 'upper-arm'
  | 'thigh'
  | 'knee'
  | 'hem-width'
  | 'sleeve-hem'
  | 'back-length'
  | 'front-length'
  | 'side-length'
  | 'sleeve-length'
  | 'inside-leg'
  | 'shoulder'
  | 'across-back'
  | 'other';

/** One row of the body chart: a measure, and its figure for each size in the order of `sizes`. */
export interface BodyRow {
  readonly measure: MeasureId;
  readonly figures: readonly Figure[];
}

/** One row of finished measurements, for one view or (`view` null) for all of them. */
export interface FinishedRow {
  readonly of: FinishedOf;
  /** As printed; what is shown where `of` is `other`. */
  readonly label: string;
  readonly view: string | null;
  readonly figures: readonly Figure[];
}

/** Cloth needed for one view, layer and width: length for each size, mm. */
export interface ClothRow {
  readonly view: string | null;
  readonly layer: 'shell' | 'lining' | 'interfacing' | 'contrast';
  /** Width of the cloth, mm. */
  readonly width: number;
  /** Whether the printed length is for cloth laid all one way. `either` where the envelope says both. */
  readonly nap: 'with' | 'without' | 'either';
  readonly figures: readonly Figure[];
}

export interface EnvelopeView {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  /** Whether it has sleeves, where she has said so; else its words say it. */
  readonly sleeves?: boolean;
}

/**
 * A piece of tissue measured flat with a tape, in place of a finished measurement the envelope lacks. The finished
 * figure follows: (flat − allowances within it − darts, pleats and gathers within it − overlap) × times cut.
 */
export interface FlatMeasure {
  readonly of: FinishedOf;
  readonly view: string | null;
  readonly size: string;
  readonly pieces: readonly FlatPiece[];
}

/** One piece of a flat measure, mm; `times`: 2 on the fold or for a pair, 1 for a piece cut once. */
export interface FlatPiece {
  readonly name: string;
  readonly flat: number;
  readonly allowances: number;
  readonly takenOut: number;
  readonly times: number;
}

/** What else she owns with a pattern. */
export interface Owned {
  readonly form: 'paper' | 'pdf';
  /** Where it lies: a box, a drawer, a folder. */
  readonly where: string;
  /** Sizes that were cut out or traced, and where the copy is. */
  readonly cut: readonly string[];
  readonly traced: readonly string[];
  readonly copyAt: string;
  readonly link: string;
  /** In words with its currency, as she writes it. */
  readonly price: string;
  readonly drafting: string;
  readonly instructions: string;
}

/** A bought pattern known by its envelope alone: charts as printed, all lengths mm. */
export interface Envelope {
  readonly format: 'easewright-envelope/1';
  readonly name: string;
  /** Who sells it, and its number, as she writes them. */
  readonly house: string;
  readonly number: string;
  readonly about: string;
  readonly for: Pattern['for'];
  readonly kind: Pattern['kind'];
  /** In which unit it is printed, so that it can be shown as printed. */
  readonly printedIn: 'inches' | 'cm';
  /** Size names as printed, smallest first: 8 … 24, XS … 5X, 34 … 52. */
  readonly sizes: readonly string[];
  readonly views: readonly EnvelopeView[];
  readonly body: readonly BodyRow[];
  readonly finished: readonly FinishedRow[];
  readonly clothNeeded: readonly ClothRow[];
  readonly notions: readonly { readonly view: string | null; readonly text: string }[];
  /** Seam allowance included, mm; null where not said, 0 where none is. */
  readonly allowance: number | null;
  /** Bust girth − upper bust girth it is drafted for, mm; null where not said. */
  readonly draftedCup: number | null;
  readonly draftedStature: number | null;
  readonly cloth: ClothAdvice;
  readonly advice: string;
  readonly flat: readonly FlatMeasure[];
  /** Doubts she has answered: the doubt's id, so that it is not asked again. */
  readonly kept: readonly string[];
  readonly owned: Owned;
  /** Ids of photographs kept with it. */
  readonly photographs: readonly string[];
}
