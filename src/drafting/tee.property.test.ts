import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MeasureId, Measures } from '../body/index.ts';
import { outlineArea, selfIntersections, tolerance } from '../geometry/index.ts';
import { finishedGirths, outlineOf, validateGarment, walkAll } from '../pattern/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { tee } from './tee.ts';

const fresh = Number(process.env['EASEWRIGHT_SEED'] ?? Date.now() % 2 ** 31);
console.log(`tee properties: fresh seed ${fresh}`);

const sizes = [...womenChart, ...menChart];
const ids = Object.keys(womenChart[0]?.body ?? {}) as MeasureId[];

/** Bodies whose every measure strays by itself from some size of either chart, by at most this share. */
const bodies = (spread: number) =>
  fc
    .tuple(
      fc.constantFrom(...sizes),
      fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: ids.length, maxLength: ids.length }),
    )
    .map(
      ([{ body }, strays]): Measures =>
        Object.fromEntries(ids.map((id, i) => [id, (body[id] ?? 0) * (1 + spread * (strays[i] ?? 0))])),
    );

for (const seed of [20261, fresh]) {
  describe(`drafting the tee with seed ${seed}`, () => {
    it('drafts every body whose measures stray by a tenth, each by itself, with the girths stated', () => {
      fc.assert(
        fc.property(bodies(0.1), (body) => {
          const garment = tee.draft(body);
          const ease = tee.ease(body);
          if (!garment.ok || !ease.ok) throw new Error('refused');
          expect(validateGarment(garment.value)).toEqual([]);
          expect(walkAll(garment.value).filter(({ meets }) => !meets)).toEqual([]);
          for (const { level, measure, finished } of finishedGirths(garment.value)) {
            const stated = (body[measure] ?? 0) + (ease.value[level] ?? Number.NaN);
            expect(Math.abs(finished - stated)).toBeLessThan(tolerance.girth);
          }
          for (const piece of garment.value.pieces) {
            expect(selfIntersections(outlineOf(piece))).toEqual([]);
            expect(outlineArea(outlineOf(piece))).toBeGreaterThan(0);
          }
        }),
        { seed, numRuns: 60 },
      );
    });
    it('drafts or refuses anything else, and never a garment that is not sound', () => {
      fc.assert(
        fc.property(bodies(0.4), fc.double({ min: -60, max: 200, noNaN: true }), (body, bust) => {
          const garment = tee.draft(body, { ease: { bust } });
          if (garment.ok) expect(validateGarment(garment.value)).toEqual([]);
          else expect(garment.problem.code).toMatch(/^(drafting|body)\./);
        }),
        { seed, numRuns: 120 },
      );
    });
  });
}
