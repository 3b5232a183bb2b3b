import { outlineArea } from '../area.ts';
import type { Outline } from '../types.ts';
import type { Verdict } from './verdict.ts';
import { chordSum, Findings, pointsAlong } from './verdict.ts';

/** Shoelace sum of a fine polygon. */
const areaByPolygon = (outline: Outline, perSegment: number): number => {
  const points = pointsAlong(outline, perSegment);
  const origin = points[0] ?? { x: 0, y: 0 };
  return points.reduce((sum, p, i) => {
    const next = points[(i + 1) % points.length] ?? origin;
    return sum + ((p.x - origin.x) * (next.y - origin.y) - (p.y - origin.y) * (next.x - origin.x)) / 2;
  }, 0);
};

/** `outlineArea` against a polygon, extrapolated; the error is given as mm of outline moved evenly. */
export const validateArea = (outline: Outline): Verdict => {
  const findings = new Findings();
  const coarse = areaByPolygon(outline, 512);
  const fine = areaByPolygon(outline, 1024);
  const round = chordSum(pointsAlong(outline, 64));
  findings.measure('area', (outlineArea(outline) - (fine + (fine - coarse) / 3)) / round, 1e-9 * round);
  return findings.verdict();
};
