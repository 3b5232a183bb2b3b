import { fairCurve } from './fair-curve.ts';
import { angleOf, directionAt, distance, samePoint, subtract, turnBetween } from './points.ts';
import type { Path, Point } from './types.ts';

export interface EndTangents {
  /** Direction of travel at the first point, of any length but zero; free where it is not given. */
  readonly startTangent?: Point;
  readonly endTangent?: Point;
}

/**
 * A smooth curve through points, one cubic between each two: Hobby's spline (J. D. Hobby 1986, as in METAFONT),
 * whose directions make curvature nearly continuous, weighed by chord length; a free end bends as its
 * neighbour does (curl 1). Two guards keep it from adding bends of its own: at every inner point the direction
 * stays well between those of the two chords, and the handles are held as `fairCurve` says. So points that bend one way
 * throughout give a curve that does, unless the turn at one of them is many times that at the next.
 * Throws on fewer than two points or a point that repeats the one before.
 */
export const smoothThrough = (points: readonly Point[], { startTangent, endTangent }: EndTangents = {}): Path => {
  points.forEach((p, i) => {
    const last = points[i - 1];
    if (last && !(distance(last, p) > 0 && !samePoint(last, p))) {
      throw new RangeError(`Point ${i} repeats the one before it: (${p.x}, ${p.y})`);
    }
  });
  const [first, second] = points;
  if (!first || !second) throw new RangeError(`A curve needs two points, ${points.length} given`);
  if (points.length === 2 && !startTangent && !endTangent) return [{ kind: 'line', from: first, to: second }];
  const directions = tangents(points, startTangent, endTangent);
  return points.slice(1).map((to, i) => {
    const from = points[i] as Point;
    return fairCurve(from, directions[i] as Point, to, directions[i + 1] as Point);
  });
};

/** Each chord is turned away from by at least this share of the turn between them: along a chord a curve cannot bend evenly. */
const margin = 0.15;

/** The direction at every point. */
function tangents(points: readonly Point[], startTangent: Point | undefined, endTangent: Point | undefined): Point[] {
  const last = points.length - 1;
  const chords = points.slice(1).map((p, i) => subtract(p, points[i] as Point));
  const chord = (i: number): Point => chords[i] as Point;
  const size = (i: number): number => Math.hypot(chord(i).x, chord(i).y);
  /** Turn of the chords at each point; none at the ends. */
  const turns = points.map((_, i) => (i === 0 || i === last ? 0 : turnBetween(chord(i - 1), chord(i))));
  const turn = (i: number): number => turns[i] as number;

  // Angles from each point's next chord to its direction: mock curvature equal on both sides of every point.
  const rows: Row[] = points.map((_, i) => {
    if (i === 0) {
      return startTangent
        ? { before: 0, own: 1, after: 0, value: turnBetween(chord(0), startTangent) }
        : { before: 0, own: 1, after: 1, value: -turn(1) };
    }
    if (i === last) {
      return endTangent
        ? { before: 0, own: 1, after: 0, value: turnBetween(chord(last - 1), endTangent) }
        : { before: 1, own: 1, after: 0, value: 0 };
    }
    const a = 1 / size(i - 1);
    const b = 1 / size(i);
    return { before: a, own: 2 * (a + b), after: b, value: -2 * a * turn(i) - b * turn(i + 1) };
  });
  const angles = solve(rows);

  for (let i = 1; i < last; i++) {
    const bounds = [-turn(i) * margin, -turn(i) * (1 - margin)] as const;
    angles[i] = Math.min(Math.max(...bounds), Math.max(Math.min(...bounds), angles[i] as number));
  }
  // A free end follows its neighbour, which may just have been held back.
  if (!startTangent && last > 1) angles[0] = -turn(1) - (angles[1] as number);
  if (!endTangent && last > 1) angles[last] = -(angles[last - 1] as number);
  return angles.map((angle, i) => directionAt(angleOf(chord(Math.min(i, last - 1))) + angle));
}

interface Row {
  readonly before: number;
  readonly own: number;
  readonly after: number;
  readonly value: number;
}

/** Three-banded equations by elimination (Thomas). */
function solve(rows: readonly Row[]): number[] {
  const after: number[] = [];
  const value: number[] = [];
  for (const [i, row] of rows.entries()) {
    const pivot = row.own - row.before * (after[i - 1] ?? 0);
    after.push(row.after / pivot);
    value.push((row.value - row.before * (value[i - 1] ?? 0)) / pivot);
  }
  for (let i = rows.length - 2; i >= 0; i--) {
    value[i] = (value[i] as number) - (after[i] as number) * (value[i + 1] as number);
  }
  return value;
}
