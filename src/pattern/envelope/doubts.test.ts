import { describe, expect, it, test } from 'vitest';
import { sentence } from '../../words/index.ts';
import { type Envelope, type EnvelopeDoubt, envelopeDoubts, keepDoubt } from './index.ts';
import { choirBlouse, withBody } from './testing/envelopes.ts';

const inch = 25.4;
const codes = (doubts: readonly EnvelopeDoubt[]): readonly string[] =>
  doubts.map(({ code }) => code.replace('envelope.doubt-', ''));

test('an envelope printed as envelopes are raises no doubt', () => {
  expect(envelopeDoubts(choirBlouse)).toEqual([]);
});

const finished = (...rows: Envelope['finished']): Envelope => ({ ...choirBlouse, finished: rows });
const bust = choirBlouse.finished[0] as Envelope['finished'][number];
const times = (row: typeof bust, by: number): typeof bust => ({
  ...row,
  figures: row.figures.map((figure) => Number(figure) * by),
});
const cloth = (...rows: Envelope['clothNeeded']): Envelope => ({ ...choirBlouse, clothNeeded: rows });
const [without, withNap, wide] = choirBlouse.clothNeeded as [
  Envelope['clothNeeded'][number],
  Envelope['clothNeeded'][number],
  Envelope['clothNeeded'][number],
];

describe('what is doubted', () => {
  it.each<[string, Envelope, readonly string[]]>([
    ['a digit turned round', withBody(3, 2, 63 * inch), ['uneven']],
    ['an inch missed', withBody(2, 3, 29.5 * inch), ['uneven']],
    ['a figure under the size before', withBody(2, 3, 26 * inch), ['uneven']],
    [
      'columns that cross',
      {
        ...choirBlouse,
        body: choirBlouse.body.slice(2, 3).map((row) => ({ ...row, figures: row.figures.toReversed() })),
      },
      ['falls'],
    ],
    ['one figure in cm typed as inches', withBody(0, 4, 96 * inch), ['unit']],
    ['a bust nobody has', withBody(0, 4, 4500), ['impossible']],
    ['a bust of another cup', { ...choirBlouse, draftedCup: 4 * inch }, ['cup']],
    [
      'a row in inches typed as cm',
      {
        ...choirBlouse,
        draftedCup: null,
        body: choirBlouse.body
          .slice(3, 4)
          .map((row) => ({ ...row, figures: row.figures.map((figure) => Number(figure) / 2.54) })),
      },
      ['unit-row'],
    ],
    [
      'a finished bust under the body',
      finished(times(bust, 0.85)),
      ['under-body', 'under-body', 'under-body', 'under-body', 'under-body'],
    ],
    ['finished measurements in inches typed as cm', finished(times(bust, 1 / 2.54)), ['unit-row']],
    [
      'a hip under the waist',
      finished({ ...bust, of: 'waist' }, { ...times(bust, 0.98), of: 'hip' }),
      ['hip-under-waist'],
    ],
    [
      'cloth that shrinks with the size',
      cloth({ ...without, figures: [2100, 2100, 2000, 2300, 2400] }),
      ['cloth-falls'],
    ],
    [
      'narrower cloth that needs less',
      cloth({ ...without, width: 900 }, { ...wide, figures: [2500, 2500, 2500, 2500, 2500] }),
      ['cloth-narrow'],
    ],
    ['nap that needs less', cloth(without, { ...withNap, figures: [2000, 2000, 2100, 2200, 2300] }), ['cloth-nap']],
    ['an allowance in cm typed as mm', { ...choirBlouse, allowance: 1.5 }, ['allowance']],
    ['a bust given for the cup', { ...choirBlouse, body: [], draftedCup: 340 }, ['drafted-cup']],
    ['a stature in inches typed as cm', { ...choirBlouse, draftedStature: 660 }, ['drafted-stature']],
    ['a width in inches typed as cm', cloth({ ...without, width: 450 }), ['width-unit']],
  ])('%s', (_, envelope, expected) => {
    const doubts = envelopeDoubts(envelope);
    expect(codes(doubts)).toEqual(expected);
    for (const doubt of doubts) {
      const { message, remedy } = sentence(doubt, 'in');
      expect(`${message} ${remedy}`).not.toMatch(/[{}]|no words for it/);
    }
  });

  it('names row and size, and what would be likely', () => {
    const [doubt] = envelopeDoubts(withBody(3, 2, 63 * inch));
    expect(doubt).toMatchObject({ where: { chart: 'body', row: 3, size: 2 }, values: { size: '12' } });
    expect(sentence(doubt as EnvelopeDoubt, 'in').message).toBe(
      '“hip girth” is 63″ in size 12; by the sizes beside it, about 36¼″ would be likely.',
    );
  });

  it('lets a knit be under the body as far as its stretch allows, and no further', () => {
    const knit = (share: number): Envelope => ({
      ...finished(times(bust, share)),
      cloth: { ...choirBlouse.cloth, structure: 'knit', stretch: 0.5 },
    });
    const body = 31.5 / 35;
    expect(codes(envelopeDoubts(knit(body * 0.9)))).toEqual([]);
    expect(codes(envelopeDoubts(knit(body * 0.8)))[0]).toBe('under-stretch');
  });

  it('does not doubt a chart whose steps widen as the sizes grow', () => {
    const figures = [780, 805, 830, 855, 905, 955, 1005, 1065, 1125];
    const sizes = figures.map((_, at) => String(8 + 2 * at));
    const envelope: Envelope = {
      ...choirBlouse,
      sizes,
      draftedCup: null,
      body: [{ measure: 'bustGirth', figures }],
      finished: [],
      clothNeeded: [],
    };
    expect(envelopeDoubts(envelope)).toEqual([]);
  });

  it('does not doubt a waist that is large because the size is', () => {
    const figures = [900, 1000, 1100, 1200, 1300, 1400, 1500, 1590, 1680];
    const sizes = figures.map((_, at) => `${at}X`);
    const envelope: Envelope = {
      ...choirBlouse,
      sizes,
      draftedCup: null,
      body: [{ measure: 'waistGirth', figures }],
      finished: [],
      clothNeeded: [],
    };
    expect(envelopeDoubts(envelope)).toEqual([]);
  });

  it('does not take tall sizes for figures that fall', () => {
    const envelope: Envelope = {
      ...choirBlouse,
      sizes: ['8', '10', '12', '8T', '10T', '12T'],
      draftedCup: null,
      finished: [],
      clothNeeded: [],
      body: [{ measure: 'bustGirth', figures: [800, 840, 880, 800, 840, 880] }],
    };
    expect(envelopeDoubts(envelope)).toEqual([]);
  });
});

describe('an answered doubt', () => {
  const doubtful = withBody(3, 2, 63 * inch);
  const [doubt] = envelopeDoubts(doubtful);
  const kept = keepDoubt(doubtful, doubt?.id ?? '');

  it('is not asked again, even when rows change places', () => {
    expect(envelopeDoubts(kept)).toEqual([]);
    expect(envelopeDoubts({ ...kept, body: kept.body.toReversed() })).toEqual([]);
    expect(envelopeDoubts(kept, { withKept: true })).toHaveLength(1);
  });

  it('is asked again when the figure is changed to another doubtful one', () => {
    const again = { ...withBody(3, 2, 64 * inch), kept: kept.kept };
    expect(codes(envelopeDoubts(again))).toEqual(['uneven']);
  });
});
