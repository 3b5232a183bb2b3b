import { pathBounds } from '../bounds.ts';
import { flattenPath } from '../flatten.ts';
import { tolerance } from '../tolerance.ts';
import type { Path } from '../types.ts';
import type { Verdict } from './verdict.ts';
import { distanceToChain, Findings, pointsAlong } from './verdict.ts';

/** `flattenPath`: no point of the path is further from the lines than allowed, and the lines' corners lie on the path. */
export const validateFlattening = (path: Path, within: number): Verdict => {
  const findings = new Findings();
  const flat = flattenPath(path, within);
  for (const p of pointsAlong(path, 50)) findings.measure('sag', distanceToChain(flat, p), within);
  const fine = pointsAlong(path, 2000);
  for (const p of flat) findings.require('a corner off the path', distanceToChain(fine, p) <= within / 2);
  return findings.verdict();
};

/** `pathBounds`: nothing looked at lies outside, and each side is reached. */
export const validateBounds = (path: Path): Verdict => {
  const findings = new Findings();
  const box = pathBounds(path);
  const points = pointsAlong(path, 2000);
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const size = box.maxX - box.minX + box.maxY - box.minY;
  for (const [seen, side, sign] of [
    [Math.min(...xs), box.minX, 1],
    [Math.min(...ys), box.minY, 1],
    [Math.max(...xs), box.maxX, -1],
    [Math.max(...ys), box.maxY, -1],
  ] as const) {
    findings.require(`${seen} lies outside ${side}`, (seen - side) * sign >= -tolerance.same);
    findings.measure('side not reached', seen - side, size / 1e4);
  }
  return findings.verdict();
};
