import { type Envelope, type FinishedOf, finishedOf } from '../../pattern/index.ts';
import type { CardFinished } from './types.ts';

/** What a card tells of, in the order a chart shows it. */
const told: readonly FinishedOf[] = [
  'bust',
  'waist',
  'hip',
  'upper-arm',
  'thigh',
  'knee',
  'hem-width',
  'sleeve-hem',
  'back-length',
  'front-length',
  'side-length',
  'sleeve-length',
  'inside-leg',
  'across-back',
];

/** Changes under this, mm, are of the drawing, not of the garment: nobody sews to them. */
const nothing = 0.5;

/**
 * Finished measurements before and after: those that change, known or not, and those known that stay.
 */
export const finishedAfter = (
  envelope: Envelope,
  view: string | null,
  size: string,
  changes: Readonly<Partial<Record<FinishedOf, number>>>,
): readonly CardFinished[] =>
  told.flatMap((of): CardFinished[] => {
    const known = finishedOf(envelope, size, view, of);
    const change = changes[of] ?? 0;
    const by = Math.abs(change) < nothing ? 0 : change;
    if (known === null && by === 0) return [];
    const old = known?.mm ?? null;
    return [{ of, old, from: known?.from ?? null, by, now: old === null ? null : old + by }];
  });
