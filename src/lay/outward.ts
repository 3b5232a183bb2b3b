import { type Cubic, type Outline, type Point, splitSegment, tolerance } from '../geometry/index.ts';
import { type Polygon, tidyPolygon } from './polygon.ts';
import { simplifyOutward } from './simplify.ts';

/** Height of p over the line a–b on its outer side (to the right of travel for a run of positive area), and its place along. */
const over = (a: Point, b: Point, p: Point): { readonly height: number; readonly along: number } => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const size = Math.hypot(dx, dy);
  if (size === 0) return { height: Math.hypot(p.x - a.x, p.y - a.y), along: 0 };
  return {
    height: ((p.x - a.x) * dy - (p.y - a.y) * dx) / size,
    along: ((p.x - a.x) * dx + (p.y - a.y) * dy) / (size * size),
  };
};

/** Corners from the curve's start, its end not included, of a run that has the curve on its inner side within `within`. */
const cubicOutward = (curve: Cubic, within: number): Point[] => {
  const { from, control1, control2, to } = curve;
  const one = over(from, to, control1);
  const two = over(from, to, control2);
  const flat = [one, two].every(({ height, along }) => Math.abs(height) <= within && along >= 0 && along <= 1);
  if (!flat || one.along > two.along) {
    const [first, second] = splitSegment(curve, 0.5) as [Cubic, Cubic];
    // A curve no longer than the allowance is a point for this purpose, however its handles lie.
    const reach = Math.abs(control1.x - from.x) + Math.abs(control1.y - from.y);
    const span =
      reach + Math.abs(control2.x - to.x) + Math.abs(control2.y - to.y) + Math.hypot(to.x - from.x, to.y - from.y);
    if (span > tolerance.same) return [...cubicOutward(first, within), ...cubicOutward(second, within)];
    return [from];
  }
  // The curve lies in the hull of its four control points: the hull's outer side encloses it.
  const corners = [from];
  const [outOne, outTwo] = [one.height > 0, two.height > 0];
  if (outOne && !(outTwo && over(from, control2, control1).height <= 0)) corners.push(control1);
  if (outTwo && !(outOne && over(control1, to, control2).height <= 0)) corners.push(control2);
  return corners;
};

/**
 * A polygon that encloses an outline (clockwise as seen) and strays from it by at most `within` mm, with as
 * few corners as that takes. Corners named in `keep` stay where they are.
 */
export const outwardPolygon = (
  outline: Outline,
  keep: readonly Point[] = [],
  within: number = tolerance.outward,
): Polygon => {
  const corners = outline.flatMap((segment) =>
    segment.kind === 'line' ? [segment.from] : cubicOutward(segment, within / 3),
  );
  return simplifyOutward(tidyPolygon(corners), keep, within / 2);
};
