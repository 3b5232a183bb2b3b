import { expect, test } from 'vitest';
import { clothSchema } from './schema.ts';
import type { Cloth } from './types.ts';

const poplin: Cloth = {
  format: 'easewright-cloth/1',
  name: 'White poplin from the quay market',
  structure: 'woven',
  fibres: 'cotton 100 %',
  weight: 120,
  width: 1480,
  length: 2300,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0.03,
  shrinkAcross: 0.01,
  washed: false,
  colour: '#f7f4ec',
  terms: 'bought',
  from: 'Quay market',
  note: '',
};

test('a cloth passes unchanged', () => {
  expect(clothSchema.parse(poplin)).toEqual(poplin);
});

test.each([
  ['width in metres', { width: 1.48 }, 'width'],
  ['shrinkage as a percentage', { shrinkAlong: 3 }, 'shrinkAlong'],
  ['a width that is no number', { width: Number.NaN }, 'width'],
  ['a nameless cloth', { name: '  ' }, 'name'],
  ['a colour that carries a style', { colour: 'red;background:url(//x)' }, 'colour'],
  ['an unknown structure', { structure: 'felted' }, 'structure'],
])('%s is refused at its field', (_, change, field) => {
  const read = clothSchema.safeParse({ ...poplin, ...change });
  expect(read.success).toBe(false);
  expect(read.error?.issues.map((issue) => issue.path.join('.'))).toEqual([field]);
});

test('an unknown field is refused, not dropped', () => {
  const read = clothSchema.safeParse({ ...poplin, drape: 22 });
  expect(read.error?.issues[0]).toMatchObject({ code: 'unrecognized_keys', keys: ['drape'] });
});
