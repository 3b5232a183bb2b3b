import { add, dot, type Point, rotate, scale, subtract, tolerance } from '../geometry/index.ts';

/** How far a place of a line is moved, mm, and how fast that changes along the line. */
export interface Shift {
  readonly by: Point;
  readonly rate: Point;
}

/** A place of a line, and the unit direction in which the line passes it. */
export interface Passing {
  readonly point: Point;
  readonly tangent: Point;
}

/** The shift at so many mm along a line, there passing so. */
export type Field = (along: number, passing: Passing) => Shift;

/** A shift told by one measure alone: by how far along a line a place lies, or how far down or across the piece. */
export type Course = (measure: number) => Shift;

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
): Course => {
  const span = to - from;
  const [m0, m1] = [scale(start.rate ?? nothing, span), scale(end.rate ?? nothing, span)];
  return (along: number) => {
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
  (along, passing) =>
    fields.reduce<Shift>(
      (sum, field) => {
        const { by, rate } = field(along, passing);
        return { by: add(sum.by, by), rate: add(sum.rate, rate) };
      },
      { by: nothing, rate: nothing },
    );

/**
 * A shift told by how far a place lies in one direction, measured from a point: down the piece, or across it. How fast it
 * changes along a line is the less, the more the line runs beside that direction (the chain rule).
 */
export const inDirection =
  (from: Point, direction: Point, course: Course): Field =>
  (_along, { point, tangent }) => {
    const { by, rate } = course(dot(subtract(point, from), direction));
    return { by, rate: scale(rate, dot(tangent, direction)) };
  };
