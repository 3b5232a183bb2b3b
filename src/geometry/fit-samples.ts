import { stepsWithin } from './flatten.ts';
import { add, distance, normalize, samePoint, scale, subtract } from './points.ts';
import { segmentPointAt, segmentTangentAt } from './segments.ts';
import type { Point, Segment } from './types.ts';

/** A point passed, with the unit direction of travel there. */
export interface Sample {
  readonly point: Point;
  readonly along: Point;
}

/** Least number of steps along a segment. */
const looks = 16;

/** Samples along a segment, both ends included. */
export const samplesOfSegment = (segment: Segment, within: number): Sample[] => {
  const count = segment.kind === 'line' ? looks : Math.max(looks, stepsWithin(segment, within));
  return Array.from({ length: count + 1 }, (_, i) => ({
    point: segmentPointAt(segment, i / count),
    along: segmentTangentAt(segment, i / count),
  }));
};

/**
 * Points with directions by the parabola through each and its neighbours (Bessel tangents). A point that repeats the
 * one before is passed over. Throws on fewer than two different points.
 */
export const samplesOfPoints = (given: readonly Point[]): Sample[] => {
  const points = given.filter((p, i) => i === 0 || !samePoint(p, given[i - 1] as Point));
  if (points.length < 2) throw new RangeError(`A curve needs two different points: ${JSON.stringify(given)}`);
  const last = points.length - 1;
  const size = (i: number): number => distance(points[i] as Point, points[i + 1] as Point);
  const slope = (i: number): Point => scale(subtract(points[i + 1] as Point, points[i] as Point), 1 / size(i));
  const inner = (i: number): Point => {
    const both = size(i - 1) + size(i);
    return add(scale(slope(i - 1), size(i) / both), scale(slope(i), size(i - 1) / both));
  };
  const direction = (i: number): Point => {
    if (last === 1) return slope(0);
    if (i === 0) return subtract(scale(slope(0), 2), inner(1));
    return i === last ? subtract(scale(slope(last - 1), 2), inner(last - 1)) : inner(i);
  };
  return points.map((point, i) => {
    const along = direction(i);
    // Where the points double back the parabola has no direction: take the way onward.
    return { point, along: Math.hypot(along.x, along.y) > 0 ? normalize(along) : slope(Math.min(i, last - 1)) };
  });
};
