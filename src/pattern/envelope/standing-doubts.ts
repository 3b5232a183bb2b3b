import type { EnvelopeDoubt } from './doubt.ts';
import type { Envelope, Figure } from './types.ts';

/** What a doubt is about as the envelope has it, in one word to compare: its figure, or of a whole row all of them. */
const about = (envelope: Envelope, { where: { chart, row, size } }: EnvelopeDoubt): string => {
  if (chart === 'drafting') {
    return JSON.stringify([envelope.allowance, envelope.draftedCup, envelope.draftedStature]);
  }
  const rows: readonly { readonly figures: readonly Figure[] }[] =
    chart === 'cloth' ? envelope.clothNeeded : envelope[chart];
  const found = rows[row ?? -1];
  if (!found) return '';
  return size === null ? JSON.stringify(found) : JSON.stringify(found.figures[size] ?? null);
};

/**
 * Of the doubts about an envelope as it was a moment `before`, those that stand still: whose figure has not been changed
 * since and that have not been answered.
 */
export const doubtsStanding = (
  doubts: readonly EnvelopeDoubt[],
  before: Envelope,
  now: Envelope,
): readonly EnvelopeDoubt[] =>
  before === now
    ? doubts
    : doubts.filter((doubt) => !now.kept.includes(doubt.id) && about(before, doubt) === about(now, doubt));
