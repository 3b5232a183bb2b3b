import { expect, it } from 'vitest';
import { type LayoutProblem, searchLayout } from '../../src/lay/index.ts';
import { PlanShelf } from './plan-shelf.ts';

const square = (size: number) => [
  { x: 0, y: 0 },
  { x: size, y: 0 },
  { x: size, y: size },
  { x: 0, y: size },
];

const problem: LayoutProblem = {
  cloth: { width: 300, length: 1000, fold: 'single', oneWay: false, gap: 2 },
  items: [
    {
      id: 'a',
      name: 'A',
      outline: square(120),
      plain: 3,
      mirrored: 0,
      turns: [{ rotation: 0, mirrored: false }],
      fold: null,
    },
  ],
};

it('gives back a plan of the very same problem, and none that cannot be cut', async () => {
  const found = await searchLayout(problem, { rounds: 5, seed: 1 });
  if (!found.ok) throw new Error(found.problem.code);
  const stored = new Map<string, string>();
  const storage = () => ({
    getItem: (key: string) => stored.get(key) ?? null,
    setItem: (key: string, value: string) => void stored.set(key, value),
  });
  new PlanShelf(storage).keep(problem, found.value);
  const later = new PlanShelf(storage);
  expect(later.find(problem)).toEqual(found.value);
  expect(later.find({ ...problem, cloth: { ...problem.cloth, width: 310 } })).toBeNull();
  const spoilt = { ...found.value, placed: found.value.placed.map((one) => ({ ...one, x: 0, y: 0 })) };
  later.keep(problem, spoilt);
  expect(later.find(problem)).toBeNull();
  stored.set('easewright.plans', 'not json');
  expect(later.find(problem)).toBeNull();
});
