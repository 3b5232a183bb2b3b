import { pathPointAtLength, splitPathAtLength } from '../along.ts';
import { pathEnd, pathLength, pathStart } from '../paths.ts';
import { distance } from '../points.ts';
import { tolerance } from '../tolerance.ts';
import type { Path } from '../types.ts';
import { lengthByChords } from './length.ts';
import type { Verdict } from './verdict.ts';
import { distanceToChain, Findings, isJoined, pointsAlong } from './verdict.ts';

/** `splitPathAtLength` and `pathPointAtLength` at one length: how long the parts are, that they meet exactly, and that they lie on the path. */
export const validateSplit = (path: Path, mm: number): Verdict => {
  const findings = new Findings();
  const whole = pathLength(path);
  const [before, after] = splitPathAtLength(path, mm);
  findings.require('nothing before a split inside', before !== null || mm <= tolerance.same);
  findings.require('nothing after a split inside', after !== null || mm >= whole - 2 * tolerance.same);
  findings.measure('length before', (before ? lengthByChords(before) : 0) - mm, tolerance.length);
  findings.measure('length after', (after ? lengthByChords(after) : 0) - (whole - mm), tolerance.length);
  if (before && after) {
    const at = pathEnd(before);
    findings.require('the parts do not share the point', distance(at, pathStart(after)) === 0);
    findings.require('the point is another than at that length', distance(at, pathPointAtLength(path, mm)) === 0);
    findings.require(
      'the ends moved',
      distance(pathStart(before), pathStart(path)) + distance(pathEnd(after), pathEnd(path)) === 0,
    );
  }
  const chain = pointsAlong(path, 400);
  const sag = whole / 400;
  for (const part of [before, after]) {
    if (!part) continue;
    findings.require('a part is not joined', isJoined(part));
    for (const p of pointsAlong(part, 7))
      findings.require(`(${p.x}, ${p.y}) is off the path`, distanceToChain(chain, p) <= sag);
  }
  return findings.verdict();
};
