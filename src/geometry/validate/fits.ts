import { endTangent, splitPathAtLength, splitPathAtLengths, startTangent } from '../along.ts';
import { pathDistance } from '../approach.ts';
import { blendCorner } from '../blend.ts';
import { fitCubics } from '../fit-cubics.ts';
import { inflections } from '../inflections.ts';
import { pathEnd, pathStart } from '../paths.ts';
import { distance, turnBetween } from '../points.ts';
import { smoothThrough } from '../smooth-through.ts';
import { tolerance } from '../tolerance.ts';
import { maximumTurn } from '../turns.ts';
import type { Path, Point } from '../types.ts';
import type { Verdict } from './verdict.ts';
import { Findings, isJoined } from './verdict.ts';

/** Directions that differ by no more than rounding, radians: a micrometre in a metre. */
const sameDirection = 1e-6;

/** `fitCubics` on a path of more segments than it needs: nowhere further from it than allowed, with the same ends, and fewer segments. */
export const validateFit = (path: Path, within: number): Verdict => {
  const findings = new Findings();
  const fitted = fitCubics(path, within);
  findings.require('not joined', isJoined(fitted));
  findings.require('no fewer segments than before', fitted.length < path.length);
  findings.require(
    'ends moved',
    distance(pathStart(path), pathStart(fitted)) + distance(pathEnd(path), pathEnd(fitted)) === 0,
  );
  findings.measure('straying', pathDistance(path, fitted), within);
  return findings.verdict();
};

/** `smoothThrough`: passes every point, without kinks. */
export const validateSmooth = (points: readonly Point[]): Verdict => {
  const findings = new Findings();
  const path = smoothThrough(points);
  findings.require('not joined', isJoined(path));
  points.forEach((p, i) => {
    const passed = i === 0 ? pathStart(path) : path[i - 1]?.to;
    findings.require(`point ${i} not passed`, passed !== undefined && distance(p, passed) === 0);
  });
  findings.measure('kink', maximumTurn(path).angle, sameDirection);
  return findings.verdict();
};

/** `smoothThrough` points that bend one way: it bends one way too. A bend within a drawn line's tolerance cannot be seen. */
export const validateOneWay = (points: readonly Point[]): Verdict => {
  const findings = new Findings();
  const bends = inflections(smoothThrough(points), tolerance.flatten);
  findings.require(`inflections at ${bends}`, bends.length === 0);
  return findings.verdict();
};

/** `blendCorner` well inside a path: what lies outside the reach is as it was, and the new curve takes up its directions. */
export const validateBlend = (path: Path, atLength: number, before: number, after: number): Verdict => {
  const findings = new Findings();
  const blended = blendCorner(path, atLength, before, after);
  findings.require('not joined', isJoined(blended));
  const head = splitPathAtLength(path, atLength - before)[0] as Path;
  const tail = splitPathAtLength(path, atLength + after)[1] as Path;
  findings.require('the line before changed', JSON.stringify(blended.slice(0, head.length)) === JSON.stringify(head));
  findings.require('the line after changed', JSON.stringify(blended.slice(-tail.length)) === JSON.stringify(tail));
  const middle = blended.slice(head.length, blended.length - tail.length);
  findings.require('not one curve', middle.length === 1);
  findings.measure('kink before', turnBetween(endTangent(head), startTangent(middle)), sameDirection);
  findings.measure('kink after', turnBetween(endTangent(middle), startTangent(tail)), sameDirection);
  const replaced = splitPathAtLengths(path, [atLength - before, atLength + after])[1] as Path;
  findings.require('far from the line it replaces', pathDistance(middle, replaced) <= (before + after) / 4);
  return findings.verdict();
};
