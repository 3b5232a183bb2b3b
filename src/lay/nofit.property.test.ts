import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Arrangement } from './arrangement.ts';
import { overlapDeeperThan } from './overlap.ts';
import { movePolygon, type Polygon, type Turn, tidyPolygon } from './polygon.ts';
import { makeTable, type Shape, type Table } from './table.ts';
import { propertySeeds, starPolygon, steppedPolygon } from './testing/random-shapes.ts';

const everyTurn: Turn[] = [0, 90, 180, 270, 37].flatMap((rotation) => [
  { rotation, mirrored: false },
  { rotation, mirrored: true },
]);

const finish = <T>(work: Generator<void, T>): T => {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
};

const tableOf = (a: Polygon, b: Polygon, gap: number): Table => {
  const items = [a, b].map((outline) => ({ outline: tidyPolygon(outline), count: 1, turns: everyTurn, onFold: false }));
  return finish(makeTable({ height: 2000, gap, items }));
};

/**
 * The one judge of no-fit regions and their distances: whatever depth is told, moving the second shape out to
 * the nearest border point frees it, nothing nearer does, and depth 0 means free; asked of the exact test.
 */
const judge = (table: Table, first: number, second: number, dx: number, dy: number): void => {
  const arrangement = new Arrangement(table, 4000);
  const [s, t] = [table.shapesOf[0]?.[first] as number, table.shapesOf[1]?.[second] as number];
  const [a, b] = [table.shapes[s] as Shape, table.shapes[t] as Shape];
  const [x, y] = [1000 + dx * (a.width + b.width) - b.width, 1000 + dy * (a.height + b.height) - b.height];
  arrangement.place(0, s, 1000, 1000);
  const depth = arrangement.depthIn(0, t, x, y);
  arrangement.place(1, t, x, y);
  expect(arrangement.depthIn(1, s, 1000, 1000)).toBeCloseTo(depth, 2);
  const still = movePolygon(a.polygon, 1000, 1000);
  const overlapping = (mx: number, my: number): boolean =>
    overlapDeeperThan(still, movePolygon(b.polygon, mx, my), 1e-6);
  // Regions are grown by a ten-thousandth of a millimetre here; the sine of a grazing angle shrinks what the exact test sees.
  if (depth === 0) expect(overlapping(x, y)).toBe(false);
  else if (depth > 0.01) {
    expect(overlapping(x, y)).toBe(true);
    for (let i = 0; i < 8; i++) {
      const angle = (i * Math.PI) / 4;
      const reach = 0.98 * depth - 0.005;
      expect(overlapping(x + reach * Math.cos(angle), y + reach * Math.sin(angle))).toBe(true);
    }
    const free = Array.from({ length: 180 }, (_, i) => (i * Math.PI) / 90).some(
      (angle) => !overlapping(x + 1.05 * depth * Math.cos(angle), y + 1.05 * depth * Math.sin(angle)),
    );
    expect(free).toBe(true);
  }
};

describe('no-fit regions and distances agree with the exact overlap test', () => {
  for (const seed of propertySeeds()) {
    test(`on star shapes, turned and mirrored (seed ${seed})`, () => {
      const index = fc.nat(everyTurn.length - 1);
      const moves = fc.array(
        fc.tuple(index, index, fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
        { minLength: 6, maxLength: 6 },
      );
      fc.assert(
        fc.property(starPolygon(), starPolygon(), moves, (a, b, tries) => {
          const table = tableOf(a, b, 0);
          for (const [first, second, dx, dy] of tries) judge(table, first, second, dx, dy);
        }),
        { seed, numRuns: 6 },
      );
    });

    test(`on stepped shapes that fit one another exactly (seed ${seed})`, () => {
      const moves = fc.array(fc.tuple(fc.nat(19), fc.nat(19), fc.nat(40), fc.nat(40)), { minLength: 6, maxLength: 6 });
      fc.assert(
        fc.property(steppedPolygon(), steppedPolygon(), moves, (a, b, tries) => {
          const table = tableOf(a, b, 0);
          const shapes = table.shapesOf.map((own) => own.length);
          for (const [first, second, dx, dy] of tries) {
            judge(table, first % (shapes[0] as number), second % (shapes[1] as number), dx / 40, dy / 40);
          }
        }),
        { seed, numRuns: 6 },
      );
    });
  }
});
