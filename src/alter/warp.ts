import {
  add,
  distance,
  type Path,
  type Point,
  pathLength,
  scale,
  segmentLengths,
  segmentTangentAt,
  splitPathAtLengths,
  subtract,
  tolerance,
} from '../geometry/index.ts';
import type { Field, Shift } from './fields.ts';
import { secant } from './secant.ts';

const still = ({ by, rate }: Shift): boolean => by.x === 0 && by.y === 0 && rate.x === 0 && rate.y === 0;

/**
 * A line with every place of it shifted. Each cubic stays one: its ends move, its handles turn and stretch as the shift
 * turns and stretches the line there, so that joints stay smooth. A straight line whose shift is no straight one becomes a
 * curve.
 */
export const warped = (path: Path, field: Field): Path => {
  const lengths = segmentLengths(path);
  let along = 0;
  let last: Point | null = null;
  return path.map((segment, i) => {
    const [s0, s1] = [along, along + (lengths[i] as number)];
    along = s1;
    const [leavesAs, arrivesAs] = [segmentTangentAt(segment, 0), segmentTangentAt(segment, 1)];
    const a = field(s0, { point: segment.from, tangent: leavesAs });
    const b = field(s1, { point: segment.to, tangent: arrivesAs });
    if (still(a) && still(b)) {
      last = segment.to;
      return segment;
    }
    const from: Point = last ?? add(segment.from, a.by);
    const to = add(segment.to, b.by);
    last = to;
    const even = (rate: Point): boolean => distance(scale(rate, s1 - s0), subtract(b.by, a.by)) <= tolerance.walk;
    if (segment.kind === 'line' && even(a.rate) && even(b.rate)) return { ...segment, from, to };
    const third = (s1 - s0) / 3;
    const [out, back] =
      segment.kind === 'line'
        ? [third, third]
        : [distance(segment.from, segment.control1), distance(segment.control2, segment.to)];
    const leaving = add(leavesAs, a.rate);
    const arriving = add(arrivesAs, b.rate);
    return {
      kind: 'cubic' as const,
      from,
      control1: add(from, scale(leaving, out)),
      control2: subtract(to, scale(arriving, back)),
      to,
    };
  });
};

/** Nearer to a joint or an end than this, mm, no other joint is made. */
const leastStretch = 5;

/** A line with joints at these lengths along it, where it has none nearby: between joints a warp is one cubic. */
export const jointed = (path: Path, places: readonly number[]): Path => {
  let along = 0;
  const joints = [0, ...segmentLengths(path).map((mm) => (along += mm))];
  const wanted = places
    .filter((mm) => !joints.some((joint) => Math.abs(joint - mm) < leastStretch))
    .toSorted((a, b) => a - b);
  return wanted.length === 0 ? path : splitPathAtLengths(path, wanted).flat();
};

/** Handles made longer or shorter by more than this share would draw another shape. */
const mostFuller = 0.4;

/** A line whose handles between two places are so much longer: a fuller curve with the same joints and directions. */
const fuller = (path: Path, lengths: readonly number[], by: number, from: number, to: number): Path => {
  let along = 0;
  const inside = (at: number): boolean => at >= from - tolerance.walk && at <= to + tolerance.walk;
  return path.map((segment, i) => {
    const [s0, s1] = [along, along + (lengths[i] as number)];
    along = s1;
    if (segment.kind === 'line') return segment;
    const { control1, control2 } = segment;
    return {
      ...segment,
      control1: inside(s0) && s0 < to ? add(segment.from, scale(subtract(control1, segment.from), 1 + by)) : control1,
      control2: inside(s1) && s1 > from ? add(segment.to, scale(subtract(control2, segment.to), 1 + by)) : control2,
    };
  });
};

/**
 * A line warped and, by fuller or flatter curves between two of its places, drawn exactly so long. Where they would have to
 * be of another shape it is as long as the warp made it.
 */
export const warpedTo = (path: Path, field: Field, length: number, from: number, to: number): Path => {
  const lengths = segmentLengths(path);
  const bare = warped(path, field);
  const drawn = (by: number): Path => fuller(bare, lengths, by, from, to);
  const found = secant((by) => pathLength(drawn(by)) - length, 0, 0.02, tolerance.walk);
  return found === null || Math.abs(found) > mostFuller ? bare : drawn(found);
};
