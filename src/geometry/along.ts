import { parameterAtLength, segmentLength } from './arc-length.ts';
import { segmentAt } from './paths.ts';
import { partOfSegment, segmentPointAt, segmentTangentAt } from './segments.ts';
import { tolerance } from './tolerance.ts';
import type { Path, Point, Segment } from './types.ts';

/** A place on a path: in which segment, and at which of its parameters. */
export interface PlaceOnPath {
  readonly index: number;
  readonly t: number;
}

/**
 * The place at `mm` from the start. Places within `tolerance.same` of a joint are that joint, given as
 * the start of the segment after it (the end of the last segment at the path's end).
 * Throws outside 0 to the path's length by more than `tolerance.length`.
 */
export const placeAtLength = (path: Path, mm: number): PlaceOnPath => {
  if (!(mm >= -tolerance.length)) throw new RangeError(`No point at ${mm} mm of a path`);
  let rest = mm;
  for (let index = 0; index < path.length; index++) {
    if (rest <= tolerance.same) return { index, t: 0 };
    const segment = segmentAt(path, index);
    const size = segmentLength(segment);
    if (rest < size - tolerance.same) return { index, t: parameterAtLength(segment, rest, size) };
    rest -= size;
  }
  if (rest > tolerance.length) throw new RangeError(`No point at ${mm} mm of a path ${mm - rest} mm long`);
  return { index: path.length - 1, t: 1 };
};

/** Length of each segment in order, mm. */
export const segmentLengths = (path: Path): number[] => path.map((segment) => segmentLength(segment));

/** Length from the start of the path to a place on it, mm. */
export const lengthAtPlace = (path: Path, place: PlaceOnPath): number => {
  let sum = 0;
  for (let index = 0; index < place.index; index++) sum += segmentLength(segmentAt(path, index));
  return place.t === 0 ? sum : sum + segmentLength(segmentAt(path, place.index), 0, place.t);
};

export const pathPointAtLength = (path: Path, mm: number): Point => {
  const { index, t } = placeAtLength(path, mm);
  return segmentPointAt(segmentAt(path, index), t);
};

/** Unit direction of travel at a length; at a joint that of the segment `after` it, unless `before` is asked for. */
export const pathTangentAtLength = (path: Path, mm: number, side: 'before' | 'after' = 'after'): Point => {
  const { index, t } = placeAtLength(path, mm);
  return side === 'before' && t === 0 && index > 0
    ? segmentTangentAt(segmentAt(path, index - 1), 1)
    : segmentTangentAt(segmentAt(path, index), t);
};

/** Direction in which the path sets out. */
export const startTangent = (path: Path): Point => segmentTangentAt(segmentAt(path, 0), 0);

/** Direction in which the path arrives. */
export const endTangent = (path: Path): Point => segmentTangentAt(segmentAt(path, -1), 1);

/**
 * What lies before and after a length; null for the side on which nothing lies (at either end of the path).
 * Both share the point of the split exactly. Throws outside the path.
 */
export const splitPathAtLength = (path: Path, mm: number): readonly [Path | null, Path | null] => {
  const { index, t } = placeAtLength(path, mm);
  if (t === 1) return [path, null];
  if (t === 0) return index === 0 ? [null, path] : [path.slice(0, index), path.slice(index)];
  const segment = segmentAt(path, index);
  return [
    [...path.slice(0, index), partOfSegment(segment, 0, t)],
    [partOfSegment(segment, t, 1), ...path.slice(index + 1)],
  ];
};

/**
 * The path cut at several lengths, in rising order: always one part more than there are cuts. Parts share
 * their ends exactly. Throws where two cuts, or a cut and an end, lie within `tolerance.same`.
 */
export const splitPathAtLengths = (path: Path, lengths: readonly number[]): readonly Path[] => {
  const places = lengths.map((mm) => placeAtLength(path, mm));
  const start: PlaceOnPath = { index: 0, t: 0 };
  const end: PlaceOnPath = { index: path.length - 1, t: 1 };
  const bounds = [start, ...places, end];
  return bounds.slice(1).map((to, i) => between(path, bounds[i] as PlaceOnPath, to));
};

/**
 * The part from one length to another. Parts that follow one another share their ends exactly. On a closed
 * path `fromMm` may lie beyond `toMm`: the part then runs over the start. Throws where nothing lies between.
 */
export const subPath = (path: Path, fromMm: number, toMm: number): Path => {
  const from = placeAtLength(path, fromMm);
  const to = placeAtLength(path, toMm);
  if (fromMm <= toMm) return between(path, from, to);
  const first = segmentAt(path, 0).from;
  const last = segmentAt(path, -1).to;
  if (first.x !== last.x || first.y !== last.y) {
    throw new RangeError(`Only a closed path runs from ${fromMm} mm over its start to ${toMm} mm`);
  }
  const before = from.t === 1 ? [] : between(path, from, { index: path.length - 1, t: 1 });
  const after = to.index === 0 && to.t === 0 ? [] : between(path, { index: 0, t: 0 }, to);
  return [...before, ...after];
};

/** The part between two places, the first before the second. */
export function between(path: Path, from: PlaceOnPath, to: PlaceOnPath): Path {
  const part: Segment[] = [];
  for (let index = from.index; index <= to.index; index++) {
    const t0 = index === from.index ? from.t : 0;
    const t1 = index === to.index ? to.t : 1;
    if (t0 < t1) part.push(partOfSegment(segmentAt(path, index), t0, t1));
  }
  if (part.length === 0) throw new RangeError(`Nothing between ${JSON.stringify(from)} and ${JSON.stringify(to)}`);
  return part;
}
