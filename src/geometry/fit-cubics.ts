import { fitCubic } from './fit-cubic.ts';
import { stepsWithin } from './flatten.ts';
import { nearerParameter, nearestParameter } from './nearest.ts';
import { segmentAt } from './paths.ts';
import { add, distance, normalize, samePoint, scale, subtract, turnBetween } from './points.ts';
import { segmentPointAt, segmentTangentAt } from './segments.ts';
import { footOn, straightThrough } from './straight.ts';
import type { Path, Point, Segment } from './types.ts';

/** A point passed, with the direction of travel there. */
interface Sample {
  readonly point: Point;
  readonly along: Point;
}

/** Samples along each segment. */
const looks = 16;

/** Between samples a fit may stray a little more than at them. */
const atSamples = 0.9;

/** Kinks of less are drawn smooth: a cutter cannot see one degree. */
const cornerTurn = Math.PI / 180;

/**
 * As few lines and cubics as keep within `within` mm of a path, or of points in order (Schneider, Graphics Gems, 1990).
 * Ends, and a path's corners of more than one degree, stay exactly where they are; between them the new path is
 * smooth. Throws on fewer than two different points.
 */
export const fitCubics = (given: Path | readonly Point[], within: number): Path => {
  if (!(within > 0)) throw new RangeError(`Not a tolerance: ${within}`);
  if (!isPath(given)) return fitRun(samplesOfPoints(given), within);
  return runsBetweenCorners(given).flatMap((run) => {
    const fitted = fitRun(samplesOfRun(run, within), within);
    return fitted.length < run.length ? fitted : run;
  });
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

function samplesOfRun(run: Path, within: number): Sample[] {
  const first = segmentAt(run, 0);
  const samples: Sample[] = [{ point: first.from, along: segmentTangentAt(first, 0) }];
  for (const segment of run) {
    const count = segment.kind === 'line' ? looks : Math.max(looks, stepsWithin(segment, within));
    for (let i = 1; i <= count; i++) {
      samples.push({ point: segmentPointAt(segment, i / count), along: segmentTangentAt(segment, i / count) });
    }
  }
  return samples;
}

/** Directions of points by the parabola through each and its neighbours (Bessel tangents). */
function samplesOfPoints(given: readonly Point[]): Sample[] {
  const points = given.filter((p, i) => i === 0 || !samePoint(p, given[i - 1] as Point));
  if (points.length < 2) throw new RangeError(`A curve needs two different points: ${JSON.stringify(given)}`);
  const slope = (i: number): Point => {
    const from = points[i] as Point;
    const to = points[i + 1] as Point;
    return scale(subtract(to, from), 1 / distance(from, to));
  };
  const last = points.length - 1;
  const inner = (i: number): Point => {
    const before = distance(points[i - 1] as Point, points[i] as Point);
    const after = distance(points[i] as Point, points[i + 1] as Point);
    return add(scale(slope(i - 1), after / (before + after)), scale(slope(i), before / (before + after)));
  };
  return points.map((point, i) => {
    if (last === 1) return { point, along: slope(0) };
    const along =
      i === 0
        ? subtract(scale(slope(0), 2), inner(1))
        : i === last
          ? subtract(scale(slope(last - 1), 2), inner(last - 1))
          : inner(i);
    // Where the points double back the parabola has no direction: take the way onward.
    return { point, along: Math.hypot(along.x, along.y) > 0 ? normalize(along) : slope(Math.min(i, last - 1)) };
  });
}

function fitRun(samples: readonly Sample[], within: number): Segment[] {
  const first = samples[0] as Sample;
  const last = samples.at(-1) as Sample;
  if (isStraight(samples)) return [{ kind: 'line', from: first.point, to: last.point }];
  const at = shares(samples);
  const points = samples.map(({ point }) => point);
  const curve = samePoint(first.point, last.point) ? null : fitCubic(points, at, first.along, last.along);
  let worst = Infinity;
  let worstAt = Math.floor(samples.length / 2);
  if (curve) {
    worst = 0;
    for (let i = 1; i < samples.length - 1; i++) {
      const { point } = samples[i] as Sample;
      // The quick foot is near enough to pass a sample; only one that seems to fail is searched for.
      const quick = nearerParameter(curve, point, at[i] as number, 3);
      const near =
        distance(point, segmentPointAt(curve, quick)) <= atSamples * within ? quick : nearestParameter(curve, point);
      const off = distance(point, segmentPointAt(curve, near));
      if (off > worst) {
        worst = off;
        worstAt = i;
      }
    }
    if (worst <= atSamples * within || samples.length === 2) return [curve];
  }
  return [...fitRun(samples.slice(0, worstAt + 1), within), ...fitRun(samples.slice(worstAt), within)];
}

function isStraight(samples: readonly Sample[]): boolean {
  const first = samples[0] as Sample;
  const last = samples.at(-1) as Sample;
  if (samePoint(first.point, last.point)) return false;
  const chord = straightThrough(first.point, last.point);
  return samples.every(({ point, along }) => {
    const ahead = along.x * chord.along.x + along.y * chord.along.y > 0;
    return ahead && samePoint(point, footOn(chord, point));
  });
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
