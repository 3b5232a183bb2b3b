import {
  type Bounds,
  boundsMeet,
  hullBounds,
  type Path,
  type Point,
  partOfSegment,
  type Segment,
  segmentPointAt,
  turningParameters,
} from '../geometry/index.ts';

/** Halvings after which a crossing is known as well as a number can say. */
const halvings = 50;

/** Parameters, in order, at which a segment crosses one border of a box. */
const crossingsOf = (segment: Segment, axis: 'x' | 'y', value: number): readonly number[] => {
  const ends = [0, ...turningParameters(segment, axis).toSorted((a, b) => a - b), 1];
  const beyond = (t: number): number => segmentPointAt(segment, t)[axis] - value;
  return ends.slice(1).flatMap((end, index) => {
    let [low, high] = [ends[index] as number, end];
    if (Math.sign(beyond(low)) === Math.sign(beyond(high))) return [];
    for (let i = 0; i < halvings; i += 1) {
      const middle = (low + high) / 2;
      if (Math.sign(beyond(middle)) === Math.sign(beyond(low))) low = middle;
      else high = middle;
    }
    return [(low + high) / 2];
  });
};

const inBox = (box: Bounds, p: Point): boolean =>
  p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY;

/** The stretches of a path within a box. Lines stay lines and cubics stay cubics; nothing is flattened. */
export const clipPath = (path: Path, box: Bounds): readonly Path[] => {
  const runs: Segment[][] = [];
  let current: Segment[] | null = null;
  for (const segment of path) {
    if (!boundsMeet(hullBounds(segment), box)) {
      current = null;
      continue;
    }
    const cuts = [
      0,
      ...[
        ...crossingsOf(segment, 'x', box.minX),
        ...crossingsOf(segment, 'x', box.maxX),
        ...crossingsOf(segment, 'y', box.minY),
        ...crossingsOf(segment, 'y', box.maxY),
      ].sort((a, b) => a - b),
      1,
    ];
    for (let i = 0; i + 1 < cuts.length; i += 1) {
      const [from, to] = [cuts[i] as number, cuts[i + 1] as number];
      if (to <= from) continue;
      if (!inBox(box, segmentPointAt(segment, (from + to) / 2))) {
        current = null;
        continue;
      }
      if (!current) {
        current = [];
        runs.push(current);
      }
      current.push(partOfSegment(segment, from, to));
    }
  }
  return runs;
};
