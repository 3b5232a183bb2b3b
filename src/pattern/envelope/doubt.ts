import type { Problem } from '../../units/index.ts';
import { figureMm } from './figures.ts';
import type { Envelope, Figure } from './types.ts';

/** Where a doubtful figure stands: row and size are places in the envelope's arrays; size null means the whole row. */
export interface DoubtPlace {
  readonly chart: 'body' | 'finished' | 'cloth' | 'drafting';
  readonly row: number | null;
  readonly size: number | null;
}

/** Something printed that could be so but hardly is. `code` and `values` are a problem's: `sentence(doubt, unit)` says it. */
export interface EnvelopeDoubt extends Problem {
  /** The same for the same figure in the same place, so that an answer holds until the figure is changed. */
  readonly id: string;
  readonly where: DoubtPlace;
}

/** She has looked: it is printed so. */
export const keepDoubt = (envelope: Envelope, id: string): Envelope =>
  envelope.kept.includes(id) ? envelope : { ...envelope, kept: [...envelope.kept, id] };

const written = (figure: Figure): string =>
  figure === null
    ? '-'
    : typeof figure === 'number'
      ? String(Math.round(figure * 10))
      : figure.map((mm) => Math.round(mm * 10)).join('-');

/**
 * An id from what is doubted, the row by what it measures and not by its place, the size by name, and the figures
 * concerned: rows may be moved, and an answer ends when a figure it was about is changed.
 */
export const doubtId = (code: string, row: string, size: string | null, figures: readonly Figure[]): string =>
  `${code.replace('envelope.doubt-', '')}:${row}:${size ?? '*'}:${figures.length > 4 ? sum(figures) : figures.map(written).join(',')}`.slice(
    0,
    300,
  );

const sum = (figures: readonly Figure[]): string =>
  String(Math.round(10 * figures.reduce<number>((all, figure, at) => all + (at + 1) * (figureMm(figure) ?? 0), 0)));
