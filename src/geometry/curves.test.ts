import { describe, expect, test } from 'vitest';
import { closestApproach, pathDistance } from './approach.ts';
import { outlineArea } from './area.ts';
import { blendCorner } from './blend.ts';
import { extendPath } from './ends.ts';
import { fairCurve } from './fair-curve.ts';
import { fitCubics } from './fit-cubics.ts';
import { flattenPath } from './flatten.ts';
import { inflections } from './inflections.ts';
import { offsetPath } from './offset.ts';
import { joinPaths, pathEnd, pathLength, pathStart, polyline } from './paths.ts';
import { distance } from './points.ts';
import { cubic, line, segmentPointAt } from './segments.ts';
import { smoothThrough } from './smooth-through.ts';
import { pathToSvg } from './svg.ts';
import { tolerance } from './tolerance.ts';
import { maximumTurn } from './turns.ts';

const square = polyline(
  [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 100 },
    { x: 0, y: 100 },
  ],
  true,
);
const onCircle = (radius: number, from: number, to: number, count: number) =>
  Array.from({ length: count }, (_, i) => {
    const angle = from + ((to - from) * i) / (count - 1);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });

describe('offset', () => {
  test('outward of a clockwise outline is positive, and lines come out exact', () => {
    expect(
      pathToSvg(
        offsetPath(
          polyline([
            { x: 0, y: 0 },
            { x: 100, y: 0 },
          ]),
          15,
        ),
      ),
    ).toBe('M 0 -15 L 100 -15');
    expect(outlineArea(offsetPath(square, 10))).toBe(120 * 120);
    expect(outlineArea(offsetPath(square, -10))).toBe(80 * 80);
  });

  test('a circle grows and shrinks to circles', () => {
    const circle = smoothThrough(onCircle(50, 0, Math.PI * 1.5, 7));
    for (const by of [15, -15, -45]) {
      for (const p of flattenPath(offsetPath(circle, by))) {
        expect(Math.abs(Math.hypot(p.x, p.y) - (50 + by))).toBeLessThan(tolerance.offset);
      }
    }
  });

  test('deeper than the radius the loop is trimmed to a corner', () => {
    const tight = [cubic({ x: 0, y: 0 }, { x: 0, y: 150 }, { x: 40, y: 150 }, { x: 40, y: 0 })];
    const inside = offsetPath(tight, 18);
    expect(pathStart(inside).x).toBeCloseTo(18, 9);
    expect(pathEnd(inside).x).toBeCloseTo(22, 9);
    const corner = maximumTurn(inside);
    expect(Math.abs(corner.angle)).toBeGreaterThan(2);
    expect(() => offsetPath(tight, 25)).toThrow('Nothing is left');
  });

  test('corners: straight on outside, trimmed inside', () => {
    const vee = polyline([
      { x: 0, y: 0 },
      { x: 50, y: 50 },
      { x: 100, y: 0 },
    ]);
    expect(offsetPath(vee, 10)).toHaveLength(2);
    expect(pathEnd(offsetPath(vee, 10).slice(0, 1)).x).toBeCloseTo(50, 9);
    const outside = offsetPath(vee, -10);
    expect(Math.max(...flattenPath(outside).map(({ y }) => y))).toBeCloseTo(50 + 10 * Math.SQRT2, 9);
  });

  test('by nothing it is the path itself; by no number it is refused', () => {
    expect(offsetPath(square, 0)).toBe(square);
    expect(() => offsetPath(square, Number.NaN)).toThrow('NaN');
    expect(() => offsetPath(square, -60)).toThrow('Nothing is left');
  });

  test('few curves are needed: an armhole of four keeps under eight', () => {
    const armhole = smoothThrough(
      [
        { x: 0, y: 0 },
        { x: -12, y: 60 },
        { x: -5, y: 120 },
        { x: 35, y: 165 },
        { x: 110, y: 180 },
      ],
      { endTangent: { x: 1, y: 0 } },
    );
    expect(offsetPath(armhole, 15).length).toBeLessThan(8);
  });
});

