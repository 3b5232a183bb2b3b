import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MeasureId, Measures } from '../body/index.ts';
import { outlineArea, selfIntersections } from '../geometry/index.ts';
import { outlineOf, validateGarment } from '../pattern/index.ts';
import { blouse } from './blouse.ts';
import { womenChart } from './chart-women.ts';

const fresh = Number(process.env['EASEWRIGHT_SEED'] ?? Date.now() % 2 ** 31);
console.log(`blouse properties: fresh seed ${fresh}`);

const ids = Object.keys(womenChart[0]?.body ?? {}) as MeasureId[];

/** Bodies whose every measure strays by itself from some size of the chart, by at most this share. */
const bodies = (spread: number) =>
  fc
    .tuple(
      fc.constantFrom(...womenChart),
      fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: ids.length, maxLength: ids.length }),
    )
    .map(([{ body }, strays]): Measures => {
      const entries = ids.map((id, i) => [id, (body[id] ?? 0) * (1 + spread * (strays[i] ?? 0))]);
      return Object.fromEntries(entries);
    });

for (const seed of [20261, fresh]) {
  describe(`drafting with seed ${seed}`, () => {
    it('drafts every body whose measures stray by a tenth, each by itself', () => {
      fc.assert(
        fc.property(bodies(0.1), (body) => {
          const garment = blouse.draft(body);
          expect(garment.ok).toBe(true);
          if (!garment.ok) return;
          expect(validateGarment(garment.value)).toEqual([]);
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
        fc.property(bodies(0.4), (body) => {
          const garment = blouse.draft(body);
          if (garment.ok) expect(validateGarment(garment.value)).toEqual([]);
          else expect(garment.problem.code).toMatch(/^(drafting|body)\./);
        }),
        { seed, numRuns: 120 },
      );
    });
  });
}
