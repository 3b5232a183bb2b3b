import type { Point } from '../geometry/index.ts';
import type { AlterationStep, Garment } from '../pattern/index.ts';
import type { Problem, Result } from '../units/index.ts';
import type { Put } from './put.ts';

/** A length that may be chosen between limits, mm. `usual` is the range most alterations fall in. */
export interface AmountParameter {
  readonly unit: 'mm';
  readonly min: number;
  readonly max: number;
  readonly usual: readonly [number, number];
}

/** A choice among places; `usual` is taken where none is given. */
interface ChoiceParameter {
  readonly unit: 'choice';
  readonly choices: readonly string[];
  readonly usual: string;
}

export type Parameter = AmountParameter | ChoiceParameter;

/** The values a step gives to an alteration's parameters. */
export type Params = AlterationStep['params'];

/**
 * Something an alteration says it holds, measured on the altered pieces: `by` is how far it is off, mm,
 * `ok` whether that is within tolerance. `what` is a word of `alterWords.held`.
 */
export interface Held {
  readonly what: string;
  readonly piece?: string;
  readonly edge?: string;
  readonly seam?: string;
  readonly level?: string;
  readonly by: number;
  readonly ok: boolean;
}

/** Something an alteration changes: by how much and to what, mm. `what` is a word of `alterWords.changed`. */
export interface Change {
  readonly what: string;
  readonly piece?: string;
  readonly edge?: string;
  readonly level?: string;
  readonly by: number;
  readonly now: number;
}

/** What happened to one piece. Lengths mm, areas mm²; areas are inside the seam line, dart wedges included. */
export interface PieceReport {
  readonly piece: string;
  readonly lengthBefore: Readonly<Record<string, number>>;
  readonly areaBefore: number;
  readonly areaAfter: number;
  /** Moved by truing alone: areaAfter = areaBefore + all that was put in + areaTrued. */
  readonly areaTrued: number;
  readonly puts: readonly Put[];
}

/** Where a piece was cut, from end to end, as it lay before its parts moved. */
export interface PieceCut {
  readonly piece: string;
  readonly id: string;
  readonly points: readonly Point[];
}

/** One alteration applied. */
export interface Applied {
  readonly garment: Garment;
  /** The same with its edges not trued yet: what cutting, swinging, sliding and joining made. */
  readonly untrued: Garment;
  readonly held: readonly Held[];
  readonly changes: readonly Change[];
  readonly warnings: readonly Problem[];
  readonly pieces: readonly PieceReport[];
  readonly cuts: readonly PieceCut[];
}

/**
 * One alteration: its parameters and its geometry in the words cut, swing, slide, join, redraw. Everything a
 * person reads of it stands in words/ under its id.
 */
export interface Alteration {
  readonly id: string;
  readonly version: number;
  readonly params: Readonly<Record<string, Parameter>>;
  /** The parameter that says how much: what a refusal bounds. */
  readonly amount: string;
  /** What it holds and what follows, as words of `alterWords`. */
  readonly holds: readonly string[];
  readonly follows: readonly string[];
  readonly apply: (garment: Garment, params: Params) => Result<Applied>;
}

/** One step of a list, done. */
export interface StepOutcome {
  readonly step: AlterationStep;
  readonly applied: Applied;
}

/** Why a list stopped: the step, the reason, and the largest amount of that step that would hold, where one would. */
export interface Refusal {
  readonly step: string;
  readonly alteration: string;
  readonly problem: Problem;
  readonly largest?: { readonly parameter: string; readonly amount: number };
}

/** A garment with a list of alterations applied, as far as they hold. */
export interface Altered {
  readonly garment: Garment;
  readonly outcomes: readonly StepOutcome[];
  readonly held: readonly Held[];
  readonly warnings: readonly Problem[];
  /** Every piece, from before the first step to after the last. */
  readonly pieces: readonly PieceReport[];
  readonly refusal: Refusal | null;
}
