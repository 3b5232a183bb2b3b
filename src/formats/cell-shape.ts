import type { Bounds, Point } from '../geometry/index.ts';

/**
 * A shape as the cells of a grid it may touch, for packing only. Errs outward: a cell is taken when the shape, grown by
 * the gap, comes anywhere near it, so shapes that share no cell lie at least the gap apart.
 */
export interface CellShape {
  /** Whole cells across and down. */
  readonly width: number;
  readonly height: number;
  /** For each row of cells, the runs taken: first and one past the last. */
  readonly rows: readonly (readonly (readonly [number, number])[])[];
  /** Where the shape's own origin goes when the grid of cells begins at 0, 0; millimetres. */
  readonly origin: Point;
}

/** Cell sizes in millimetres; they divide a tile's step evenly, so that tile borders are cell borders. */
export interface CellSize {
  readonly x: number;
  readonly y: number;
}

export const cellSizeFor = (stepX: number, stepY: number, about: number): CellSize => ({
  x: stepX / Math.max(1, Math.round(stepX / about)),
  y: stepY / Math.max(1, Math.round(stepY / about)),
});

const boundsOf = (polygons: readonly (readonly Point[])[]): Bounds => {
  const xs = polygons.flatMap((polygon) => polygon.map((p) => p.x));
  const ys = polygons.flatMap((polygon) => polygon.map((p) => p.y));
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
};

/** The cells of the union of closed polygons, their last point joined to their first. */
export const cellShape = (polygons: readonly (readonly Point[])[], cell: CellSize, gap: number): CellShape => {
  const bounds = boundsOf(polygons);
  const origin = { x: gap - bounds.minX, y: gap - bounds.minY };
  const width = Math.ceil((bounds.maxX - bounds.minX + 2 * gap) / cell.x);
  const height = Math.ceil((bounds.maxY - bounds.minY + 2 * gap) / cell.y);
  const taken = new Uint8Array(width * height);
  for (const polygon of polygons) {
    const local = polygon.map((p) => ({ x: p.x + origin.x, y: p.y + origin.y }));
    takeBorder(local, taken, width, height, cell, gap);
    takeInside(local, taken, width, height, cell);
  }
  return { width, height, rows: runsOf(taken, width, height), origin };
};

/** Every cell whose rectangle comes within the gap of a stretch of border; stretches are at most half a cell long. */
const takeBorder = (
  polygon: readonly Point[],
  taken: Uint8Array,
  width: number,
  height: number,
  cell: CellSize,
  gap: number,
): void => {
  const stretch = Math.min(cell.x, cell.y) / 2;
  polygon.forEach((from, index) => {
    const to = polygon[(index + 1) % polygon.length] as Point;
    const stretches = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / stretch));
    for (let i = 0; i < stretches; i += 1) {
      const [a, b] = [i / stretches, (i + 1) / stretches];
      const xs = [from.x + (to.x - from.x) * a, from.x + (to.x - from.x) * b];
      const ys = [from.y + (to.y - from.y) * a, from.y + (to.y - from.y) * b];
      const left = Math.max(0, Math.floor((Math.min(...xs) - gap) / cell.x));
      const right = Math.min(width - 1, Math.floor((Math.max(...xs) + gap) / cell.x));
      const top = Math.max(0, Math.floor((Math.min(...ys) - gap) / cell.y));
      const bottom = Math.min(height - 1, Math.floor((Math.max(...ys) + gap) / cell.y));
      for (let y = top; y <= bottom; y += 1) taken.fill(1, y * width + left, y * width + right + 1);
    }
  });
};

/** Every cell whose centre is inside, by the even-odd rule along each row of centres. */
const takeInside = (
  polygon: readonly Point[],
  taken: Uint8Array,
  width: number,
  height: number,
  cell: CellSize,
): void => {
  for (let row = 0; row < height; row += 1) {
    const crossings = crossingsAt(polygon, (row + 0.5) * cell.y);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const first = Math.max(0, Math.ceil((crossings[i] as number) / cell.x - 0.5));
      const last = Math.min(width - 1, Math.floor((crossings[i + 1] as number) / cell.x - 0.5));
      if (last >= first) taken.fill(1, row * width + first, row * width + last + 1);
    }
  }
};

/** Where a closed polygon crosses a level line, in order along it. */
export const crossingsAt = (polygon: readonly Point[], y: number): number[] => {
  const crossings: number[] = [];
  polygon.forEach((from, index) => {
    const to = polygon[(index + 1) % polygon.length] as Point;
    if (from.y <= y !== to.y <= y) crossings.push(from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x));
  });
  return crossings.sort((a, b) => a - b);
};

const runsOf = (taken: Uint8Array, width: number, height: number): (readonly [number, number])[][] =>
  Array.from({ length: height }, (_, row) => {
    const runs: (readonly [number, number])[] = [];
    let start = -1;
    for (let x = 0; x <= width; x += 1) {
      const full = x < width && taken[row * width + x] === 1;
      if (full && start < 0) start = x;
      if (!full && start >= 0) {
        runs.push([start, x]);
        start = -1;
      }
    }
    return runs;
  });
