import { describe, expect, test } from 'vitest';
import type { Cloth } from '../cloth/index.ts';
import { buyLength } from './buy.ts';
import { grainTurns } from './grain.ts';
import { printedLayout, readLayoutFile } from './instance.ts';
import { openedOutline, placedPoint } from './place.ts';
import { polygonArea } from './polygon.ts';
import { searchLayout } from './search.ts';
import type { Layout, LayoutProblem } from './types.ts';

const box = (width: number, height: number): [number, number][] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

const cloth: Cloth = {
  format: 'easewright-cloth/1',
  name: 'quay poplin',
  structure: 'woven',
  fibres: 'cotton',
  weight: 120,
  width: 1400,
  length: 2000,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0.05,
  shrinkAcross: 0.02,
  washed: false,
  colour: 'navy',
  terms: 'bought',
  from: 'the shop on the quay',
  note: '',
};

const layoutOf = (length: number): Layout => ({ stretches: [], placed: [], length, density: 80, spare: [] });

describe('what to buy', () => {
  test('is the plan before the first wash, and the ends squared, to the next tenth and eighth', () => {
    const needed = buyLength(layoutOf(1710), { ...cloth, length: null });
    expect(needed.exact).toBeCloseTo(1710 / 0.95 + 50, 9);
    expect(needed.shrinkage).toBeCloseTo(90, 9);
    expect(needed.toBuyMetric).toBeCloseTo(1900, 9);
    expect(needed.toBuyYards / 914.4).toBeCloseTo(2.125, 9);
    expect(needed.fits).toBeNull();
  });

  test('adds nothing for shrinkage to washed cloth', () => {
    const needed = buyLength(layoutOf(1710), { ...cloth, washed: true });
    expect(needed.shrinkage).toBe(0);
    expect(needed.exact).toBe(1760);
    expect(needed.inHand).toBe(2000);
    expect(needed.spare).toBe(290);
    expect(needed.fits).toBe('yes');
  });

  test('says how much a length in hand is short, or tight, after washing', () => {
    expect(buyLength(layoutOf(1950), cloth)).toMatchObject({ fits: 'no', spare: -50, inHand: 1900 });
    expect(buyLength(layoutOf(1870), cloth)).toMatchObject({ fits: 'tight', spare: 30 });
    expect(buyLength(layoutOf(1700), { ...cloth, structure: 'knit' }).squaring).toBe(100);
  });

  test('does not put a round length up a step', () => {
    expect(buyLength(layoutOf(1850), { ...cloth, washed: true }).toBuyMetric).toBe(1900);
  });
});

describe('turns along the grain', () => {
  test.each([
    [0, 100],
    [0, -100],
    [30, 100],
    [-30, -100],
    [100, 0],
    [-40, 70],
  ])('a grain of (%d, %d) comes to lie along the cloth', (x, y) => {
    for (const oneWay of [true, false]) {
      for (const turn of grainTurns({ from: { x: 0, y: 0 }, to: { x, y } }, oneWay)) {
        const end = placedPoint({ ...turn, x: 0, y: 0 }, { x, y });
        expect(Math.abs(end.y)).toBeLessThan(1e-9);
        if (oneWay && y !== 0) expect(Math.sign(end.x)).toBe(Math.sign(y));
      }
    }
  });

  test('upright grain turns by exact quarters', () => {
    const turns = grainTurns({ from: { x: 5, y: 300 }, to: { x: 5, y: 0 } }, false);
    expect(turns.map(({ rotation }) => rotation).sort()).toEqual([270, 270, 90, 90]);
  });
});

describe('a piece on the fold, opened', () => {
  test('is the half and its mirror image as one outline', () => {
    const half = [
      { x: 0, y: 0 },
      { x: 60, y: 20 },
      { x: 80, y: 200 },
      { x: 0, y: 180 },
    ];
    const opened = openedOutline(half, [
      { x: 0, y: 0 },
      { x: 0, y: 180 },
    ]);
    expect(polygonArea(opened)).toBeCloseTo(2 * polygonArea(half), 9);
    expect(Math.min(...opened.map(({ x }) => x))).toBe(-80);
    expect(Math.max(...opened.map(({ x }) => x))).toBe(80);
    expect(opened).toHaveLength(6);
  });
});

