import { quadraticRoots } from './roots.ts';
import { segmentPointAt } from './segments.ts';
import type { Bounds, Path, Point, Segment } from './types.ts';

/** The tightest upright box round points. Throws when none are given. */
export const boundsOfPoints = (points: Iterable<Point>): Bounds => {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const p of points) {
    if (p.x < minX) minX = p.x;
    if (p.x > maxX) maxX = p.x;
    if (p.y < minY) minY = p.y;
    if (p.y > maxY) maxY = p.y;
  }
  if (minX === Infinity) throw new RangeError('No points, no bounds');
  return { minX, minY, maxX, maxY };
};

/** The tightest upright box round a segment: its ends, and where a curve turns back across or down. */
export const segmentBounds = (segment: Segment): Bounds => {
  if (segment.kind === 'line') return boundsOfPoints([segment.from, segment.to]);
  const points = [segment.from, segment.to];
  for (const t of turningParameters(segment, 'x')) points.push(segmentPointAt(segment, t));
  for (const t of turningParameters(segment, 'y')) points.push(segmentPointAt(segment, t));
  return boundsOfPoints(points);
};

/** Parameters inside the segment where it turns back in one coordinate, rising; none on a line. */
export const turningParameters = (segment: Segment, axis: 'x' | 'y'): number[] => {
  if (segment.kind === 'line') return [];
  const p0 = segment.from[axis];
  const p1 = segment.control1[axis];
  const p2 = segment.control2[axis];
  const p3 = segment.to[axis];
  // Handles between the ends cannot make it turn back.
  if ((p0 <= p1 && p1 <= p2 && p2 <= p3) || (p0 >= p1 && p1 >= p2 && p2 >= p3)) return [];
  return quadraticRoots(p3 - 3 * p2 + 3 * p1 - p0, 2 * (p2 - 2 * p1 + p0), p1 - p0);
};

/** A box round a segment and its handles: not tight, but quick, and the curve cannot leave it. */
export const hullBounds = (segment: Segment): Bounds => {
  const { from, to } = segment;
  let minX = Math.min(from.x, to.x);
  let maxX = Math.max(from.x, to.x);
  let minY = Math.min(from.y, to.y);
  let maxY = Math.max(from.y, to.y);
  if (segment.kind === 'cubic') {
    const { control1, control2 } = segment;
    minX = Math.min(minX, control1.x, control2.x);
    maxX = Math.max(maxX, control1.x, control2.x);
    minY = Math.min(minY, control1.y, control2.y);
    maxY = Math.max(maxY, control1.y, control2.y);
  }
  return { minX, minY, maxX, maxY };
};

/** The tightest upright box round a path. */
export const pathBounds = (path: Path): Bounds => path.map(segmentBounds).reduce(unionOfBounds);

export const unionOfBounds = (a: Bounds, b: Bounds): Bounds => ({
  minX: Math.min(a.minX, b.minX),
  minY: Math.min(a.minY, b.minY),
  maxX: Math.max(a.maxX, b.maxX),
  maxY: Math.max(a.maxY, b.maxY),
});

/** Whether two boxes come within a margin of each other. */
export const boundsMeet = (a: Bounds, b: Bounds, margin = 0): boolean =>
  a.minX <= b.maxX + margin && b.minX <= a.maxX + margin && a.minY <= b.maxY + margin && b.minY <= a.maxY + margin;

/** Distance between two boxes, 0 where they overlap; mm. */
export const boundsDistance = (a: Bounds, b: Bounds): number => {
  const dx = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const dy = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  return Math.sqrt(dx * dx + dy * dy);
};
