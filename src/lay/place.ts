import type { Point } from '../geometry/index.ts';
import { type Polygon, polygonArea, quarterExact, type Turn, tidyPolygon, turnPolygon } from './polygon.ts';
import type { LayoutItem, LayoutProblem, Placement } from './types.ts';

const mirrorAcross = (p: Point, [a, b]: readonly [Point, Point]): Point => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const along = 2 * (((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy));
  return { x: 2 * a.x + along * dx - p.x, y: 2 * a.y + along * dy - p.y };
};

/** A piece on the fold opened to double: its outline and the mirror image joined along the fold. */
export const openedOutline = (outline: Polygon, fold: readonly [Point, Point]): Polygon => {
  const near = (p: Point, q: Point): number => Math.hypot(p.x - q.x, p.y - q.y);
  const nearest = (q: Point): number =>
    outline.reduce((best, p, i) => (near(p, q) < near(outline[best] as Point, q) ? i : best), 0);
  const [one, two] = [nearest(fold[0]), nearest(fold[1])];
  const n = outline.length;
  // The half's run from one end of the fold to the other, the long way round.
  const [from, to] = (one + 1) % n === two ? [two, one] : [one, two];
  const half: Point[] = [];
  for (let i = from; ; i = (i + 1) % n) {
    half.push(outline[i] as Point);
    if (i === to) break;
  }
  const other = half.slice(1, -1).reverse();
  return tidyPolygon([...half, ...other.map((p) => mirrorAcross(p, fold))]);
};

/** The item's outline as it lies on the cloth: half, or opened to double. */
export const laidOutline = (item: LayoutItem, opened: boolean): Polygon =>
  opened && item.fold ? openedOutline(item.outline, item.fold) : item.outline;

/** Where a point of the piece comes to lie. */
export const placedPoint = (placement: Turn & { readonly x: number; readonly y: number }, p: Point): Point => {
  const [cos, sin] = quarterExact(placement.rotation);
  const px = placement.mirrored ? -p.x : p.x;
  return { x: cos * px - sin * p.y + placement.x, y: sin * px + cos * p.y + placement.y };
};

/** The outline as it lies on the cloth. */
export const placedOutline = (problem: LayoutProblem, placement: Placement): Polygon => {
  const item = problem.items.find(({ id }) => id === placement.id);
  if (!item) throw new Error(`The plan lays a piece that was not asked for: ${placement.id}`);
  return turnPolygon(laidOutline(item, placement.opened), placement).map(({ x, y }) => ({
    x: x + placement.x,
    y: y + placement.y,
  }));
};

/** Cloth one copy takes, opened where it is on the fold. */
export const copyArea = (item: LayoutItem): number => Math.abs(polygonArea(item.outline)) * (item.fold ? 2 : 1);
