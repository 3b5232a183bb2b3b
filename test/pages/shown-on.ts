import { type Altered, applyAlterations, type Params } from '../../src/alter/index.ts';
import { line, nearestOnPath, type Path, segmentPointAt, tolerance } from '../../src/geometry/index.ts';
import {
  type AlterationStep,
  dartsOf,
  type Garment,
  outlineOf,
  type Piece,
  type PieceRole,
  pieceOf,
} from '../../src/pattern/index.ts';

/** Where an alteration is shown in the docs, and how a picture of it is kept to what it is about. */

export interface ShownOn {
  /** A house pattern and view; left out, the first the alteration is for. */
  readonly house?: string;
  readonly view?: string;
  /** Values besides the usual ones. */
  readonly params?: Params;
  /** The fault the alteration is there to mend, made on the sound pattern, and how that is said. */
  readonly fault?: { readonly made: (garment: Garment) => Garment; readonly said: string };
}

/** The side seam carried on by 8 mm at the hem of the back alone, as a careless tracing would have it. */
const backSideTooLong = (garment: Garment): Garment => {
  const slack = garment.seams.map((seam) => (seam.id === 'side' ? { ...seam, easeMin: -50, easeMax: 50 } : seam));
  const step: AlterationStep = {
    id: 'fault',
    alteration: 'true-seam',
    version: 1,
    on: true,
    params: { seam: 'side', end: 'end', which: 'b', amount: 8 },
  };
  const made = applyAlterations({ ...garment, seams: slack }, [step]);
  if (made.refusal) throw new Error(made.refusal.problem.code);
  return { ...made.garment, seams: garment.seams };
};

const sideFault = {
  made: backSideTooLong,
  said: 'As found, the side seam of the back is 0.8 cm longer than the front’s.',
};

/** What is not here is shown on the first house pattern it is for. */
export const shownOn: Readonly<Record<string, ShownOn>> = {
  'dart-to': { house: 'skirt', params: { as: 'gathers' } },
  flare: { house: 'skirt' },
  seat: { house: 'trousers' },
  'true-seam': { params: { seam: 'side', end: 'end', which: 'both', amount: 0 }, fault: sideFault },
  'sew-seam': { params: { seam: 'side', how: 'eased', amount: 10 }, fault: sideFault },
  'move-notch': { params: { notch: 'front/armhole-front' } },
};

/** Pieces that copy or finish another: they follow, and are drawn only where nothing else changed. */
const following: readonly PieceRole[] = [
  'placket',
  'front-facing',
  'back-facing',
  'neck-band',
  'cuff',
  'collar',
  'waistband',
  'pocket',
];

const linesOf = (piece: Piece): Path => [
  ...outlineOf(piece),
  ...dartsOf(piece).flatMap(({ legs, point }) => [line(legs[0], point), line(point, legs[1])]),
];

/** Shares of a line at which it is looked at. */
const looks = [0, 0.25, 0.5, 0.75, 1];

/** How far the place of a line that lies furthest from another is from it, mm. */
const straying = (line: Path, other: Path): number =>
  Math.max(...line.flatMap((segment) => looks.map((t) => nearestOnPath(other, segmentPointAt(segment, t)).distance)));

/** How far the lines of a piece lie from where they were at most, mm; both ways, for a corner cut back lies on its old line. */
const furthest = (before: Piece | undefined, after: Piece): number => {
  if (!before) return Number.POSITIVE_INFINITY;
  if (before === after) return 0;
  const [old, now] = [linesOf(before), linesOf(after)];
  return Math.max(straying(now, old), straying(old, now));
};

/** A piece that moved by less than this share of what moved most only follows. */
const leastShare = 0.35;

/** The pieces an alteration is about, by id, and the names of those that follow. */
export const ledPieces = (
  before: Garment,
  { garment }: Altered,
): { readonly led: readonly string[]; readonly followed: readonly string[] } => {
  const changed = garment.pieces.flatMap((piece) => {
    const by = furthest(
      before.pieces.find(({ id }) => id === piece.id),
      piece,
    );
    const shell = piece.cut.some(({ layer }) => layer === 'shell');
    return by > tolerance.holds ? [{ piece, by, leads: shell && !following.includes(piece.role) }] : [];
  });
  const leading = changed.some(({ leads }) => leads) ? changed.filter(({ leads }) => leads) : changed;
  const most = Math.max(...leading.map(({ by }) => by));
  const led = leading.filter(({ by }) => by >= leastShare * most).map(({ piece }) => piece.id);
  return {
    led,
    followed: changed
      .filter(({ piece }) => !led.includes(piece.id))
      .map(({ piece }) => pieceOf(garment, piece.id).name),
  };
};
