import {
  add,
  fitCubics,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathTangentAtLength,
  segmentLengths,
  smoothThrough,
  splitPathAtLength,
  tolerance,
} from '../../geometry/index.ts';

/** How far out a side is moved at a height, mm. */
export interface Knot {
  readonly y: number;
  readonly shift: number;
}

/**
 * How fast the shift grows at a knot: not at all at either end or where it turns back, else the harmonic mean of what
 * it does on both sides, which keeps the line from overshooting (Fritsch and Butland 1984).
 */
const slopeAt = (knots: readonly Knot[], i: number): number => {
  const [before, here, after] = [knots[i - 1], knots[i], knots[i + 1]];
  if (!before || !here || !after) return 0;
  const above = (here.shift - before.shift) / (here.y - before.y);
  const below = (after.shift - here.shift) / (after.y - here.y);
  return above * below > 0 ? (2 * above * below) / (above + below) : 0;
};

/** The shift at a height: that of the first knot above it, of the last below it, and a smooth line between. */
export const shiftAt = (knots: readonly Knot[], y: number): number => {
  for (const [i, to] of knots.entries()) {
    if (y > to.y) continue;
    const from = knots[i - 1];
    if (!from) return to.shift;
    const span = to.y - from.y;
    const t = (y - from.y) / span;
    const rest = 1 - t;
    const leaving = slopeAt(knots, i - 1) * span;
    const arriving = slopeAt(knots, i) * span;
    return (
      from.shift * (1 + 2 * t) * rest * rest +
      leaving * t * rest * rest +
      to.shift * t * t * (3 - 2 * t) -
      arriving * t * t * rest
    );
  }
  return knots.at(-1)?.shift ?? 0;
};

/** Points drawn through along a side, about one each so many mm. */
const spacing = 40;

/** Where along a path that runs up or down throughout it passes a height, mm from its start. */
const alongTo = (path: Path, y: number): number => {
  const down = pathEnd(path).y > pathStart(path).y;
  let [low, high] = [0, pathLength(path)];
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if (pathPointAtLength(path, middle).y < y === down) low = middle;
    else high = middle;
  }
  const found = (low + high) / 2;
  // A level mostly lies at a joint of the line: divided a hair beside it, it would leave a stretch of no length.
  let passed = 0;
  for (const mm of segmentLengths(path)) {
    if (Math.abs(passed - found) <= tolerance.walk) return passed;
    passed += mm;
  }
  return found;
};

/** The path drawn smoothly through some of its places, each moved out by its height's shift. */
const drawnThrough = (path: Path, lengths: readonly number[], knots: readonly Knot[], outward: number): Path => {
  const points = lengths.map((mm): Point => {
    const p = pathPointAtLength(path, mm);
    return add(p, { x: outward * shiftAt(knots, p.y), y: 0 });
  });
  const turned = (mm: number, side: 'before' | 'after'): Point => {
    const tangent = pathTangentAtLength(path, mm, side);
    const p = pathPointAtLength(path, mm);
    // A shift that changes down the side turns its line: by the chain rule its slope is added.
    const slope = (shiftAt(knots, p.y + 0.5) - shiftAt(knots, p.y - 0.5)) * outward;
    return { x: tangent.x + slope * tangent.y, y: tangent.y };
  };
  const ends = { startTangent: turned(0, 'after'), endTangent: turned(pathLength(path), 'before') };
  // Few curves: a list of many alterations must not leave a line of many joints.
  return fitCubics(smoothThrough(points, ends), tolerance.holds);
};

/** Points a curve such as an armhole is drawn through anew, one about each so many mm. */
const closely = 12;

/** A curve of any course with every point of it moved out by its height's shift. */
export const warpedByHeight = (path: Path, knots: readonly Knot[], outward: number): Path => {
  const length = pathLength(path);
  const count = Math.max(3, Math.ceil(length / closely));
  return drawnThrough(
    path,
    Array.from({ length: count + 1 }, (_, i) => (length * i) / count),
    knots,
    outward,
  );
};

const moved = (path: Path, knots: readonly Knot[], outward: number): Path => {
  const length = pathLength(path);
  const count = Math.max(2, Math.round(length / spacing));
  const even = Array.from({ length: count + 1 }, (_, i) => (length * i) / count);
  const at = knots.map(({ y }) => alongTo(path, y)).filter((mm) => mm > spacing / 2 && mm < length - spacing / 2);
  const lengths = [...even.filter((mm) => !at.some((one) => Math.abs(one - mm) < spacing / 2)), ...at];
  return drawnThrough(
    path,
    lengths.toSorted((a, b) => a - b),
    knots,
    outward,
  );
};

const translated = (path: Path, x: number): Path =>
  path.map((segment) => {
    const by = (p: Point): Point => ({ x: p.x + x, y: p.y });
    return segment.kind === 'line'
      ? { ...segment, from: by(segment.from), to: by(segment.to) }
      : {
          ...segment,
          from: by(segment.from),
          control1: by(segment.control1),
          control2: by(segment.control2),
          to: by(segment.to),
        };
  });

/** Less than this, mm, of a stretch is not cut off for itself. */
const leastStretch = 5;

/**
 * A side drawn with every point of it moved out by its height's shift. Above the first knot and below the last, where all
 * of it moves alike, its line stays the very line it was.
 */
export const shiftedPath = (path: Path, knots: readonly Knot[], outward: number): Path => {
  const [first, last] = [knots[0] as Knot, knots.at(-1) as Knot];
  const down = pathEnd(path).y > pathStart(path).y;
  const length = pathLength(path);
  const bounds = [first.y, last.y].map((y) => alongTo(path, y)).sort((a, b) => a - b) as [number, number];
  const [from, to] = bounds.map((mm) => (mm < leastStretch ? 0 : mm > length - leastStretch ? length : mm)) as [
    number,
    number,
  ];
  const [shiftBefore, shiftAfter] = down ? [first.shift, last.shift] : [last.shift, first.shift];
  if (to <= from) return translated(path, outward * (from === 0 ? shiftAfter : shiftBefore));
  const [head, rest] = from > 0 ? splitPathAtLength(path, from) : [null, path];
  const [middle, tail] = to < length ? splitPathAtLength(rest as Path, to - from) : [rest, null];
  return [
    ...(head ? translated(head, outward * shiftBefore) : []),
    ...moved(middle as Path, knots, outward),
    ...(tail ? translated(tail, outward * shiftAfter) : []),
  ].map((segment, i, all) => (i > 0 ? { ...segment, from: (all[i - 1] as Path[number]).to } : segment));
};
