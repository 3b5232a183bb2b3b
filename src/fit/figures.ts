import type { MeasureId, Measures } from '../body/index.ts';
import { pathStart } from '../geometry/index.ts';
import {
  type ClothAdvice,
  dartsOf,
  type Envelope,
  type FinishedGirth,
  type FinishedOf,
  finishedGirths,
  type Garment,
  type Pattern,
  type Piece,
} from '../pattern/index.ts';
import { type BustDart, bustDartOf } from './bust-dart.ts';

/** Where a finished figure came from: printed on the envelope, measured flat on the tissue, computed from the pieces. */
export type FigureFrom = 'printed' | 'measured-flat' | 'pieces';

/** A finished girth, or width, and where it came from. */
export interface GirthFigure extends FinishedGirth {
  readonly from: FigureFrom;
  /** Measured over no front: below a waist seam, or on a waistband. A bust alteration does not reach it. */
  readonly apartFromFront?: true;
}

/** Where the length of the garment goes by a body measure, and what there is to lengthen. */
export interface LengthZone {
  /** As the alteration names it. */
  readonly where: 'above-waist' | 'rise' | 'leg' | 'sleeve';
  readonly measure: MeasureId;
  /** How many pieces are cut that carry it. */
  readonly count: number;
  /** As far as all of them can be shortened there, mm; null where nothing limits it, or nobody has seen the pieces. */
  readonly room: number | null;
}

/** What fit needs of one size: the body it is drafted for, its finished girths, and what its pieces leave to alter. */
export interface SizeFigures {
  readonly size: string;
  readonly body: Measures;
  readonly girths: readonly GirthFigure[];
  /** The front's side dart; null where it has none; `unseen` where the pieces are not known. */
  readonly bustDart: BustDart | null | 'unseen';
  readonly lengths: readonly LengthZone[];
}

/** A level nobody has a finished figure for in some sizes, and what to measure flat to have it. */
export interface UnknownFigure {
  readonly level: string;
  readonly measure: MeasureId;
  readonly flat: FinishedOf;
  readonly sizes: readonly string[];
}

/**
 * All that fit needs to know of a pattern, whether it is known by its pieces or by its envelope alone. Plain data;
 * sizes smallest first as the pattern lists them; mm.
 */
export interface PatternFigures {
  readonly name: string;
  readonly for: Pattern['for'];
  readonly kind: Pattern['kind'];
  readonly cloth: ClothAdvice;
  readonly knownBy: 'pieces' | 'envelope';
  /** Bust girth − upper bust girth it is drafted for, mm; null where there is no bust shaping, or none is known of. */
  readonly draftedCup: number | null;
  /** The cup is not stated: it is the one the trade commonly drafts for. */
  readonly cupSupposed: boolean;
  /** mm; null where it is not said. */
  readonly draftedStature: number | null;
  readonly sizes: readonly SizeFigures[];
  readonly unknown: readonly UnknownFigure[];
  /** Of a pattern known by its envelope, that and the view: what stands in for pieces nobody has seen follows from them. */
  readonly envelope?: { readonly printed: Envelope; readonly view: string | null };
}

const trunk: readonly Piece['role'][] = ['front', 'back'];

interface ZoneOfPieces {
  readonly where: LengthZone['where'];
  readonly measure: MeasureId;
  readonly carries: (piece: Piece) => boolean;
}

/** Zones that a body measure decides by itself. Below the waist it is where she wants the hem to land, which no measure says. */
const zones: readonly ZoneOfPieces[] = [
  {
    where: 'above-waist',
    measure: 'backWaistLength',
    carries: (piece) => trunk.includes(piece.role) && piece.levels.some((level) => level.id === 'waist'),
  },
  {
    // A sleeve that does not reach the elbow ends where it looks well, whatever the arm's length.
    where: 'sleeve',
    measure: 'armLength',
    carries: (piece) => piece.role === 'sleeve' && piece.levels.some((level) => level.id === 'elbow'),
  },
];

/**
 * How far a piece can be shortened at its lengthening line before the lower part would lie over a corner or a dart
 * above it, mm. Of several lines the one the alteration uses: on a sleeve the lowest, above the waist the one next to it.
 */
const roomToShorten = (piece: Piece, where: LengthZone['where']): number => {
  const waist = piece.levels.find((level) => level.id === 'waist')?.from.y ?? Infinity;
  const below = where === 'sleeve' ? Infinity : waist;
  const line = Math.max(
    ...piece.lines
      .filter(({ kind }) => kind === 'lengthen-or-shorten')
      .map(({ path }) => pathStart(path).y)
      .filter((y) => y < below),
  );
  if (!Number.isFinite(line)) return Infinity;
  const marks = [
    ...piece.runs.map((run) => pathStart(run.path).y),
    ...dartsOf(piece).flatMap(({ point, legs }) => [point.y, legs[0].y, legs[1].y]),
  ];
  return line - Math.max(...marks.filter((y) => y < line));
};

const zonesOf = ({ pieces }: Garment): readonly LengthZone[] =>
  zones.flatMap(({ where, measure, carries }) => {
    const carriers = pieces.filter(carries);
    const count = carriers.reduce(
      (sum, piece) => sum + (piece.cut.find((order) => order.layer === 'shell')?.count ?? 0),
      0,
    );
    if (count === 0) return [];
    const room = Math.min(...carriers.map((piece) => roomToShorten(piece, where)));
    return [{ where, measure, count, room: Number.isFinite(room) ? room : null }];
  });

/** Whether a level's girth goes over a front: the piece a bust alteration spreads. */
const overFront = ({ pieces, girths }: Garment, level: string): boolean =>
  girths.some(
    (girth) =>
      girth.level === level &&
      girth.pieces.some(({ piece }) => pieces.some(({ id, role }) => id === piece && role === 'front')),
  );

/**
 * A pattern's figures, measured off its pieces; whoever fits many bodies to one pattern computes them once and
 * passes them in.
 */
export const patternFigures = (pattern: Pattern): PatternFigures => ({
  name: pattern.name,
  for: pattern.for,
  kind: pattern.kind,
  cloth: pattern.cloth,
  knownBy: 'pieces',
  draftedCup: pattern.draftedCup ?? null,
  cupSupposed: false,
  draftedStature: pattern.draftedStature,
  sizes: pattern.sizes.map((size) => ({
    size: size.id,
    body: size.body,
    girths: finishedGirths(size.garment).map((girth) => ({
      ...girth,
      from: 'pieces',
      ...(overFront(size.garment, girth.level) ? {} : { apartFromFront: true }),
    })),
    bustDart: bustDartOf(size.garment),
    lengths: zonesOf(size.garment),
  })),
  unknown: [],
});
