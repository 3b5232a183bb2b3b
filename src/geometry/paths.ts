import { segmentLength } from './arc-length.ts';
import { distance, samePoint } from './points.ts';
import { reverseSegment } from './segments.ts';
import { tolerance } from './tolerance.ts';
import type { Path, Point, Segment } from './types.ts';

/** The segment at a place in the path; throws where there is none. Negative places count from the end. */
export const segmentAt = (path: Path, index: number): Segment => {
  const segment = path.at(index);
  if (!segment) throw new RangeError(`No segment ${index} in a path of ${path.length}`);
  return segment;
};

export const pathStart = (path: Path): Point => segmentAt(path, 0).from;

export const pathEnd = (path: Path): Point => segmentAt(path, -1).to;

/** Whether it ends where it began, to `tolerance.same`. */
export const isClosed = (path: Path): boolean => samePoint(pathStart(path), pathEnd(path));

/** Whole length, mm, to within `tolerance.length`. */
export const pathLength = (path: Path): number => {
  let sum = 0;
  for (const segment of path) sum += segmentLength(segment);
  return sum;
};

/** The same line travelled the other way. */
export const reversePath = (path: Path): Path => path.map(reverseSegment).reverse();

/**
 * Paths laid end to start in the order given. Ends that meet within `tolerance.same` are made to meet
 * exactly; throws where they lie further apart.
 */
export const joinPaths = (...paths: readonly Path[]): Path => {
  const joined: Segment[] = [];
  for (const path of paths) {
    for (const segment of path) {
      const last = joined.at(-1);
      joined.push(last ? startingAt(segment, last.to) : segment);
    }
  }
  if (joined.length === 0) throw new RangeError('Nothing to join');
  return joined;
};

/** Straight lines through points; points that repeat the one before are passed over. Closed: back to the first one. */
export const polyline = (points: readonly Point[], closed = false): Path => {
  const path: Segment[] = [];
  let [last, ...rest] = points;
  const first = last;
  if (!last || !first) throw new RangeError('A polyline needs two points, none given');
  if (closed) {
    while (rest.length > 0 && samePoint(rest.at(-1) as Point, first)) rest = rest.slice(0, -1);
    rest.push(first);
  }
  for (const next of rest) {
    if (!Number.isFinite(next.x) || !Number.isFinite(next.y))
      throw new RangeError(`Not a point: (${next.x}, ${next.y})`);
    if (samePoint(last, next)) continue;
    path.push({ kind: 'line', from: last, to: next });
    last = next;
  }
  if (path.length === 0) throw new RangeError(`A polyline needs two different points: ${JSON.stringify(points)}`);
  return path;
};

/** A segment moved to begin at a point it already nearly begins at. */
export const startingAt = (segment: Segment, from: Point): Segment => {
  if (segment.from.x === from.x && segment.from.y === from.y) return segment;
  if (!samePoint(segment.from, from)) {
    throw new RangeError(
      `A gap of ${distance(segment.from, from)} mm at (${from.x}, ${from.y}); joints meet within ${tolerance.same}`,
    );
  }
  return { ...segment, from };
};
