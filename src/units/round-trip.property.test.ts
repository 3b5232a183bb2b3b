import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  formatLength,
  formatPercent,
  formatWeight,
  lengthAsShown,
  parseLength,
  parsePercent,
  parseWeight,
} from './index.ts';
import type { LengthPurpose } from './print-length.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`round-trip.property seed ${fresh}`);

/** Half the step each purpose is written to, in mm: how far reading back may be off. */
const halfStep: Readonly<Record<LengthPurpose, { readonly cm: number; readonly in: number }>> = {
  measure: { cm: 0.5, in: 25.4 / 16 },
  amount: { cm: 0.5, in: 25.4 / 32 },
  fine: { cm: 0.05, in: 0.127 },
  cloth: { cm: 5, in: 25.4 / 16 },
  stature: { cm: 0.5, in: 25.4 / 4 },
};

const lengths = fc.double({ min: 0, max: 90_000, noNaN: true });
const purposes = fc.constantFrom<LengthPurpose>('measure', 'amount', 'fine', 'cloth', 'stature');
const units = fc.constantFrom<'cm' | 'in'>('cm', 'in');

it.each([20261, fresh])('what is written is read back to within half its step (seed %d)', (seed) => {
  fc.assert(
    fc.property(lengths, units, purposes, fc.constantFrom('en', 'de', 'fr'), (mm, unit, purpose, locale) => {
      // Only lengths in hand need read back: a roll's thousands of mm are never printed in mm.
      fc.pre(purpose !== 'fine' || mm < 900);
      fc.pre(purpose === 'cloth' || mm < 9000);
      const text = formatLength(mm, unit, { purpose, locale });
      const read = parseLength(text, unit);
      expect(read, text).toMatchObject({ ok: true });
      if (!read.ok) return;
      expect(Math.abs(read.value - mm)).toBeLessThanOrEqual(halfStep[purpose][unit] + 1e-6);
      // And writing it again changes nothing.
      expect(formatLength(read.value, unit, { purpose, locale })).toBe(text);
    }),
    { seed, numRuns: 1000 },
  );
});

it.each([20261, fresh])('rounded up is never less, rounded down never more, by less than a step (seed %d)', (seed) => {
  fc.assert(
    fc.property(lengths, units, purposes, (mm, unit, purpose) => {
      fc.pre(purpose !== 'fine' || mm < 900);
      fc.pre(purpose === 'cloth' || mm < 9000);
      const step = 2 * halfStep[purpose][unit];
      const back = (round: 'up' | 'down') => {
        const text = formatLength(mm, unit, { purpose, round });
        const read = parseLength(text, unit);
        if (!read.ok) throw new Error(`${text}: ${read.problem.code}`);
        expect(lengthAsShown(mm, unit, { purpose, round }), text).toBeCloseTo(read.value, 5);
        // Writing what was written changes nothing, whichever way it is rounded.
        expect(formatLength(read.value, unit, { purpose, round })).toBe(text);
        return read.value;
      };
      expect(back('up')).toBeGreaterThanOrEqual(mm - step * 1e-5);
      expect(back('up') - mm).toBeLessThan(step);
      expect(back('down')).toBeLessThanOrEqual(mm + step * 1e-5);
      expect(mm - back('down')).toBeLessThan(step);
    }),
    { seed, numRuns: 1000 },
  );
});

it.each([20261, fresh])('signed amounts come back with their sign (seed %d)', (seed) => {
  fc.assert(
    fc.property(fc.double({ min: -300, max: 300, noNaN: true }), units, (mm, unit) => {
      const read = parseLength(formatLength(mm, unit, { purpose: 'amount', signed: true }), unit, { signed: true });
      expect(read.ok && Math.abs(read.value - mm)).toBeLessThanOrEqual(halfStep.amount[unit] + 1e-6);
    }),
    { seed, numRuns: 500 },
  );
});

it.each([20261, fresh])('any text at all gives a length or a problem with a code, never a throw (seed %d)', (seed) => {
  const alphabet = fc.constantFrom(
    ...`0123456789 .,/-'"½⅝′″\u00a0`.split(''),
    'in',
    'ft',
    'cm',
    'm',
    'yd',
    'e',
    '⁄',
    '³',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(alphabet, { maxLength: 12 }).map((parts) => parts.join('')),
      ),
      (text) => {
        for (const read of [parseLength(text, 'cm'), parseWeight(text, 'in'), parsePercent(text)]) {
          if (read.ok) expect(read.value).toBeGreaterThanOrEqual(0);
          else expect(read.problem.code).toMatch(/^units\./);
          if (read.ok) expect(Number.isFinite(read.value)).toBe(true);
        }
      },
    ),
    { seed, numRuns: 3000 },
  );
});

it.each([20261, fresh])('weights and shares come back to within their last digit (seed %d)', (seed) => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 999, noNaN: true }), units, (weight, unit) => {
      const read = parseWeight(formatWeight(weight, unit), unit);
      expect(read.ok && Math.abs(read.value - weight)).toBeLessThanOrEqual(unit === 'cm' ? 0.5001 : 1.7);
      const share = parsePercent(formatPercent(weight / 400));
      expect(share.ok && Math.abs(share.value - weight / 400)).toBeLessThanOrEqual(0.00051);
    }),
    { seed, numRuns: 500 },
  );
});
