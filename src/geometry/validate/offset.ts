import { endTangent, startTangent } from '../along.ts';
import { nearestPlace } from '../nearest.ts';
import { offsetPath } from '../offset.ts';
import { offsetPointAt, speedFactor } from '../offset-segment.ts';
import { pathEnd, pathStart } from '../paths.ts';
import { distance } from '../points.ts';
import { selfIntersections } from '../self-intersect.ts';
import { tolerance } from '../tolerance.ts';
import type { Path, Point } from '../types.ts';
import type { Verdict } from './verdict.ts';
import { chordSum, Findings, isJoined, pointsAlong } from './verdict.ts';

/**
 * `offsetPath` on a smooth path: its points stand at the distance, every point of the true offset that nothing
 * trims is near it, it is joined and simple, and ends that nothing trims are kept with their directions. Distances are
 * by `nearestPlace`, which has a validator of its own.
 */
export const validateOffset = (path: Path, by: number): Verdict => {
  const findings = new Findings();
  const offset = offsetPath(path, by);
  findings.require('not joined', isJoined(offset));
  findings.require('crosses itself', selfIntersections(offset).length === 0);
  for (const p of pointsAlong(offset, 24)) {
    findings.measure('distance from the path', nearestPlace(path, p).distance - Math.abs(by), tolerance.offset);
  }
  const free = (p: Point): boolean => nearestPlace(path, p).distance >= Math.abs(by) - tolerance.same;
  const whole = chordSum(pointsAlong(offset, 24));
  for (const run of freeRuns(path, by, free)) {
    const misses = run.map((p) => nearestPlace(offset, p).distance);
    // A part that trimming leaves by itself is given up for the longer one.
    if (misses.every((miss) => miss > tolerance.offset))
      findings.require('the longest part missed', chordSum(run) < whole);
    else for (const miss of misses) findings.measure('true offset missed', miss, tolerance.offset);
  }
  const first = path[0];
  const last = path.at(-1);
  if (first && last) {
    const ends = [
      [offsetPointAt(first, 0, by), pathStart(offset), startTangent(path), startTangent(offset)],
      [offsetPointAt(last, 1, by), pathEnd(offset), endTangent(path), endTangent(offset)],
    ] as const;
    for (const [wanted, got, direction, directionGot] of ends) {
      if (!free(wanted) || nearestPlace(offset, wanted).distance > tolerance.offset) continue;
      findings.require(`an end moved ${distance(wanted, got)}`, distance(wanted, got) <= tolerance.same);
      findings.require('an end turned', distance(direction, directionGot) <= tolerance.same);
    }
  }
  return findings.verdict();
};

/** Points of the true offset that nothing trims, in runs that follow one another. */
function freeRuns(path: Path, by: number, free: (p: Point) => boolean): Point[][] {
  const runs: Point[][] = [];
  let run: Point[] | null = null;
  for (const segment of path) {
    for (let i = 0; i <= 24; i++) {
      const p = offsetPointAt(segment, i / 24, by);
      // Where the curve is tighter than the distance the offset runs backwards, which trimming takes away.
      const backwards = segment.kind === 'cubic' && speedFactor(segment, i / 24, by) < 0;
      if (backwards || !free(p)) {
        run = null;
        continue;
      }
      if (!run) {
        run = [];
        runs.push(run);
      }
      run.push(p);
    }
  }
  return runs;
}
