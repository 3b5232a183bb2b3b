import { withEnd, withStart } from './ends.ts';
import type { OffsetStretch } from './offset-segment.ts';
import { add, cross, distance, midpoint, scale, turnBetween } from './points.ts';
import { segmentTangentAt } from './segments.ts';
import { tolerance } from './tolerance.ts';
import type { Point, Segment } from './types.ts';

/** The end of one stretch, what goes between, and the start of the next, meeting exactly. */
export interface OffsetJoint {
  readonly end: Segment;
  readonly between: readonly OffsetStretch[];
  readonly start: Segment;
}

/** Joins the offsets of two neighbouring segments, `before` and `after`. */
export const offsetJoint = (end: Segment, start: Segment, before: Segment, after: Segment, by: number): OffsetJoint => {
  const gap = distance(end.to, start.from);
  if (gap === 0) return { end, between: [], start };
  if (gap <= tolerance.offset) {
    // Each side moves by half the gap at most, which is what the fit leaves of the tolerance.
    const meeting = midpoint(end.to, start.from);
    return { end: withEnd(end, meeting), between: [], start: withStart(start, meeting) };
  }
  const arriving = segmentTangentAt(before, 1);
  const leaving = segmentTangentAt(after, 0);
  if (cross(arriving, leaving) * by > 0) {
    const points = outsideCorner(end.to, arriving, start.from, leaving, by);
    return { end, between: stretches(points, false), start };
  }
  // On the inside both sides overlap: a stretch that runs back, to be trimmed with the loop it closes.
  return { end, between: stretches([end.to, start.from], true), start };
};

/** Straight on along both tangents to where they meet; beyond a right angle no further than the distance, then straight across. */
function outsideCorner(end: Point, arriving: Point, start: Point, leaving: Point, by: number): Point[] {
  const turn = Math.abs(turnBetween(arriving, leaving));
  if (turn <= Math.PI / 2) return [end, add(end, scale(arriving, Math.abs(by) * Math.tan(turn / 2))), start];
  return [end, add(end, scale(arriving, Math.abs(by))), add(start, scale(leaving, -Math.abs(by))), start];
}

function stretches(points: readonly Point[], inverted: boolean): OffsetStretch[] {
  return points.slice(1).map((to, i) => ({ segment: { kind: 'line', from: points[i] as Point, to }, inverted }));
}
