import type { Point } from '../geometry/index.ts';
import type { CellShape, CellSize } from './cell-shape.ts';

/** Shapes laid on a virtual sheet that is cut into tiles. */
export interface PackedSheet {
  /** Where each shape's own origin lies on the sheet, millimetres, in the order the shapes were given. */
  readonly places: readonly Point[];
  /** Tiles that carry anything. */
  readonly tiles: number;
  /** Shapes that would have had room on one tile and lie on several. */
  readonly split: number;
  /** Down to where the sheet is used, millimetres. */
  readonly length: number;
}

interface Grid {
  readonly cell: CellSize;
  /** Cells in one tile, across and down. */
  readonly tileX: number;
  readonly tileY: number;
  /** Tiles across the sheet. */
  readonly columns: number;
}

/**
 * Lays shapes without turning them and without overlap, each where it brings the fewest new tiles
 * into use and, of those places, highest and then farthest left. Tried in several orders for each width of sheet from one tile to
 * `maxColumns`; the one with the fewest tiles wins, then with the fewest shapes
 * cut by a joint they need not have, then the shortest. `blocked` keeps the sheet's top left free
 * (millimetres). Bottom-left filling as in Baker, Coffman and Rivest, Orthogonal packings in two dimensions, 1980.
 */
export const packSheet = (
  shapes: readonly CellShape[],
  cell: CellSize,
  step: { readonly x: number; readonly y: number },
  maxColumns: number,
  blocked: { readonly width: number; readonly height: number } = { width: 0, height: 0 },
): PackedSheet => {
  const tileX = Math.round(step.x / cell.x);
  const tileY = Math.round(step.y / cell.y);
  const widest = Math.max(1, ...shapes.map((shape) => Math.ceil(shape.width / tileX)));
  // No packing takes fewer tiles than the shapes have room in, and none shorter is sought on paper of a fixed length.
  const cells =
    shapes.reduce((sum, shape) => sum + area(shape), 0) + (blocked.width / cell.x) * (blocked.height / cell.y);
  const leastTiles = Math.ceil(cells / (tileX * tileY));
  const touched = shapes.map((shape) => tilesByPhase(shape, tileX, tileY));
  let best: PackedSheet | null = null;
  for (let columns = widest; columns <= Math.max(widest, maxColumns); columns += 1) {
    // More columns than tiles used so far would stand empty.
    if (best && columns > Math.max(widest, best.tiles)) break;
    const grid: Grid = { cell, tileX, tileY, columns };
    for (const order of orders(shapes)) {
      best = better(best, packColumns(shapes, touched, order, grid, blocked));
      if (best.tiles === leastTiles && best.split === 0 && maxColumns > 1) return best;
    }
  }
  return best as PackedSheet;
};

const better = (best: PackedSheet | null, other: PackedSheet): PackedSheet => {
  if (!best) return other;
  const gain = best.tiles - other.tiles || best.split - other.split || best.length - other.length;
  return gain > 0 ? other : best;
};

/** The orders shapes are tried in: largest, tallest and widest first, and largest first but for one that goes before it. */
const orders = (shapes: readonly CellShape[]): readonly (readonly number[])[] => {
  const by = (measure: (shape: CellShape) => number) =>
    shapes.map((_, index) => index).sort((a, b) => measure(shapes[b] as CellShape) - measure(shapes[a] as CellShape));
  const largest = by(area);
  // Many small pieces fill the gaps whatever their order.
  if (shapes.length > mostOrdered) return [largest];
  const early = largest.slice(1, mostEarly + 1).map((index) => [index, ...largest.filter((other) => other !== index)]);
  return [largest, by((shape) => shape.height), by((shape) => shape.width), ...early];
};

/** Trying every order would take too long for what it saves. */
const mostEarly = 4;
const mostOrdered = 24;

const packColumns = (
  shapes: readonly CellShape[],
  touched: readonly TilesTouched[],
  order: readonly number[],
  grid: Grid,
  blocked: { readonly width: number; readonly height: number },
): PackedSheet => {
  const width = grid.columns * grid.tileX;
  // Shapes one under another always fit in this many rows of cells.
  const blockedRows = Math.ceil(blocked.height / grid.cell.y);
  const height = blockedRows + shapes.reduce((sum, shape) => sum + shape.height, 0) + grid.tileY;
  const sheet = new Occupancy(width, height);
  const tilesUsed = new Set<number>();
  let bottom = 0;
  let split = 0;
  if (blocked.width > 0) {
    const blockedCells = Math.min(width, Math.ceil(blocked.width / grid.cell.x));
    for (let y = 0; y < blockedRows; y += 1) sheet.take(y, 0, blockedCells);
    for (let row = 0; row * grid.tileY < blockedRows; row += 1) {
      for (let column = 0; column * grid.tileX < blockedCells; column += 1) tilesUsed.add(row * grid.columns + column);
    }
    bottom = blockedRows;
  }
  const places: Point[] = [];
  for (const index of order) {
    const shape = shapes[index] as CellShape;
    const tiles = touched[index] as TilesTouched;
    const at = bestPlace(shape, tiles, sheet, grid, tilesUsed, bottom);
    shape.rows.forEach((runs, row) => {
      for (const [from, to] of runs) sheet.take(at.y + row, at.x + from, at.x + to);
    });
    if (fitsOneTile(shape, grid) && tiles(at.x, at.y).length > 1) split += 1;
    for (const { column, row } of tiles(at.x, at.y)) tilesUsed.add(row * grid.columns + column);
    bottom = Math.max(bottom, at.y + shape.height);
    places[index] = {
      x: at.x * grid.cell.x + shape.origin.x,
      y: at.y * grid.cell.y + shape.origin.y,
    };
  }
  return { places, tiles: tilesUsed.size, split, length: bottom * grid.cell.y };
};

