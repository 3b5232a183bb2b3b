import { tolerance } from './tolerance.ts';
import type { Point } from './types.ts';

/** A point or vector, millimetres. Throws on anything that is not a finite number. */
export const point = (x: number, y: number): Point => {
  if (!Number.isFinite(x) || !Number.isFinite(y)) throw new RangeError(`Not a point: (${x}, ${y})`);
  return { x, y };
};

export const add = (p: Point, q: Point): Point => ({ x: p.x + q.x, y: p.y + q.y });

/** p − q: the vector from q to p. */
export const subtract = (p: Point, q: Point): Point => ({ x: p.x - q.x, y: p.y - q.y });

export const scale = (p: Point, factor: number): Point => ({ x: p.x * factor, y: p.y * factor });

export const negate = (p: Point): Point => ({ x: -p.x, y: -p.y });

export const dot = (p: Point, q: Point): number => p.x * q.x + p.y * q.y;

/** p.x·q.y − p.y·q.x: positive when q lies clockwise of p as seen (y down). */
export const cross = (p: Point, q: Point): number => p.x * q.y - p.y * q.x;

/** Length of a vector, mm. */
export const length = (p: Point): number => Math.sqrt(p.x * p.x + p.y * p.y);

export const distance = (p: Point, q: Point): number => Math.sqrt((p.x - q.x) ** 2 + (p.y - q.y) ** 2);

/** Whether two points are the same point, to `tolerance.same`. */
export const samePoint = (p: Point, q: Point): boolean => distance(p, q) <= tolerance.same;

/** The vector made one long. Throws on the zero vector, which has no direction. */
export const normalize = (p: Point): Point => {
  const size = length(p);
  if (!(size > 0 && size < Infinity)) throw new RangeError(`No direction in (${p.x}, ${p.y})`);
  return { x: p.x / size, y: p.y / size };
};

/** The vector turned a quarter to its left as seen: from pointing right (1, 0) to pointing up the screen (0, −1). */
export const perpendicular = (p: Point): Point => ({ x: p.y, y: -p.x });

/** The point a fraction of the way from p to q; exactly p at 0 and exactly q at 1. */
export const lerp = (p: Point, q: Point, fraction: number): Point =>
  fraction === 1 ? q : { x: p.x + (q.x - p.x) * fraction, y: p.y + (q.y - p.y) * fraction };

export const midpoint = (p: Point, q: Point): Point => ({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 });

/** Turned about a point (the origin when none is given); positive radians turn clockwise as seen. */
export const rotate = (p: Point, angle: number, about: Point = { x: 0, y: 0 }): Point => {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const x = p.x - about.x;
  const y = p.y - about.y;
  return { x: about.x + cos * x - sin * y, y: about.y + sin * x + cos * y };
};

/** Direction of a vector in radians, −π to π: 0 to the right, growing clockwise as seen. */
export const angleOf = (p: Point): number => Math.atan2(p.y, p.x);

/** Turn from the direction of p to that of q in radians, −π to π, positive clockwise as seen. */
export const turnBetween = (p: Point, q: Point): number => Math.atan2(cross(p, q), dot(p, q));

/** The unit vector at an angle, as `angleOf` measures it. */
export const directionAt = (angle: number): Point => ({ x: Math.cos(angle), y: Math.sin(angle) });
