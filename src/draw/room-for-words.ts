import { boundsOfPoints, distance, flattenPath, lerp, type Path, type Point, tolerance } from '../geometry/index.ts';

/** Knows where inside a shape words may stand without crossing its border or any line already in it. */
export interface RoomForWords {
  /**
   * The centre of the free place for a level rectangle that is nearest to `near` (else to the shape's middle); null
   * where there is none. Clear of the lines, or of everything: of what is better avoided too.
   */
  find(width: number, height: number, near?: Point, clearOf?: 'lines' | 'everything'): Point | null;
  /** Whether a level rectangle with this centre is free. */
  isFree(centre: Point, width: number, height: number, clearOf?: 'lines' | 'everything'): boolean;
  /** Keeps later words off this rectangle. */
  take(centre: Point, width: number, height: number): void;
}

/** Cells across the shape's longer side: fine enough for words beside a dart, coarse enough to be quick. */
const cellsAcross = 440;
/** Smallest cell in mm: words keep one to two cells away from lines. */
const leastCell = 1;

/**
 * Keeps a grid of cells that are inside `outline` and that no line comes near. Errs on the side of fewer free
 * cells, so words found a place here never touch a line. Nothing stands within the shapes of `without`.
 */
export const roomForWords = (
  outline: Path,
  lines: readonly Path[],
  avoid: readonly Path[] = [],
  without: readonly Path[] = [],
): RoomForWords => {
  const border = flattenPath(outline, tolerance.flatten);
  const bounds = boundsOfPoints(border);
  const longer = Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY);
  const cell = Math.max(leastCell, longer / cellsAcross);
  const grid: Grid = {
    left: bounds.minX,
    top: bounds.minY,
    cell,
    columns: Math.ceil((bounds.maxX - bounds.minX) / cell) + 1,
    rows: Math.ceil((bounds.maxY - bounds.minY) / cell) + 1,
  };
  const taken = new Uint8Array(grid.columns * grid.rows).fill(1);
  fillInside(border, taken, grid, 0);
  for (const path of without) fillInside(flattenPath(path, tolerance.flatten), taken, grid, 1);
  for (const path of [outline, ...without, ...lines]) takePath(path, taken, grid);
  const takenToo = new Uint8Array(grid.columns * grid.rows);
  for (const path of avoid) takePath(path, takenToo, grid);
  const sumsToo = summed(takenToo, grid);
  const sums = summed(taken, grid);
  // Where words already stand: few, so looked at one by one instead of counting all cells again.
  const worded: CellBox[] = [];
  const none = (counts: Int32Array, box: CellBox): boolean => takenIn(counts, box, grid) === 0;
  const free = (box: CellBox, everything: boolean): boolean =>
    none(sums, box) && !worded.some((other) => overlap(box, other)) && (!everything || none(sumsToo, box));

  const nearest = (width: number, height: number, near: Point, everything: boolean): Point | null => {
    const [w, h] = [cellsFor(width, cell), cellsFor(height, cell)];
    let best: Point | null = null;
    let bestDistance = Number.POSITIVE_INFINITY;
    for (let row = 0; row + h <= grid.rows; row += 1) {
      for (let column = 0; column + w <= grid.columns; column += 1) {
        const centre = { x: grid.left + (column + w / 2) * cell, y: grid.top + (row + h / 2) * cell };
        const away = distance(centre, near);
        if (away < bestDistance && free({ column, row, width: w, height: h }, everything)) {
          [best, bestDistance] = [centre, away];
        }
      }
    }
    return best;
  };
  const boxAt = (centre: Point, width: number, height: number): CellBox => ({
    column: Math.floor((centre.x - width / 2 - grid.left) / cell),
    row: Math.floor((centre.y - height / 2 - grid.top) / cell),
    width: cellsFor(width, cell),
    height: cellsFor(height, cell),
  });
  const middle = { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 };

  return {
    find: (width, height, near = middle, clearOf = 'lines') => nearest(width, height, near, clearOf === 'everything'),
    isFree: (centre, width, height, clearOf = 'lines') => free(boxAt(centre, width, height), clearOf === 'everything'),
    take: (centre, width, height) => {
      worded.push(boxAt(centre, width, height));
    },
  };
};

