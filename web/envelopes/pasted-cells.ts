import type { Figure } from '../../src/pattern/index.ts';
import type { Result } from '../../src/units/index.ts';

/** What came of pasting a piece of a table into a chart: every cell of it is in one of the three. */
export interface PastedCells {
  readonly read: readonly { readonly row: number; readonly column: number; readonly figure: Figure }[];
  /** Cells as written that do not read as figures, and cells with something in them that reach past the chart. */
  readonly unread: readonly string[];
  readonly outside: readonly string[];
}

/** A line a row, a tab a cell. */
const cellsIn = (text: string): readonly (readonly string[])[] =>
  text
    .replace(/\s+$/, '')
    .split(/\r?\n/)
    .map((line) => line.split('\t'));

/** Pasted cells by their places in a chart of `rows` by `columns`, the first of them in the cell at `row`, `column`. */
export const pastedCells = (
  text: string,
  { row, column }: { readonly row: number; readonly column: number },
  { rows, columns }: { readonly rows: number; readonly columns: number },
  readOne: (cell: string) => Result<Figure>,
): PastedCells => {
  const read: { row: number; column: number; figure: Figure }[] = [];
  const unread: string[] = [];
  const outside: string[] = [];
  for (const [down, line] of cellsIn(text).entries()) {
    for (const [across, cell] of line.entries()) {
      const place = { row: row + down, column: column + across };
      const figure = readOne(cell);
      if (place.row >= rows || place.column >= columns) {
        if (cell.trim() !== '') outside.push(cell.trim());
      } else if (figure.ok) read.push({ ...place, figure: figure.value });
      else unread.push(cell.trim());
    }
  }
  return { read, unread, outside };
};
