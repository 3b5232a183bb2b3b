import type { KeyboardEvent } from 'react';

/** The cell that stands so many rows and columns from another, in the order of the table as it is shown. */
const cellAt = (table: Element, row: number, column: number): HTMLInputElement | null =>
  table.querySelector<HTMLInputElement>(`input[data-row="${row}"][data-column="${column}"]`);

/** Puts the cursor into a cell, all of it chosen, so that typing replaces it. */
export const goToCell = (table: Element | null, row: number, column: number): boolean => {
  const cell = table ? cellAt(table, row, column) : null;
  if (!cell) return false;
  cell.focus();
  cell.select();
  return true;
};

/** The same from elsewhere on the page: the cell is brought clear of the names that stand still at its left. */
export const leadToCell = (table: Element | null, row: number, column: number): void => {
  if (table && goToCell(table, row, column))
    cellAt(table, row, column)?.scrollIntoView({ block: 'nearest', inline: 'center' });
};

const steps: Readonly<Record<string, readonly [rows: number, columns: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/** Left and right leave a cell only from its end: inside it they move among what was typed. */
const atTheEnd = ({ selectionStart, selectionEnd, value }: HTMLInputElement, columns: number): boolean => {
  if (selectionStart === 0 && selectionEnd === value.length) return true;
  return selectionStart === selectionEnd && selectionStart === (columns < 0 ? 0 : value.length);
};

/** Arrow keys and Enter go from cell to cell of a table of figures; Enter goes down, with Shift up. */
export const moveAmongCells = (event: KeyboardEvent<HTMLElement>): void => {
  const { target, key } = event;
  if (!(target instanceof HTMLInputElement) || target.dataset.row === undefined) return;
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  const step = key === 'Enter' ? ([event.shiftKey ? -1 : 1, 0] as const) : steps[key];
  if (!step || (key !== 'Enter' && event.shiftKey)) return;
  if (step[1] !== 0 && !atTheEnd(target, step[1])) return;
  const moved = goToCell(
    event.currentTarget,
    Number(target.dataset.row) + step[0],
    Number(target.dataset.column) + step[1],
  );
  if (moved || key === 'Enter') event.preventDefault();
};