describe('ends', () => {
  test('a path goes on along its tangents', () => {
    const path = polyline([
      { x: 0, y: 0 },
      { x: 10, y: 0 },
    ]);
    expect(pathEnd(extendPath(path, 'end', 5))).toEqual({ x: 15, y: 0 });
    expect(pathStart(extendPath(path, 'start', 5))).toEqual({ x: -5, y: 0 });
    expect(extendPath(path, 'end', 0)).toBe(path);
    expect(() => extendPath(path, 'end', -1)).toThrow('-1');
  });
});

describe('fair and smooth curves', () => {
  test('a quarter circle is drawn as one', () => {
    const quarter = fairCurve({ x: 100, y: 0 }, { x: 0, y: 7 }, { x: 0, y: 100 }, { x: -2, y: 0 });
    for (let i = 0; i <= 20; i++) {
      const p = segmentPointAt(quarter, i / 20);
      expect(Math.abs(Math.hypot(p.x, p.y) - 100)).toBeLessThan(0.03);
    }
  });

  test('fullness pushes the curve out', () => {
    const ends = [
      { x: 0, y: 0 },
      { x: 0, y: -1 },
      { x: 100, y: 0 },
      { x: 0, y: 1 },
    ] as const;
    const middle = (fullness: number): number => -segmentPointAt(fairCurve(...ends, { fullness }), 0.5).y;
    expect(middle(1.2)).toBeGreaterThan(middle(1));
    expect(middle(0.8)).toBeLessThan(middle(1));
    expect(() => fairCurve(...ends, { fullness: 0 })).toThrow('Not a fullness: 0');
  });

  test('points of a circle give the circle, with given directions at its ends or free', () => {
    const points = onCircle(100, 0, Math.PI / 2, 4);
    const given = { startTangent: { x: 0, y: 1 }, endTangent: { x: -1, y: 0 } };
    for (const path of [smoothThrough(points), smoothThrough(points, given)]) {
      for (const p of flattenPath(path)) expect(Math.abs(Math.hypot(p.x, p.y) - 100)).toBeLessThan(0.001);
    }
  });

  test('two points alone make a line; none, one, or one twice make nothing', () => {
    const a = { x: 0, y: 0 };
    const b = { x: 5, y: 5 };
    expect(smoothThrough([a, b])).toEqual([line(a, b)]);
    expect(() => smoothThrough([a])).toThrow('1 given');
    expect(() => smoothThrough([a, b, b])).toThrow('Point 2 repeats');
  });
});

describe('blend', () => {
  test('a kink becomes one curve that takes up both directions', () => {
    const kinked = polyline([
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 200, y: 10 },
    ]);
    const blended = blendCorner(kinked, 100, 60, 60);
    expect(blended).toHaveLength(3);
    expect(Math.abs(maximumTurn(blended).angle)).toBeLessThan(1e-9);
    expect(pathStart(blended)).toEqual(pathStart(kinked));
    expect(pathEnd(blended)).toEqual(pathEnd(kinked));
    expect(pathDistance(blended, kinked)).toBeLessThan(2);
  });

  test('a straight bridge between shifted sides is smoothed', () => {
    const bridged = polyline([
      { x: 0, y: 0 },
      { x: 0, y: 100 },
      { x: 12, y: 130 },
      { x: 12, y: 230 },
    ]);
    const blended = blendCorner(bridged, 100 + Math.hypot(12, 30) / 2, 80, 80);
    expect(Math.abs(maximumTurn(blended).angle)).toBeLessThan(1e-9);
    expect(inflections(blended)).toHaveLength(1);
  });

  test('a reach beyond the end stops there and keeps the direction', () => {
    const kinked = polyline([
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 100, y: 30 },
    ]);
    const blended = blendCorner(kinked, 30, 60, 20);
    expect(pathStart(blended)).toEqual({ x: 0, y: 0 });
    expect(blended).toHaveLength(2);
    expect(() => blendCorner(kinked, 500, 10, 10)).toThrow('500');
    expect(() => blendCorner(kinked, 30, -1, 10)).toThrow('-1');
  });
});

