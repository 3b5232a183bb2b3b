import { createContext, useContext } from 'react';
import type { Measures, Wearer } from '../../src/body/index.ts';
import type { ChartKind, Envelope, EnvelopeDoubt, FinishedOf } from '../../src/pattern/index.ts';
import type { Unit } from '../../src/units/index.ts';

/** Whose body is shown on the pictures of the charts. */
export interface ShownWearer {
  readonly id: string;
  readonly name: string;
  readonly measures: Measures;
  /** Whom the measures are compared with, as far as is known: a pattern for women shows a woman first. */
  readonly like: Wearer['comparedWith'];
}

/** Everything the passages of an envelope's page work from. */
export interface EnvelopeInHand {
  readonly id: string;
  readonly envelope: Envelope;
  /** The unit it is printed in. */
  readonly unit: Unit;
  readonly doubts: readonly EnvelopeDoubt[];
  readonly wearers: readonly ShownWearer[];
  readonly wearer: ShownWearer | null;
  readonly showWearer: (id: string) => void;
  /** The photograph that lies on the table instead of a chart's picture; null for the picture. */
  readonly photograph: string | null;
  readonly showPhotograph: (id: string | null) => void;
  /** The row of a chart she works in. */
  readonly row: { readonly chart: ChartKind; readonly row: number } | null;
  readonly workIn: (chart: ChartKind, row: number) => void;
  /** What is being measured flat just now: where the tape goes lies on the table. */
  readonly measuring: FinishedOf | null;
  readonly setMeasuring: (of: FinishedOf | null) => void;
  /** Changes the envelope; edits under one name undo together. */
  readonly change: (change: (envelope: Envelope) => Envelope, name: string) => void;
}

const EnvelopeContext = createContext<EnvelopeInHand | null>(null);
export const EnvelopeProvider = EnvelopeContext.Provider;

export const useEnvelope = (): EnvelopeInHand => {
  const envelope = useContext(EnvelopeContext);
  if (!envelope) throw new Error('used outside an envelope');
  return envelope;
};
