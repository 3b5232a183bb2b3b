import {
  add,
  angleOf,
  applyToPath,
  applyToPoint,
  type Cubic,
  compose,
  cubic,
  directionAt,
  distance,
  identity,
  type Line,
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathTangentAtLength,
  perpendicular,
  rotate,
  rotation,
  scale,
  segmentTangentAt,
  splitPathAtLengths,
  type Transform,
  tolerance,
} from '../geometry/index.ts';
import { settle, solveBetween } from './solve.ts';

/** One dart of a waist: where it is stitched, how long, how much it takes in, mm. */
export interface WaistDart {
  /** Share of the finished waist from the centre. */
  readonly at: number;
  /** Length of its legs. */
  readonly length: number;
  /** What it is wished to take in; all darts of a waist take in more or less by one factor. */
  readonly intake: number;
}

/** What a waist with darts hangs between. Millimetres. */
export interface WaistFrame {
  /** On the centre line, which the waist leaves square. */
  readonly centre: Point;
  /** The side seam going down from the waist, which the sewn waist meets square. */
  readonly side: Cubic | Line;
  /** Finished, from centre to side, darts closed. */
  readonly finished: number;
  /** From the centre outward. */
  readonly darts: readonly WaistDart[];
}

export interface DartedWaist {
  /** The waist's runs from the centre to the side, one more than there are darts. */
  readonly runs: readonly Path[];
  readonly darts: readonly { readonly point: Point; readonly legs: readonly [Point, Point] }[];
}

/** The sewn waist, darts closed, in the place of its centre part; and where every part lies once the darts are open. */
interface Opened {
  readonly closed: Cubic;
  readonly places: readonly Transform[];
  readonly points: readonly Point[];
}

/** How far both handles go to the crossing of the waist's end tangents: a little fuller than an arc's. */
const fullness = 0.6;

/** The handles stay between these shares of the straight from centre to side, whatever the crossing. */
const handles = { least: 0.15, most: 0.6 } as const;

const sewnWaist = (centre: Point, side: Point, arriving: number): Cubic => {
  const straight = distance(centre, side);
  const back = (side.y - centre.y) / Math.sin(arriving);
  const forth = side.x - back * Math.cos(arriving);
  const reach = (mm: number): number =>
    settle(Number.isFinite(mm) ? fullness * mm : 0, handles.least * straight, handles.most * straight);
  return cubic(
    centre,
    { x: centre.x + reach(forth), y: centre.y },
    add(side, scale(directionAt(arriving), -reach(back))),
    side,
  );
};

/** Rounds in which the darts find their places square to the waist; each brings them ten times nearer. */
const rounds = 12;

/**
 * The waist opened by darts whose angles are given. The sewn waist is one curve; each dart's point lies square to it,
 * and what is beyond the dart is turned about that point.
 */
const opened = ({ centre, side, darts }: WaistFrame, factor: number): Opened => {
  const angles = darts.map((dart) => 2 * Math.asin(Math.min((factor * dart.intake) / (2 * dart.length), 0.5)));
  const arriving = angleOf(perpendicular(segmentTangentAt(side, 0))) - angles.reduce((sum, angle) => sum + angle, 0);
  let points: readonly Point[] = darts.map(({ at, length }) => ({ x: at * side.from.x, y: centre.y + length }));
  let closed = sewnWaist(centre, side.from, arriving);
  let places: readonly Transform[] = [];
  for (let round = 0; round < rounds; round++) {
    const end = points.reduceRight((at, point, i) => rotate(at, -(angles[i] ?? 0), point), side.from);
    closed = sewnWaist(centre, end, arriving);
    const found: Transform[] = [identity];
    const pointsFound: Point[] = [];
    for (const [i, { at, length }] of darts.entries()) {
      const before = found[i] ?? identity;
      const along = at * pathLength([closed]);
      const inward = scale(perpendicular(pathTangentAtLength([closed], along)), -length);
      // In the last round the points stay, so that the waist ends exactly at the side.
      const point =
        round === rounds - 1
          ? (points[i] as Point)
          : applyToPoint(before, add(pathPointAtLength([closed], along), inward));
      pointsFound.push(point);
      found.push(compose(before, rotation(angles[i] ?? 0, point)));
    }
    points = pointsFound;
    places = found;
  }
  return { closed, places, points };
};

/** Darts take in between these factors of what was wished. */
const factors = { least: 0.05, most: 1.6 } as const;

/**
 * A waistline with its darts, from the centre to the side seam: sewn, it is one even curve of the length wished,
 * square to the centre and to the side; each dart's legs are equal and its middle is square to the waist. All
 * darts take in more or less by one factor until the length is met. Null where no factor does.
 *
 * Construction: the sewn waist is drawn first and opened dart by dart, the reverse of how manuals of pattern cutting
 * true a waist (fold the darts, redraw the curve), so there is nothing left to true.
 */
export const draftDartedWaist = (frame: WaistFrame): DartedWaist | null => {
  const factor = solveBetween(
    (tried) => pathLength([opened(frame, tried).closed]) - frame.finished,
    factors.least,
    factors.most,
    tolerance.same,
  );
  if (factor === null) return null;
  const { closed, places, points } = opened(frame, factor);
  const parts = splitPathAtLengths(
    [closed],
    frame.darts.map(({ at }) => at * frame.finished),
  );
  if (parts.length !== places.length) return null;
  const runs = parts.map((part, i) => applyToPath(places[i] ?? identity, part));
  return {
    runs,
    darts: points.map((point, i) => ({
      point,
      legs: [pathEnd(runs[i] as Path), pathStart(runs[i + 1] as Path)] as const,
    })),
  };
};

/** The waist of the same frame without darts: one curve, longer by what its tucks take in. */
export const draftPlainWaist = ({ centre, side }: Pick<WaistFrame, 'centre' | 'side'>): Path => [
  sewnWaist(centre, side.from, angleOf(perpendicular(segmentTangentAt(side, 0)))),
];

/** The straight across a dart's mouth. */
export const mouthOf = ({ legs }: DartedWaist['darts'][number]): Path => [line(...legs)];
