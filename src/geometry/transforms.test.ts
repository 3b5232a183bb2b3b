import { expect, test } from 'vitest';
import { outlineArea } from './area.ts';
import { polyline, reversePath } from './paths.ts';
import { distance, rotate } from './points.ts';
import {
  applyToPath,
  applyToPoint,
  applyToVector,
  compose,
  invert,
  mirrors,
  mirrorX,
  reflection,
  rotation,
  scaling,
  translation,
} from './transforms.ts';

const p = { x: 12, y: -7 };

test('transforms do what their names say', () => {
  expect(applyToPoint(translation({ x: 3, y: 4 }), p)).toEqual({ x: 15, y: -3 });
  expect(applyToPoint(mirrorX(10), p)).toEqual({ x: 8, y: -7 });
  expect(applyToPoint(scaling(2, 3, { x: 10, y: 0 }), p)).toEqual({ x: 14, y: -21 });
  expect(distance(applyToPoint(rotation(0.7, { x: 1, y: 2 }), p), rotate(p, 0.7, { x: 1, y: 2 }))).toBeLessThan(1e-12);
  const inDiagonal = applyToPoint(reflection({ x: 0, y: 0 }, Math.PI / 4), p);
  expect(distance(inDiagonal, { x: -7, y: 12 })).toBeLessThan(1e-12);
  expect(applyToVector(translation({ x: 3, y: 4 }), p)).toEqual(p);
});

test('the first of several is done first', () => {
  const both = compose(translation({ x: 1, y: 0 }), scaling(2));
  expect(applyToPoint(both, { x: 1, y: 1 })).toEqual({ x: 4, y: 2 });
});

test('what is done can be undone, unless it flattened the plane', () => {
  const all = compose(rotation(1), mirrorX(5), scaling(2, 3), translation({ x: 9, y: 9 }));
  expect(distance(applyToPoint(compose(all, invert(all)), p), p)).toBeLessThan(1e-12);
  expect(() => invert(scaling(0))).toThrow('Cannot be undone');
});

test('a mirrored outline runs the other way until it is reversed', () => {
  const square = polyline(
    [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 0, y: 10 },
    ],
    true,
  );
  expect(outlineArea(square)).toBe(100);
  expect(mirrors(mirrorX(3))).toBe(true);
  expect(mirrors(rotation(3))).toBe(false);
  const mirrored = applyToPath(mirrorX(3), square);
  expect(outlineArea(mirrored)).toBe(-100);
  expect(outlineArea(reversePath(mirrored))).toBe(100);
});

test('a transform that is not made of numbers throws', () => {
  expect(() => translation({ x: Number.NaN, y: 0 })).toThrow('Not a transform');
});
