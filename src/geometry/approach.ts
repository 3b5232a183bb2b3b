import { lengthAtPlace } from './along.ts';
import { segmentLength } from './arc-length.ts';
import { flattenPath } from './flatten.ts';
import { intersectPaths } from './intersect.ts';
import { nearestPlace } from './nearest.ts';
import { segmentPointAt } from './segments.ts';
import { tolerance } from './tolerance.ts';
import type { Path, Point } from './types.ts';

/** Where two paths come nearest to each other. */
export interface Approach {
  readonly pointA: Point;
  readonly pointB: Point;
  readonly distance: number;
  readonly lengthA: number;
  readonly lengthB: number;
}

/**
 * The least distance between two paths and where it is; 0 at their first meeting where they meet. Sought from the
 * corners of both flattened, then drawn in by stepping from one to the nearest point of the other. The
 * distance is within `tolerance.flatten` of the least, on the far side.
 */
export const closestApproach = (a: Path, b: Path): Approach => {
  const [meeting] = intersectPaths(a, b);
  if (meeting) {
    const { point, lengthA, lengthB } = meeting;
    return { pointA: point, pointB: point, distance: 0, lengthA, lengthB };
  }
  let onA = nearestPlace(a, flattenPath(a)[0] as Point);
  let onB = nearestPlace(b, onA.point);
  for (const p of flattenPath(a)) {
    const there = nearestPlace(b, p);
    if (there.distance < onB.distance) onB = there;
  }
  onA = nearestPlace(a, onB.point);
  for (const p of flattenPath(b)) {
    const there = nearestPlace(a, p);
    if (there.distance < onA.distance) onA = there;
  }
  for (let round = 0; round < 100; round++) {
    onB = nearestPlace(b, onA.point);
    const next = nearestPlace(a, onB.point);
    const gained = onA.distance - next.distance;
    onA = next;
    if (round > 0 && gained <= tolerance.same / 100) break;
  }
  onB = nearestPlace(b, onA.point);
  return {
    pointA: onA.point,
    pointB: onB.point,
    distance: onB.distance,
    lengthA: lengthAtPlace(a, onA),
    lengthB: lengthAtPlace(b, onB),
  };
};

/**
 * How far two paths stray from each other at most (Hausdorff distance), from points `spacing` mm apart on both: up
 * to half a spacing's sag short of the true figure.
 */
export const pathDistance = (a: Path, b: Path, spacing = 1): number =>
  Math.max(straying(a, b, spacing), straying(b, a, spacing));

function straying(from: Path, to: Path, spacing: number): number {
  let worst = 0;
  for (const segment of from) {
    const count = Math.max(4, Math.ceil(segmentLength(segment) / spacing));
    for (let i = 0; i <= count; i++) {
      worst = Math.max(worst, nearestPlace(to, segmentPointAt(segment, i / count)).distance);
    }
  }
  return worst;
}
