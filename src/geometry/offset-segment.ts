import { add, cross, distance, dot, length, midpoint, perpendicular, scale, subtract } from './points.ts';
import {
  segmentCurvatureAt,
  segmentDerivativeAt,
  segmentPointAt,
  segmentSecondDerivativeAt,
  segmentTangentAt,
} from './segments.ts';
import { tolerance } from './tolerance.ts';
import type { Cubic, Point, Segment } from './types.ts';

/** A stretch of an offset before trimming. */
export interface OffsetStretch {
  readonly segment: Segment;
  /** Runs backwards, because the offset is deeper than the curve's radius there. */
  readonly inverted: boolean;
}

/** Half for the fit; the other half is left for the joints. */
export const fitWithin = tolerance.offset / 2;

/** Halvings after which a stretch is so short that a straight line serves: only a cusp of the curve itself needs so many. */
const deepest = 14;

/** The point of the true offset at a parameter: to the left of travel as seen when the distance is positive. */
export const offsetPointAt = (segment: Segment, t: number, distance: number): Point =>
  add(segmentPointAt(segment, t), scale(perpendicular(segmentTangentAt(segment, t)), distance));

/**
 * One segment's offset as lines and cubics. A line's is exact. A cubic's is cut where the offset turns back
 * (1 + curvature · distance = 0), and each part halved until a cubic with the true offset's ends and
 * tangents lies within half of `tolerance.offset` of it: the Hermite cubic, its handles stretched to pass the
 * true offset's middle.
 */
export const offsetSegment = (segment: Segment, by: number): OffsetStretch[] => {
  if (segment.kind === 'line') {
    const shift = scale(perpendicular(segmentTangentAt(segment, 0)), by);
    return [{ segment: { kind: 'line', from: add(segment.from, shift), to: add(segment.to, shift) }, inverted: false }];
  }
  const stretches: OffsetStretch[] = [];
  const bounds = [0, ...turningBack(segment, by), 1];
  for (let i = 1; i < bounds.length; i++) {
    const t0 = bounds[i - 1] as number;
    const t1 = bounds[i] as number;
    const inverted = speedFactor(segment, (t0 + t1) / 2, by) < 0;
    approximate(segment, t0, t1, offsetPointAt(segment, t0, by), offsetPointAt(segment, t1, by), by, 0, (part) =>
      stretches.push({ segment: part, inverted }),
    );
  }
  return stretches;
};

/** How much faster the offset runs than the curve; negative where it runs backwards. */
export function speedFactor(curve: Cubic, t: number, by: number): number {
  return 1 + segmentCurvatureAt(curve, t) * by;
}

function approximate(
  curve: Cubic,
  t0: number,
  t1: number,
  from: Point,
  to: Point,
  by: number,
  depth: number,
  keep: (part: Segment) => void,
): void {
  if (depth >= deepest) {
    keep({ kind: 'line', from, to });
    return;
  }
  const middle = (t0 + t1) / 2;
  const at = offsetPointAt(curve, middle, by);
  const third = (t1 - t0) / 3;
  const out = scale(offsetVelocity(curve, t0, by), third);
  const back = scale(offsetVelocity(curve, t1, by), third);
  const stretch = handleStretch(from, to, out, back, at, segmentTangentAt(curve, middle));
  const part: Cubic = {
    kind: 'cubic',
    from,
    control1: add(from, scale(out, stretch)),
    control2: subtract(to, scale(back, stretch)),
    to,
  };
  if (strays(part, curve, t0, t1, by) <= fitWithin) {
    keep(part);
    return;
  }
  approximate(curve, t0, middle, from, at, by, depth + 1, keep);
  approximate(curve, middle, t1, at, to, by, depth + 1, keep);
}

/**
 * The factor on both Hermite handles that brings the cubic's middle on to the offset, measured square to it: it takes
 * away the leading, even part of the error. Left at 1 where the curve is too straight, or bends both ways, to tell.
 */
function handleStretch(from: Point, to: Point, out: Point, back: Point, middle: Point, tangent: Point): number {
  const wanted = cross(tangent, subtract(middle, midpoint(from, to)));
  const given = (3 / 8) * cross(tangent, subtract(out, back));
  const factor = wanted / given;
  return factor > 0.5 && factor < 2 ? factor : 1;
}

function offsetVelocity(curve: Cubic, t: number, by: number): Point {
  const factor = speedFactor(curve, t, by);
  // At a cusp of the curve the factor is infinite and the velocity zero: the offset turns on the spot.
  return Number.isFinite(factor) ? scale(segmentDerivativeAt(curve, t), factor) : { x: 0, y: 0 };
}

const probes = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875];

/** Bound on the distance from the fitted part to the true offset, from seven places along it. */
function strays(part: Cubic, curve: Cubic, t0: number, t1: number, by: number): number {
  let worst = 0;
  for (const u of probes) {
    const t = t0 + u * (t1 - t0);
    const at = segmentPointAt(part, u);
    const even = distance(at, offsetPointAt(curve, t, by));
    const off = even <= fitWithin ? even : Math.min(even, squareDistance(curve, t, t0, t1, at, by));
    if (off > worst) worst = off;
    if (worst > fitWithin) break;
  }
  return worst;
}

/** The same measured square to the curve: slipping along the offset is no error. Infinite when no foot is found near. */
function squareDistance(curve: Cubic, start: number, t0: number, t1: number, at: Point, by: number): number {
  let t = start;
  for (let round = 0; round < 3; round++) {
    const away = subtract(at, segmentPointAt(curve, t));
    const first = segmentDerivativeAt(curve, t);
    const slope = dot(first, first) - dot(away, segmentSecondDerivativeAt(curve, t));
    if (!(slope > 0)) return Infinity;
    t += dot(away, first) / slope;
    if (!(t >= t0 && t <= t1)) return Infinity;
  }
  const foot = segmentPointAt(curve, t);
  const tangent = segmentTangentAt(curve, t);
  const left = -cross(tangent, subtract(at, foot));
  // What is left of the slip after three rounds counts too.
  return Math.abs(left - by) + Math.abs(dot(tangent, subtract(at, foot)));
}

/** Parameters where the offset turns back, found by sign between samples and closed in by bisection. */
function turningBack(curve: Cubic, by: number): number[] {
  const factor = (t: number): number => {
    const first = segmentDerivativeAt(curve, t);
    const speed = length(first);
    return speed * speed * speed + by * cross(first, segmentSecondDerivativeAt(curve, t));
  };
  const samples = 32;
  const found: number[] = [];
  let before = factor(0);
  for (let i = 1; i <= samples; i++) {
    const now = factor(i / samples);
    if (before !== 0 && now !== 0 && before > 0 !== now > 0) {
      let low = (i - 1) / samples;
      let high = i / samples;
      for (let round = 0; round < 50; round++) {
        const middle = (low + high) / 2;
        if (factor(middle) > 0 === before > 0) low = middle;
        else high = middle;
      }
      found.push((low + high) / 2);
    }
    before = now;
  }
  return found;
}
