import { segmentLengths } from './along.ts';
import { segmentLength } from './arc-length.ts';
import { distance } from './points.ts';
import { quadraticRoots } from './roots.ts';
import { asCubic, partOfSegment, segmentCurvatureAt } from './segments.ts';
import { sideOf, straightThrough } from './straight.ts';
import { tolerance } from './tolerance.ts';
import type { Cubic, Path, Segment } from './types.ts';

/**
 * Lengths along a path at which it begins to bend the other way, mm. Turns at joints do not count
 * (`maximumTurn` tells those), nor does a bend that strays from its chord by no more than `least` mm.
 */
export const inflections = (path: Path, least: number = tolerance.same): number[] => {
  const bends: { sign: number; from: number; depth: number }[] = [];
  const sizes = segmentLengths(path);
  let before = 0;
  path.forEach((segment, i) => {
    const cuts = [0, ...inflectionParameters(segment), 1];
    for (let k = 1; k < cuts.length; k++) {
      const t0 = cuts[k - 1] as number;
      const t1 = cuts[k] as number;
      const sign = Math.sign(segmentCurvatureAt(segment, (t0 + t1) / 2));
      const depth = sign === 0 ? 0 : bulge(asCubic(partOfSegment(segment, t0, t1)));
      const last = bends.at(-1);
      if (sign === 0) continue;
      if (last?.sign === sign) last.depth = Math.max(last.depth, depth);
      else bends.push({ sign, from: before + segmentLength(segment, 0, t0), depth });
    }
    before += sizes[i] as number;
  });
  const seen = bends.filter(({ depth }) => depth > least);
  return seen.filter(({ sign }, i) => i > 0 && seen[i - 1]?.sign !== sign).map(({ from }) => from);
};

/** Parameters inside a segment where its curvature changes sign, rising: roots of B′ × B″, which is quadratic. */
export const inflectionParameters = (segment: Segment): number[] => {
  if (segment.kind === 'line') return [];
  const { from, control1, control2, to } = segment;
  const ax = to.x - 3 * control2.x + 3 * control1.x - from.x;
  const ay = to.y - 3 * control2.y + 3 * control1.y - from.y;
  const bx = control2.x - 2 * control1.x + from.x;
  const by = control2.y - 2 * control1.y + from.y;
  const cx = control1.x - from.x;
  const cy = control1.y - from.y;
  const roots = quadraticRoots(bx * ay - by * ax, cx * ay - cy * ax, cx * by - cy * bx);
  // A double root is a cusp, or a touch: the curve bends on the same way.
  return roots.filter((t) => {
    const step = 1e-6;
    const sides = [Math.max(0, t - step), Math.min(1, t + step)].map((s) => Math.sign(segmentCurvatureAt(segment, s)));
    return sides[0] !== sides[1];
  });
};

/** How far a curve that bends one way strays from its chord, at most. */
function bulge(curve: Cubic): number {
  const { from, control1, control2, to } = curve;
  if (from.x === to.x && from.y === to.y) return 0.75 * Math.max(distance(from, control1), distance(from, control2));
  const chord = straightThrough(from, to);
  return 0.75 * Math.max(Math.abs(sideOf(chord, control1)), Math.abs(sideOf(chord, control2)));
}
