import { length, lerp, normalize, subtract } from './points.ts';
import type { Cubic, Line, Point, Segment } from './types.ts';

/** A straight segment. Throws on points that are not finite. */
export const line = (from: Point, to: Point): Line => {
  if (!finite(from) || !finite(to)) throw new RangeError(`Not a line: ${JSON.stringify([from, to])}`);
  return { kind: 'line', from, to };
};

/** A cubic Bézier curve. Throws on points that are not finite. */
export const cubic = (from: Point, control1: Point, control2: Point, to: Point): Cubic => {
  if (!finite(from) || !finite(control1) || !finite(control2) || !finite(to)) {
    throw new RangeError(`Not a cubic: ${JSON.stringify([from, control1, control2, to])}`);
  }
  return { kind: 'cubic', from, control1, control2, to };
};

/** The same curve as a cubic; a line's handles lie at its thirds. */
export const asCubic = (segment: Segment): Cubic =>
  segment.kind === 'cubic'
    ? segment
    : {
        kind: 'cubic',
        from: segment.from,
        control1: lerp(segment.from, segment.to, 1 / 3),
        control2: lerp(segment.from, segment.to, 2 / 3),
        to: segment.to,
      };

/** The point at parameter t, 0 to 1; exactly the ends at 0 and 1. */
export const segmentPointAt = (segment: Segment, t: number): Point => {
  if (t === 0) return segment.from;
  if (t === 1) return segment.to;
  if (segment.kind === 'line') return lerp(segment.from, segment.to, t);
  const u = 1 - t;
  const b0 = u * u * u;
  const b1 = 3 * u * u * t;
  const b2 = 3 * u * t * t;
  const b3 = t * t * t;
  const { from, control1, control2, to } = segment;
  return {
    x: b0 * from.x + b1 * control1.x + b2 * control2.x + b3 * to.x,
    y: b0 * from.y + b1 * control1.y + b2 * control2.y + b3 * to.y,
  };
};

/** Derivative by the parameter, mm for the whole range 0 to 1. */
export const segmentDerivativeAt = (segment: Segment, t: number): Point => {
  if (segment.kind === 'line') return subtract(segment.to, segment.from);
  const u = 1 - t;
  const { from, control1, control2, to } = segment;
  const b0 = 3 * u * u;
  const b1 = 6 * u * t;
  const b2 = 3 * t * t;
  return {
    x: b0 * (control1.x - from.x) + b1 * (control2.x - control1.x) + b2 * (to.x - control2.x),
    y: b0 * (control1.y - from.y) + b1 * (control2.y - control1.y) + b2 * (to.y - control2.y),
  };
};

/** Second derivative by the parameter, mm. */
export const segmentSecondDerivativeAt = (segment: Segment, t: number): Point => {
  if (segment.kind === 'line') return { x: 0, y: 0 };
  const { from, control1, control2, to } = segment;
  const u = 6 * (1 - t);
  const v = 6 * t;
  return {
    x: u * (control2.x - 2 * control1.x + from.x) + v * (to.x - 2 * control2.x + control1.x),
    y: u * (control2.y - 2 * control1.y + from.y) + v * (to.y - 2 * control2.y + control1.y),
  };
};

/**
 * Unit direction of travel at parameter t. Where a handle lies on its end the direction is that in
 * which the curve leaves or arrives. Throws when the whole segment is one point.
 */
export const segmentTangentAt = (segment: Segment, t: number): Point => {
  const along = segmentDerivativeAt(segment, t);
  const size = length(along);
  // Below this the derivative is rounding, not direction.
  if (segment.kind === 'line' || size > Number.EPSILON * 16 * extent(segment)) return normalize(along);
  const { from, control1, control2, to } = segment;
  const candidates =
    t < 0.5
      ? [subtract(control1, from), subtract(control2, from), subtract(to, from)]
      : [subtract(to, control2), subtract(to, control1), subtract(to, from)];
  const atEnd = t === 0 || t === 1;
  const least = Number.EPSILON * 16 * extent(segment);
  const usable = atEnd ? candidates.find((candidate) => length(candidate) > least) : undefined;
  if (usable) return normalize(usable);
  // A cusp inside: take the direction in which the curve leaves it.
  const second = segmentSecondDerivativeAt(segment, t);
  if (length(second) > 0) return normalize(second);
  throw new RangeError(`A segment without length has no direction: ${JSON.stringify(segment)}`);
};

/** Curvature in 1/mm at parameter t: positive where the curve turns clockwise as seen, 0 on a line. Infinite at a cusp. */
export const segmentCurvatureAt = (segment: Segment, t: number): number => {
  if (segment.kind === 'line') return 0;
  const first = segmentDerivativeAt(segment, t);
  const second = segmentSecondDerivativeAt(segment, t);
  const across = first.x * second.y - first.y * second.x;
  const speed = length(first);
  return across === 0 ? 0 : across / (speed * speed * speed);
};

/**
 * The part from parameter t0 to t1, 0 ≤ t0 < t1 ≤ 1. Its ends are exactly `segmentPointAt` at t0 and t1,
 * so parts that follow one another share their ends to the last bit.
 */
export const partOfSegment = (segment: Segment, t0: number, t1: number): Segment => {
  if (!(t0 >= 0 && t0 < t1 && t1 <= 1)) throw new RangeError(`Not a part of a segment: ${t0} to ${t1}`);
  if (t0 === 0 && t1 === 1) return segment;
  const from = segmentPointAt(segment, t0);
  const to = segmentPointAt(segment, t1);
  if (segment.kind === 'line') return { kind: 'line', from, to };
  return { kind: 'cubic', from, control1: blossom(segment, t0, t0, t1), control2: blossom(segment, t0, t1, t1), to };
};

/** Both parts, before and after parameter t, 0 < t < 1. */
export const splitSegment = (segment: Segment, t: number): readonly [Segment, Segment] => [
  partOfSegment(segment, 0, t),
  partOfSegment(segment, t, 1),
];

export const reverseSegment = (segment: Segment): Segment =>
  segment.kind === 'line'
    ? { kind: 'line', from: segment.to, to: segment.from }
    : { kind: 'cubic', from: segment.to, control1: segment.control2, control2: segment.control1, to: segment.from };

/** The cubic's polar form: de Casteljau with a parameter of its own at each level (Ramshaw, Blossoms are polar forms, 1989). */
function blossom(curve: Cubic, r: number, s: number, t: number): Point {
  const coordinate = (p0: number, p1: number, p2: number, p3: number): number => {
    const q0 = p0 + (p1 - p0) * r;
    const q1 = p1 + (p2 - p1) * r;
    const q2 = p2 + (p3 - p2) * r;
    const r0 = q0 + (q1 - q0) * s;
    const r1 = q1 + (q2 - q1) * s;
    return r0 + (r1 - r0) * t;
  };
  const { from, control1, control2, to } = curve;
  return {
    x: coordinate(from.x, control1.x, control2.x, to.x),
    y: coordinate(from.y, control1.y, control2.y, to.y),
  };
}

function extent(curve: Cubic): number {
  const { from, control1, control2, to } = curve;
  return (
    Math.abs(control1.x - from.x) +
    Math.abs(control1.y - from.y) +
    Math.abs(control2.x - control1.x) +
    Math.abs(control2.y - control1.y) +
    Math.abs(to.x - control2.x) +
    Math.abs(to.y - control2.y)
  );
}

function finite(p: Point): boolean {
  return Number.isFinite(p.x) && Number.isFinite(p.y);
}
