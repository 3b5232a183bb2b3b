import {
  add,
  applyToPoint,
  cross,
  distance,
  intersectPaths,
  length,
  line,
  normalize,
  type Path,
  type Point,
  pathBounds,
  scale,
  subtract,
  tolerance,
} from '../geometry/index.ts';
import { closing, type DartShape, dartsOf } from './dart.ts';
import { pieceOf } from './piece.ts';
import type { Garment, Girth, Level, Piece } from './types.ts';

interface Crossing {
  readonly at: number;
  readonly point: Point;
  readonly leg: { readonly dart: DartShape; readonly which: 0 | 1 } | null;
}

const nearest = (ray: Path, from: Point, target: Path, leg: Crossing['leg'], skip: number): Crossing | null => {
  let best: Crossing | null = null;
  for (const { point } of intersectPaths(ray, target)) {
    const at = distance(from, point);
    if (at > skip && (best === null || at < best.at)) best = { at, point, leg };
  }
  return best;
};

/** A line that only touches a dart's point and passes by outside its wedge does not cross the dart. */
const grazes = (dart: DartShape, at: Point, heading: Point): boolean => {
  if (distance(at, dart.point) > tolerance.walk) return false;
  const [first, second] = dart.legs.map((leg) => subtract(leg, dart.point)) as [Point, Point];
  const side = Math.sign(cross(first, second));
  return !(side * cross(first, heading) > 0 && side * cross(heading, second) > 0);
};

/**
 * Length of the straight line from a point inside the piece, in one direction, to its edge, with every dart
 * closed: where the line meets a dart's leg it goes on from the other leg, turned as stitching turns the
 * cloth. That is the line a tape follows over the sewn, flattened garment. Null where it leaves the piece by no edge.
 */
const reach = (piece: Piece, darts: readonly DartShape[], start: Point, direction: Point): number | null => {
  const bounds = pathBounds(piece.runs.flatMap((run) => run.path));
  const far = 2 * (bounds.maxX - bounds.minX + bounds.maxY - bounds.minY) + 1;
  let from = start;
  let heading = direction;
  let travelled = 0;
  let left: DartShape | null = null;
  // Each dart can be crossed once on the way out; more would mean a broken piece.
  for (let step = 0; step <= darts.length + 1; step += 1) {
    const ray: Path = [line(from, add(from, scale(heading, far)))];
    const crossings: Crossing[] = [];
    for (const run of piece.runs) {
      if (run.kind !== 'edge') continue;
      const crossing = nearest(ray, from, run.path, null, tolerance.walk);
      if (crossing) crossings.push(crossing);
    }
    for (const dart of darts) {
      if (dart === left) continue;
      for (const which of [0, 1] as const) {
        const crossing = nearest(ray, from, [line(dart.point, dart.legs[which])], { dart, which }, 0);
        if (crossing && !grazes(dart, crossing.point, heading)) crossings.push(crossing);
      }
    }
    const next = crossings.reduce<Crossing | null>(
      (best, one) => (best === null || one.at < best.at ? one : best),
      null,
    );
    if (next === null) {
      const joint = throughJoint(piece, from, heading);
      return joint === null ? null : travelled + joint;
    }
    travelled += next.at;
    if (next.leg === null) return travelled;
    const turn = closing(next.leg.dart, next.leg.which);
    from = applyToPoint(turn, next.point);
    heading = subtract(applyToPoint(turn, add(next.point, heading)), from);
    left = next.leg.dart;
  }
  return null;
};

/**
 * How far on the line passes exactly through a joint of the outline, mm; null where it passes through none. Each of the two
 * segments that meet there may, by rounding, end a hair before the line.
 */
const throughJoint = (piece: Piece, from: Point, heading: Point): number | null => {
  const size = length(heading);
  const found = piece.runs
    .flatMap(({ path }) => path.map(({ to }) => subtract(to, from)))
    .filter((to) => Math.abs(cross(heading, to)) <= tolerance.walk * size)
    .map((to) => (to.x * heading.x + to.y * heading.y) / size)
    .filter((along) => along > tolerance.walk);
  return found.length > 0 ? Math.min(...found) : null;
};

const stopsAt = (level: Level, end: 'from' | 'to'): boolean => level.stops === end || level.stops === 'both';

/**
 * Width of a piece along one of its levels, flat, darts closed, seams left out; mm. An end at which the level stops is
 * measured to that end, with no dart between. Null where the level no longer goes across the piece, from edge to edge.
 * Throws where the piece does not carry the level. Source: how a finished measurement is taken in the trade.
 */
export const widthAcross = (piece: Piece, levelId: string): number | null => {
  const level = piece.levels.find((candidate) => candidate.id === levelId);
  if (!level) throw new Error(`Piece ${piece.id} has no level ${levelId}`);
  const darts = dartsOf(piece);
  const { over } = level;
  if (over) {
    const [one, other] = (['from', 'to'] as const).map((end) => {
      const spot = level[end];
      return stopsAt(level, end) ? distance(over, spot) : reach(piece, darts, over, normalize(subtract(spot, over)));
    }) as [number | null, number | null];
    return one === null || other === null ? null : one + other;
  }
  const along = subtract(level.to, level.from);
  const size = length(along);
  const direction = scale(along, 1 / size);
  // Starting a hair inside the edge lets both ends be met alike, wherever the level line itself was drawn to.
  const start = add(level.from, scale(direction, Math.min(1, size / 4)));
  const to = stopsAt(level, 'to') ? distance(start, level.to) : reach(piece, darts, start, direction);
  const from = stopsAt(level, 'from') ? distance(start, level.from) : reach(piece, darts, start, scale(direction, -1));
  return to === null || from === null ? null : to + from;
};

/** As `widthAcross`, of a piece that is whole. Throws where a level does not go across it. */
export const levelWidth = (piece: Piece, levelId: string): number => {
  const width = widthAcross(piece, levelId);
  if (width === null) throw new Error(`The level ${levelId} of ${piece.id} does not go across it`);
  return width;
};

/** A finished girth measured off the pieces, mm; null where one of its levels no longer goes across its piece. */
export const girthAround = (garment: Garment, girth: Girth): number | null =>
  girth.pieces.reduce<number | null>((sum, { piece, factor, level }) => {
    const width = sum === null ? null : widthAcross(pieceOf(garment, piece), level ?? girth.level);
    return sum === null || width === null ? null : sum + factor * width;
  }, 0);

export interface FinishedGirth {
  readonly level: string;
  readonly measure: Girth['measure'];
  readonly around: Girth['around'];
  readonly finished: number;
}

/** The finished measurements of a garment, mm. Throws where a level does not go across its piece. */
export const finishedGirths = (garment: Garment): readonly FinishedGirth[] =>
  garment.girths.map((girth) => {
    const { level, measure, around } = girth;
    const finished = girthAround(garment, girth);
    if (finished === null) throw new Error(`The level ${level} does not go across its pieces`);
    return { level, measure, around, finished };
  });
