import type { Problem } from '../units/index.ts';
import { segmentLength } from './arc-length.ts';
import { outlineArea } from './area.ts';
import { pathEnd, pathStart, segmentAt } from './paths.ts';
import { distance } from './points.ts';
import { selfIntersections } from './self-intersect.ts';
import { tolerance } from './tolerance.ts';
import type { Outline, Point, Segment } from './types.ts';

/**
 * What keeps a run of segments from being an outline: closed, joined exactly, without specks, simple, and clockwise as
 * seen. None when it is one. Later faults are not sought where an earlier one makes them meaningless.
 */
export const validateOutline = (outline: Outline): Problem[] => {
  if (outline.length === 0) return [{ code: 'geometry.outline-empty' }];
  if (!outline.every((segment) => pointsOf(segment).every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)))) {
    return [{ code: 'geometry.outline-not-finite' }];
  }
  const problems: Problem[] = [];
  outline.forEach((segment, i) => {
    const gap = i > 0 ? distance(segmentAt(outline, i - 1).to, segment.from) : 0;
    if (gap > 0) problems.push({ code: 'geometry.outline-broken', values: { ...at(segment.from), gap: { mm: gap } } });
    if (segmentLength(segment) <= tolerance.same) {
      problems.push({ code: 'geometry.outline-speck', values: at(segment.from) });
    }
  });
  const open = distance(pathEnd(outline), pathStart(outline));
  if (open > 0)
    problems.push({ code: 'geometry.outline-open', values: { ...at(pathEnd(outline)), gap: { mm: open } } });
  if (problems.length > 0) return problems;
  for (const { point } of selfIntersections(outline)) {
    problems.push({ code: 'geometry.outline-crosses-itself', values: at(point) });
  }
  const area = outlineArea(outline);
  if (Math.abs(area) <= tolerance.same) problems.push({ code: 'geometry.outline-flat' });
  else if (area < 0) problems.push({ code: 'geometry.outline-anticlockwise' });
  return problems;
};

function pointsOf(segment: Segment): Point[] {
  return segment.kind === 'line'
    ? [segment.from, segment.to]
    : [segment.from, segment.control1, segment.control2, segment.to];
}

function at(p: Point): { readonly x: { readonly mm: number }; readonly y: { readonly mm: number } } {
  return { x: { mm: p.x }, y: { mm: p.y } };
}
