import type { Point } from '../geometry/index.ts';
import { crossingsAt } from './cell-shape.ts';
import type { TileFrame } from './paper.ts';

/** One sheet of paper's part of the virtual sheet. */
export interface Tile {
  readonly column: number;
  readonly row: number;
  /** Column letter and row number: `B3`. */
  readonly name: string;
}

/** Where two sheets meet. The same sign is printed on both. */
export interface Joint {
  readonly sign: string;
  /** Left and right, or upper and lower. */
  readonly first: Tile;
  readonly second: Tile;
  readonly runs: 'down' | 'across';
}

/** A, B … Z, AA, AB … */
export const columnName = (column: number): string =>
  (column >= 26 ? columnName(Math.floor(column / 26) - 1) : '') + String.fromCharCode(65 + (column % 26));

/** Lower-case letters that are not taken for a figure, then pairs of them. */
const signLetters = 'abcdefghkmnpqrstuvwxyz';

const letterSign = (index: number): string =>
  (index >= signLetters.length ? letterSign(Math.floor(index / signLetters.length) - 1) : '') +
  (signLetters[index % signLetters.length] as string);

/**
 * The tiles that carry anything, row by row. A tile counts when any part of a shape, border or inside, lies in it: the
 * middle of a large piece has no line on it and yet holds its neighbours together. Shapes are closed polygons.
 */
export const tilesOf = (
  shapes: readonly (readonly Point[])[],
  frame: Pick<TileFrame, 'stepX' | 'stepY'>,
): readonly Tile[] => {
  const used = new Map<string, Tile>();
  const count = (column: number, row: number) => {
    const name = `${columnName(column)}${row + 1}`;
    used.set(name, { column, row, name });
  };
  for (const shape of shapes) {
    shape.forEach((from, index) => {
      countLine(from, shape[(index + 1) % shape.length] as Point, frame, count);
    });
    countInside(shape, frame, count);
  }
  return [...used.values()].sort((a, b) => a.row - b.row || a.column - b.column);
};

type Count = (column: number, row: number) => void;

/** Every tile a straight line passes through. */
const countLine = (from: Point, to: Point, frame: Pick<TileFrame, 'stepX' | 'stepY'>, count: Count): void => {
  const cuts = [0, 1, ...gridCuts(from.x, to.x, frame.stepX), ...gridCuts(from.y, to.y, frame.stepY)].sort(
    (a, b) => a - b,
  );
  cuts.slice(1).forEach((end, index) => {
    const middle = ((cuts[index] as number) + end) / 2;
    count(
      Math.floor((from.x + (to.x - from.x) * middle) / frame.stepX),
      Math.floor((from.y + (to.y - from.y) * middle) / frame.stepY),
    );
  });
};

/** Where, as fractions of the way, a coordinate passes whole multiples of the step. */
const gridCuts = (from: number, to: number, step: number): number[] => {
  const [low, high] = from < to ? [from, to] : [to, from];
  const cuts: number[] = [];
  for (let k = Math.ceil(low / step); k * step < high; k += 1) {
    if (k * step > low) cuts.push((k * step - from) / (to - from));
  }
  return cuts;
};

/** Tiles wholly inside a shape, which its border misses: those whose centre is inside. */
const countInside = (shape: readonly Point[], frame: Pick<TileFrame, 'stepX' | 'stepY'>, count: Count): void => {
  const ys = shape.map((p) => p.y);
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  for (let row = Math.floor(top / frame.stepY); row * frame.stepY < bottom; row += 1) {
    const crossings = crossingsAt(shape, (row + 0.5) * frame.stepY);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const first = Math.ceil((crossings[i] as number) / frame.stepX - 0.5);
      const last = Math.floor((crossings[i + 1] as number) / frame.stepX - 0.5);
      for (let column = first; column <= last; column += 1) count(column, row);
    }
  }
};

/**
 * Every joint between printed tiles: numbers where sheets meet side by side, letters where one lies above another. A joint
 * that was there before keeps its sign, and what is new goes on from the last.
 */
export const jointsOf = (tiles: readonly Tile[], before: readonly Joint[] = []): readonly Joint[] => {
  const at = new Map(tiles.map((tile) => [`${tile.column},${tile.row}`, tile]));
  const key = (first: Tile, second: Tile) => `${first.name} ${second.name}`;
  const signs = new Map(before.map((joint) => [key(joint.first, joint.second), joint.sign]));
  let numbers = before.filter(({ runs }) => runs === 'down').length;
  let letters = before.length - numbers;
  const jointTo = (tile: Tile, runs: Joint['runs']): readonly Joint[] => {
    const second = at.get(runs === 'down' ? `${tile.column + 1},${tile.row}` : `${tile.column},${tile.row + 1}`);
    if (!second) return [];
    const known = signs.get(key(tile, second));
    const sign = known ?? (runs === 'down' ? `${++numbers}` : letterSign(letters++));
    return [{ sign, first: tile, second, runs }];
  };
  return [...tiles.flatMap((tile) => jointTo(tile, 'down')), ...tiles.flatMap((tile) => jointTo(tile, 'across'))];
};
