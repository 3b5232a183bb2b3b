import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Measures, measureIds } from '../body/index.ts';
import type { Cloth } from '../cloth/index.ts';
import { housePattern } from '../drafting/index.ts';
import { tolerance } from '../geometry/index.ts';
import { dartsOf, type Pattern } from '../pattern/index.ts';
import { lengthAsShown, millimetresPer, parseLength } from '../units/index.ts';
import { fitWords, reasonSentence } from '../words/index.ts';
import { bustDart, intakeWith } from './bust-dart.ts';
import {
  type Fit,
  type FitQuestion,
  fitPattern,
  nearestSize,
  type PatternFigures,
  patternFigures,
  verdictAsShown,
  widestDart,
} from './index.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`fit seed ${fresh}`);

const house = housePattern('blouse');
if (!house) throw new Error('no blouse');
const blouse = house.pattern();
const figures = patternFigures(blouse);

const figuresOf = (pattern: FitQuestion['pattern']) => ('format' in pattern ? patternFigures(pattern) : pattern);
const fitted = (question: Partial<FitQuestion> & { readonly measures: Measures }): Fit => {
  const asked = { pattern: blouse, figures, ...question };
  const answer = fitPattern(question.pattern ? { ...asked, figures: figuresOf(asked.pattern) } : asked);
  if (!answer.ok) throw new Error(answer.problem.code);
  return answer.value;
};
const chartBody = (size: number): Required<Measures> => house.chart[size]?.body as Required<Measures>;
const codes = (answer: Fit, way = 0) => answer.ways[way]?.reasons.map((reason) => reason.code) ?? [];

/** The same blouse without its dart and its cup, cut in a knit with the bust 60 smaller: enough for the sums. */
const knitTop: Pattern = {
  ...blouse,
  id: 'knit-top',
  name: 'Knit top',
  cloth: { ...blouse.cloth, structure: 'knit', stretch: 0.4 },
  sizes: blouse.sizes.map((size) => ({
    ...size,
    body: { ...size.body, bustGirth: (size.body.bustGirth ?? 0) + 100 },
  })),
};
const jersey = (stretchAcross: number): Cloth => ({
  format: 'easewright-cloth/1',
  name: 'Harbour stripe',
  structure: 'knit',
  fibres: 'cotton',
  weight: 180,
  width: 1500,
  length: null,
  stretchAcross,
  stretchAlong: 0.1,
  oneWay: false,
  shrinkAlong: 0,
  shrinkAcross: 0,
  washed: true,
  colour: 'navy',
  terms: 'bought',
  from: '',
  note: '',
});

describe('the body a size is drafted for', () => {
  it.each(house.chart.map((size, index) => [size.id, index] as const))('size %s needs nothing', (id, index) => {
    const answer = fitted({ measures: chartBody(index) });
    const way = answer.ways[answer.recommended];
    expect(way).toMatchObject({ startingSize: id, front: id, back: id, alterations: [], blend: [], minutes: 0 });
    expect(answer.scale).toMatchObject({ by: 'upper-bust', position: index, close: false });
    expect(answer.estimated).toEqual([]);
    for (const cell of way?.ease ?? []) {
      expect(cell.ease).toBeCloseTo(cell.finished - cell.body, 9);
      expect(cell.designed).toBeCloseTo(cell.ease, 9);
      expect(cell.verdict, `${cell.level} ${cell.ease}`).toBe('usual');
    }
    expect(way?.ease.map((cell) => cell.level)).toEqual(['bust', 'waist', 'hip', 'upper-arm']);
  });
});

