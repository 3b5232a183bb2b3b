import type { ChartOptions } from './chart.ts';
import { bodyMeasureOf, finishedKindOf } from './labels.ts';
import { isSizeName } from './sizes.ts';
import { unitsSaid } from './unit-words.ts';

type Cells = readonly (readonly string[])[];

/**
 * A chart with its sizes down the side and its measures across the top is turned so that sizes run across. It is one
 * where the first line of cells names measures, without figures, and most lines below it begin with a size's name.
 * Cloth is printed by view and width and never so.
 */
export const turned = (rows: Cells, { kind }: ChartOptions): Cells => {
  if (kind === 'cloth') return rows;
  const recognise = kind === 'body' ? bodyMeasureOf : finishedKindOf;
  const at = rows.findIndex((row) => row.length > 1);
  const top = rows[at];
  if (!top || top.some((cell) => /\d/.test(cell))) return rows;
  const named = top.filter((cell) => recognise(unitsSaid(cell).rest) !== null);
  const under = rows.slice(at + 1).filter((row) => row.length > 1);
  const bySize = under.filter((row) => isSizeName(row[0] ?? ''));
  if (named.length === 0 || bySize.length === 0 || bySize.length < under.length) return rows;
  const lead = recognise(unitsSaid(top[0] ?? '').rest) === null ? top.slice(1) : top;
  const alone = rows.filter((row, index) => index !== at && row.length <= 1);
  return [
    ...alone,
    ['', ...under.map((row) => row[0] ?? '')],
    ...lead.map((label, column) => [label, ...under.map((row) => row[column + 1] ?? missing)]),
  ];
};

/** Stands for a cell that is not there: no figure, and no printed dash either. */
const missing = '?';
