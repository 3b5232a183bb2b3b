import { type Path, type Point, pathLength, scale } from '../geometry/index.ts';
import { type Course, easedField } from './fields.ts';

/** How far, mm, a place is shifted whose measure (a height, a way along a chord) is `at`. */
export interface Knot {
  readonly at: number;
  readonly shift: number;
}

/**
 * How fast the shift grows at a knot: not at all at either end or where it turns back, else the harmonic mean of what
 * it does on both sides, which keeps the line from overshooting (Fritsch and Butland 1984).
 */
const slopeAt = (knots: readonly Knot[], i: number): number => {
  const [before, here, after] = [knots[i - 1], knots[i], knots[i + 1]];
  if (!before || !here || !after) return 0;
  const above = (here.shift - before.shift) / (here.at - before.at);
  const below = (after.shift - here.shift) / (after.at - here.at);
  return above * below > 0 ? (2 * above * below) / (above + below) : 0;
};

/**
 * A shift in one direction that passes smoothly through knots given in rising order: that of the first before it, of the
 * last beyond it.
 */
export const throughKnots = (knots: readonly Knot[], direction: Point): Course => {
  const told = (i: number) => ({
    by: scale(direction, (knots[i] as Knot).shift),
    rate: scale(direction, slopeAt(knots, i)),
  });
  const spans = knots.slice(1).map(({ at }, i) => ({
    to: at,
    course: easedField((knots[i] as Knot).at, at, told(i), told(i + 1)),
  }));
  const only: Course = () => ({ by: told(0).by, rate: { x: 0, y: 0 } });
  return (measure) => ((spans.find(({ to }) => measure <= to) ?? spans.at(-1))?.course ?? only)(measure);
};

/** How far along a path, mm, something that holds from its start on ceases to hold, by halving; its length where it never does. */
export const lastAlong = (path: Path, holds: (mm: number) => boolean): number => {
  let [low, high] = [0, pathLength(path)];
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
