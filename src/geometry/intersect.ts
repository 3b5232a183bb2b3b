import { segmentLengths } from './along.ts';
import { segmentLength } from './arc-length.ts';
import { boundsMeet, hullBounds } from './bounds.ts';
import { segmentCrossings } from './crossing.ts';
import { isClosed, segmentAt } from './paths.ts';
import { segmentPointAt } from './segments.ts';
import { tolerance } from './tolerance.ts';
import type { Path, Point } from './types.ts';

/** Where two paths meet, and how far along each. */
export interface PathCrossing {
  readonly point: Point;
  readonly lengthA: number;
  readonly lengthB: number;
}

/**
 * All places where two paths cross or touch, to `tolerance.same`, in order along the first. Where they run
 * along each other, the ends of the shared stretches of each pair of segments are given.
 */
export const intersectPaths = (a: Path, b: Path): PathCrossing[] => {
  const boxesA = a.map(hullBounds);
  const boxesB = b.map(hullBounds);
  let before: { a: number[]; b: number[] } | undefined;
  const found: PathCrossing[] = [];
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j < b.length; j++) {
      const boxA = boxesA[i];
      const boxB = boxesB[j];
      if (!boxA || !boxB || !boundsMeet(boxA, boxB, tolerance.same)) continue;
      const segmentA = segmentAt(a, i);
      const segmentB = segmentAt(b, j);
      for (const { ta, tb } of segmentCrossings(segmentA, segmentB)) {
        before ??= { a: segmentLengths(a), b: segmentLengths(b) };
        found.push({
          // An end is exact where a point inside the other is computed.
          point: tb === 0 || tb === 1 ? segmentPointAt(segmentB, tb) : segmentPointAt(segmentA, ta),
          lengthA: sum(before.a, i) + segmentLength(segmentA, 0, ta),
          lengthB: sum(before.b, j) + segmentLength(segmentB, 0, tb),
        });
      }
    }
  }
  if (!before || found.length < 2) return found;
  const loopA = isClosed(a) ? sum(before.a, a.length) : Infinity;
  const loopB = isClosed(b) ? sum(before.b, b.length) : Infinity;
  return withoutRepeats(found, loopA, loopB);
};

/** In order along the first, and a meeting at a joint once though both segments that share it found it. */
export function withoutRepeats(crossings: readonly PathCrossing[], loopA: number, loopB: number): PathCrossing[] {
  const sorted = [...crossings].sort((one, other) => one.lengthA - other.lengthA || one.lengthB - other.lengthB);
  return sorted.filter(
    (one, i) =>
      !sorted
        .slice(0, i)
        .some(
          (other) =>
            apart(one.lengthA, other.lengthA, loopA) <= tolerance.length &&
            apart(one.lengthB, other.lengthB, loopB) <= tolerance.length,
        ),
  );
}

/** Difference of two lengths along a path, the short way round where it is a loop. */
export function apart(one: number, other: number, loop: number): number {
  const difference = Math.abs(one - other);
  return Math.min(difference, Math.abs(loop - difference));
}

function sum(lengths: readonly number[], count: number): number {
  let total = 0;
  for (let i = 0; i < count; i++) total += lengths[i] as number;
  return total;
}
