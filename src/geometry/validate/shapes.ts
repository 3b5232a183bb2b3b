import { joinPaths, polyline } from '../paths.ts';
import { partOfSegment } from '../segments.ts';
import { smoothThrough } from '../smooth-through.ts';
import { compose, mirrorX, rotation, scaling, translation } from '../transforms.ts';
import type { Cubic, Path, Point, Segment, Transform } from '../types.ts';

/** Shapes for tests, made from numbers between 0 and 1 so that any source of numbers gives one. */

/** Where every validator is run: as drawn, turned, mirrored, large, small, all at once, and far from the origin. */
export const placements: readonly (readonly [string, Transform])[] = [
  ['as drawn', translation({ x: 0, y: 0 })],
  ['turned', rotation(1, { x: 30, y: 40 })],
  ['mirrored', mirrorX(17)],
  ['large', scaling(4)],
  ['small', scaling(0.2)],
  ['turned, mirrored, scaled', compose(rotation(2.5), mirrorX(-80), scaling(1.7))],
  ['far away', translation({ x: 12345.678, y: -9876.543 })],
];

const at = (numbers: readonly number[], i: number): number => numbers[i % numbers.length] ?? 0.5;

const pointFrom = (numbers: readonly number[], i: number, size: number): Point => ({
  x: at(numbers, 2 * i) * size,
  y: at(numbers, 2 * i + 1) * size,
});

/** Any cubic in a 200 mm square: loops, cusps and all. Eight numbers. */
export const anyCubic = (numbers: readonly number[]): Cubic => ({
  kind: 'cubic',
  from: pointFrom(numbers, 0, 200),
  control1: pointFrom(numbers, 1, 200),
  control2: pointFrom(numbers, 2, 200),
  to: pointFrom(numbers, 3, 200),
});

/** Lines and cubics in turn, joined end to start. */
export const anyPath = (numbers: readonly number[], segments: number): Path => {
  const path: Segment[] = [];
  let from = pointFrom(numbers, 0, 200);
  let next = 1;
  for (let i = 0; i < segments; i++) {
    if (at(numbers, next * 2 + 1) < 0.4) {
      const to = pointFrom(numbers, next, 200);
      path.push({ kind: 'line', from, to });
      from = to;
      next += 1;
    } else {
      const to = pointFrom(numbers, next + 2, 200);
      path.push({
        kind: 'cubic',
        from,
        control1: pointFrom(numbers, next, 200),
        control2: pointFrom(numbers, next + 1, 200),
        to,
      });
      from = to;
      next += 3;
    }
  }
  return path;
};

/** A smooth run like an armhole, a crotch seam or a hip curve: going on to the right, up and down by turns. */
export const smoothRun = (numbers: readonly number[]): Path => smoothThrough(runPoints(numbers));

/** The same line in four times as many segments, as repeated cutting and joining leaves it. */
export const crowded = (path: Path): Path =>
  path.flatMap((segment) => [0, 0.25, 0.5, 0.75].map((t) => partOfSegment(segment, t, t + 0.25)));

export const runPoints = (numbers: readonly number[]): Point[] => {
  let x = 0;
  return [0, 1, 2, 3, 4].map((i) => {
    x += 25 + 60 * at(numbers, 2 * i);
    return { x, y: 110 * at(numbers, 2 * i + 1) };
  });
};

/** Points that bend one way throughout: on an ellipse, unevenly spaced, none of them a sudden corner after a straight stretch. */
export const convexPoints = (numbers: readonly number[]): Point[] => {
  let angle = at(numbers, 0) * 6;
  const across = 60 + 140 * at(numbers, 1);
  const down = 60 + 140 * at(numbers, 2);
  return [3, 4, 5, 6, 7].map((i) => {
    angle += 0.25 + 0.75 * at(numbers, i);
    return { x: across * Math.cos(angle), y: down * Math.sin(angle) };
  });
};

/** A simple outline, clockwise as seen: corners at uneven distances round a middle, lines and hollow or full curves between. */
export const starOutline = (numbers: readonly number[]): Path => {
  const corners = [0, 1, 2, 3, 4, 5].map((i) => {
    const angle = (i * Math.PI) / 3 + 0.8 * at(numbers, i);
    const away = 60 + 90 * at(numbers, i + 6);
    return { x: 150 + away * Math.cos(angle), y: 150 + away * Math.sin(angle) };
  });
  const sides = corners.map((from, i): Path => {
    const to = corners[(i + 1) % corners.length] as Point;
    const swell = at(numbers, i + 12);
    if (swell < 0.3) return polyline([from, to]);
    // Handles drawn towards or away from the middle along their own rays keep the outline star-shaped, hence simple.
    const handle = (share: number): Point => {
      const x = from.x + (to.x - from.x) * share - 150;
      const y = from.y + (to.y - from.y) * share - 150;
      return { x: 150 + x * (0.5 + swell), y: 150 + y * (0.5 + swell) };
    };
    return [{ kind: 'cubic', from, control1: handle(1 / 3), control2: handle(2 / 3), to }];
  });
  return joinPaths(...sides);
};
