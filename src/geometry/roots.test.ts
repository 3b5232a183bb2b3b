import { expect, test } from 'vitest';
import { bernsteinRoots, quadraticRoots } from './roots.ts';

/** Bernstein coefficients of the product of (t − root) over all roots. */
const withRoots = (...roots: number[]): number[] => {
  const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n, k - 1) * (n - k + 1)) / k);
  let powers = [1];
  for (const root of roots) {
    powers = Array.from({ length: powers.length + 1 }, (_, i) => (powers[i - 1] ?? 0) - root * (powers[i] ?? 0));
  }
  const degree = roots.length;
  return powers.map((_, j) =>
    powers.slice(0, j + 1).reduce((sum, power, i) => sum + (choose(j, i) / choose(degree, i)) * power, 0),
  );
};

test.each([
  [[0.25], [0.25]],
  [
    [0.1, 0.5, 0.9],
    [0.1, 0.5, 0.9],
  ],
  [[-0.5, 0.3, 1.5], [0.3]],
  [
    [0, 0.4, 1],
    [0, 0.4, 1],
  ],
  [
    [0.2, 0.21, 0.22, 0.7, 0.9999],
    [0.2, 0.21, 0.22, 0.7, 0.9999],
  ],
  [[-1, 2, 3], []],
])('of roots %j those from 0 to 1 are found', (roots, wanted) => {
  const found = bernsteinRoots(withRoots(...roots));
  expect(found).toHaveLength(wanted.length);
  for (const [i, root] of wanted.entries()) expect(found[i]).toBeCloseTo(root, 9);
});

test('a double root counts once', () => {
  const found = bernsteinRoots(withRoots(0.5, 0.5));
  expect(found).toHaveLength(1);
  expect(found[0]).toBeCloseTo(0.5, 6);
});

test('a root inside is found though the value at the end is next to nothing', () => {
  // As they come from the point of an offset that lies square to a curve's end and nearer to its middle.
  const found = bernsteinRoots([
    -10123.363163266404, -9549.892871541164, -6041.632884469534, -1064.3534318, 319.6, 2e-11,
  ]);
  expect(found[0]).toBeCloseTo(0.9132, 3);
});

test('nothing at all has no roots', () => {
  expect(bernsteinRoots([0, 0, 0])).toEqual([]);
  expect(quadraticRoots(0, 0, 0)).toEqual([]);
});

test('quadratics: two, one, none, and one where the square term vanishes', () => {
  expect(quadraticRoots(1, -1, 0.1875)).toEqual([0.25, 0.75]);
  expect(quadraticRoots(1, -1, 0.25)).toEqual([0.5]);
  expect(quadraticRoots(1, 0, 1)).toEqual([]);
  expect(quadraticRoots(0, 2, -1)).toEqual([0.5]);
  // Written naively −b + √(b² − 4ac) loses every digit here.
  expect(quadraticRoots(1e-9, 1, -0.5)[0]).toBeCloseTo(0.5, 9);
});