describe('a fuller or smaller bust', () => {
  const body = chartBody(4);
  const withBust = (more: number): Measures => ({ ...body, bustGirth: body.bustGirth + more });
  it('keeps the size of the upper bust, and asks for the difference in all and by halves', () => {
    const answer = fitted({ measures: withBust(50) });
    const way = answer.ways[0];
    expect(way?.startingSize).toBe('5');
    expect(way?.alterations).toMatchObject([
      { alteration: 'full-bust', version: 1, on: true, params: { amount: 25 }, total: 50, perPiece: 25, count: 2 },
    ]);
    expect(codes(answer)).toContain('fit.bust-full');
    // The alteration gives the bust its designed ease back, and widens what lies below as much.
    const unaltered = answer.sizes[4]?.cells ?? [];
    for (const [index, cell] of (way?.ease ?? []).entries()) {
      const before = unaltered[index];
      const widened = cell.measure === 'upperArmGirth' ? 0 : 50;
      expect(cell.finished - (before?.finished ?? 0)).toBeCloseTo(widened, 9);
    }
    expect(way?.ease[0]?.ease).toBeCloseTo(90, 0);
    expect(way?.minutes).toBeGreaterThan(0);
  });
  it('shows the size of the full bust as the other way, and what that costs', () => {
    const answer = fitted({ measures: withBust(50) });
    expect(answer.ways).toHaveLength(2);
    expect(answer.ways[1]?.startingSize).toBe('6');
    expect(codes(answer, 1)).toEqual(
      expect.arrayContaining(['fit.size-by-full-bust', 'fit.shoulders-too-wide', 'fit.bust-none']),
    );
  });
  it('is not altered for under 12 in all, or a smaller one under 25', () => {
    for (const more of [0, 11, -11, -24]) {
      expect(fitted({ measures: withBust(more) }).ways[0]?.alterations, String(more)).toEqual([]);
    }
    const small = fitted({ measures: withBust(-30) });
    const step = small.ways[0]?.alterations[0];
    expect(step).toMatchObject({ alteration: 'small-bust', count: 2 });
    // No further than the dart closes: the rest is said.
    const amount = Number(step?.params.amount);
    expect(amount).toBeGreaterThanOrEqual(6);
    expect(amount).toBeLessThanOrEqual(15);
    expect(step).toMatchObject({ perPiece: -amount, total: -2 * amount });
    expect(codes(small).includes('fit.bust-small-beyond')).toBe(amount <= 9);
    expect(codes(small)).toContain('fit.bust-small');
  });
  it('is not altered while its ease is within what is usual, unless she likes another', () => {
    // 90 by design; 65 and more is usual.
    for (const more of [13, 20, 25]) {
      const within = fitted({ measures: withBust(more) });
      expect(within.ways[0]?.alterations, String(more)).toEqual([]);
      expect(within.sizes[4]?.cells[0]?.verdict).toBe('usual');
      expect(codes(within)).toContain('fit.bust-usual');
      expect(fitted({ measures: withBust(more), liked: { bust: 90 } }).ways[0]?.alterations).toHaveLength(1);
    }
    expect(fitted({ measures: withBust(27) }).ways[0]?.alterations).toHaveLength(1);
  });
  it('is not made smaller on the very body a roomy design is drafted for', () => {
    const roomy: PatternFigures = {
      ...figures,
      sizes: figures.sizes.map((size) => ({
        ...size,
        girths: size.girths.map((girth) =>
          girth.measure === 'bustGirth' ? { ...girth, finished: girth.finished + 50 } : girth,
        ),
      })),
    };
    expect(fitted({ measures: body, pattern: roomy, figures: roomy }).ways[0]?.alterations).toEqual([]);
  });
  it('goes by the ease she likes', () => {
    const answer = fitted({ measures: withBust(50), liked: { bust: 65 } });
    // 90 by design and 65 liked: 25 less to add.
    expect(answer.ways[0]?.alterations[0]?.total).toBeCloseTo(25, -1);
    expect(fitted({ measures: withBust(20), liked: { bust: 65 } }).ways[0]?.alterations).toEqual([]);
  });
  it('is not opened further than one step of the alteration takes', () => {
    const answer = fitted({ measures: withBust(160) });
    expect(answer.ways[0]?.alterations[0]).toMatchObject({ params: { amount: 60 }, total: 120 });
    expect(codes(answer)).toContain('fit.bust-beyond');
  });
  it('without a dart is said, not suggested', () => {
    const dartless: Pattern = {
      ...blouse,
      sizes: blouse.sizes.map((size) => ({
        ...size,
        garment: {
          ...size.garment,
          pieces: size.garment.pieces.map((piece) =>
            piece.role === 'front'
              ? { ...piece, landmarks: piece.landmarks.filter(({ id }) => id !== 'bust-point') }
              : piece,
          ),
        },
      })),
    };
    const answer = fitted({ measures: withBust(50), pattern: dartless });
    expect(answer.ways[0]?.alterations).toEqual([]);
    expect(codes(answer)).toContain('fit.bust-no-dart');
  });
});