const area = (shape: CellShape): number =>
  shape.rows.reduce((sum, runs) => sum + runs.reduce((row, [from, to]) => row + to - from, 0), 0);

const bestPlace = (
  shape: CellShape,
  touched: TilesTouched,
  sheet: Occupancy,
  grid: Grid,
  tilesUsed: ReadonlySet<number>,
  bottom: number,
): { x: number; y: number } => {
  let best = { x: 0, y: bottom };
  let bestScore = Number.POSITIVE_INFINITY;
  const width = grid.columns * grid.tileX;
  const whole = fitsOneTile(shape, grid);
  const lastRow = Math.ceil(bottom / grid.tileY) * grid.tileY;
  for (let y = 0; y <= lastRow; y += 1) {
    for (let x = 0; x + shape.width <= width; x += 1) {
      const tiles = touched(x, y);
      let fresh = 0;
      for (const { column, row } of tiles) if (!tilesUsed.has(row * grid.columns + column)) fresh += 1;
      const split = whole && tiles.length > 1 ? 1 : 0;
      const score = fresh * 1e9 + split * 1e8 + (y + shape.height) * 1e4 + x;
      if (score < bestScore && sheet.isFree(shape, x, y)) {
        bestScore = score;
        best = { x, y };
        // Places are met from the top and from the left: none further on is better than one without a new tile or joint.
        if (fresh === 0 && split === 0) return best;
      }
    }
  }
  return best;
};

const fitsOneTile = (shape: CellShape, grid: Grid): boolean => shape.width <= grid.tileX && shape.height <= grid.tileY;

interface TileAt {
  readonly column: number;
  readonly row: number;
}

/** The tiles a shape touches when its cells begin at x, y. */
type TilesTouched = (x: number, y: number) => readonly TileAt[];

/** Which tiles a shape touches depends but for a shift on where in its tile it begins: worked out once for each such place. */
const tilesByPhase = (shape: CellShape, tileX: number, tileY: number): TilesTouched => {
  const known = new Map<number, readonly TileAt[]>();
  return (x, y) => {
    const [phaseX, phaseY] = [x % tileX, y % tileY];
    const [column, row] = [(x - phaseX) / tileX, (y - phaseY) / tileY];
    if (phaseX + shape.width <= tileX && phaseY + shape.height <= tileY) return [{ column, row }];
    const phase = phaseY * tileX + phaseX;
    let tiles = known.get(phase);
    if (!tiles) {
      tiles = tilesTouched(shape, phaseX, phaseY, tileX, tileY);
      known.set(phase, tiles);
    }
    return column === 0 && row === 0
      ? tiles
      : tiles.map((tile) => ({ column: tile.column + column, row: tile.row + row }));
  };
};

const tilesTouched = (shape: CellShape, x: number, y: number, tileX: number, tileY: number): readonly TileAt[] => {
  const across = Math.ceil((x + shape.width) / tileX);
  const tiles = new Map<number, TileAt>();
  shape.rows.forEach((runs, index) => {
    const row = Math.floor((y + index) / tileY);
    for (const [from, to] of runs) {
      for (let column = Math.floor((x + from) / tileX); column <= Math.floor((x + to - 1) / tileX); column += 1) {
        const key = row * across + column;
        if (!tiles.has(key)) tiles.set(key, { column, row });
      }
    }
  });
  return [...tiles.values()];
};

/** Which cells of the sheet are taken, asked by runs. Holds, for each cell, how many are taken in its row before it. */
class Occupancy {
  readonly #before: Uint16Array;
  readonly #stride: number;
  readonly #height: number;

  constructor(width: number, height: number) {
    this.#stride = width + 1;
    this.#height = height;
    this.#before = new Uint16Array(this.#stride * height);
  }

  isFree(shape: CellShape, x: number, y: number): boolean {
    if (y + shape.height > this.#height) return false;
    for (let row = 0; row < shape.height; row += 1) {
      const start = (y + row) * this.#stride + x;
      for (const [from, to] of shape.rows[row] ?? []) {
        if (this.#before[start + from] !== this.#before[start + to]) return false;
      }
    }
    return true;
  }

  /** Cells taken here must have been free. */
  take(y: number, from: number, to: number): void {
    const start = y * this.#stride;
    for (let x = from; x < this.#stride - 1; x += 1) {
      const index = start + x + 1;
      this.#before[index] = (this.#before[index] as number) + Math.min(x + 1, to) - from;
    }
  }
}
