import { type LengthUnit, parseFigure } from '../../units/index.ts';
import { type Separator, splitBySizes } from './cells.ts';
import type { ChartKind } from './chart.ts';
import type { SizeHead } from './size-head.ts';
import type { EnvelopeView } from './types.ts';
import { onlyUnit } from './unit-words.ts';
import { viewsSaid } from './views.ts';

/** Cells as lead cells, figures, and a unit printed after them. */
export interface Parted {
  readonly lead: readonly string[];
  readonly cells: readonly string[];
  readonly unit: LengthUnit | null;
  /** The unit is a mark that stands for inches, or for the same as above. */
  readonly ditto: boolean;
}

const withoutEmptyEnd = (cells: readonly string[], least: number): readonly string[] => {
  let end = cells.length;
  while (end > least && cells[end - 1] === '') end -= 1;
  return cells.slice(0, end);
};

/** Columns that cells told apart by spaces may leave out: a first column whose entry holds for the rows below it. */
const shorterLead = (cells: readonly string[], leads: number, sizes: number, known: readonly EnvelopeView[]): boolean =>
  leads > 1 && cells.length === leads - 1 + sizes && viewsSaid(cells[0] ?? '', known).views === null;

export const part = (
  row: readonly string[],
  head: SizeHead,
  separator: Separator,
  known: readonly EnvelopeView[],
): Parted => {
  const sizes = head.sizes.length;
  const leads = Math.max(1, head.leads);
  let cells = withoutEmptyEnd(row, leads + sizes);
  const after = cells.length > leads + sizes ? onlyUnit(cells.at(-1) ?? '') : null;
  const ditto = after !== null && /^(?:"|''|″|”)$/.test(cells.at(-1) ?? '');
  if (after) cells = cells.slice(0, -1);
  const open = separator === 'spaces' || separator === 'space';
  const shorter = open && shorterLead(cells, leads, sizes, known);
  if (open && cells.length < leads + sizes && !shorter) {
    const split = splitBySizes(cells.join(' '), sizes);
    if (split) return { lead: split.slice(0, -sizes), cells: split.slice(-sizes), unit: after, ditto };
  }
  const lead = shorter ? leads - 1 : Math.max(leads, cells.length - sizes);
  return { lead: cells.slice(0, lead), cells: cells.slice(lead), unit: after, ditto };
};

/** Cells before the figures that are figures themselves: the row has more than there are sizes. */
export const tooMany = ({ lead }: Parted, leads: number, kind: ChartKind): boolean =>
  lead.slice(Math.max(1, leads)).some((cell) => {
    const read = parseFigure(cell, 'in');
    return read.ok && (kind !== 'cloth' || read.value.unit === null);
  });
