import { add, cross, dot, scale, subtract } from './points.ts';
import type { Point } from './types.ts';

/** A straight line without ends: through a point, along a direction of any length but zero. */
export interface StraightLine {
  readonly through: Point;
  readonly along: Point;
}

/** The straight line through two different points. */
export const straightThrough = (p: Point, q: Point): StraightLine => {
  if (p.x === q.x && p.y === q.y) throw new RangeError(`One point does not give a line: (${p.x}, ${p.y})`);
  return { through: p, along: subtract(q, p) };
};

/** Where two straight lines meet; null when they are parallel to within rounding. */
export const meetingPoint = (a: StraightLine, b: StraightLine): Point | null => {
  const across = cross(a.along, b.along);
  const sizes = dot(a.along, a.along) * dot(b.along, b.along);
  if (across * across <= Number.EPSILON * Number.EPSILON * sizes) return null;
  return add(a.through, scale(a.along, cross(subtract(b.through, a.through), b.along) / across));
};

/** The foot of the perpendicular from a point. */
export const footOn = (line: StraightLine, p: Point): Point =>
  add(line.through, scale(line.along, dot(subtract(p, line.through), line.along) / dot(line.along, line.along)));

/** Distance of a point from the line, mm; positive on its right as seen (y down), negative on its left. */
export const sideOf = (line: StraightLine, p: Point): number =>
  cross(line.along, subtract(p, line.through)) / Math.sqrt(dot(line.along, line.along));
