import { convolve, type GridPolygon } from './convolution.ts';
import type { Polygon } from './polygon.ts';

/** A no-fit region, as straight edges ax, ay, bx, by in turn and in no order. */
export interface Region {
  /** The edges of its border, for telling distances; the region lies to the left of each (x right, y up). */
  readonly border: Float64Array;
  /** Closed tracings with a positive winding number about every point inside and 0 about every point outside. */
  readonly tracings: Float64Array;
}

/**
 * Corners are rounded to this share of the largest extent, so that the cross products of no-fit corners are
 * exact in doubles.
 */
const gridSteps = 2 ** 25;

/** The step of the whole-number grid for shapes of this extent; borders stray from the true ones by at most two steps. */
export const gridStep = (extent: number): number => extent / gridSteps;

/** The polygon on the grid; corners that fall together there become one. */
export const toGrid = (polygon: Polygon, step: number): GridPolygon => {
  const grid: number[] = [];
  for (const { x, y } of polygon) {
    const [gx, gy] = [Math.round(x / step), Math.round(y / step)];
    if (gx !== grid[grid.length - 2] || gy !== grid[grid.length - 1]) grid.push(gx, gy);
  }
  while (grid.length > 2 && grid[0] === grid[grid.length - 2] && grid[1] === grid[grid.length - 1]) grid.length -= 2;
  return Float64Array.from(grid);
};

/** A straight part of a tracing, on the grid. */
interface Part {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

const partsOf = (tracings: ReturnType<typeof convolve>): Part[] =>
  tracings.flatMap((tracing) =>
    tracing.map((from, i) => {
      const to = tracing[(i + 1) % tracing.length] as { x: number; y: number };
      return { ax: from.x, ay: from.y, bx: to.x, by: to.y };
    }),
  );

const side = (part: Part, x: number, y: number): number =>
  (part.bx - part.ax) * (y - part.ay) - (part.by - part.ay) * (x - part.ax);

const windingAt = (parts: readonly Part[], x: number, y: number): number => {
  let winding = 0;
  for (const part of parts) {
    if (part.ay <= y) {
      if (part.by > y && side(part, x, y) > 0) winding++;
    } else if (part.by <= y && side(part, x, y) < 0) winding--;
  }
  return winding;
};

/** A place where a part is to be cut, by its share of the way along. */
interface Cut {
  readonly share: number;
  readonly x: number;
  readonly y: number;
}

/** Cuts every part where another crosses or touches it. The two parts of a crossing get the very same point. */
const cutsOf = (parts: readonly Part[]): Cut[][] => {
  const cuts: Cut[][] = parts.map(({ ax, ay, bx, by }) => [
    { share: 0, x: ax, y: ay },
    { share: 1, x: bx, y: by },
  ]);
  const cutAt = (index: number, x: number, y: number): void => {
    const { ax, ay, bx, by } = parts[index] as Part;
    const [dx, dy] = [bx - ax, by - ay];
    const share = Math.abs(dx) > Math.abs(dy) ? (x - ax) / dx : (y - ay) / dy;
    if (share > 0 && share < 1) (cuts[index] as Cut[]).push({ share, x, y });
  };
  for (let i = 0; i < parts.length; i++) {
    const p = parts[i] as Part;
    for (let j = i + 1; j < parts.length; j++) {
      const q = parts[j] as Part;
      if (Math.max(p.ax, p.bx) < Math.min(q.ax, q.bx) || Math.max(q.ax, q.bx) < Math.min(p.ax, p.bx)) continue;
      if (Math.max(p.ay, p.by) < Math.min(q.ay, q.by) || Math.max(q.ay, q.by) < Math.min(p.ay, p.by)) continue;
      const [qa, qb] = [side(p, q.ax, q.ay), side(p, q.bx, q.by)];
      if ((qa > 0 && qb > 0) || (qa < 0 && qb < 0)) continue;
      const [pa, pb] = [side(q, p.ax, p.ay), side(q, p.bx, p.by)];
      if ((pa > 0 && pb > 0) || (pa < 0 && pb < 0)) continue;
      // Ends that lie on the other part cut it exactly there; in line, that is all there is.
      if (qa === 0) cutAt(i, q.ax, q.ay);
      if (qb === 0) cutAt(i, q.bx, q.by);
      if (pa === 0) cutAt(j, p.ax, p.ay);
      if (pb === 0) cutAt(j, p.bx, p.by);
      if (qa === 0 || qb === 0 || pa === 0 || pb === 0) continue;
      const share = pa / (pa - pb);
      const [x, y] = [p.ax + share * (p.bx - p.ax), p.ay + share * (p.by - p.ay)];
      cutAt(i, x, y);
      cutAt(j, x, y);
    }
  }
  for (const own of cuts) own.sort((p, q) => p.share - q.share);
  return cuts;
};

/** How far beside a part one looks to see what it divides, in grid steps: finer things are below what the grid can tell. */
const beside = 0.25;

/**
 * Where `b` may not be put beside `a`: the moves t at which the insides of a and b + t meet, that is the
 * Minkowski sum of a and −b (Art 1966; Cuninghame-Green 1989). Everything their convolution winds about
 * belongs to it; its border is those stretches of the convolution that have nothing to their right. What is
 * narrower than a quarter step, such as the slit where b fits a exactly, counts as closed.
 */
export const noFitRegion = (a: GridPolygon, b: GridPolygon, step: number): Region => {
  const parts = partsOf(
    convolve(
      a,
      b.map((value) => -value),
    ),
  );
  const cuts = cutsOf(parts);
  const border: number[] = [];
  const drawn = new Set<string>();
  parts.forEach((part, index) => {
    const own = cuts[index] as Cut[];
    const size = Math.hypot(part.bx - part.ax, part.by - part.ay);
    const [outX, outY] = [((part.by - part.ay) / size) * beside, (-(part.bx - part.ax) / size) * beside];
    for (let k = 1; k < own.length; k++) {
      const [from, to] = [own[k - 1] as Cut, own[k] as Cut];
      if (from.x === to.x && from.y === to.y) continue;
      const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2];
      if (windingAt(parts, x + outX, y + outY) !== 0 || windingAt(parts, x - outX, y - outY) <= 0) continue;
      // Parts that run along one another are cut alike, and the border takes one of them.
      const key = `${from.x} ${from.y} ${to.x} ${to.y}`;
      if (drawn.has(key)) continue;
      drawn.add(key);
      border.push(from.x * step, from.y * step, to.x * step, to.y * step);
    }
  });
  const tracings = parts.flatMap(({ ax, ay, bx, by }) => [ax * step, ay * step, bx * step, by * step]);
  return { border: Float64Array.from(border), tracings: Float64Array.from(tracings) };
};
