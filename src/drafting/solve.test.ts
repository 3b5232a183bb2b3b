import { describe, expect, it } from 'vitest';
import { settle, solveBetween } from './solve.ts';

describe('solving between bounds', () => {
  it('finds the root of a smooth and of a bent function', () => {
    expect(solveBetween((x) => x * x - 2, 0, 2, 1e-9)).toBeCloseTo(Math.SQRT2, 8);
    expect(solveBetween((x) => (x < 0.3 ? -1 : x - 0.3 + 1e-3), 0, 1, 1e-9)).toBeCloseTo(0.3, 8);
    expect(solveBetween((x) => Math.exp(20 * x) - 5, 0, 1, 1e-9)).toBeCloseTo(Math.log(5) / 20, 8);
  });
  it('gives a bound that is itself the root, in either order of bounds', () => {
    expect(solveBetween((x) => x - 1, 1, 4, 1e-9)).toBe(1);
    expect(solveBetween((x) => x - 4, 1, 4, 1e-9)).toBe(4);
    expect(solveBetween((x) => x - 2, 5, 0, 1e-9)).toBeCloseTo(2, 8);
  });
  it('says so where there is no change of sign', () => {
    expect(solveBetween((x) => x + 1, 0, 5, 1e-9)).toBeNull();
  });
  it('keeps a value between bounds', () => {
    expect([settle(1, 2, 3), settle(2.5, 2, 3), settle(9, 2, 3)]).toEqual([2, 2.5, 3]);
  });
});
