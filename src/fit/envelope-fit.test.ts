import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import type { Envelope } from '../pattern/index.ts';
import { reasonSentence } from '../words/index.ts';
import { mostOut } from './bust-dart.ts';
import { usualBustDart } from './generic.ts';
import { envelopeFigures, type Fit, fitPattern, levelsKnownBy } from './index.ts';
import { harbourBlouse } from './testing/envelope.ts';

const inch = 25.4;
/** The body of size 14, and 20 more round the bust. */
const body: Measures = {
  stature: 1650,
  bustGirth: 36 * inch + 20,
  upperBustGirth: 36 * inch - 50,
  waistGirth: 28 * inch,
  hipGirth: 38 * inch,
  backWaistLength: 16.5 * inch,
  armLength: 590,
  upperArmGirth: 285,
};

const fitted = (measures: Measures, envelope: Envelope = harbourBlouse, view: string | null = 'a'): Fit => {
  const fit = fitPattern({ measures, pattern: envelopeFigures(envelope, view) });
  if (!fit.ok) throw new Error(fit.problem.code);
  return fit.value;
};
const codes = (fit: Fit) => fit.ways[0]?.reasons.map(({ code }) => code) ?? [];

describe('a pattern known by its envelope', () => {
  it('gives the starting size by the upper bust, with a cup supposed where none is printed', () => {
    const fit = fitted(body);
    expect(fit.ways[0]).toMatchObject({ startingSize: '14' });
    expect(fit.scale.by).toBe('upper-bust');
    expect(codes(fit)).toContain('fit.cup-supposed');
    expect(codes(fitted(body, { ...harbourBlouse, draftedCup: 50 }))).not.toContain('fit.cup-supposed');
    // Drafted for a smaller cup, the same upper bust is a smaller size's.
    expect(fitted(body, { ...harbourBlouse, draftedCup: 0 }).ways[0]?.startingSize).toBe('12');
  });
  it('gives the ease of every printed level, and says of each figure that it is printed', () => {
    const cells = fitted(body).sizes[3]?.cells ?? [];
    expect(cells.map(({ level, finishedFrom }) => [level, finishedFrom])).toEqual([
      ['bust', 'printed'],
      ['hip', 'printed'],
      ['upper-arm', 'printed'],
    ]);
    const bust = cells[0];
    expect(bust?.ease).toBeCloseTo(39.25 * inch - 36 * inch - 20, 9);
  });
  it('says what is unknown and what to measure flat, and judges it once that is entered', () => {
    const fit = fitted(body);
    expect(fit.unknown).toEqual([
      { level: 'waist', measure: 'waistGirth', flat: 'waist', sizes: [...harbourBlouse.sizes] },
    ]);
    expect(codes(fit)).toContain('fit.finished-unknown');
    const pieces = [
      { name: 'Front', flat: 270, allowances: 30, takenOut: 0, times: 2 },
      { name: 'Back', flat: 265, allowances: 30, takenOut: 20, times: 2 },
    ];
    const measured = fitted(body, { ...harbourBlouse, flat: [{ of: 'waist', view: null, size: '14', pieces }] });
    const waist = measured.sizes[3]?.cells.find(({ level }) => level === 'waist');
    expect(waist).toMatchObject({ finished: 910, finishedFrom: 'measured-flat' });
    expect(codes(measured)).not.toContain('fit.finished-unknown');
    expect(measured.unknown[0]?.sizes).not.toContain('14');
  });
  it('goes by the view: what is printed for another view is not known here', () => {
    expect(fitted(body, harbourBlouse, 'b').unknown.map(({ level }) => level)).toEqual(['waist', 'upper-arm']);
  });
  it('judges no arm where the view has no sleeves, by her word or by its own', () => {
    const views = (b: Partial<Envelope['views'][number]>): Envelope => ({
      ...harbourBlouse,
      views: harbourBlouse.views.map((view) => (view.id === 'b' ? { ...view, ...b } : view)),
    });
    const arm = { ...body, armLength: 640 };
    const measuresSaid = (envelope: Envelope, view: string) =>
      fitted(arm, envelope, view).ways[0]?.reasons.flatMap(({ values }) => values?.measure ?? values?.level ?? []);
    expect(measuresSaid(harbourBlouse, 'b')).toEqual(expect.arrayContaining(['armLength', 'upper-arm']));
    for (const without of [views({ sleeves: false }), views({ about: 'Sleeveless, with a facing' })]) {
      const said = measuresSaid(without, 'b');
      expect(said).not.toContain('armLength');
      expect(said).not.toContain('upper-arm');
      const short = fitted({ ...arm, backWaistLength: 380 }, without, 'b');
      expect(codes(short).filter((code) => code.startsWith('fit.usual-'))).toEqual([
        'fit.usual-construction-sleeveless',
      ]);
      expect(fitted(arm, without, 'b').unknown.map(({ level }) => level)).toEqual(['waist']);
      // The other view has its sleeves still, and what holds for both has.
      expect(measuresSaid(without, 'a')).toContain('armLength');
    }
    // Her word outranks the envelope's.
    expect(measuresSaid(views({ about: 'sleeveless', sleeves: true }), 'b')).toContain('armLength');
    const alone = { ...harbourBlouse, views: [], finished: [], about: 'A top without sleeves' };
    expect(fitted(arm, alone, null).unknown.map(({ level }) => level)).not.toContain('upper-arm');
  });
  it('works its starting size from the body chart alone, and its bust by the chart', () => {
    const fit = fitted({ ...body, bustGirth: 36 * inch + 40 }, { ...harbourBlouse, finished: [] });
    expect(fit.ways[0]).toMatchObject({
      startingSize: '14',
      ease: [],
      alterations: [
        { alteration: 'full-bust', params: { amount: 20 }, total: 40, perPiece: 20, count: 2, counted: 'usual' },
      ],
    });
    expect(fit.unknown.map(({ level }) => level)).toEqual(levelsKnownBy('top'));
    const reason = fit.ways[0]?.reasons.find(({ code }) => code === 'fit.bust-full-by-chart');
    expect(reason && reasonSentence(reason, 'cm').replaceAll('\u00a0', ' ')).toBe(
      'The bust of 95.4 cm is set against the 91.4 cm the size is drafted for; what the size measures finished is not known, so its ease stays as designed. So 4.0 cm more in all, 2.0 cm on each half of the front.',
    );
  });
  it('takes out for a small bust no more than a usual dart holds, and says what is left', () => {
    const small = { ...body, bustGirth: 36 * inch - 60 };
    const [way] = fitted(small).ways;
    const step = way?.alterations.find(({ alteration }) => alteration === 'small-bust');
    const dart = usualBustDart(harbourBlouse, 'a', '14');
    expect(dart && Math.floor(mostOut(dart) - 1)).toBe(Number(step?.params.amount));
    expect(Number(step?.params.amount)).toBeLessThan(30);
    expect(step?.total).toBe(-2 * Number(step?.params.amount));
    const beyond = way?.reasons.find(({ code }) => code === 'fit.bust-small-beyond-unseen');
    expect(beyond?.values?.left).toEqual({ mm: expect.closeTo(60 - 2 * Number(step?.params.amount), 6) });
    expect(beyond && reasonSentence(beyond, 'cm')).toMatch(/left to the side seams/);
  });
  it('alters lengths against the chart, counted after the usual construction, and says so', () => {
    const fit = fitted({ ...body, backWaistLength: 16.5 * inch - 25 });
    expect(fit.ways[0]?.alterations.slice(-1)).toMatchObject([
      {
        alteration: 'lengthen-shorten',
        params: { where: 'above-waist', amount: -25 },
        total: -25,
        perPiece: -25,
        count: 4,
        counted: 'usual',
      },
    ]);
    expect(codes(fit)).toContain('fit.usual-construction');
    // Its chart does not give the arm: said, not supposed.
    expect(codes(fit)).toContain('fit.length-not-on-chart');
  });
  it('widens a sleeve that is too tight to what is usual, on its card', () => {
    const fit = fitted({ ...body, upperArmGirth: 330 });
    const [way] = fit.ways;
    const arm = way?.alterations.find(({ alteration }) => alteration === 'full-upper-arm');
    const cell = way?.ease.find(({ level }) => level === 'upper-arm');
    // Printed 13¾ inches: 19.25 of ease, 50 usual.
    expect(arm).toMatchObject({ total: 31, perPiece: 31, count: 2, counted: 'usual' });
    expect(cell?.ease).toBeCloseTo(13.75 * inch + 31 - 330, 9);
    expect(cell?.verdict).toBe('usual');
    expect(codes(fit)).toContain('fit.arm-full');
    expect(codes(fit).filter((code) => /arm-too-tight|mended/.test(code))).toEqual([]);
  });
  it('judges trousers by the hip, and asks for rise and leg where their chart gives them', () => {
    const trousers: Envelope = {
      ...harbourBlouse,
      kind: 'trousers',
      body: [
        ...harbourBlouse.body,
        { measure: 'bodyRise', figures: [255, 258, 261, 264, 267, 270, 273, 276] },
        { measure: 'insideLeg', figures: [780, 780, 780, 780, 780, 780, 780, 780] },
      ],
    };
    const fit = fitted({ ...body, bodyRise: 282, insideLeg: 745 }, trousers, null);
    expect(fit.scale.by).toBe('hip');
    expect(fit.unknown.map(({ level }) => level)).toEqual(['waist', 'thigh']);
    expect(fit.ways[0]?.alterations).toMatchObject([
      { alteration: 'lengthen-shorten', params: { where: 'rise', amount: 18 }, count: 4, counted: 'usual' },
      { alteration: 'lengthen-shorten', params: { where: 'leg', amount: -35 }, count: 4, counted: 'usual' },
    ]);
    expect(codes(fit)).toEqual(expect.arrayContaining(['fit.length-rise', 'fit.length-leg']));
    expect(codes(fit).filter((code) => code.startsWith('fit.usual-'))).toEqual(['fit.usual-construction-trousers']);
  });
  it('has words for every reason', () => {
    for (const way of fitted({ ...body, hipGirth: 1050, backWaistLength: 390 }).ways) {
      for (const reason of way.reasons) {
        for (const unit of ['cm', 'in'] as const) {
          expect(reasonSentence(reason, unit)).not.toMatch(/[{}]|^fit\./);
        }
      }
    }
  });
});
