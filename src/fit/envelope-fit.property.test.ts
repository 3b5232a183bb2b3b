import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import type { Envelope, Figure, FinishedOf } from '../pattern/index.ts';
import { lengthAsShown, millimetresPer, parseLength, type Unit } from '../units/index.ts';
import { fitWords, reasonSentence } from '../words/index.ts';
import { envelopeFigures, type Fit, fitPattern } from './index.ts';
import { harbourBlouse } from './testing/envelope.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`envelope fit seed ${fresh}`);
const seeds = [20261, fresh];

/** A chart that grows from size to size by uneven steps, each figure as it would be printed in eighths of an inch. */
const charts = fc
  .record({
    first: fc.integer({ min: 740, max: 900 }),
    steps: fc.array(fc.integer({ min: 15, max: 70 }), { minLength: 1, maxLength: 13 }),
    waistLess: fc.integer({ min: 120, max: 260 }),
    hipMore: fc.integer({ min: 20, max: 120 }),
    ease: fc.integer({ min: -40, max: 320 }),
    lengths: fc.boolean(),
    printed: fc.subarray<FinishedOf>(['bust', 'waist', 'hip', 'upper-arm', 'across-back']),
    ranges: fc.boolean(),
    cup: fc.option(fc.integer({ min: 0, max: 120 })),
    kind: fc.constantFrom<Envelope['kind']>('top', 'dress', 'jacket', 'coat', 'trousers', 'skirt'),
    structure: fc.constantFrom<'woven' | 'knit'>('woven', 'knit'),
  })
  .map((given): Envelope => {
    const bust = [given.first];
    for (const step of given.steps) bust.push((bust.at(-1) ?? 0) + step);
    const eighth = (mm: number): number => lengthAsShown(mm, 'in');
    const row = (of: (mm: number) => number) =>
      bust.map((mm) => (given.ranges ? ([eighth(of(mm)) - 6, eighth(of(mm)) + 6] as const) : eighth(of(mm))));
    const finished: Record<string, (mm: number) => number> = {
      bust: (mm) => mm + given.ease,
      waist: (mm) => mm - given.waistLess + Math.abs(given.ease),
      hip: (mm) => mm + given.hipMore + given.ease,
      'upper-arm': (mm) => mm * 0.3 + 70,
      'across-back': (mm) => mm * 0.38 + 20,
    };
    return {
      ...harbourBlouse,
      kind: given.kind,
      cloth: { ...harbourBlouse.cloth, structure: given.structure, stretch: given.structure === 'knit' ? 0.3 : 0 },
      draftedCup: given.cup,
      sizes: bust.map((_, index) => `${2 * index + 6}`),
      views: [],
      body: [
        { measure: 'bustGirth', figures: row((mm) => mm) },
        { measure: 'waistGirth', figures: row((mm) => mm - given.waistLess) },
        { measure: 'hipGirth', figures: row((mm) => mm + given.hipMore) },
        ...(given.lengths ? [{ measure: 'backWaistLength' as const, figures: row((mm) => 380 + mm / 50) }] : []),
      ],
      finished: given.printed.map((of) => ({
        of,
        label: of,
        view: null,
        figures: row(finished[of] as (mm: number) => number),
      })),
      clothNeeded: [],
    };
  });

const bodies = fc.record({
  bustGirth: fc.integer({ min: 760, max: 1500 }),
  cup: fc.integer({ min: 5, max: 120 }),
  waistGirth: fc.integer({ min: 560, max: 1300 }),
  hipGirth: fc.integer({ min: 800, max: 1450 }),
  backWaistLength: fc.integer({ min: 340, max: 470 }),
  upperArmGirth: fc.integer({ min: 210, max: 420 }),
});

const measuresOf = ({ cup, ...rest }: typeof bodies extends fc.Arbitrary<infer T> ? T : never): Measures => ({
  ...rest,
  upperBustGirth: rest.bustGirth - cup,
});

