import {
  add,
  distance,
  type Path,
  type Point,
  pathLength,
  rotate,
  scale,
  segmentLengths,
  segmentTangentAt,
  subtract,
  tolerance,
} from '../geometry/index.ts';

/** How far a place of a line is moved, mm, and how fast that changes along the line. */
export interface Shift {
  readonly by: Point;
  readonly rate: Point;
}

/** The shift at so many mm along a line. */
export type Field = (along: number) => Shift;

const nothing: Point = { x: 0, y: 0 };

/**
 * A shift that passes evenly from one place of a line to another and is the same before and after: cubic in the
 * length between (Hermite), with what it changes by at both ends; left out, it sets out and arrives at rest.
 */
export const easedField = (
  from: number,
  to: number,
  start: { readonly by: Point; readonly rate?: Point },
  end: { readonly by: Point; readonly rate?: Point },
): Field => {
  const span = to - from;
  const [m0, m1] = [scale(start.rate ?? nothing, span), scale(end.rate ?? nothing, span)];
  return (along) => {
    const u = Math.min(Math.max((along - from) / span, 0), 1);
    const [u2, u3] = [u * u, u * u * u];
    const sum = (a: number, b: number, c: number, d: number): Point => ({
      x: a * start.by.x + b * m0.x + c * end.by.x + d * m1.x,
      y: a * start.by.y + b * m0.y + c * end.by.y + d * m1.y,
    });
    const by = sum(2 * u3 - 3 * u2 + 1, u3 - 2 * u2 + u, 3 * u2 - 2 * u3, u3 - u2);
    const outside = along < from - tolerance.same || along > to + tolerance.same;
    const rate = outside
      ? nothing
      : scale(sum(6 * u2 - 6 * u, 3 * u2 - 4 * u + 1, 6 * u - 6 * u2, 3 * u2 - 2 * u), 1 / span);
    return { by, rate };
  };
};

/** What a line's rate has to be at a place where its direction is to turn by so many radians (positive clockwise as seen). */
export const turningRate = (tangent: Point, turn: number): Point => subtract(rotate(tangent, turn), tangent);

export const sumOfFields =
  (...fields: readonly Field[]): Field =>
  (along) =>
    fields.reduce<Shift>(
      (sum, field) => {
        const { by, rate } = field(along);
        return { by: add(sum.by, by), rate: add(sum.rate, rate) };
      },
      { by: nothing, rate: nothing },
    );

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
    const [a, b] = [field(s0), field(s1)];
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
    const leaving = add(segmentTangentAt(segment, 0), a.rate);
    const arriving = add(segmentTangentAt(segment, 1), b.rate);
    return {
      kind: 'cubic' as const,
      from,
      control1: add(from, scale(leaving, out)),
      control2: subtract(to, scale(arriving, back)),
      to,
    };
  });
};

/** Rounds of the secant method: lengths answer nearly evenly to what is drawn. */
const rounds = 12;

/** Where a value that grows or falls nearly evenly is nothing, by secants from two guesses; null where they do not settle. */
export const secant = (value: (x: number) => number, first: number, second: number, within: number): number | null => {
  let [a, b] = [first, second];
  let [atA, atB] = [value(a), value(b)];
  for (let i = 0; i < rounds; i += 1) {
    if (Math.abs(atB) <= within) return b;
    if (atA === atB) return null;
    const next = b - (atB * (b - a)) / (atB - atA);
    if (!Number.isFinite(next)) return null;
    [a, atA, b] = [b, atB, next];
    atB = value(b);
  }
  return Math.abs(atB) <= within ? b : null;
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
