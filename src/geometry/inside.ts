import { turningParameters } from './bounds.ts';
import { segmentPointAt } from './segments.ts';
import type { Cubic, Outline, Point } from './types.ts';

/**
 * Whether a point lies inside an outline: winding number by crossings of the level ray to its right. Each
 * rising or falling stretch owns its lower end only, so a ray through a vertex counts it once. A point on the
 * line itself may be told either way.
 */
export const insideOutline = (outline: Outline, p: Point): boolean => windingNumber(outline, p) !== 0;

/** How often an outline goes round a point, clockwise as seen counted positive. */
export const windingNumber = (outline: Outline, p: Point): number => {
  let winding = 0;
  for (const segment of outline) {
    if (segment.kind === 'line') {
      const down = stretch(segment.from.y, segment.to.y, p.y);
      if (down !== 0 && crossesRightOf(segment.from, segment.to, p)) winding += down;
      continue;
    }
    const { from, control1, control2, to } = segment;
    if (Math.max(from.y, control1.y, control2.y, to.y) < p.y) continue;
    if (Math.min(from.y, control1.y, control2.y, to.y) > p.y) continue;
    if (Math.max(from.x, control1.x, control2.x, to.x) <= p.x) continue;
    if (Math.min(from.x, control1.x, control2.x, to.x) > p.x) winding += stretch(from.y, to.y, p.y);
    else winding += cubicCrossings(segment, p);
  }
  return winding;
};

/** 1 where a stretch passes a level going down the screen, −1 going up, 0 where it does not pass. */
function stretch(fromY: number, toY: number, level: number): -1 | 0 | 1 {
  if (fromY <= level && level < toY) return 1;
  return toY <= level && level < fromY ? -1 : 0;
}

function crossesRightOf(from: Point, to: Point, p: Point): boolean {
  const across = (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x);
  return to.y > from.y ? across > 0 : across < 0;
}

function cubicCrossings(curve: Cubic, p: Point): number {
  const cuts = [0, ...turningParameters(curve, 'y'), 1];
  let winding = 0;
  let fromY = curve.from.y;
  for (let i = 1; i < cuts.length; i++) {
    const t1 = cuts[i] as number;
    const toY = segmentPointAt(curve, t1).y;
    const down = stretch(fromY, toY, p.y);
    if (down !== 0 && xAtLevel(curve, cuts[i - 1] as number, t1, down, p) > p.x) winding += down;
    fromY = toY;
  }
  return winding;
}

/** Where a stretch that only rises or only falls crosses p's level, by bisection: it cannot fail. */
function xAtLevel(curve: Cubic, t0: number, t1: number, down: number, p: Point): number {
  let low = t0;
  let high = t1;
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if ((segmentPointAt(curve, middle).y - p.y) * down > 0) high = middle;
    else low = middle;
  }
  return segmentPointAt(curve, (low + high) / 2).x;
}
