import { fitCubic } from './fit-cubic.ts';
import type { Sample } from './fit-samples.ts';
import { samplesOfPoints, samplesOfSegment } from './fit-samples.ts';
import { nearerParameter, nearestParameter } from './nearest.ts';
import { segmentAt } from './paths.ts';
import { distance, dot, samePoint, turnBetween } from './points.ts';
import { segmentPointAt, segmentTangentAt } from './segments.ts';
import { footOn, straightThrough } from './straight.ts';
import type { Path, Point, Segment } from './types.ts';

/** Between samples a fit may stray a little more than at them. */
const atSamples = 0.9;

/** Kinks of less are drawn smooth: a cutter cannot see one degree. */
const cornerTurn = Math.PI / 180;

/**
 * Few lines and cubics that keep within `within` mm of a path, or of points in order. From the start on, as many
 * neighbours as one line or cubic can stand for become one (each fitted as Schneider, Graphics Gems, 1990); a segment
 * that cannot be merged stays as it is, so a path never gets more. Ends, and a path's corners of more than one
 * degree, stay exactly where they are. Throws on fewer than two different points.
 */
export const fitCubics = (given: Path | readonly Point[], within: number): Path => {
  if (!(within > 0)) throw new RangeError(`Not a tolerance: ${within}`);
  if (!isPath(given)) {
    const samples = samplesOfPoints(given);
    const steps = samples.slice(1).map((sample, i) => [samples[i] as Sample, sample]);
    return merge(steps, within, (step) => fitOne(steps[step] as Sample[], within) as Segment);
  }
  return runsBetweenCorners(given).flatMap((run) =>
    run.length === 1
      ? run
      : merge(
          run.map((segment) => samplesOfSegment(segment, within)),
          within,
          (step) => segmentAt(run, step),
        ),
  );
};

function isPath(given: Path | readonly Point[]): given is Path {
  const first = given[0];
  if (!first) throw new RangeError('Nothing to fit');
  return 'kind' in first;
}

function runsBetweenCorners(path: Path): Path[] {
  const runs: Segment[][] = [];
  path.forEach((segment, i) => {
    const before = i > 0 ? segmentAt(path, i - 1) : null;
    const turn = before ? turnBetween(segmentTangentAt(before, 1), segmentTangentAt(segment, 0)) : Math.PI;
    if (Math.abs(turn) > cornerTurn) runs.push([segment]);
    else runs.at(-1)?.push(segment);
  });
  return runs;
}

/** Steps of a run, each a list of samples that begins where the last ended, merged as far as one segment reaches. */
function merge(steps: readonly (readonly Sample[])[], within: number, own: (step: number) => Segment): Segment[] {
  const merged: Segment[] = [];
  let from = 0;
  while (from < steps.length) {
    const reached = furthest(steps, from, within);
    merged.push(reached.segment ?? own(from));
    from += reached.count;
  }
  return merged;
}

/** How many steps one segment can stand for: doubled until it cannot, then closed in by halving. */
function furthest(
  steps: readonly (readonly Sample[])[],
  from: number,
  within: number,
): { readonly count: number; readonly segment: Segment | null } {
  const left = steps.length - from;
  let count = 1;
  let segment: Segment | null = null;
  let tooMany = left + 1;
  while (tooMany - count > 1) {
    const next = tooMany > left ? Math.min(count * 2, left) : Math.floor((count + tooMany) / 2);
    const fitted = fitOne(samplesOf(steps.slice(from, from + next)), within);
    if (fitted) {
      count = next;
      segment = fitted;
      if (count === left) break;
    } else tooMany = next;
  }
  return { count, segment };
}

function samplesOf(steps: readonly (readonly Sample[])[]): Sample[] {
  const [first, ...others] = steps;
  return [...(first ?? []), ...others.flatMap((step) => step.slice(1))];
}

/** One line or cubic for all samples; null where none keeps near enough. Two samples are always fitted. */
function fitOne(samples: readonly Sample[], within: number): Segment | null {
  const first = samples[0] as Sample;
  const last = samples.at(-1) as Sample;
  if (samePoint(first.point, last.point)) return null;
  if (isStraight(samples)) return { kind: 'line', from: first.point, to: last.point };
  const at = shares(samples);
  const points = samples.map(({ point }) => point);
  const curve = fitCubic(points, at, first.along, last.along);
  const near = (point: Point, t: number): boolean => distance(point, segmentPointAt(curve, t)) <= atSamples * within;
  // The quick foot is good enough to pass a sample; only one that seems to fail is searched for.
  const keeps = points.every(
    (p, i) => near(p, nearerParameter(curve, p, at[i] as number, 3)) || near(p, nearestParameter(curve, p)),
  );
  return keeps ? curve : null;
}

function isStraight(samples: readonly Sample[]): boolean {
  const first = samples[0] as Sample;
  const last = samples.at(-1) as Sample;
  const chord = straightThrough(first.point, last.point);
  return samples.every(({ point, along }) => dot(along, chord.along) > 0 && samePoint(point, footOn(chord, point)));
}

/** Each sample's share of the way, by the chords between. */
function shares(samples: readonly Sample[]): number[] {
  const sums = [0];
  for (let i = 1; i < samples.length; i++) {
    sums.push((sums[i - 1] as number) + distance((samples[i - 1] as Sample).point, (samples[i] as Sample).point));
  }
  const whole = sums.at(-1) as number;
  return sums.map((sum) => sum / whole);
}
