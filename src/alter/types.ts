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
export interface ChoiceParameter {
  readonly unit: 'choice';
  readonly choices: readonly string[];
  readonly usual: string;
}

/** A share of something, 0 to 1: where along an edge, how much of a dart. Left out, it is the middle of `usual`. */
export interface ShareParameter {
  readonly unit: 'share';
  readonly min: number;
  readonly max: number;
  readonly usual: readonly [number, number];
}

/**
 * Something of the garment, named: a piece or a seam by its id, an edge, dart or notch as `piece/id`. What there is to
 * choose from is told by `Alteration.options`; left out, it is the first of them.
 */
export interface NamedParameter {
  readonly unit: 'named';
  readonly of: 'piece' | 'edge' | 'dart' | 'notch' | 'seam' | 'landmark';
}

export type Parameter = AmountParameter | ShareParameter | ChoiceParameter | NamedParameter;

/** The values a step gives to an alteration's parameters. */
export type Params = AlterationStep['params'];

/** On which half of the body an alteration is done; every alteration that bodies may want on one half only has it. */
export const sideParameter: ChoiceParameter = { unit: 'choice', choices: ['both', 'right', 'left'], usual: 'both' };

/** What an alteration is about, in the order a fitter works: lengths first, then widths, then details. */
export const families = [
  'length',
  'bust',
  'shoulder-neck',
  'back',
  'sleeve',
  'width',
  'legs',
  'structure',
  'seams',
] as const;
export type Family = (typeof families)[number];

/**
 * Where an amount can be taken hold of on a piece: the point, and where it goes for each millimetre of the amount. The
 * point is that of the piece as it is with the amount given; a point that does not move cannot be dragged.
 */
export interface Handle {
  readonly piece: string;
  readonly at: Point;
  readonly perMillimetre: Point;
}

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
  readonly family: Family;
  readonly params: Readonly<Record<string, Parameter>>;
  /** The parameter that says how much: what a refusal bounds. Null where there is no how much, as in joining a seam to a fold. */
  readonly amount: string | null;
  /** How many times the amount is put in on the whole garment: 2 where each half of the body gets it. */
  readonly inAll: 1 | 2 | 4;
  /** What it holds and what follows, as words of `alterWords`. */
  readonly holds: readonly string[];
  readonly follows: readonly string[];
  /**
   * What the garment lacks for it, told by what the pieces are and carry and never by trying; null where it can be asked
   * of this garment. The patterns it is for are those whose garments lack nothing.
   */
  readonly needs: (garment: Garment) => Problem | null;
  /**
   * What a `named` parameter may name on this garment, the usual first; of a choice, those this garment has a place for. */
  readonly options?: (garment: Garment, parameter: string, params?: Params) => readonly string[];
  readonly handle?: (garment: Garment, params: Params) => Handle | null;
  /** The alteration and parameters that undo it, where there are such. */
  readonly reverse?: (params: Params) => { readonly alteration: string; readonly params: Params };
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
  /**
   * The garment before the first step, told in the same pieces: where right and left are pieces of their own now, so they are
   * here. The very garment given where no step was done on one half only. A piece that a step made is not in it.
   */
  readonly before: Garment;
  /** Whether right and left differ, so that the garment is told in pieces of their own. */
  readonly apart: boolean;
  readonly outcomes: readonly StepOutcome[];
  readonly held: readonly Held[];
  readonly warnings: readonly Problem[];
  /** Every piece, from before the first step to after the last. */
  readonly pieces: readonly PieceReport[];
  readonly refusal: Refusal | null;
}
