import { EndType, FillRule, inflatePaths, JoinType, union } from 'clipper2-ts';
import { convolve, type GridPolygon } from './convolution.ts';
import type { Polygon } from './polygon.ts';

/** A no-fit region's borders; the region lies to the left of their run (x right, y up), holes included. */
export type Rings = readonly Polygon[];

/** Corners are rounded to this share of the largest extent before clipping, which wants whole numbers below 9·10⁷. */
const gridSteps = 2 ** 25;

/** The step of the whole-number grid for shapes of this extent; borders stray from the true ones by at most two steps. */
export const gridStep = (extent: number): number => extent / gridSteps;

export const toGrid = (polygon: Polygon, step: number): GridPolygon => {
  const grid = new Float64Array(polygon.length * 2);
  polygon.forEach(({ x, y }, i) => {
    grid[2 * i] = Math.round(x / step);
    grid[2 * i + 1] = Math.round(y / step);
  });
  return grid;
};

/**
 * Regions are grown by this many grid steps. It outweighs rounding, and it closes the slits of no width
 * that appear where a piece fits another exactly, on whose borders inside and outside could not be told apart.
 */
const grownBy = 4;

/**
 * Where `b` may not be put beside `a`: the moves t at which the insides of a and b + t meet, that is the
 * Minkowski sum of a and −b (Art 1966; Cuninghame-Green 1989), as the non-zero winding of their convolution.
 */
export const noFitRegion = (a: GridPolygon, b: GridPolygon, step: number): Rings => {
  const negative = b.map((value) => -value);
  const region = union(convolve(a, negative), FillRule.NonZero);
  return inflatePaths(region, grownBy, JoinType.Miter, EndType.Polygon, 2).map((ring) =>
    ring.map(({ x, y }) => ({ x: x * step, y: y * step })),
  );
};
