import { pathPointAtLength } from '../along.ts';
import { nearestOnPath } from '../nearest.ts';
import { distance } from '../points.ts';
import { tolerance } from '../tolerance.ts';
import type { Path, Point } from '../types.ts';
import type { Verdict } from './verdict.ts';
import { Findings, pointsAlong } from './verdict.ts';

/** `nearestOnPath`: no point looked at is nearer, and what it says of its own point is so. */
export const validateNearest = (path: Path, p: Point): Verdict => {
  const findings = new Findings();
  const found = nearestOnPath(path, p);
  const sampled = Math.min(...pointsAlong(path, 200).map((q) => distance(p, q)));
  findings.measure('further than a point looked at', Math.max(0, found.distance - sampled), tolerance.same);
  findings.measure('distance', found.distance - distance(p, found.point), tolerance.same);
  findings.measure('place', distance(found.point, pathPointAtLength(path, found.atLength)), tolerance.length);
  return findings.verdict();
};