describe('other differences', () => {
  const body = chartBody(4);
  it('lengths are taken zone by zone, from what was measured', () => {
    const longer = { ...body, backWaistLength: body.backWaistLength - 22, armLength: body.armLength + 30 };
    expect(fitted({ measures: longer }).ways[0]?.alterations).toMatchObject([
      { alteration: 'lengthen-shorten', params: { where: 'above-waist', amount: -22 }, total: -22 },
      { alteration: 'lengthen-shorten', params: { where: 'sleeve', amount: 30 }, total: 30, count: 2 },
    ]);
    expect(fitted({ measures: { ...body, backWaistLength: body.backWaistLength + 9 } }).ways[0]?.alterations).toEqual(
      [],
    );
    const { backWaistLength: _, ...unmeasured } = { ...body, stature: 1800, napeHeight: 1550 };
    const answer = fitted({ measures: unmeasured });
    expect(answer.estimated).toEqual(['backWaistLength']);
    expect(answer.ways[0]?.alterations).toEqual([]);
    expect(codes(answer)).toEqual(expect.arrayContaining(['fit.length-not-measured', 'fit.estimated']));
  });
  it('a wider hip is run out to the size that has it', () => {
    const answer = fitted({ measures: { ...body, hipGirth: body.hipGirth + 75 } });
    expect(answer.ways[0]?.startingSize).toBe('5');
    expect(answer.ways[0]?.blend).toMatchObject([{ level: 'hip' }]);
    const to = figures.sizes.findIndex((size) => size.size === answer.ways[0]?.blend[0]?.size);
    expect(to).toBeGreaterThan(4);
    expect(answer.sizes[to]?.cells.find((cell) => cell.level === 'hip')?.verdict).toBe('usual');
  });
  it('a close call is said, and settled for the smaller', () => {
    const answer = fitted({
      measures: { ...body, upperBustGirth: (body.upperBustGirth + chartBody(5).upperBustGirth) / 2 },
    });
    expect(answer.ways[0]?.startingSize).toBe('5');
    expect(answer.scale).toMatchObject({ close: true, position: 4.5 });
    expect(codes(answer)).toContain('fit.size-close-call');
  });
  it('a body beyond the chart starts from its last size, and is told so', () => {
    const answer = fitted({ measures: { ...chartBody(9), upperBustGirth: 1400, bustGirth: 1450 } });
    expect(answer.ways[0]?.startingSize).toBe('10');
    expect(codes(answer)).toContain('fit.size-outside-chart');
  });
  it('her own choice of size comes first, the recommended one second', () => {
    const answer = fitted({ measures: body, size: '7' });
    expect(answer.ways.map((way) => way.startingSize)).toEqual(['7', '5']);
    expect(codes(answer)).toContain('fit.size-chosen');
  });
});

