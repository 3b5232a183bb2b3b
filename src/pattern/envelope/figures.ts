import type { Measures } from '../../body/index.ts';
import { finishedFromFlat } from './flat-sum.ts';
import type { Envelope, Figure, FinishedOf } from './types.ts';

/** A figure as one length, mm: the middle of a range. Null where none is printed. */
export const figureMm = (figure: Figure): number | null =>
  typeof figure === 'number' || figure === null ? figure : (figure[0] + figure[1]) / 2;

/** One size of the printed body chart. */
export interface ChartBody {
  readonly id: string;
  readonly body: Measures;
}

/**
 * The bodies the sizes are drafted for, as far as the envelope says: the body chart's figures (middles of ranges),
 * and the stature it is drafted for where the chart has no row of its own for it. Nothing is estimated.
 */
export const chartBodies = (envelope: Envelope): readonly ChartBody[] =>
  envelope.sizes.map((id, index) => {
    const printed = envelope.body.flatMap(({ measure, figures }) => {
      const mm = figureMm(figures[index] ?? null);
      return mm === null ? [] : [[measure, mm] as const];
    });
    const drafted = envelope.draftedStature === null ? [] : [['stature', envelope.draftedStature] as const];
    return { id, body: Object.fromEntries([...drafted, ...printed]) };
  });

/** A finished measurement, mm, and where it came from: printed on the envelope, or the tissue measured flat. */
export interface FinishedFigure {
  readonly mm: number;
  readonly from: 'printed' | 'measured-flat';
}

/** A row for the view itself outranks one for all views. */
const forView = <T extends { readonly view: string | null }>(rows: readonly T[], view: string | null): readonly T[] => [
  ...rows.filter((row) => row.view === view),
  ...(view === null ? [] : rows.filter((row) => row.view === null)),
];

/**
 * The finished measurement of a size in a view (`null`: what holds for all of them): as printed, else from pieces
 * measured flat; null where neither is known. A flat measure that makes no sense counts as not known.
 */
export const finishedOf = (
  envelope: Envelope,
  size: string,
  view: string | null,
  of: FinishedOf,
): FinishedFigure | null => {
  const index = envelope.sizes.indexOf(size);
  if (index < 0 || of === 'other') return null;
  for (const row of forView(envelope.finished, view)) {
    const mm = row.of === of ? figureMm(row.figures[index] ?? null) : null;
    if (mm !== null) return { mm, from: 'printed' };
  }
  for (const flat of forView(envelope.flat, view)) {
    if (flat.of !== of || flat.size !== size) continue;
    const sum = finishedFromFlat(flat);
    if (sum.ok) return { mm: sum.value, from: 'measured-flat' };
  }
  return null;
};
