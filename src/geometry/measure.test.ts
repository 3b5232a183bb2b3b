import { describe, expect, test } from 'vitest';
import { pathPointAtLength, pathTangentAtLength, splitPathAtLength, splitPathAtLengths, subPath } from './along.ts';
import { segmentLength } from './arc-length.ts';
import { outlineArea } from './area.ts';
import { pathBounds } from './bounds.ts';
import { flattenPath } from './flatten.ts';
import { insideOutline } from './inside.ts';
import { nearestOnPath } from './nearest.ts';
import { isClosed, joinPaths, pathEnd, pathLength, pathStart, polyline, reversePath } from './paths.ts';
import { distance } from './points.ts';
import { cubic, line, partOfSegment, segmentCurvatureAt, segmentTangentAt } from './segments.ts';
import { tolerance } from './tolerance.ts';

const square = polyline(
  [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 100 },
    { x: 0, y: 100 },
  ],
  true,
);
const parabola = cubic({ x: 0, y: 0 }, { x: 100 / 3, y: 0 }, { x: 200 / 3, y: 100 / 3 }, { x: 100, y: 100 });
const cusp = cubic({ x: 0, y: 0 }, { x: 100, y: 100 }, { x: 0, y: 100 }, { x: 100, y: 0 });

describe('length', () => {
  test('a parabola has the length the textbook gives', () => {
    // y = x²/100 from 0 to 100: ½√5·100 + 25·asinh 2.
    const whole = 50 * Math.sqrt(5) + 25 * Math.asinh(2);
    expect(Math.abs(segmentLength(parabola) - whole)).toBeLessThan(1e-8);
  });

  test('a curve that stops and turns back is measured too', () => {
    expect(Math.abs(segmentLength(cusp) - chords(1_000_000))).toBeLessThan(tolerance.length);
  });

  test('a point at a length, and the direction there on either side of a corner', () => {
    expect(pathPointAtLength(square, 150)).toEqual({ x: 100, y: 50 });
    expect(pathTangentAtLength(square, 100)).toEqual({ x: 0, y: 1 });
    expect(pathTangentAtLength(square, 100, 'before')).toEqual({ x: 1, y: 0 });
    expect(pathPointAtLength(square, 400)).toEqual({ x: 0, y: 0 });
  });

  test('no point lies outside', () => {
    expect(() => pathPointAtLength(square, 400.01)).toThrow('400.01');
    expect(() => pathPointAtLength(square, -0.01)).toThrow('-0.01');
    expect(() => pathPointAtLength(square, Number.NaN)).toThrow('NaN');
  });
});

describe('split, part and join', () => {
  test('a split at either end leaves nothing on one side', () => {
    expect(splitPathAtLength(square, 0)).toEqual([null, square]);
    expect(splitPathAtLength(square, 400)).toEqual([square, null]);
  });

  test('a split at a joint makes no new segment', () => {
    const [before, after] = splitPathAtLength(square, 100 + tolerance.same / 2);
    expect(before).toEqual(square.slice(0, 1));
    expect(after).toEqual(square.slice(1));
  });

  test('parts share their ends to the last bit, and lie end to start again', () => {
    const path = [parabola, line(parabola.to, { x: 200, y: 100 })];
    const parts = splitPathAtLengths(path, [10, 33.3, 120, 170]);
    expect(parts).toHaveLength(5);
    for (const [i, part] of parts.entries()) {
      const next = parts[i + 1];
      if (next) expect(pathEnd(part)).toEqual(pathStart(next));
    }
    expect(subPath(path, 33.3, 120)).toEqual(parts[2]);
    expect(Math.abs(pathLength(joinPaths(...parts)) - pathLength(path))).toBeLessThan(tolerance.length);
  });

  test('on a closed path a part may run over the start', () => {
    const over = subPath(square, 350, 50);
    expect(pathStart(over)).toEqual({ x: 0, y: 50 });
    expect(pathEnd(over)).toEqual({ x: 50, y: 0 });
    expect(() => subPath(square.slice(0, 2), 150, 50)).toThrow('Only a closed path');
    expect(() => subPath(square, 50, 50)).toThrow('Nothing between');
  });

  test('ends that nearly meet are made to meet; others are refused with the gap', () => {
    const joined = joinPaths([line({ x: 0, y: 0 }, { x: 10, y: 0 })], [line({ x: 10, y: 1e-9 }, { x: 20, y: 0 })]);
    expect(joined[1]?.from).toEqual({ x: 10, y: 0 });
    expect(() => joinPaths([line({ x: 0, y: 0 }, { x: 10, y: 0 })], [line({ x: 10, y: 1 }, { x: 20, y: 0 })])).toThrow(
      'A gap of 1 mm',
    );
  });

  test('a part of a segment outside 0 to 1 is refused', () => {
    expect(() => partOfSegment(parabola, 0.5, 0.5)).toThrow('0.5 to 0.5');
    expect(() => partOfSegment(parabola, 0, 1.1)).toThrow('0 to 1.1');
  });

  test('reversed twice is as it was', () => {
    expect(reversePath(reversePath([parabola]))).toEqual([parabola]);
  });

  test('a polyline passes over points that repeat, and needs two that do not', () => {
    const path = polyline(
      [
        { x: 0, y: 0 },
        { x: 0, y: 0 },
        { x: 5, y: 0 },
        { x: 5, y: 5 },
        { x: 0, y: 0 },
      ],
      true,
    );
    expect(path).toHaveLength(3);
    expect(isClosed(path)).toBe(true);
    expect(() =>
      polyline([
        { x: 1, y: 1 },
        { x: 1, y: 1 },
      ]),
    ).toThrow('two different points');
    expect(() => polyline([])).toThrow('none given');
  });
});