describe('what is said', () => {
  const body = chartBody(4);
  const saying = (answer: Fit, code: string, way = 0) => {
    const reason = answer.ways[way]?.reasons.find((one) => one.code === code);
    return reason ? reasonSentence(reason, 'cm').replaceAll('\u00a0', ' ') : undefined;
  };
  it('of a full bust in two sentences whose sums come out as printed', () => {
    expect(saying(fitted({ measures: { ...body, bustGirth: 1016 } }), 'fit.bust-full')).toBe(
      'The bust of 101.6 cm with 9.0 cm of ease needs 110.6 cm; the size measures 105.0 cm finished. So 5.6 cm more in all, 2.8 cm on each half of the front.',
    );
  });
  it('of the hip that only the full bust makes wide enough', () => {
    const measures = { ...body, bustGirth: body.bustGirth + 56, hipGirth: body.hipGirth + 50 };
    const mended = fitted({ measures });
    expect(codes(mended)).toContain('fit.mended-by-bust');
    expect(codes(mended)).not.toContain('fit.level-too-tight');
    const without = fitted({ measures: { ...measures, bustGirth: body.bustGirth } });
    expect(codes(without)).toContain('fit.level-too-tight');
    expect(codes(without)).not.toContain('fit.mended-by-bust');
  });
  it('of lengths that agree once, and of those that do not not at all', () => {
    expect(saying(fitted({ measures: body }), 'fit.lengths-agree')).toBe(
      'Back waist length and arm length agree with the size, within 1.0 cm.',
    );
    const longArm = fitted({ measures: { ...body, armLength: body.armLength + 30 } });
    expect(saying(longArm, 'fit.length-agrees')).toBe('Back waist length agrees with the size, within 1.0 cm.');
    expect(codes(longArm)).not.toContain('fit.lengths-agree');
  });
  it('of a sleeve too tight: the size whose sleeve is wide enough, for no alteration widens one', () => {
    const answer = fitted({ measures: { ...body, upperArmGirth: body.upperArmGirth + 30 } });
    const size = answer.ways[0]?.reasons.find(({ code }) => code === 'fit.arm-too-tight')?.values?.size;
    const index = figures.sizes.findIndex((one) => one.size === size);
    const verdicts = answer.sizes.map(({ cells }) => cells.find(({ level }) => level === 'upper-arm')?.verdict);
    expect(index).toBeGreaterThan(4);
    expect(verdicts[index]).not.toBe('too-tight');
    expect(verdicts[index - 1]).toBe('too-tight');
    expect(codes(fitted({ measures: { ...body, upperArmGirth: 440 } }))).toContain('fit.arm-too-tight-in-all');
  });
  it('of an ease printed as its border is: just under, and in the table usual', () => {
    const hip = fitted({ measures: body }).ways[0]?.ease.find(({ level }) => level === 'hip');
    if (!hip) throw new Error('no hip');
    const answer = fitted({ measures: { ...body, hipGirth: hip.finished - 50 + 0.8 } });
    const cell = answer.ways[0]?.ease.find(({ level }) => level === 'hip');
    const reason = answer.ways[0]?.reasons.find(({ code }) => code === 'fit.level-snug');
    if (!cell || !reason) throw new Error('not snug');
    expect(cell.verdict).toBe('snug');
    expect(reasonSentence(reason, 'in')).toContain('just under');
    expect(reasonSentence(reason, 'cm')).not.toContain('just under');
    expect(verdictAsShown(cell, (mm) => lengthAsShown(mm, 'in', { purpose: 'amount' }))).toBe('usual');
    expect(verdictAsShown(cell, (mm) => lengthAsShown(mm, 'cm', { purpose: 'amount' }))).toBe('snug');
  });
  it('of a level is one range whatever the size', () => {
    for (const level of ['bust', 'waist', 'hip', 'upper-arm']) {
      const ranges = fitted({ measures: body }).sizes.map(({ cells }) => {
        const cell = cells.find((one) => one.level === level);
        return `${cell?.least} ${cell?.low} ${cell?.high}`;
      });
      expect(new Set(ranges).size, level).toBe(1);
    }
  });
});

describe('cloth of another kind than the pattern is drafted for', () => {
  const measures = chartBody(4);
  const poplin: Cloth = { ...jersey(0), structure: 'woven', name: 'Grey poplin' };
  const first = (answer: Fit) => answer.ways.map((way) => way.reasons[0]?.code);
  it('is said before all else, in every way', () => {
    const knitInWoven = fitted({ pattern: knitTop, measures, cloth: poplin });
    expect(new Set(first(knitInWoven))).toEqual(new Set(['fit.wants-knit']));
    expect(knitInWoven.ways[0]?.reasons[0]?.values).toMatchObject({ needed: 40, has: 0, cloth: 'Grey poplin' });
    expect(new Set(first(fitted({ measures, cloth: jersey(0.4) })))).toEqual(new Set(['fit.wants-woven']));
    expect(new Set(first(fitted({ pattern: knitTop, measures, cloth: jersey(0.3) })))).toEqual(
      new Set(['fit.stretch-too-little']),
    );
  });
  it('is not said of cloth that suits, or while there is none', () => {
    for (const answer of [
      fitted({ pattern: knitTop, measures, cloth: jersey(0.4) }),
      fitted({ measures, cloth: poplin }),
      fitted({ pattern: knitTop, measures }),
    ]) {
      expect(codes(answer).filter((code) => /wants-|stretch-too/.test(code))).toEqual([]);
    }
  });
});