interface CellBox {
  readonly column: number;
  readonly row: number;
  readonly width: number;
  readonly height: number;
}

const overlap = (a: CellBox, b: CellBox): boolean =>
  a.column < b.column + b.width &&
  b.column < a.column + a.width &&
  a.row < b.row + b.height &&
  b.row < a.row + a.height;

/** A length laid anywhere on the grid touches at most this many cells. */
const cellsFor = (length: number, cell: number): number => Math.ceil(length / cell) + 1;

/** How many cells of a box are taken; what lies off the grid counts as taken. */
const takenIn = (sums: Int32Array, { column, row, width, height }: CellBox, grid: Grid): number => {
  if (column < 0 || row < 0 || column + width > grid.columns || row + height > grid.rows) return width * height;
  const stride = grid.columns + 1;
  const at = (x: number, y: number) => sums[y * stride + x] as number;
  return at(column + width, row + height) - at(column, row + height) - at(column + width, row) + at(column, row);
};

interface Grid {
  readonly left: number;
  readonly top: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
}

const fillInside = (border: readonly Point[], taken: Uint8Array, grid: Grid, value: 0 | 1): void => {
  for (let row = 0; row < grid.rows; row += 1) {
    const y = grid.top + (row + 0.5) * grid.cell;
    const crossings: number[] = [];
    border.forEach((from, index) => {
      const to = border[(index + 1) % border.length] as Point;
      if (from.y <= y !== to.y <= y) crossings.push(lerp(from, to, (y - from.y) / (to.y - from.y)).x);
    });
    crossings.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const first = Math.max(0, Math.ceil(((crossings[i] as number) - grid.left) / grid.cell - 0.5));
      const last = Math.min(grid.columns - 1, Math.floor(((crossings[i + 1] as number) - grid.left) / grid.cell - 0.5));
      if (last >= first) taken.fill(value, row * grid.columns + first, row * grid.columns + last + 1);
    }
  }
};

const takePath = (path: Path, taken: Uint8Array, grid: Grid): void => {
  const points = flattenPath(path, tolerance.flatten);
  points.slice(1).forEach((to, index) => {
    takeLine(points[index] as Point, to, taken, grid);
  });
};

/** Takes every cell within one cell of a straight line. */
const takeLine = (from: Point, to: Point, taken: Uint8Array, grid: Grid): void => {
  const stretches = Math.max(1, Math.ceil(distance(from, to) / (grid.cell / 2)));
  for (let i = 0; i <= stretches; i += 1) {
    const p = lerp(from, to, i / stretches);
    const column = Math.floor((p.x - grid.left) / grid.cell);
    const row = Math.floor((p.y - grid.top) / grid.cell);
    for (let y = Math.max(0, row - 1); y <= Math.min(grid.rows - 1, row + 1); y += 1) {
      const first = Math.max(0, column - 1);
      const last = Math.min(grid.columns - 1, column + 1);
      if (last >= first) taken.fill(1, y * grid.columns + first, y * grid.columns + last + 1);
    }
  }
};

/** How many cells are taken above and to the left of each corner: any rectangle is then four look-ups. */
const summed = (taken: Uint8Array, { columns, rows }: Grid): Int32Array => {
  const stride = columns + 1;
  const sums = new Int32Array(stride * (rows + 1));
  for (let y = 0; y < rows; y += 1) {
    let row = 0;
    for (let x = 0; x < columns; x += 1) {
      row += taken[y * columns + x] as number;
      sums[(y + 1) * stride + x + 1] = (sums[y * stride + x + 1] as number) + row;
    }
  }
  return sums;
};
