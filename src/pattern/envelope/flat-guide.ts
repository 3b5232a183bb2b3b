import { envelopeWords } from '../../words/index.ts';
import type { PieceRole } from '../types.ts';
import type { Envelope, FinishedOf } from './types.ts';

/** What under the tape does not go round or along the finished garment. Words for each: `envelopeWords.leaveOut`. */
export type LeaveOut = 'allowances' | 'darts' | 'pleats' | 'gathers' | 'overlap' | 'facing' | 'hem' | 'casing';

/** A generic piece to lay a tape on in a drawing. Words for each: `envelopeWords.flatPieces`. */
export type FlatPieceKind =
  | 'bodice-front'
  | 'bodice-back'
  | 'skirt-front'
  | 'skirt-back'
  | 'leg-front'
  | 'leg-back'
  | 'sleeve';

/** A point on the generic piece, as shares of its width (centre 0, side 1; a sleeve's front 0, back 1) and height (top 0, hem 1). */
export type OnPiece = readonly [across: number, down: number];

export interface FlatGuidePiece {
  readonly piece: FlatPieceKind;
  readonly role: PieceRole;
  /** Its name, for a flat measure's `name`. */
  readonly name: string;
  /** How often it usually counts: 2 on the fold or for a pair round the body, 1 round one arm or leg. */
  readonly times: 1 | 2;
  /** Where the tape begins and ends. */
  readonly tape: readonly [OnPiece, OnPiece];
  readonly leaveOut: readonly LeaveOut[];
}

export interface FlatGuide {
  readonly of: FinishedOf;
  /** Pieces to measure: all of them round the body; of a length, the one that shows it. */
  readonly pieces: readonly FlatGuidePiece[];
  /** Where the tape lies, in a sentence. */
  readonly where: string;
  /** What to leave out, a sentence each, in the order of `leaveOut`. */
  readonly leaveOut: readonly string[];
  /** Common to all: which line to measure on, how often a piece counts. */
  readonly care: readonly string[];
}

type Kind = Envelope['kind'];
type Shape = readonly [
  piece: FlatPieceKind,
  times: 1 | 2,
  tape: readonly [OnPiece, OnPiece],
  leaveOut: readonly LeaveOut[],
];

const roles: Readonly<Record<FlatPieceKind, PieceRole>> = {
  'bodice-front': 'front',
  'bodice-back': 'back',
  'skirt-front': 'front',
  'skirt-back': 'back',
  'leg-front': 'front',
  'leg-back': 'back',
  sleeve: 'sleeve',
};

/** A level straight across from the centre to the side. */
const across = (down: number): readonly [OnPiece, OnPiece] => [
  [0, down],
  [1, down],
];

/** The outermost level of each generic piece, as shares of its height: where trade blocks have them. */
const levels = { bust: 0.42, waist: 0.66, hip: 0.92, skirtHip: 0.3, thigh: 0.36, knee: 0.66, arm: 0.38 } as const;

const both = (
  pieces: readonly [FlatPieceKind, FlatPieceKind],
  times: 1 | 2,
  down: number,
  front: readonly LeaveOut[],
  back: readonly LeaveOut[],
): readonly Shape[] => [
  [pieces[0], times, across(down), front],
  [pieces[1], times, across(down), back],
];

const bodice = ['bodice-front', 'bodice-back'] as const;
const skirt = ['skirt-front', 'skirt-back'] as const;
const legs = ['leg-front', 'leg-back'] as const;

const lower = (kind: Kind): readonly [FlatPieceKind, FlatPieceKind] =>
  kind === 'trousers' ? legs : kind === 'skirt' ? skirt : bodice;

const length = (
  piece: FlatPieceKind,
  tape: readonly [OnPiece, OnPiece],
  leaveOut: readonly LeaveOut[] = ['allowances', 'hem'],
): readonly Shape[] => [[piece, 1, tape, leaveOut]];

/**
 * Pieces, tape and what to leave out for each finished measurement. A front laps or carries its facing, a back does
 * not; a waist takes darts, pleats and gathers; hems of sleeves and legs go round one of them.
 */
