import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type ClothConversion, convertCloth } from './index.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`convert.property seed ${fresh}`);

const laid = fc.constantFrom('single' as const, 'lengthwise' as const);
const requests: fc.Arbitrary<ClothConversion> = fc.record(
  {
    needed: fc.double({ min: 200, max: 12_000, noNaN: true }),
    fromWidth: fc.double({ min: 400, max: 2800, noNaN: true }),
    toWidth: fc.double({ min: 400, max: 2800, noNaN: true }),
    nap: fc.record({
      from: fc.constantFrom('with' as const, 'without' as const, 'either' as const),
      to: fc.constantFrom('with' as const, 'without' as const),
    }),
    layout: fc.record({ from: laid, to: laid }),
    shrinkage: fc.record({
      along: fc.double({ min: 0, max: 0.2, noNaN: true }),
      across: fc.double({ min: 0, max: 0.2, noNaN: true }),
    }),
    washed: fc.boolean(),
    minimumArea: fc.double({ min: 0, max: 2e7, noNaN: true }),
    widestPiece: fc.double({ min: 50, max: 1400, noNaN: true }),
    unit: fc.constantFrom('cm' as const, 'in' as const),
  },
  { requiredKeys: ['needed', 'fromWidth', 'toWidth'] },
);

const usable = ({ toWidth, washed, shrinkage }: ClothConversion): number =>
  toWidth * (1 - (washed ? 0 : (shrinkage?.across ?? 0)));

it.each([20261, fresh])(
  'never promises less cloth than the area needs, nor to buy less than it takes (seed %d)',
  (seed) => {
    fc.assert(
      fc.property(requests, (request) => {
        const read = convertCloth(request);
        fc.pre(read.ok);
        if (!read.ok) return;
        const { length, buy } = read.value;
        const area = length * usable(request);
        expect(area).toBeGreaterThanOrEqual(Number(request.needed) * request.fromWidth * (1 - 1e-9));
        expect(area).toBeGreaterThanOrEqual((request.minimumArea ?? 0) * (1 - 1e-9));
        const along = request.washed ? 0 : (request.shrinkage?.along ?? 0);
        // Washed, what is bought still has its length and 50 to square the ends.
        expect(buy * (1 - along)).toBeGreaterThanOrEqual(length + 50 * (1 - along) - 1e-3);
      }),
      { seed, numRuns: 2000 },
    );
  },
);

it.each([20261, fresh])('narrower cloth never needs less (seed %d)', (seed) => {
  fc.assert(
    fc.property(requests, fc.double({ min: 0.3, max: 1, noNaN: true }), (request, share) => {
      const [wide, narrow] = [convertCloth(request), convertCloth({ ...request, toWidth: request.toWidth * share })];
      // A piece that lies on the narrower cloth lies on the wider.
      if (narrow.ok) expect(wide.ok).toBe(true);
      if (narrow.ok && wide.ok) expect(narrow.value.length).toBeGreaterThanOrEqual(wide.value.length - 1e-6);
    }),
    { seed, numRuns: 2000 },
  );
});
