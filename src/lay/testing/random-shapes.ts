import fc from 'fast-check';
import type { Polygon } from '../polygon.ts';

/** Seeds for property tests: one that stays, and one that is new each time and told. */
export const propertySeeds = (): readonly number[] => {
  const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
  console.info(`fresh seed ${fresh} (set EASEWRIGHT_SEED to repeat)`);
  return [20261, fresh];
};

/** A star-shaped polygon of positive area, often with inward corners: radii about a centre at rising angles. */
export const starPolygon = (size = 200): fc.Arbitrary<Polygon> =>
  fc
    .array(fc.tuple(fc.integer({ min: 20, max: 100 }), fc.integer({ min: 30, max: 100 })), {
      minLength: 4,
      maxLength: 11,
    })
    .map((corners) => {
      const total = corners.reduce((sum, [share]) => sum + share, 0);
      let angle = 0;
      return corners.map(([share, radius]) => {
        angle += (2 * Math.PI * share) / total;
        return { x: (size * radius * Math.cos(angle)) / 200, y: (size * radius * Math.sin(angle)) / 200 };
      });
    });

/** Polygons on whole numbers with many parallel edges, on which exact fits and touching corners are common. */
export const steppedPolygon = (): fc.Arbitrary<Polygon> =>
  fc
    .array(fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 5 })), { minLength: 1, maxLength: 5 })
    .map((steps) => {
      const corners: { x: number; y: number }[] = [];
      let x = 0;
      for (const [width, height] of steps) {
        corners.push({ x: x * 10, y: height * 10 }, { x: (x + width) * 10, y: height * 10 });
        x += width;
      }
      // Tops run right to left for positive area; the bottom is straight.
      return [{ x: 0, y: 0 }, { x: x * 10, y: 0 }, ...corners.reverse()];
    });
