import type { Problem } from '../../units/index.ts';
import type { BodyRow, ClothRow, Envelope, EnvelopeView, Figure, FinishedRow } from './types.ts';

export type ChartKind = 'body' | 'finished' | 'cloth';

export interface ChartOptions {
  readonly kind: ChartKind;
  /** The unit of figures beside which the chart says none. */
  readonly printedIn?: Envelope['printedIn'];
  /** Sizes known already: what columns without a head are, and what a head must agree with. */
  readonly sizes?: readonly string[];
  /** Views known already. */
  readonly views?: readonly EnvelopeView[];
}

/** A row whose label is not one of the trade's words: what it is must be asked. */
export interface AskedRow {
  /** As printed. */
  readonly label: string;
  readonly view: string | null;
  readonly figures: readonly Figure[];
  /** Of a cloth row, what it did say of the cloth; width null where none. */
  readonly cloth?: Pick<ClothRow, 'layer' | 'nap'> & { readonly width: number | null };
}

/** A chart as read, every length mm, rows in the order the program shows them. */
export interface ChartRead {
  readonly kind: ChartKind;
  readonly printedIn: Envelope['printedIn'];
  readonly sizes: readonly string[];
  /** Views the chart names, those known already first. */
  readonly views: readonly EnvelopeView[];
  readonly body: readonly BodyRow[];
  readonly finished: readonly FinishedRow[];
  readonly clothNeeded: readonly ClothRow[];
  readonly asked: readonly AskedRow[];
  /** What she should know of how it was read; nothing that stands in the way. */
  readonly said: readonly Problem[];
}
