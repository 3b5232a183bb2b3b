import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cubic, flattenPath, line, type Outline, type Point, selfIntersections, tolerance } from '../geometry/index.ts';
import { outwardPolygon } from './outward.ts';
import { overlapDeeperThan } from './overlap.ts';
import { type Polygon, polygonArea } from './polygon.ts';
import { propertySeeds, starPolygon } from './testing/random-shapes.ts';

/** Rounds a polygon's corners off: every side becomes a cubic whose handles lean out or in. */
const curved = (polygon: Polygon, lean: readonly number[]): Outline =>
  polygon.map((from, i) => {
    const to = polygon[(i + 1) % polygon.length] as Point;
    const bend = lean[i % lean.length] as number;
    if (Math.abs(bend) < 0.02) return line(from, to);
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const handle = (share: number, out: number): Point => ({
      x: from.x + share * dx + out * dy,
      y: from.y + share * dy - out * dx,
    });
    const second = lean[(i + 1) % lean.length] as number;
    return cubic(from, handle(1 / 3, bend), handle(2 / 3, second), to);
  });

const distanceToSide = (p: Point, a: Point, b: Point): number => {
  const square = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  const share = Math.min(1, Math.max(0, ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / square));
  return Math.hypot(p.x - a.x - share * (b.x - a.x), p.y - a.y - share * (b.y - a.y));
};

const inside = (polygon: Polygon, p: Point): boolean => {
  let winding = 0;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] as Point;
    const side = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
    if (a.y <= p.y && b.y > p.y && side > 0) winding++;
    else if (a.y > p.y && b.y <= p.y && side < 0) winding--;
  });
  return winding !== 0;
};

const away = (polygon: Polygon, p: Point): number =>
  Math.min(...polygon.map((a, i) => distanceToSide(p, a, polygon[(i + 1) % polygon.length] as Point)));

describe('a polygon laid round an outline', () => {
  for (const seed of propertySeeds()) {
    test(`encloses it and strays by no more than the tolerance (seed ${seed})`, () => {
      const lean = fc.array(fc.double({ min: -0.12, max: 0.12, noNaN: true }), { minLength: 2, maxLength: 5 });
      fc.assert(
        fc.property(starPolygon(600), lean, (star, bends) => {
          const outline = curved(star, bends);
          // Sides that lean into a sharp corner from both hands cross there: no piece has such an outline.
          fc.pre(selfIntersections(outline).length === 0);
          const fine = flattenPath(outline, 0.001).slice(0, -1);
          const polygon = outwardPolygon(outline);
          expect(polygonArea(polygon)).toBeGreaterThan(0);
          for (const p of fine) {
            expect(inside(polygon, p) || away(polygon, p) < 0.002).toBe(true);
            expect(away(polygon, p)).toBeLessThanOrEqual(tolerance.outward * 1.01);
          }
          for (const p of polygon) expect(away(fine, p)).toBeLessThanOrEqual(tolerance.outward * 1.01);
        }),
        { seed, numRuns: 25 },
      );
    });
  }

  test('keeps corners it is told to keep, and straight outlines as they are', () => {
    const [a, b, c, d] = [
      { x: 0, y: 0 },
      { x: 300, y: 0 },
      { x: 300, y: 200 },
      { x: 0, y: 200 },
    ];
    const outline = [line(a, b), line(b, c), cubic(c, { x: 200, y: 260 }, { x: 100, y: 260 }, d), line(d, a)];
    const polygon = outwardPolygon(outline, [a, d]);
    expect(polygon).toContainEqual(a);
    expect(polygon).toContainEqual(d);
    expect(Math.min(...polygon.map(({ x }) => x))).toBe(0);
    expect(outwardPolygon([line(a, b), line(b, c), line(c, d), line(d, a)])).toEqual([a, b, c, d]);
  });

  test('what is laid against the polygon cannot overlap the curve', () => {
    const outline: Outline = [
      cubic({ x: 0, y: 0 }, { x: 60, y: -60 }, { x: 140, y: -60 }, { x: 200, y: 0 }),
      line({ x: 200, y: 0 }, { x: 200, y: 100 }),
      cubic({ x: 200, y: 100 }, { x: 140, y: 40 }, { x: 60, y: 40 }, { x: 0, y: 100 }),
      line({ x: 0, y: 100 }, { x: 0, y: 0 }),
    ];
    const laid = outwardPolygon(outline);
    const fine = flattenPath(outline, 0.0005).slice(0, -1);
    const top = Math.min(...laid.map(({ y }) => y));
    const above = [
      { x: 0, y: top - 50 },
      { x: 200, y: top - 50 },
      { x: 200, y: top },
      { x: 0, y: top },
    ];
    expect(overlapDeeperThan(fine, above, 1e-3)).toBe(false);
  });
});
