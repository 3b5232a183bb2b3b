import { describe, expect, test } from 'vitest';
import { grainTurns } from './grain.ts';
import { searchLayout } from './search.ts';
import type { Layout, LayoutProblem } from './types.ts';
import { verifyLayout } from './verify.ts';

const upright = { from: { x: 0, y: 0 }, to: { x: 0, y: 100 } };
const turns = grainTurns(upright, true);
const box = (width: number, height: number) => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];

/** A slanted piece cut as a mirrored pair, and a half on the fold. */
const problem = (fold: 'single' | 'lengthwise'): LayoutProblem => ({
  cloth: { width: 600, length: 2000, fold, oneWay: true, gap: 2 },
  items: [
    {
      id: 'side',
      name: 'side',
      outline: [
        { x: 0, y: 0 },
        { x: 80, y: 40 },
        { x: 120, y: 300 },
        { x: 0, y: 260 },
      ],
      plain: 2,
      mirrored: 2,
      turns,
      fold: null,
    },
    {
      id: 'back',
      name: 'back',
      outline: box(140, 320),
      plain: 1,
      mirrored: 0,
      turns,
      fold: [
        { x: 0, y: 0 },
        { x: 0, y: 320 },
      ],
    },
  ],
});

const plan = async (fold: 'single' | 'lengthwise'): Promise<Layout> => {
  const result = await searchLayout(problem(fold), { rounds: 50, seed: 1 });
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};

const change = (layout: Layout, index: number, edit: Partial<Layout['placed'][number]>): Layout => ({
  ...layout,
  placed: layout.placed.map((one, i) => (i === index ? { ...one, ...edit } : one)),
});

const faults = (fold: 'single' | 'lengthwise', layout: Layout) =>
  verifyLayout(problem(fold), layout).map(({ what }) => what);

describe('judging a finished plan', () => {
  test('passes what the search finds, on single and on folded cloth', async () => {
    expect(faults('single', await plan('single'))).toEqual([]);
    expect(faults('lengthwise', await plan('lengthwise'))).toEqual([]);
  });

  test('refuses a piece moved on to another', async () => {
    const good = await plan('single');
    const [first, second] = [good.placed[0], good.placed[1]];
    const moved = change(good, 0, { x: second?.x ?? 0, y: (second?.y ?? 0) + 5 });
    expect(first?.id).toBe('side');
    expect(faults('single', moved)).toContain('overlap');
  });

  test('refuses a piece within the gap of another', async () => {
    const good = await plan('single');
    const nudged = good.placed.flatMap((one, i) =>
      [0.5, -0.5].flatMap((step) => [
        faults('single', change(good, i, { x: one.x + step })),
        faults('single', change(good, i, { y: one.y + step })),
      ]),
    );
    expect(nudged.some((found) => found.includes('too-near'))).toBe(true);
  });

  test('refuses a plan without a copy, with one too many, and with the wrong hand', async () => {
    const good = await plan('single');
    expect(faults('single', { ...good, placed: good.placed.slice(1) })).toContain('too-few');
    const last = good.placed[0] as Layout['placed'][number];
    const more = { ...good, placed: [...good.placed, { ...last, x: good.length + 400 }] };
    expect(faults('single', more)).toContain('too-many');
    const swapped = good.placed.findIndex(({ id, mirrored }) => id === 'side' && mirrored);
    expect(faults('single', change(good, swapped, { mirrored: false }))).toContain('too-few');
  });

  test('refuses a piece over the edge, turned off its grain or against the nap', async () => {
    const good = await plan('single');
    expect(faults('single', change(good, 0, { y: -30 }))).toContain('outside');
    expect(faults('single', change(good, 0, { x: good.length }))).toContain('outside');
    const turn = good.placed[0]?.rotation ?? 0;
    expect(faults('single', change(good, 0, { rotation: turn + 90 }))).toContain('turn');
    expect(faults('single', change(good, 0, { rotation: (turn + 180) % 360 }))).toContain('turn');
  });

  test('refuses a piece off the fold by a hundredth of a millimetre', async () => {
    const good = await plan('lengthwise');
    const back = good.placed.findIndex(({ id }) => id === 'back');
    const y = good.placed[back]?.y ?? 0;
    expect(faults('lengthwise', change(good, back, { y: y + 0.009 }))).toContain('off-fold');
  });
});
