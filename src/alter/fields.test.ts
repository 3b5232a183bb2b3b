import { describe, expect, it } from 'vitest';
import { add, distance, line, pathEnd, pathPointAtLength, pathStart, scale } from '../geometry/index.ts';
import { lastAlong, throughKnots } from './course.ts';
import { easedField, inDirection, sumOfFields } from './fields.ts';
import { jointed, warped } from './warp.ts';

const out = { x: 1, y: 0 };
const still = { by: { x: 0, y: 0 } };
const passing = { point: { x: 0, y: 0 }, tangent: { x: 0, y: 1 } };

describe('a shift along a line', () => {
  it('passes at rest from one place to another, half of it halfway, and stays so beyond', () => {
    const field = easedField(10, 30, still, { by: { x: 8, y: 0 } });
    expect([0, 10, 20, 30, 99].map((mm) => field(mm).by.x)).toEqual([0, 0, 4, 8, 8]);
    expect([0, 10, 30, 99].map((mm) => field(mm).rate.x)).toEqual([0, 0, 0, 0]);
    // The steepest of a cubic at rest at both ends: one and a half times the mean.
    expect(field(20).rate.x).toBeCloseTo((1.5 * 8) / 20, 12);
  });

  it('told by height changes along a sloping line by as much as the line runs down', () => {
    const course = easedField(0, 100, still, { by: { x: 10, y: 0 } });
    const sloping = { point: { x: 7, y: 40 }, tangent: { x: 0.6, y: 0.8 } };
    const { by, rate } = inDirection({ x: 0, y: 0 }, { x: 0, y: 1 }, course)(0, sloping);
    const further = add(sloping.point, scale(sloping.tangent, 1e-4));
    const next = course(further.y).by;
    expect(rate.x).toBeCloseTo((next.x - by.x) / 1e-4, 5);
  });

  it('through knots touches each, overshoots none, and is at rest where it turns back', () => {
    const course = throughKnots(
      [
        { at: 0, shift: 0 },
        { at: 50, shift: 6 },
        { at: 80, shift: 6 },
        { at: 200, shift: -2 },
      ],
      out,
    );
    expect([-5, 0, 50, 80, 200, 300].map((y) => course(y).by.x)).toEqual([0, 0, 6, 6, -2, -2]);
    const all = Array.from({ length: 201 }, (_, y) => course(y).by.x);
    expect(Math.max(...all)).toBeLessThanOrEqual(6 + 1e-12);
    expect(Math.min(...all)).toBeGreaterThanOrEqual(-2 - 1e-12);
    expect([0, 50, 80, 200].map((y) => course(y).rate.x)).toEqual([0, 0, 0, 0]);
  });

  it('of two is their sum', () => {
    const both = sumOfFields(easedField(0, 10, still, { by: out }), easedField(0, 10, { by: out }, still));
    expect([0, 3, 10].map((mm) => both(mm, passing).by.x)).toEqual([1, 1, 1]);
  });
});

describe('a line shifted', () => {
  const path = [line({ x: 0, y: 0 }, { x: 0, y: 100 })];

  it('keeps what does not move, and stays straight where it moves evenly', () => {
    expect(warped(path, () => ({ by: { x: 0, y: 0 }, rate: { x: 0, y: 0 } }))[0]).toBe(path[0]);
    const evenly = { x: 0.05, y: 0 };
    const moved = warped(path, easedField(0, 100, { ...still, rate: evenly }, { by: { x: 5, y: 0 }, rate: evenly }));
    expect(moved).toEqual([line({ x: 0, y: 0 }, { x: 5, y: 100 })]);
  });

  it('is the cubic the shift is, between joints', () => {
    const field = easedField(0, 100, still, { by: { x: 10, y: 0 } });
    const moved = warped(path, field);
    for (const t of [0.2, 0.5, 0.9]) {
      const at = pathPointAtLength(path, 100 * t);
      const found = pathPointAtLength(
        moved,
        lastAlong(moved, (mm) => pathPointAtLength(moved, mm).y < at.y),
      );
      expect(distance(found, add(at, field(100 * t).by))).toBeLessThan(1e-6);
    }
  });

  it('gets joints where it has none near, and no others', () => {
    expect(jointed(path, [0, 3, 98, 100])).toBe(path);
    const made = jointed(path, [60, 20]);
    expect(made.map(({ to }) => to.y)).toEqual([20, 60, 100].map((y) => expect.closeTo(y, 6)));
    expect(jointed(made, [22, 57])).toBe(made);
    expect([pathStart(made), pathEnd(made)]).toEqual([pathStart(path), pathEnd(path)]);
  });
});
