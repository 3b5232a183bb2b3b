import type { Bounds, Point } from '../geometry/index.ts';

/** A closed polygon, first corner not repeated. In this room it runs so that its shoelace area is positive. */
export type Polygon = readonly Point[];

/** Outlines whose corners differ by less than this share of their extent differ by rounding alone. */
export const rounding = 1e-9;

/** How an outline is laid: negated in x when mirrored, then turned by `rotation` degrees (x towards y). */
export interface Turn {
  readonly rotation: number;
  readonly mirrored: boolean;
}

/** Shoelace area, positive for a polygon that runs clockwise as seen (y down). */
export const polygonArea = (polygon: Polygon): number => {
  let twice = 0;
  let before = polygon[polygon.length - 1] as Point;
  for (const corner of polygon) {
    twice += before.x * corner.y - corner.x * before.y;
    before = corner;
  }
  return twice / 2;
};

export const polygonBounds = (polygon: Polygon): Bounds => {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of polygon) {
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
};

/** Drops repeated and straight-through corners and makes the area positive. */
export const tidyPolygon = (corners: Polygon): Polygon => {
  const bounds = polygonBounds(corners);
  const near = 1e-12 * Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY);
  const kept: Point[] = [];
  for (const corner of corners) {
    const last = kept[kept.length - 1];
    if (!last || Math.hypot(corner.x - last.x, corner.y - last.y) > near) kept.push(corner);
  }
  while (kept.length > 1) {
    const [first, last] = [kept[0] as Point, kept[kept.length - 1] as Point];
    if (Math.hypot(first.x - last.x, first.y - last.y) > near) break;
    kept.pop();
  }
  const bends = kept.filter((corner, i) => {
    const before = kept[(i + kept.length - 1) % kept.length] as Point;
    const after = kept[(i + 1) % kept.length] as Point;
    const cross = (corner.x - before.x) * (after.y - corner.y) - (corner.y - before.y) * (after.x - corner.x);
    const onward = (corner.x - before.x) * (after.x - corner.x) + (corner.y - before.y) * (after.y - corner.y);
    const base = Math.hypot(after.x - before.x, after.y - before.y);
    return onward < 0 || Math.abs(cross) > near * base;
  });
  return polygonArea(bends) < 0 ? [...bends].reverse() : bends;
};

/** Cosine and sine, exact at quarter turns so that a turned piece keeps its straight edges straight. */
export const quarterExact = (degrees: number): readonly [cos: number, sin: number] => {
  const turn = ((degrees % 360) + 360) % 360;
  if (turn === 0) return [1, 0];
  if (turn === 90) return [0, 1];
  if (turn === 180) return [-1, 0];
  if (turn === 270) return [0, -1];
  const angle = (turn * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
};

/** The polygon as laid; its run is put right again after mirroring. */
export const turnPolygon = (polygon: Polygon, turn: Turn): Polygon => {
  const [cos, sin] = quarterExact(turn.rotation);
  const turned = polygon.map(({ x, y }) => {
    const px = turn.mirrored ? -x : x;
    return { x: cos * px - sin * y, y: sin * px + cos * y };
  });
  return turn.mirrored ? turned.reverse() : turned;
};

export const movePolygon = (polygon: Polygon, dx: number, dy: number): Polygon =>
  polygon.map(({ x, y }) => ({ x: x + dx, y: y + dy }));

/** Whether two polygons have the same corners in the same order, wherever each begins, within `near`. */
export const samePolygon = (a: Polygon, b: Polygon, near: number): boolean => {
  if (a.length !== b.length) return false;
  for (let shift = 0; shift < b.length; shift++) {
    const alike = a.every((p, i) => {
      const q = b[(i + shift) % b.length] as Point;
      return Math.abs(p.x - q.x) <= near && Math.abs(p.y - q.y) <= near;
    });
    if (alike) return true;
  }
  return false;
};

/** The convex hull's area (Andrew's monotone chain): the cloth a piece spoils at most. */
export const hullArea = (polygon: Polygon): number => {
  const sorted = [...polygon].sort((p, q) => p.x - q.x || p.y - q.y);
  const chain = (points: Polygon): Point[] => {
    const hull: Point[] = [];
    for (const p of points) {
      while (hull.length > 1) {
        const a = hull[hull.length - 2] as Point;
        const b = hull[hull.length - 1] as Point;
        if ((b.x - a.x) * (p.y - b.y) - (b.y - a.y) * (p.x - b.x) > 0) break;
        hull.pop();
      }
      hull.push(p);
    }
    hull.pop();
    return hull;
  };
  return Math.abs(polygonArea([...chain(sorted), ...chain(sorted.reverse())]));
};