describe('fewer cubics', () => {
  const curve = smoothThrough([
    { x: 0, y: 0 },
    { x: 60, y: 20 },
    { x: 100, y: 90 },
    { x: 90, y: 160 },
  ]);

  test('points along a curve come back as few', () => {
    const fitted = fitCubics(flattenPath(curve, 0.005), 0.05);
    expect(fitted.length).toBeLessThanOrEqual(4);
    expect(pathDistance(fitted, curve)).toBeLessThan(0.06);
    expect(Math.abs(maximumTurn(fitted).angle)).toBeLessThan(1e-9);
  });

  test('corners stay, straight runs become one line', () => {
    const crowded = polyline(
      [
        { x: 0, y: 0 },
        { x: 40, y: 0 },
        { x: 100, y: 0 },
        { x: 100, y: 100 },
        { x: 55, y: 100 },
        { x: 0, y: 100 },
      ],
      true,
    );
    expect(fitCubics(crowded, 0.1)).toEqual(square);
  });

  test('fitting again changes nothing', () => {
    const once = fitCubics(joinPaths(curve), 0.1);
    expect(fitCubics(once, 0.1).length).toBeLessThanOrEqual(once.length);
    expect(() => fitCubics(curve, 0)).toThrow('Not a tolerance: 0');
    expect(() => fitCubics([], 1)).toThrow('Nothing to fit');
  });
});

describe('bends and turns', () => {
  test('an S bends the other way once, in its middle', () => {
    const ess = [cubic({ x: 0, y: 0 }, { x: 50, y: 0 }, { x: 50, y: 100 }, { x: 100, y: 100 })];
    const [at, ...more] = inflections(ess);
    expect(more).toEqual([]);
    expect(at).toBeCloseTo(pathLength(ess) / 2, 6);
    expect(inflections([cubic({ x: 0, y: 0 }, { x: 0, y: 50 }, { x: 50, y: 100 }, { x: 100, y: 100 })])).toEqual([]);
  });

  test('a bend too flat to see does not count', () => {
    const nearly = smoothThrough([
      { x: 0, y: 0 },
      { x: 50, y: 0.01 },
      { x: 100, y: 0 },
      { x: 150, y: 0.01 },
    ]);
    expect(inflections(nearly).length).toBeGreaterThan(0);
    expect(inflections(nearly, tolerance.flatten)).toEqual([]);
  });

  test('the sharpest joint, positive clockwise, counting that at the start of a closed path', () => {
    expect(maximumTurn(square).angle).toBeCloseTo(Math.PI / 2);
    expect(
      maximumTurn(
        polyline([
          { x: 0, y: 0 },
          { x: 10, y: 0 },
        ]),
      ).angle,
    ).toBe(0);
    expect(
      maximumTurn(
        polyline([
          { x: 0, y: 0 },
          { x: 10, y: 0 },
          { x: 20, y: -10 },
        ]),
      ),
    ).toEqual({
      angle: -Math.PI / 4,
      atLength: 10,
    });
  });
});

describe('two paths apart', () => {
  test('where they come nearest', () => {
    const near = closestApproach(
      square,
      polyline([
        { x: 150, y: -50 },
        { x: 120, y: 40 },
        { x: 150, y: 120 },
      ]),
    );
    expect(near.distance).toBeCloseTo(20, 6);
    expect(near.pointA).toEqual({ x: 100, y: 40 });
    expect(near.lengthA).toBeCloseTo(140, 6);
    expect(
      closestApproach(
        square,
        polyline([
          { x: 50, y: 50 },
          { x: 150, y: 50 },
        ]),
      ).distance,
    ).toBe(0);
  });

  test('how far they stray', () => {
    const bow = [cubic({ x: 0, y: 0 }, { x: 0, y: -40 }, { x: 100, y: -40 }, { x: 100, y: 0 })];
    expect(
      pathDistance(
        bow,
        polyline([
          { x: 0, y: 0 },
          { x: 100, y: 0 },
        ]),
      ),
    ).toBeCloseTo(30, 3);
    expect(distance(pathStart(bow), { x: 0, y: 0 })).toBe(0);
  });
});
