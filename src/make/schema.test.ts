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

test.each([
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