describe('segments', () => {
  test('curvature is positive where the curve turns clockwise as seen', () => {
    // y = x²/100 has y″ = 1/50 at its foot, and bends down the screen.
    expect(segmentCurvatureAt(parabola, 0)).toBeCloseTo(1 / 50);
    expect(segmentCurvatureAt(line({ x: 0, y: 0 }, { x: 1, y: 0 }), 0.5)).toBe(0);
  });

  test('a handle on its end leaves the direction to the next', () => {
    const curve = cubic({ x: 0, y: 0 }, { x: 0, y: 0 }, { x: 0, y: 50 }, { x: 50, y: 50 });
    expect(segmentTangentAt(curve, 0)).toEqual({ x: 0, y: 1 });
  });

  test('a segment without length has no direction', () => {
    expect(() => segmentTangentAt(line({ x: 1, y: 1 }, { x: 1, y: 1 }), 0)).toThrow('No direction');
  });

  test('what is not made of numbers is refused', () => {
    expect(() => line({ x: 0, y: 0 }, { x: Number.NaN, y: 0 })).toThrow('Not a line');
    expect(() => cubic({ x: 0, y: 0 }, { x: 0, y: 0 }, { x: Infinity, y: 0 }, { x: 0, y: 0 })).toThrow('Not a cubic');
  });
});

describe('area, bounds, inside, nearest, flat', () => {
  const half = [parabola, line(parabola.to, { x: 0, y: 100 }), line({ x: 0, y: 100 }, parabola.from)];

  test('the area beside a parabola is exact', () => {
    // Below y = x²/100 to the right lies a third of the square; the rest is on the left.
    expect(outlineArea(half)).toBeCloseTo(10_000 - 10_000 / 3, 8);
  });

  test('bounds are where a curve turns back, not its handles', () => {
    expect(pathBounds([cusp])).toEqual({ minX: 0, minY: 0, maxX: 100, maxY: 75 });
  });

  test('a point level with a corner is counted once', () => {
    const diamond = polyline(
      [
        { x: 0, y: -10 },
        { x: 10, y: 0 },
        { x: 0, y: 10 },
        { x: -10, y: 0 },
      ],
      true,
    );
    expect(insideOutline(diamond, { x: -5, y: 0 })).toBe(true);
    expect(insideOutline(diamond, { x: -15, y: 0 })).toBe(false);
    expect(insideOutline(diamond, { x: 5, y: -10 })).toBe(false);
    expect(insideOutline(half, { x: 20, y: 20 })).toBe(true);
    expect(insideOutline(half, { x: 80, y: 20 })).toBe(false);
  });

  test('the nearest point of a corner is the corner', () => {
    const near = nearestOnPath(square, { x: 110, y: -10 });
    expect(near.point).toEqual({ x: 100, y: 0 });
    expect(near.atLength).toBe(100);
    expect(near.distance).toBeCloseTo(Math.hypot(10, 10));
  });

  test('flat corners lie on the curve; a tolerance that is none is refused', () => {
    const flat = flattenPath([parabola], 0.1);
    expect(flat.at(0)).toEqual(parabola.from);
    expect(flat.at(-1)).toEqual(parabola.to);
    for (const p of flat) expect(distance(p, { x: p.x, y: p.x ** 2 / 100 })).toBeLessThan(1e-9);
    expect(() => flattenPath([parabola], 0)).toThrow('Not a tolerance: 0');
  });
});

/** Length of the curve with a cusp by that many chords: slow, and plain. */
function chords(steps: number): number {
  let sum = 0;
  let last = cusp.from;
  for (let i = 1; i <= steps; i++) {
    const t = i / steps;
    const u = 1 - t;
    const p = { x: 300 * u * u * t + 100 * t * t * t, y: 300 * u * u * t + 300 * u * t * t };
    sum += distance(last, p);
    last = p;
  }
  return sum;
}