describe('layout files', () => {
  const open = {
    strip_height: 100,
    items: [{ id: 0, demand: 3, allowed_orientations: [0, 180], shape: { data: box(40, 30) } }],
  };
  const own = {
    format: 'easewright-layout/1',
    cloth: { width: 600, fold: 'lengthwise' },
    items: [
      {
        id: 'cuff',
        outline: box(100, 60),
        copies: 1,
        grain: [
          [0, 0],
          [0, 60],
        ],
      },
    ],
  };

  test('the public format is read, solved and printed with its own ids', async () => {
    const file = readLayoutFile(open);
    if (!file.ok) throw new Error(file.problem.code);
    const result = await searchLayout(file.value.problem, { rounds: 40, seed: 1 });
    if (!result.ok) throw new Error(result.problem.code);
    const printed = printedLayout(result.value, file.value.numbered);
    expect(printed.placed.map(({ id }) => id)).toEqual([0, 0, 0]);
    // Three boxes 30 high fit across 100: the plan is one box long and 90 % full.
    expect(printed.length).toBeCloseTo(40, 3);
    expect(printed.density).toBeCloseTo(90, 2);
  });

  test('a lone copy on folded cloth is cut with one to spare, or alone where that takes less', async () => {
    const file = readLayoutFile(own);
    if (!file.ok) throw new Error(file.problem.code);
    const result = await searchLayout(file.value.problem, { rounds: 20, seed: 1 });
    if (!result.ok) throw new Error(result.problem.code);
    expect(result.value.length).toBeCloseTo(60, 3);
    expect(result.value.spare).toEqual([{ id: 'cuff', copies: 1 }]);
  });

  test('a large copy without a partner goes on a single stretch beside the folded part when that saves cloth', async () => {
    const problem: LayoutProblem = {
      cloth: { width: 1000, length: null, fold: 'lengthwise', oneWay: false, gap: 0 },
      items: ['left', 'right'].map((id) => ({
        id,
        name: id,
        // Different outlines without symmetry, so that neither can partner the other nor itself.
        outline: [
          { x: 0, y: 0 },
          { x: 480, y: 0 },
          { x: 470, y: 300 },
          { x: 0, y: id === 'left' ? 300 : 290 },
        ],
        plain: 1,
        mirrored: 0,
        turns: grainTurns({ from: { x: 0, y: 0 }, to: { x: 0, y: 300 } }, false),
        fold: null,
      })),
    };
    const result = await searchLayout(problem, { rounds: 200, seed: 1 });
    if (!result.ok) throw new Error(result.problem.code);
    expect(result.value.stretches.map(({ kind }) => kind)).toEqual(['single']);
    expect(result.value.spare).toEqual([]);
    expect(result.value.length).toBeLessThan(320);
  });

  test('what is wider than the folded cloth goes on a single stretch after it, opened', async () => {
    const file = readLayoutFile({
      ...own,
      items: [
        { ...own.items[0], copies: 2, mirrored: true },
        {
          id: 'apron',
          outline: box(320, 200),
          copies: 1,
          grain: [
            [0, 0],
            [0, 200],
          ],
          fold: [
            [0, 0],
            [0, 200],
          ],
        },
      ],
    });
    // Opened the apron would be 640 across: too wide for the cloth in any way.
    expect(file.ok).toBe(false);
    const narrower = readLayoutFile({
      ...own,
      items: [
        { ...own.items[0], copies: 2, mirrored: true },
        {
          id: 'sash',
          outline: box(310, 200),
          copies: 1,
          grain: [
            [0, 0],
            [0, 200],
          ],
        },
      ],
    });
    if (!narrower.ok) throw new Error(narrower.problem.code);
    const result = await searchLayout(narrower.value.problem, { rounds: 20, seed: 1 });
    if (!result.ok) throw new Error(result.problem.code);
    expect(result.value.stretches.map(({ kind, height }) => [kind, height])).toEqual([
      ['folded', 300],
      ['single', 600],
    ]);
    expect(result.value.spare).toEqual([]);
    expect(result.value.length).toBeCloseTo(260, 3);
  });

  test('the same seed and rounds give the same plan', async () => {
    const file = readLayoutFile(open);
    if (!file.ok) throw new Error(file.problem.code);
    const [first, second, other] = await Promise.all(
      [7, 7, 8].map((seed) => searchLayout(file.value.problem, { rounds: 30, seed })),
    );
    expect(second).toEqual(first);
    expect(other?.ok).toBe(true);
  });

  test.each([
    ['nothing', null, 'lay.not-a-layout'],
    ['another document', { name: 'x' }, 'lay.not-a-layout'],
    ['a strip without items', { strip_height: 10 }, 'lay.field'],
    ['an unknown version', { ...own, format: 'easewright-layout/9' }, 'lay.field'],
    ['no pieces', { ...own, items: [] }, 'lay.nothing'],
    [
      'an outline that crosses itself',
      {
        ...open,
        items: [
          {
            ...open.items[0],
            shape: {
              data: [
                [0, 0],
                [50, 50],
                [60, 0],
                [0, 40],
              ],
            },
          },
        ],
      },
      'lay.crossed-outline',
    ],
    [
      'an outline without area',
      {
        ...open,
        items: [
          {
            ...open.items[0],
            shape: {
              data: [
                [0, 0],
                [50, 0],
                [90, 0],
              ],
            },
          },
        ],
      },
      'lay.no-outline',
    ],
    ['two pieces of one id', { ...open, items: [open.items[0], open.items[0]] }, 'lay.same-id'],
  ])('%s is refused with a sentence', (_what, json, code) => {
    const read = readLayoutFile(json);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problem.code).toBe(code);
  });

  test('a piece wider than the cloth is refused by name with both widths', () => {
    const read = readLayoutFile({ ...own, items: [{ ...own.items[0], outline: box(700, 60), copies: 1 }] });
    expect(read.ok).toBe(false);
    if (!read.ok) {
      expect(read.problem).toEqual({
        code: 'lay.wider-than-cloth',
        values: { piece: 'cuff', width: { mm: 700 }, cloth: { mm: 600 } },
      });
    }
  });
});
