import type { Point } from '../geometry/index.ts';
import type { Polygon } from './polygon.ts';

/** A corner, and where in the polygon as given the stretch of border begins that runs from it to the next. */
interface Corner {
  readonly at: Point;
  readonly covers: number;
}

/** One way to have a corner less: corner `index` (and the next, when `apex` stands for both) goes. */
interface Change {
  readonly index: number;
  readonly apex: Point | null;
  readonly added: number;
}

const cross = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);

const distanceToLine = (p: Point, a: Point, b: Point): number => {
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  return size === 0 ? Math.hypot(p.x - a.x, p.y - a.y) : Math.abs(cross(a, b, p)) / size;
};

const distanceToSide = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
};

/** Where the lines a–b and d–c meet beyond b and c; null where they do not. */
const meeting = (a: Point, b: Point, c: Point, d: Point): Point | null => {
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  const [vx, vy] = [d.x - c.x, d.y - c.y];
  const det = ux * vy - uy * vx;
  if (!(det > 0)) return null;
  const share = ((c.x - a.x) * vy - (c.y - a.y) * vx) / det;
  return { x: a.x + share * ux, y: a.y + share * uy };
};

/**
 * Takes corners away so that the polygon only grows, straying from the one given by at most `within`:
 * an inward corner is cut straight across, an outward edge is replaced by the point where its neighbours
 * meet. The change that adds least comes first. Corners at the places in `keep` stay.
 */
export const simplifyOutward = (polygon: Polygon, keep: readonly Point[], within: number): Polygon => {
  const kept = (p: Point): boolean => keep.some((q) => q.x === p.x && q.y === p.y);
  const n = polygon.length;
  const ring: Corner[] = polygon.map((at, covers) => ({ at, covers }));
  const pick = (i: number): Corner => ring[(i + ring.length) % ring.length] as Corner;
  /** Corners of the given polygon strictly between two of its border stretches' beginnings. */
  const between = (from: number, to: number): Point[] => {
    const points: Point[] = [];
    for (let i = (from + 1) % n; i !== (to + 1) % n && points.length < n; i = (i + 1) % n)
      points.push(polygon[i] as Point);
    return points;
  };
  const changeAt = (i: number): Change | null => {
    const [a, b, c, d] = [pick(i - 1), pick(i), pick(i + 1), pick(i + 2)];
    if (kept(b.at)) return null;
    if (cross(a.at, b.at, c.at) < 0) {
      if (between(a.covers, c.covers).some((p) => distanceToLine(p, a.at, c.at) > within)) return null;
      return { index: i, apex: null, added: Math.abs(cross(a.at, b.at, c.at)) / 2 };
    }
    if (kept(c.at) || ring.length < 5 || cross(b.at, c.at, d.at) <= 0) return null;
    const apex = meeting(a.at, b.at, c.at, d.at);
    if (!apex) return null;
    const covered = [b.at, ...between(b.covers, c.covers), c.at];
    const away = Math.min(...covered.slice(1).map((q, k) => distanceToSide(apex, covered[k] as Point, q)));
    if (away > within) return null;
    return { index: i, apex, added: Math.abs(cross(b.at, apex, c.at)) / 2 };
  };
  while (ring.length > 3) {
    let best: Change | null = null;
    for (let i = 0; i < ring.length; i++) {
      const change = changeAt(i);
      if (change && (best === null || change.added < best.added)) best = change;
    }
    if (!best) break;
    if (best.apex) {
      const next = (best.index + 1) % ring.length;
      ring[best.index] = { at: best.apex, covers: (ring[best.index] as Corner).covers };
      ring.splice(next, 1);
    } else ring.splice(best.index, 1);
  }
  return ring.map(({ at }) => at);
};
