import { tolerance } from '../geometry/index.ts';
import { type Garment, girthAround, pieceOf } from '../pattern/index.ts';
import type { Change } from './types.ts';

/**
 * Finished girths at the levels of changed pieces: by how much each grew, and what it is now. Null where a level of the
 * body no longer goes across its piece, so that nothing can be measured there.
 */
export const girthChanges = (before: Garment, after: Garment): readonly Change[] | null => {
  const changes: Change[] = [];
  for (const girth of after.girths) {
    const old = before.girths.find(({ level, half }) => level === girth.level && half === girth.half);
    if (old === girth && girth.pieces.every(({ piece }) => pieceOf(before, piece) === pieceOf(after, piece))) continue;
    const now = girthAround(after, girth);
    const was = old ? girthAround(before, old) : 0;
    if (now === null || was === null) return null;
    if (Math.abs(now - was) > tolerance.length) changes.push({ what: 'girth', level: girth.level, by: now - was, now });
  }
  return changes;
};
