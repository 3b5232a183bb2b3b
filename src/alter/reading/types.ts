import type { MeasureId } from '../../body/index.ts';
import type { Problem } from '../../units/index.ts';
import type { Params } from '../types.ts';
import type { ZoneId } from './zones.ts';

/** What the cloth does at a place. Taut lines point at where it is short, slack folds lie across where it is long. */
export const signKinds = [
  'taut',
  'slack',
  'gapes',
  'digs-in',
  'stands-off',
  'rides-up',
  'drops',
  'swings-forward',
  'swings-back',
] as const;
export type SignKind = (typeof signKinds)[number];

/**
 * How lines lie: level across the body, along its length, rising or falling from the middle of the body outwards, or
 * pointing at the fullest point.
 */
export const directions = ['across', 'along', 'rising', 'falling', 'to-point'] as const;
export type Direction = (typeof directions)[number];

export const postures = ['standing', 'sitting', 'reaching', 'stepping'] as const;
export type Posture = (typeof postures)[number];

/** Her own right and left, whichever way she is looked at. */
export const halves = ['both', 'right', 'left'] as const;
export type Half = (typeof halves)[number];

/** One thing seen at a fitting. */
export interface Sign {
  readonly zone: ZoneId;
  readonly kind: SignKind;
  /** Null where it has no lines, or nobody looked how they run. */
  readonly direction: Direction | null;
  readonly posture: Posture;
  readonly half: Half;
  /**
   * Cloth taken up by the pinned fold, or the gap that opened where it was slit, mm, on each half it was seen on; null
   * where nothing was pinned.
   */
  readonly pinned: number | null;
}

/** How the amount on one piece follows from what was pinned. */
export type PinShare =
  /** A level fold of p takes p out of every piece it runs across. */
  | 'length'
  /** A fold of p pinned along one half of the body is p on the piece of that half. */
  | 'each'
  /** A fold of p pinned in a seam is shared by the two pieces sewn there: half of p on each. */
  | 'halved';

/** One sign that speaks for a cause, or against it where `weight` is below nothing. */
export interface Evidence {
  readonly zone: ZoneId;
  readonly kind: SignKind;
  /** How the lines run for it to count; any way where left out. */
  readonly along?: readonly Direction[];
  /** In which posture it counts; in any where left out. */
  readonly posture?: readonly Posture[];
  readonly weight: number;
  /** How what was pinned there becomes the amount; left out where a pin there tells no amount of this cause. */
  readonly pin?: PinShare;
}

/** One cause of what is seen and the alteration that answers it: a row of the table. */
export interface Cause {
  readonly id: string;
  /** Null where no alteration of the pieces answers it; words then say what does. */
  readonly alteration: string | null;
  /** Choices the alteration is given with. */
  readonly fixed?: Readonly<Record<string, string>>;
  /** The parameter that says how much, and which way: −1 takes out, or goes the other way. */
  readonly amount: string;
  readonly sign: 1 | -1;
  /** Where nothing was pinned: the lower end of what such an alteration usually is, mm on a piece. */
  readonly guess: number;
  readonly evidence: readonly Evidence[];
  /** Other causes to look at before this one is cut. */
  readonly ruleOut?: readonly string[];
  /** The finished girth that bears it out by being tight, or roomy. */
  readonly measure?: { readonly id: MeasureId; readonly when: 'tight' | 'roomy' };
  /** A cause that a body has on one half only. */
  readonly oneSided?: true;
  /** What the rule goes back to, in words. */
  readonly source: string;
}

/** What the finished garment's own ease says to a cause: mm of ease, and whether that bears it out. */
export interface MeasureSays {
  readonly measure: MeasureId;
  readonly ease: number;
  readonly says: 'for' | 'against' | 'neither';
}

export interface StartingAmount {
  /** On one piece, mm, with its sign: what goes into the step, kept to what the alteration can do. */
  readonly each: number;
  /** The same before it was kept to that. */
  readonly asked: number;
  /** In all on the garment, mm, with its sign. */
  readonly inAll: number;
  readonly from: { readonly how: PinShare; readonly pinned: number } | 'guess';
}

/** Why an alteration cannot be put into the list of this garment. */
export type Impossible =
  | { readonly why: 'no-alteration' }
  | { readonly why: 'not-in-catalogue' }
  | { readonly why: 'no-pieces' }
  | { readonly why: 'not-there' }
  | { readonly why: 'not-one-sided' }
  | { readonly why: 'garment'; readonly problem: Problem };

export interface Suggestion {
  readonly cause: string;
  readonly alteration: string | null;
  /** Whole parameters for a step; null where it cannot be one. */
  readonly params: Params | null;
  readonly side: Half;
  readonly amount: StartingAmount;
  /** Sum of the evidence: only its order means something. */
  readonly score: number;
  /** Places of the signs in what was given, and how much each says. */
  readonly supporting: readonly { readonly sign: number; readonly weight: number }[];
  readonly opposing: readonly { readonly sign: number; readonly weight: number }[];
  readonly measure: MeasureSays | null;
  /** What to look at before, with what the finished measures already say of it. */
  readonly ruleOut: readonly { readonly cause: string; readonly measure: MeasureSays | null }[];
  readonly impossible: Impossible | null;
}

/** Why a sign led to nothing. */
export type Unread = 'unknown-garment' | 'not-on-garment' | 'no-rule';

export interface Reading {
  /** The likelier first. */
  readonly suggestions: readonly Suggestion[];
  readonly unread: readonly { readonly sign: number; readonly why: Unread }[];
}