const fitted = (envelope: Envelope, measures: Measures): Fit => {
  const fit = fitPattern({ measures, pattern: envelopeFigures(envelope, null) });
  if (!fit.ok) throw new Error(fit.problem.code);
  return fit.value;
};

const chosen = (envelope: Envelope, measures: Measures): number => {
  const fit = fitted(envelope, measures);
  return envelope.sizes.indexOf(fit.ways[fit.recommended]?.startingSize ?? '');
};

describe('for any envelope and any body', () => {
  it.each(seeds)('a bigger body never gets a smaller size (seed %d)', (seed) => {
    fc.assert(
      fc.property(charts, bodies, fc.integer({ min: 0, max: 150 }), (envelope, body, more) => {
        const bigger = {
          ...body,
          bustGirth: body.bustGirth + more,
          waistGirth: body.waistGirth + more,
          hipGirth: body.hipGirth + more,
        };
        expect(chosen(envelope, measuresOf(bigger))).toBeGreaterThanOrEqual(chosen(envelope, measuresOf(body)));
      }),
      { seed, numRuns: 150 },
    );
  });
  it.each(seeds)('the answer is the same whether body and chart are written in cm or inches (seed %d)', (seed) => {
    // Written as a person would, read back as the program does; a tape is read to a tenth of a millimetre at best.
    const reread = (mm: number, unit: Unit): number => {
      const tenths = Math.round(mm * 10) / 10;
      const written = unit === 'cm' ? (tenths / 10).toFixed(2) : (tenths / millimetresPer.in).toFixed(6);
      const read = parseLength(written, unit);
      if (!read.ok) throw new Error(read.problem.code);
      return Math.round(read.value * 10) / 10;
    };
    const figure = (one: Figure, unit: Unit): Figure =>
      one === null ? null : typeof one === 'number' ? reread(one, unit) : [reread(one[0], unit), reread(one[1], unit)];
    fc.assert(
      fc.property(charts, bodies, (envelope, body) => {
        const answer = (unit: Unit): Fit => {
          const rewritten = <T extends { readonly figures: readonly Figure[] }>(row: T): T => ({
            ...row,
            figures: row.figures.map((one) => figure(one, unit)),
          });
          const measures = Object.fromEntries(
            Object.entries(measuresOf(body)).map(([id, mm]) => [id, reread(mm, unit)]),
          );
          return fitted(
            { ...envelope, body: envelope.body.map(rewritten), finished: envelope.finished.map(rewritten) },
            measures,
          );
        };
        expect(answer('in')).toEqual(answer('cm'));
      }),
      { seed, numRuns: 60 },
    );
  });
  it.each(seeds)('says where every figure came from, what is unknown, and amounts both ways (seed %d)', (seed) => {
    fc.assert(
      fc.property(charts, bodies, (envelope, body) => {
        const fit = fitted(envelope, measuresOf(body));
        const printed = new Set(envelope.finished.map(({ of }) => of as string));
        for (const { cells } of fit.sizes) {
          for (const cell of cells) {
            expect(cell.finishedFrom).toBe('printed');
            expect(printed.has(cell.level)).toBe(true);
            expect(cell.ease).toBeCloseTo(cell.finished - cell.body, 9);
          }
        }
        for (const { level, sizes } of fit.unknown) {
          expect(printed.has(level)).toBe(false);
          expect(sizes).toEqual(envelope.sizes);
        }
        for (const way of fit.ways) {
          for (const step of way.alterations) {
            expect(step.counted).toBe('usual');
            expect(step.total).toBe(step.alteration.endsWith('-bust') ? step.perPiece * step.count : step.perPiece);
          }
          for (const reason of way.reasons) {
            expect(Object.keys(fitWords.reasons)).toContain(reason.code);
            for (const unit of ['cm', 'in'] as const) expect(reasonSentence(reason, unit)).not.toMatch(/[{}]/);
          }
        }
      }),
      { seed, numRuns: 100 },
    );
  });
});
