import { expect, test } from 'vitest';
import { makeSchema } from './schema.ts';
import type { Make } from './types.ts';

const blouse: Make = {
  format: 'easewright-make/1',
  name: 'Blouse for the spring concert',
  wearer: 'w1',
  pattern: 'house:blouse',
  cloth: null,
  size: null,
  steps: [
    { id: 's1', alteration: 'full-bust', version: 1, on: true, params: { amount: 12 } },
    { id: 's2', alteration: 'lengthen', version: 1, on: false, params: { amount: 20, level: 'waist' } },
  ],
  fold: 'lengthwise',
  gap: 2,
  paper: 'a4',
  state: 'planned',
  note: '',
};

test('a make passes unchanged', () => {
  expect(makeSchema.parse(blouse)).toEqual(blouse);
});

const round = {
  id: 'f1',
  date: '2026-03-02',
  garment: 'toile',
  steps: blouse.steps,
  signs: [{ zone: 'bust', kind: 'taut', direction: 'to-point', posture: 'standing', half: 'both', pinned: 12 }],
  notes: 'Toile in old sheeting.',
  taken: ['s1'],
} as const;

test('a make with rounds of toile passes unchanged', () => {
  const fitted: Make = { ...blouse, fittings: [round, { ...round, id: 'f2', garment: 'make', signs: [] }] };
  expect(makeSchema.parse(fitted)).toEqual(fitted);
});

test.each([
  ['two rounds of one id', { fittings: [round, round] }, 'fittings'],
  ['a day there is not', { fittings: [{ ...round, date: '2026-02-30' }] }, 'fittings.0.date'],
  [
    'a sign at no place',
    { fittings: [{ ...round, signs: [{ ...round.signs[0], zone: 'ear' }] }] },
    'fittings.0.signs.0.zone',
  ],
  ['a gap below nothing', { gap: -1 }, 'gap'],
  ['an unknown fold', { fold: 'thrice' }, 'fold'],
  ['no wearer', { wearer: '' }, 'wearer'],
  ['two steps of one id', { steps: [blouse.steps[0], { ...blouse.steps[1], id: 's1' }] }, 'steps'],
  ['a step without its version', { steps: [{ ...blouse.steps[0], version: undefined }] }, 'steps.0.version'],
  ['an amount that is no number', { steps: [{ ...blouse.steps[0], params: { a: null } }] }, 'steps.0.params.a'],
])('%s is refused at its field', (_, change, field) => {
  const read = makeSchema.safeParse({ ...blouse, ...change });
  expect(read.error?.issues.map((issue) => issue.path.join('.'))).toEqual([field]);
});
