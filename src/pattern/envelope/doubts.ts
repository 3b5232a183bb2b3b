import type { EnvelopeDoubt } from './doubt.ts';
import { bodyDoubts } from './doubts-body.ts';
import { clothDoubts } from './doubts-cloth.ts';
import { draftingDoubts } from './doubts-drafting.ts';
import { finishedDoubts } from './doubts-finished.ts';
import type { Envelope } from './types.ts';

/**
 * Entries that could be printed so but hardly are, in the order of the charts: figures that fall or grow unevenly,
 * inches typed as centimetres and back, bodies nobody has, a finished measurement under the body it goes round, cloth
 * that shrinks as the size grows or the cloth narrows, a cup that disagrees with the chart. Doubts she has answered
 * (`kept`) are left out unless asked for.
 */
export const envelopeDoubts = (
  envelope: Envelope,
  options: { readonly withKept?: boolean } = {},
): readonly EnvelopeDoubt[] =>
  [...bodyDoubts(envelope), ...finishedDoubts(envelope), ...clothDoubts(envelope), ...draftingDoubts(envelope)].filter(
    ({ id }) => options.withKept || !envelope.kept.includes(id),
  );