describe('a dart the full bust would make too wide', () => {
  const [five, six] = [chartBody(4), chartBody(5)];
  const between = (share: number, bustGirth: number): Measures => ({
    ...five,
    upperBustGirth: five.upperBustGirth + share * (six.upperBustGirth - five.upperBustGirth),
    bustGirth,
  });
  it('is foretold, and in a close call the larger size is taken instead', () => {
    const near = fitted({ measures: between(0.2, five.bustGirth + 56) });
    expect(near.ways[0]?.startingSize).toBe('5');
    const wide = near.ways[0]?.reasons.find(({ code }) => code === 'fit.bust-dart-wide');
    const intake = wide?.values?.intake;
    expect(typeof intake === 'object' && intake.mm).toBeGreaterThan(widestDart);
    const close = fitted({ measures: between(0.45, five.bustGirth + 56) });
    expect(close.scale.close).toBe(true);
    expect(close.ways.map((way) => way.startingSize)).toEqual(['6', '5']);
    expect(codes(close)).toContain('fit.size-up-for-dart');
    // With nothing to open there is no reason to go up.
    const plain = fitted({ measures: between(0.45, five.bustGirth) });
    expect(plain.ways[0]?.startingSize).toBe('5');
    expect(codes(plain)).not.toContain('fit.size-up-for-dart');
  });
  it('is as wide as drafted while nothing is put in', () => {
    for (const size of blouse.sizes) {
      for (const piece of size.garment.pieces) {
        const dart = bustDart(piece);
        if (dart) expect(intakeWith(dart, 0)).toBeCloseTo(dartsOf(piece)[0]?.intake ?? 0, 6);
      }
    }
  });
});

describe('knits', () => {
  const body = chartBody(4);
  it('go by the bust, without bust alteration', () => {
    const answer = fitted({ pattern: knitTop, measures: body });
    expect(answer.scale.by).toBe('bust');
    expect(codes(answer)).toContain('fit.bust-knit');
    expect(answer.ways[0]?.alterations).toEqual([]);
    expect(answer.ways[0]?.ease.find((cell) => cell.level === 'bust')?.least).toBeCloseTo(
      body.bustGirth / 1.12 - body.bustGirth,
      6,
    );
  });
  it('go up where the cloth in hand stretches too little', () => {
    const measures = { ...body, bustGirth: 1000 };
    const stretchy = fitted({ pattern: knitTop, measures, cloth: jersey(0.5) });
    const stiff = fitted({ pattern: knitTop, measures, cloth: jersey(0) });
    const index = (answer: Fit) => figures.sizes.findIndex((size) => size.size === answer.ways[0]?.startingSize);
    expect(index(stiff)).toBeGreaterThan(index(stretchy));
    expect(codes(stiff)).toContain('fit.size-up-for-stretch');
    expect(stiff.ways[0]?.ease.find((cell) => cell.level === 'bust')?.ease).toBeGreaterThanOrEqual(0);
  });
});

describe('what is missing or wrong', () => {
  it('works from the bust alone and says what is estimated', () => {
    const answer = fitted({ measures: { bustGirth: 960 } });
    expect(answer.estimated).toHaveLength(measureIds.length - 1);
    expect(codes(answer).filter((code) => code === 'fit.estimated').length).toBeGreaterThan(3);
    expect(answer.ways[0]?.ease.find((cell) => cell.level === 'hip')?.bodyEstimated).toBe(true);
    expect(answer.ways[0]?.ease.find((cell) => cell.level === 'bust')?.bodyEstimated).toBe(false);
  });
  it.each<[string, Partial<FitQuestion> & { measures: Measures }, string]>([
    ['nothing of the trunk', { measures: { stature: 1650 } }, 'fit.measure-missing'],
    ['no measures', { measures: {} }, 'fit.measure-missing'],
    ['an impossible measure', { measures: { ...chartBody(4), hipGirth: 98 } }, 'body.impossible'],
    ['a measure that is no number', { measures: { ...chartBody(4), hipGirth: Number.NaN } }, 'body.impossible'],
    ['a size not in the chart', { measures: chartBody(4), size: '44' }, 'fit.size-unknown'],
    ['a pattern without sizes', { measures: chartBody(4), pattern: { ...blouse, sizes: [] } }, 'fit.chart-incomplete'],
    [
      'a chart without bust',
      { measures: chartBody(4), pattern: { ...blouse, sizes: blouse.sizes.map((size) => ({ ...size, body: {} })) } },
      'fit.chart-incomplete',
    ],
    [
      'a child without stature',
      { measures: { bustGirth: 700 }, pattern: { ...blouse, for: 'child' } },
      'fit.measure-missing',
    ],
  ])('refuses %s', (_, question, code) => {
    const asked = { pattern: blouse, ...question };
    expect(fitPattern(asked)).toMatchObject({ ok: false, problem: { code } });
  });
});

