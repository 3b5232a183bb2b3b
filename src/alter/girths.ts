import { tolerance } from '../geometry/index.ts';
import { type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import type { Change } from './types.ts';

/** Finished girths at the levels of changed pieces: by how much each grew, and what it is now. */
export const girthChanges = (before: Garment, after: Garment): readonly Change[] =>
  before.girths.flatMap(({ level, pieces }): Change[] => {
    let by = 0;
    let now = 0;
    for (const { piece, factor } of pieces) {
      const [old, changed] = [pieceOf(before, piece), pieceOf(after, piece)];
      const width = factor * levelWidth(changed, level);
      now += width;
      if (changed !== old) by += width - factor * levelWidth(old, level);
    }
    return Math.abs(by) <= tolerance.length ? [] : [{ what: 'girth', level, by, now }];
  });
