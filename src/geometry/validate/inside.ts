import { insideOutline } from '../inside.ts';
import type { Outline, Point } from '../types.ts';
import type { Verdict } from './verdict.ts';
import { distanceToChain, Findings, pointsAlong } from './verdict.ts';

/** `insideOutline` against the sum of angles under which the outline is seen; points very near the line are not judged. */
export const validateInside = (outline: Outline, points: readonly Point[]): Verdict => {
  const findings = new Findings();
  const chain = pointsAlong(outline, 100);
  for (const p of points) {
    if (distanceToChain(chain, p) < 0.5) continue;
    let angle = 0;
    for (let i = 1; i < chain.length; i++) {
      const a = chain[i - 1] as Point;
      const b = chain[i] as Point;
      const ax = a.x - p.x;
      const ay = a.y - p.y;
      const bx = b.x - p.x;
      const by = b.y - p.y;
      angle += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }
    const inside = Math.round(angle / (2 * Math.PI)) !== 0;
    findings.require(`(${p.x}, ${p.y}) is ${inside ? 'inside' : 'outside'}`, insideOutline(outline, p) === inside);
  }
  return findings.verdict();
};
