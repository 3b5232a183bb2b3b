import { fairCurve } from './fair-curve.ts';
import { nearerParameter } from './nearest.ts';
import { add, distance, dot, scale, subtract } from './points.ts';
import { segmentPointAt } from './segments.ts';
import type { Cubic, Point } from './types.ts';

/**
 * The cubic with given end directions (unit vectors) that passes nearest to points in order, by least squares
 * on the lengths of its handles (Schneider, An algorithm for automatically fitting digitized curves, Graphics Gems,
 * 1990). `at` gives each point's share of the way, 0 to 1. The fair curve stands in where the points
 * do not settle the handles, or would have them turn back or run long.
 */
export const fitCubic = (points: readonly Point[], at: readonly number[], leaving: Point, arriving: Point): Cubic => {
  const from = points[0];
  const to = points.at(-1);
  if (!from || !to || points.length !== at.length)
    throw new RangeError(`Cannot fit ${points.length} points at ${at.length}`);
  const fair = fairCurve(from, leaving, to, arriving);
  let best = fair;
  let least = squares(fair, points, at);
  let shares = at;
  for (let round = 0; round < rounds; round++) {
    const next = leastSquares(points, shares, from, leaving, to, arriving, fair);
    if (!next) break;
    shares = points.map((p, i) =>
      i === 0 ? 0 : i === points.length - 1 ? 1 : nearerParameter(next, p, shares[i] as number, 2),
    );
    const sum = squares(next, points, shares);
    if (sum < least) {
      best = next;
      const gained = least - sum;
      least = sum;
      if (gained < sum / 100) break;
    } else if (round > 0) break;
  }
  return best;
};

/** After these the handles hardly move. */
const rounds = 6;

/** Handles may be this many times longer or shorter than the fair curve's. */
const handleRange = 2.5;

function leastSquares(
  points: readonly Point[],
  at: readonly number[],
  from: Point,
  leaving: Point,
  to: Point,
  arriving: Point,
  fair: Cubic,
): Cubic | null {
  let oo = 0;
  let ob = 0;
  let bb = 0;
  let ov = 0;
  let bv = 0;
  points.forEach((p, i) => {
    const t = at[i] as number;
    const u = 1 - t;
    const b1 = 3 * u * u * t;
    const b2 = 3 * u * t * t;
    const rest = subtract(p, add(scale(from, u * u * u + b1), scale(to, b2 + t * t * t)));
    const out = scale(leaving, b1);
    const back = scale(arriving, -b2);
    oo += dot(out, out);
    ob += dot(out, back);
    bb += dot(back, back);
    ov += dot(out, rest);
    bv += dot(back, rest);
  });
  const size = oo * bb - ob * ob;
  if (!(size > 1e-12 * oo * bb)) return null;
  const outLength = (ov * bb - bv * ob) / size;
  const backLength = (bv * oo - ov * ob) / size;
  const inRange = (mm: number, fairMm: number): boolean => mm > fairMm / handleRange && mm < fairMm * handleRange;
  if (!inRange(outLength, distance(from, fair.control1)) || !inRange(backLength, distance(to, fair.control2)))
    return null;
  return {
    kind: 'cubic',
    from,
    control1: add(from, scale(leaving, outLength)),
    control2: subtract(to, scale(arriving, backLength)),
    to,
  };
}

function squares(curve: Cubic, points: readonly Point[], at: readonly number[]): number {
  return points.reduce((sum, p, i) => sum + distance(p, segmentPointAt(curve, at[i] as number)) ** 2, 0);
}
