import type { Point } from '../geometry/index.ts';
import type { Polygon } from './polygon.ts';

/*
 * The exact question whether two polygons overlap, asked of finished plans. It shares nothing with the
 * search: no grid, no no-fit region, no rounding.
 */

const corner = (polygon: Polygon, i: number): Point => polygon[i % polygon.length] as Point;

const side = (a: Point, b: Point, p: Point): number => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
});

/** Winding number of the polygon about p. */
const windingAt = (polygon: Polygon, p: Point): number => {
  let winding = 0;
  for (let i = 0; i < polygon.length; i++) {
    const a = corner(polygon, i);
    const b = corner(polygon, i + 1);
    if (a.y <= p.y) {
      if (b.y > p.y && side(a, b, p) > 0) winding++;
    } else if (b.y <= p.y && side(a, b, p) < 0) winding--;
  }
  return winding;
};

const shareNearest = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  return square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
};

const distanceToSegment = (p: Point, a: Point, b: Point): number => {
  const q = between(a, b, shareNearest(p, a, b));
  return Math.hypot(p.x - q.x, p.y - q.y);
};

/** Least distance from p to the polygon's border. */
const distanceToBorder = (polygon: Polygon, p: Point): number => {
  let least = Infinity;
  for (let i = 0; i < polygon.length; i++) {
    least = Math.min(least, distanceToSegment(p, corner(polygon, i), corner(polygon, i + 1)));
  }
  return least;
};

const depthInside = (polygon: Polygon, p: Point): number =>
  windingAt(polygon, p) === 0 ? 0 : distanceToBorder(polygon, p);

/**
 * Whether a segment that does not cross the polygon's border dips deeper than allowed. The distance to one
 * border edge is convex along it, so no point is deeper than the worse of its ends is from any one edge.
 */
const dips = (polygon: Polygon, a: Point, b: Point, allowed: number): boolean => {
  const middle = between(a, b, 0.5);
  if (windingAt(polygon, middle) === 0) return false;
  if (distanceToBorder(polygon, middle) > allowed) return true;
  let bound = Infinity;
  for (let i = 0; i < polygon.length; i++) {
    const [p, q] = [corner(polygon, i), corner(polygon, i + 1)];
    bound = Math.min(bound, Math.max(distanceToSegment(a, p, q), distanceToSegment(b, p, q)));
  }
  if (bound <= allowed || Math.hypot(b.x - a.x, b.y - a.y) <= allowed) return false;
  return dips(polygon, a, middle, allowed) || dips(polygon, middle, b, allowed);
};

/** Shares of segment a–b at which it meets the border of the polygon or a corner of it lies within `near`, its ends included, in order. */
const meetings = (polygon: Polygon, a: Point, b: Point, near: number): number[] => {
  const shares = [0, 1];
  const [minX, maxX] = [Math.min(a.x, b.x) - near, Math.max(a.x, b.x) + near];
  const [minY, maxY] = [Math.min(a.y, b.y) - near, Math.max(a.y, b.y) + near];
  for (let i = 0; i < polygon.length; i++) {
    const [p, q] = [corner(polygon, i), corner(polygon, i + 1)];
    if (Math.max(p.x, q.x) < minX || Math.min(p.x, q.x) > maxX) continue;
    if (Math.max(p.y, q.y) < minY || Math.min(p.y, q.y) > maxY) continue;
    const [sp, sq] = [side(a, b, p), side(a, b, q)];
    const [sa, sb] = [side(p, q, a), side(p, q, b)];
    if (sp * sq <= 0 && sa * sb <= 0 && sa !== sb) shares.push(Math.min(1, Math.max(0, sa / (sa - sb))));
    // Where they run along one another, rounding hides the crossing: the ends of the shared run are corners nearby.
    if (distanceToSegment(p, a, b) <= near) shares.push(shareNearest(p, a, b));
  }
  return shares.sort((s, t) => s - t);
};

const borderDips = (into: Polygon, border: Polygon, allowed: number): boolean => {
  for (let i = 0; i < border.length; i++) {
    const [a, b] = [corner(border, i), corner(border, i + 1)];
    const shares = meetings(into, a, b, allowed);
    for (let k = 1; k < shares.length; k++) {
      const [from, to] = [between(a, b, shares[k - 1] as number), between(a, b, shares[k] as number)];
      if (dips(into, from, to, allowed)) return true;
    }
  }
  return false;
};

/** A point well inside the polygon: the deepest of the centres of some of its corner triples. */
const innerPoint = (polygon: Polygon): Point => {
  let best = corner(polygon, 0);
  let deepest = 0;
  for (let i = 0; i < polygon.length; i++) {
    for (const step of [2, 3, Math.ceil(polygon.length / 2)]) {
      const [a, b, c] = [corner(polygon, i), corner(polygon, i + 1), corner(polygon, i + step)];
      const p = { x: (a.x + b.x + c.x) / 3, y: (a.y + b.y + c.y) / 3 };
      const depth = depthInside(polygon, p);
      if (depth > deepest) [deepest, best] = [depth, p];
    }
  }
  return best;
};

/**
 * Whether the insides of two simple polygons overlap by more than `allowed` (above 0, same unit): some
 * border point of one lies deeper than that in the other, or they cover one another.
 */
export const overlapDeeperThan = (a: Polygon, b: Polygon, allowed: number): boolean =>
  borderDips(b, a, allowed) ||
  borderDips(a, b, allowed) ||
  depthInside(b, innerPoint(a)) > allowed ||
  depthInside(a, innerPoint(b)) > allowed;

/** Whether two polygons that do not overlap come nearer to one another than `apart`. */
export const nearerThan = (a: Polygon, b: Polygon, apart: number): boolean =>
  a.some((p) => distanceToBorder(b, p) < apart) || b.some((p) => distanceToBorder(a, p) < apart);
