import { type Envelope, type FinishedOf, finishedKinds, finishedOf } from '../../pattern/index.ts';
import type { CardFinished } from './types.ts';

/** How much finished measurements grow, mm. */
export type FinishedChanges = Readonly<Partial<Record<FinishedOf, number>>>;

/** What a card tells of: all that has a name of its own. */
const told = finishedKinds.filter((of) => of !== 'other');

/** Changes under this, mm, are of the drawing, not of the garment: nobody sews to them. */
const nothing = 0.5;

/**
 * Finished measurements before and after: those that change, known or not, and those known that stay. Before is after
 * whatever was changed earlier.
 */
export const finishedAfter = (
  envelope: Envelope,
  view: string | null,
  size: string,
  changes: FinishedChanges,
  earlier: readonly FinishedChanges[] = [],
): readonly CardFinished[] =>
  told.flatMap((of): CardFinished[] => {
    const known = finishedOf(envelope, size, view, of);
    const change = changes[of] ?? 0;
    const by = Math.abs(change) < nothing ? 0 : change;
    if (known === null && by === 0) return [];
    const old = known === null ? null : earlier.reduce((sum, one) => sum + (one[of] ?? 0), known.mm);
    return [{ of, old, from: known?.from ?? null, by, now: old === null ? null : old + by }];
  });
