import { lengthAtPlace } from './along.ts';
import { boundsDistance, hullBounds } from './bounds.ts';
import { dot, subtract } from './points.ts';
import { bernsteinRoots } from './roots.ts';
import { segmentDerivativeAt, segmentPointAt, segmentSecondDerivativeAt } from './segments.ts';
import type { Cubic, Path, Point, Segment } from './types.ts';

/** The nearest point of a path. */
export interface NearestPoint {
  readonly point: Point;
  /** Length from the path's start, mm. */
  readonly atLength: number;
  readonly distance: number;
}

/** The point of a path nearest to p; the first one along it where several are equally near. */
export const nearestOnPath = (path: Path, p: Point): NearestPoint => {
  const place = nearestPlace(path, p);
  return {
    point: place.point,
    atLength: lengthAtPlace(path, place),
    distance: place.distance,
  };
};

/** As `nearestOnPath`, without the work of measuring how far along it lies. */
export const nearestPlace = (
  path: Path,
  p: Point,
): { readonly index: number; readonly t: number; readonly point: Point; readonly distance: number } => {
  const here = { minX: p.x, minY: p.y, maxX: p.x, maxY: p.y };
  let best = { index: -1, t: 0, point: p, distance: Infinity };
  path.forEach((segment, index) => {
    if (boundsDistance(hullBounds(segment), here) >= best.distance) return;
    const t = nearestParameter(segment, p);
    const point = segmentPointAt(segment, t);
    const distance = Math.hypot(point.x - p.x, point.y - p.y);
    if (distance < best.distance) best = { index, t, point, distance };
  });
  if (best.index < 0) throw new RangeError(`No nearest point to (${p.x}, ${p.y})`);
  return best;
};

/** The parameter of a segment's nearest point. */
export const nearestParameter = (segment: Segment, p: Point): number => {
  const { from, to } = segment;
  if (segment.kind === 'line') {
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    const square = dx * dx + dy * dy;
    if (square === 0) return 0;
    return Math.min(1, Math.max(0, ((p.x - from.x) * dx + (p.y - from.y) * dy) / square));
  }
  let best = 0;
  let least = Infinity;
  for (const t of [0, ...feet(segment, p), 1]) {
    const at = segmentPointAt(segment, t);
    const square = (at.x - p.x) ** 2 + (at.y - p.y) ** 2;
    if (square < least) {
      best = t;
      least = square;
    }
  }
  return best;
};

/**
 * A parameter brought nearer to the foot of p's perpendicular by Newton steps from where it is: quick, for a place
 * already nearly known; `nearestParameter` searches.
 */
export const nearerParameter = (segment: Segment, p: Point, t: number, steps = 1): number => {
  let at = t;
  for (let step = 0; step < steps; step++) {
    const away = subtract(segmentPointAt(segment, at), p);
    const first = segmentDerivativeAt(segment, at);
    const slope = dot(first, first) + dot(away, segmentSecondDerivativeAt(segment, at));
    if (!(slope > 0)) return at;
    at = Math.min(1, Math.max(0, at - dot(away, first) / slope));
  }
  return at;
};

/**
 * Parameters where the line to p stands square on the curve: roots of (B − p)·B′, a quintic in the
 * Bernstein basis (Schneider, Solving the nearest-point-on-curve problem, Graphics Gems, 1990).
 */
function feet({ from, control1, control2, to }: Cubic, p: Point): number[] {
  const c = [from, control1, control2, to].map((q) => ({ x: q.x - p.x, y: q.y - p.y }));
  const quintic = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i <= 3; i++) {
    for (let j = 0; j <= 2; j++) {
      const at = c[i] as Point;
      const before = c[j] as Point;
      const after = c[j + 1] as Point;
      const product = at.x * (after.x - before.x) + at.y * (after.y - before.y);
      const place = i + j;
      quintic[place] = (quintic[place] as number) + (share[i]?.[j] as number) * product;
    }
  }
  return bernsteinRoots(quintic);
}

/** Binomials 3Ci·2Cj / 5C(i+j): the part each product of a cubic's and a quadratic's coefficient has in the quintic's. */
const share = [
  [1, 2 / 5, 1 / 10],
  [3 / 5, 6 / 10, 3 / 10],
  [3 / 10, 6 / 10, 3 / 5],
  [1 / 10, 2 / 5, 1],
] as const;