describe('choosing the nearest', () => {
  it.each([20261, fresh])('never gives a larger body a smaller size (seed %d)', (seed) => {
    const charts = fc
      .uniqueArray(fc.integer({ min: 700, max: 1500 }), { minLength: 1, maxLength: 14 })
      .map((figures) => figures.toSorted((a, b) => a - b));
    fc.assert(
      fc.property(
        charts,
        fc.double({ min: 500, max: 1800, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        (chart, body, more) => {
          const [smaller, larger] = [nearestSize(chart, body), nearestSize(chart, body + more)];
          expect(larger.index).toBeGreaterThanOrEqual(smaller.index);
          expect(larger.position).toBeGreaterThanOrEqual(smaller.position);
          for (const figure of chart) {
            expect(Math.abs((chart[smaller.index] ?? 0) - body)).toBeLessThanOrEqual(Math.abs(figure - body));
          }
        },
      ),
      { seed, numRuns: 500 },
    );
  });
});

const bodies = fc.record({
  bustGirth: fc.integer({ min: 780, max: 1300 }),
  cup: fc.integer({ min: 5, max: 120 }),
  waistGirth: fc.integer({ min: 560, max: 1200 }),
  hipGirth: fc.integer({ min: 800, max: 1350 }),
  backWaistLength: fc.integer({ min: 330, max: 470 }),
  upperArmGirth: fc.integer({ min: 210, max: 400 }),
  armLength: fc.integer({ min: 480, max: 660 }),
});

describe('for any body', () => {
  it.each([20261, fresh])('a larger upper bust never gets a smaller size (seed %d)', (seed) => {
    fc.assert(
      fc.property(bodies, fc.integer({ min: 0, max: 120 }), ({ cup, ...measures }, more) => {
        const at = (upperBustGirth: number) => {
          const answer = fitted({ measures: { ...measures, upperBustGirth } });
          return figures.sizes.findIndex((size) => size.size === answer.ways[answer.recommended]?.startingSize);
        };
        expect(at(measures.bustGirth - cup + more)).toBeGreaterThanOrEqual(at(measures.bustGirth - cup));
      }),
      { seed, numRuns: 100 },
    );
  });
  it.each([20261, fresh])('a fuller bust on the same body never gets a smaller size (seed %d)', (seed) => {
    fc.assert(
      fc.property(bodies, fc.integer({ min: 0, max: 120 }), ({ cup, ...measures }, more) => {
        const at = (bustGirth: number) => {
          const answer = fitted({ measures: { ...measures, bustGirth, upperBustGirth: measures.bustGirth - cup } });
          return figures.sizes.findIndex((size) => size.size === answer.ways[answer.recommended]?.startingSize);
        };
        expect(at(measures.bustGirth + more)).toBeGreaterThanOrEqual(at(measures.bustGirth));
      }),
      { seed, numRuns: 100 },
    );
  });
  it.each([20261, fresh])('sums and comparisons are true as they are printed (seed %d)', (seed) => {
    const lengthsIn = (text: string, unit: 'cm' | 'in'): readonly number[] =>
      [...text.matchAll(unit === 'cm' ? /−?[\d.]+\u00a0cm/g : /−?[\d¼½¾⅛⅜⅝⅞⁰¹²³⁴-⁹₀-₉⁄]+″/g)].map(([one]) => {
        const read = parseLength(one, unit, { signed: true });
        if (!read.ok) throw new Error(`${read.problem.code} ${one}`);
        return read.value;
      });
    fc.assert(
      fc.property(bodies, fc.constantFrom('cm', 'in'), ({ cup, ...rest }, unit) => {
        const answer = fitted({ measures: { ...rest, upperBustGirth: rest.bustGirth - cup } });
        for (const reason of answer.ways.flatMap((way) => way.reasons)) {
          const text = reasonSentence(reason, unit);
          const all = lengthsIn(text, unit);
          if (/bust-(full|small)$/.test(reason.code)) {
            const [bust = 0, liked = 0, needs = 0, finished = 0] = all;
            const [total = 0, half = 0] = all.slice(-2);
            expect(bust + liked, text).toBeCloseTo(needs, 4);
            expect(2 * half, text).toBeCloseTo(total, 4);
            if (text.includes('. So ') && !text.includes('. So, ')) {
              expect(Math.abs(needs - finished), text).toBeCloseTo(total, 4);
            }
          }
          if (reason.code === 'fit.size-by-upper-bust') {
            expect((all[2] ?? 0) - (all[3] ?? 0), text).toBeCloseTo(all[1] ?? 0, 4);
          }
          if (/too-tight|level-snug/.test(reason.code)) {
            const [ease = 0, border = 0] = all;
            if (!text.includes('just under')) expect(ease, text).toBeLessThan(border);
            else expect(ease, text).toBeCloseTo(border, 4);
          }
        }
      }),
      { seed, numRuns: 100 },
    );
  });
  it.each([20261, fresh])('the answer is the same whether she writes cm or inches (seed %d)', (seed) => {
    fc.assert(
      fc.property(bodies, ({ cup, ...rest }) => {
        const mm: Record<string, number> = { ...rest, upperBustGirth: rest.bustGirth - cup };
        const written = (write: (value: number) => string, unit: 'cm' | 'in'): Measures =>
          Object.fromEntries(
            Object.entries(mm).map(([id, value]) => {
              const read = parseLength(write(value), unit);
              if (!read.ok) throw new Error(`${read.problem.code} ${write(value)}`);
              // A tape is read to a tenth of a millimetre at best.
              return [id, Math.round(read.value * 10) / 10];
            }),
          );
        const inCm = written((value) => String(value / 10), 'cm');
        const inInches = written((value) => (value / millimetresPer.in).toFixed(6), 'in');
        expect(fitted({ measures: inInches })).toEqual(fitted({ measures: inCm }));
      }),
      { seed, numRuns: 60 },
    );
  });
  it.each([20261, fresh])('sums are right, ranges ordered, and every reason has words (seed %d)', (seed) => {
    fc.assert(
      fc.property(bodies, ({ cup, ...rest }) => {
        const answer = fitted({ measures: { ...rest, upperBustGirth: rest.bustGirth - cup } });
        for (const way of answer.ways) {
          for (const step of way.alterations) {
            expect(step.total).toBe(step.alteration.endsWith('-bust') ? step.perPiece * step.count : step.perPiece);
            expect(Number.isInteger(step.perPiece)).toBe(true);
          }
          for (const cell of way.ease) {
            expect(cell.least).toBeLessThanOrEqual(cell.low);
            expect(cell.low).toBeLessThanOrEqual(cell.high);
            expect(cell.verdict === 'too-tight').toBe(cell.ease < cell.least);
            expect(cell.verdict === 'roomy').toBe(cell.ease > cell.high + 0.5);
          }
          for (const reason of way.reasons) {
            expect(Object.keys(fitWords.reasons)).toContain(reason.code);
            for (const unit of ['cm', 'in'] as const) expect(reasonSentence(reason, unit)).not.toMatch(/[{}]/);
          }
          const bust = way.alterations.find((step) => step.alteration.endsWith('-bust'));
          // Altered, the bust has the design's ease again, or the most that is usual, but for rounding to whole mm a half.
          const cell = way.ease.find((one) => one.level === 'bust');
          if (bust && cell && !way.reasons.some(({ code }) => /beyond$/.test(code))) {
            // It may stop short where the dart is used up, or one step takes no more: by less than is worth an alteration.
            const short = bust.total < 0 || bust.perPiece === 60 ? 12 : 1;
            expect(Math.abs(cell.ease - Math.min(cell.designed ?? 0, 90))).toBeLessThanOrEqual(short + tolerance.same);
          }
        }
      }),
      { seed, numRuns: 100 },
    );
  });
});
