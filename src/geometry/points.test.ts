import { expect, test } from 'vitest';
import { add, angleOf, cross, lerp, normalize, perpendicular, point, rotate, turnBetween } from './points.ts';
import { footOn, meetingPoint, sideOf, straightThrough } from './straight.ts';

test('a quarter to the left of travelling right is up the screen', () => {
  expect(perpendicular({ x: 1, y: 0 })).toEqual({ x: 0, y: -1 });
});

test('positive angles turn clockwise as seen', () => {
  const turned = rotate({ x: 10, y: 0 }, Math.PI / 2);
  expect(turned.x).toBeCloseTo(0);
  expect(turned.y).toBeCloseTo(10);
  expect(angleOf({ x: 0, y: 5 })).toBeCloseTo(Math.PI / 2);
  expect(turnBetween({ x: 1, y: 0 }, { x: 0, y: 1 })).toBeCloseTo(Math.PI / 2);
  expect(cross({ x: 1, y: 0 }, { x: 0, y: 1 })).toBe(1);
});

test('rotation about a point leaves that point', () => {
  expect(rotate({ x: 3, y: 4 }, 1.234, { x: 3, y: 4 })).toEqual({ x: 3, y: 4 });
});

test('a fraction of 1 is exactly the far point', () => {
  const far = { x: 0.1 + 0.2, y: 1 / 3 };
  expect(lerp({ x: -7.3, y: 1e9 }, far, 1)).toEqual(far);
});

test('what is not a point, or has no direction, throws with the value', () => {
  expect(() => point(Number.NaN, 1)).toThrow('NaN');
  expect(() => normalize({ x: 0, y: 0 })).toThrow('No direction in (0, 0)');
});

test('two straight lines meet where both pass, or nowhere when parallel', () => {
  const a = straightThrough({ x: 0, y: 0 }, { x: 1, y: 1 });
  const b = straightThrough({ x: 10, y: 0 }, { x: 10, y: 1 });
  expect(meetingPoint(a, b)).toEqual({ x: 10, y: 10 });
  expect(meetingPoint(a, { through: { x: 5, y: 0 }, along: { x: 2, y: 2 } })).toBeNull();
  expect(() => straightThrough({ x: 1, y: 2 }, { x: 1, y: 2 })).toThrow('(1, 2)');
});

test('the foot of a perpendicular, and the side a point lies on', () => {
  const along = straightThrough({ x: 0, y: 0 }, { x: 10, y: 0 });
  expect(footOn(along, { x: 4, y: 3 })).toEqual({ x: 4, y: 0 });
  expect(sideOf(along, { x: 4, y: 3 })).toBe(3);
  expect(sideOf(along, { x: 4, y: -3 })).toBe(-3);
  expect(add({ x: 1, y: 2 }, { x: 3, y: 4 })).toEqual({ x: 4, y: 6 });
});
