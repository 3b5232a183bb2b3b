import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { grainTurns } from './grain.ts';
import { placedPoint } from './place.ts';
import { type Polygon, polygonBounds } from './polygon.ts';
import { searchLayout } from './search.ts';
import { propertySeeds, starPolygon, steppedPolygon } from './testing/random-shapes.ts';
import type { Layout, LayoutItem, LayoutProblem } from './types.ts';
import { verifyLayout } from './verify.ts';

const upright = { from: { x: 0, y: 0 }, to: { x: 0, y: 100 } };

/** A half whose left side, x = 0, goes on the fold. */
const half = (steps: Polygon): { outline: Polygon; fold: LayoutItem['fold'] } => {
  const { minX, minY, maxY } = polygonBounds(steps);
  const top = Math.max(...steps.filter(({ x }) => x === minX).map(({ y }) => y));
  expect(maxY).toBeGreaterThanOrEqual(top);
  return {
    outline: steps,
    fold: [
      { x: minX, y: minY },
      { x: minX, y: top },
    ],
  };
};

const itemOf = (oneWay: boolean): fc.Arbitrary<Omit<LayoutItem, 'id' | 'name'>> =>
  fc.oneof(
    fc.record({
      outline: fc.oneof(starPolygon(150), steppedPolygon()),
      plain: fc.integer({ min: 0, max: 2 }),
      mirrored: fc.integer({ min: 0, max: 2 }),
      turns: fc.constant(grainTurns(upright, oneWay)),
      fold: fc.constant(null),
    }),
    steppedPolygon().map((steps) => ({
      ...half(steps),
      plain: 1,
      mirrored: 0,
      turns: grainTurns(upright, oneWay),
    })),
  );

const problemOf: fc.Arbitrary<LayoutProblem> = fc
  .record({
    oneWay: fc.boolean(),
    fold: fc.constantFrom('single' as const, 'lengthwise' as const),
    gap: fc.constantFrom(0, 3),
  })
  .chain(({ oneWay, fold, gap }) =>
    fc.array(itemOf(oneWay), { minLength: 1, maxLength: 4 }).map((items) => ({
      cloth: { width: 520, length: null, fold, oneWay, gap },
      items: [
        ...items.map((item, i) => ({ ...item, id: `p${i}`, name: `piece ${i}` })),
        // So that there is always something to lay.
        {
          id: 'band',
          name: 'band',
          outline: [
            { x: 0, y: 0 },
            { x: 30, y: 0 },
            { x: 30, y: 200 },
            { x: 0, y: 200 },
          ],
          plain: 1,
          mirrored: 1,
          turns: grainTurns(upright, oneWay),
          fold: null,
        },
      ],
    })),
  );

/** Properties of a finished plan that are told from its placements alone. */
const judge = (problem: LayoutProblem, layout: Layout): void => {
  expect(verifyLayout(problem, layout)).toEqual([]);
  for (const item of problem.items) {
    const placed = layout.placed.filter(({ id }) => id === item.id);
    const onSingle = placed.filter(({ stretch }) => layout.stretches[stretch]?.kind === 'single');
    const onFolded = placed.filter(({ stretch }) => layout.stretches[stretch]?.kind === 'folded');
    const spare = layout.spare.find(({ id }) => id === item.id)?.copies ?? 0;
    if (item.fold) {
      expect(placed.length).toBe(item.plain);
      for (const one of onFolded) for (const p of item.fold) expect(Math.abs(placedPoint(one, p).y)).toBeLessThan(1e-9);
      for (const one of onSingle) expect(one.opened).toBe(true);
    } else {
      expect(onSingle.length + 2 * onFolded.length).toBe(item.plain + item.mirrored + spare);
      if (problem.cloth.fold === 'single') {
        expect(onSingle.filter(({ mirrored }) => mirrored).length).toBe(item.mirrored);
        expect(spare).toBe(0);
      }
    }
    for (const one of placed) {
      const top = placedPoint(one, { x: 0, y: 0 });
      const below = placedPoint(one, { x: 0, y: 100 });
      expect(Math.abs(below.y - top.y)).toBeLessThan(1e-9);
      if (problem.cloth.oneWay) expect(below.x - top.x).toBeCloseTo(100, 9);
      else expect(Math.abs(below.x - top.x)).toBeCloseTo(100, 9);
    }
  }
};

describe('plans found by the search', () => {
  for (const seed of propertySeeds()) {
    test(`can be cut: nothing overlaps, everything is there, on grain, fold and nap (seed ${seed})`, async () => {
      await fc.assert(
        fc.asyncProperty(problemOf, fc.nat(1000), async (problem, searchSeed) => {
          const result = await searchLayout(problem, { rounds: 60, seed: searchSeed });
          if (!result.ok) throw new Error(JSON.stringify(result.problem));
          judge(problem, result.value);
        }),
        { seed, numRuns: 15 },
      );
    });
  }
});
