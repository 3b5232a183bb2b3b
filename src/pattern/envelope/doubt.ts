import type { Problem } from '../../units/index.ts';
import type { Envelope } from './types.ts';

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