const shapes = (of: FinishedOf, kind: Kind): readonly Shape[] => {
  const [front, back] = lower(kind);
  const below = kind === 'trousers' || kind === 'skirt';
  switch (of) {
    case 'bust':
      return below
        ? []
        : both(
            bodice,
            2,
            levels.bust,
            ['allowances', 'darts', 'pleats', 'overlap', 'facing'],
            ['allowances', 'darts', 'pleats'],
          );
    case 'waist':
      return both(
        [front, back],
        2,
        below ? 0 : levels.waist,
        ['allowances', 'darts', 'pleats', 'gathers', 'overlap', 'facing'],
        ['allowances', 'darts', 'pleats', 'gathers'],
      );
    case 'hip':
      return both(
        [front, back],
        2,
        below ? levels.skirtHip : levels.hip,
        ['allowances', 'pleats', 'overlap', 'facing'],
        ['allowances', 'pleats'],
      );
    case 'hem-width':
      return kind === 'trousers'
        ? both(legs, 1, 1, ['allowances', 'pleats'], ['allowances', 'pleats'])
        : both([front, back], 2, 1, ['allowances', 'pleats', 'overlap', 'facing'], ['allowances', 'pleats']);
    case 'thigh':
      return kind === 'trousers' ? both(legs, 1, levels.thigh, ['allowances', 'pleats'], ['allowances']) : [];
    case 'knee':
      return kind === 'trousers' ? both(legs, 1, levels.knee, ['allowances'], ['allowances']) : [];
    case 'upper-arm':
      return below ? [] : [['sleeve', 1, across(levels.arm), ['allowances', 'pleats']]];
    case 'sleeve-hem':
      return below ? [] : [['sleeve', 1, across(1), ['allowances', 'pleats', 'gathers']]];
    case 'sleeve-length':
      return below
        ? []
        : length('sleeve', [
            [0.5, 0],
            [0.5, 1],
          ]);
    case 'back-length':
      return length(back, [
        [0, 0],
        [0, 1],
      ]);
    case 'front-length':
      return length(front, [
        [0, 0],
        [0, 1],
      ]);
    case 'side-length':
      return below
        ? length(
            front,
            [
              [1, 0],
              [1, 1],
            ],
            ['allowances', 'hem', 'casing'],
          )
        : length('bodice-front', [
            [1, levels.bust],
            [1, 1],
          ]);
    case 'inside-leg':
      return kind === 'trousers'
        ? length('leg-front', [
            [0, levels.thigh],
            [0, 1],
          ])
        : [];
    case 'shoulder':
      return below
        ? []
        : length(
            'bodice-front',
            [
              [0.3, 0],
              [0.8, 0.08],
            ],
            ['allowances', 'darts'],
          );
    case 'across-back':
      return below
        ? []
        : [
            [
              'bodice-back',
              2,
              [
                [0, 0.22],
                [0.85, 0.22],
              ],
              ['allowances', 'pleats'],
            ],
          ];
    case 'other':
      return [];
  }
};

/**
 * How to measure the tissue flat for a finished measurement of a garment of a kind: which pieces, where the tape
 * lies, what to leave out (trade §3: on the level line of the shell, darts, pleats and gathers closed, seams excluded,
 * buttoned fronts centre to centre, a piece on the fold counted twice). No pieces where such a garment has none to
 * measure it on.
 */
export const flatMeasureGuide = (of: FinishedOf, kind: Kind): FlatGuide => {
  const pieces = shapes(of, kind).map(
    ([piece, times, tape, leaveOut]): FlatGuidePiece => ({
      piece,
      role: roles[piece],
      name: envelopeWords.flatPieces[piece],
      times,
      tape,
      leaveOut,
    }),
  );
  const out = [...new Set(pieces.flatMap(({ leaveOut }) => leaveOut))];
  return {
    of,
    pieces,
    where: pieces.length > 0 ? envelopeWords.whereToMeasure[of] : envelopeWords.nowhereToMeasure,
    leaveOut: out.map((what) => envelopeWords.leaveOut[what]),
    care: pieces.length > 0 ? envelopeWords.flatCare : [],
  };
};
