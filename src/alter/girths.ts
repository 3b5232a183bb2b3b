import { tolerance } from '../geometry/index.ts';
import { type Garment, type Girth, levelWidth, pieceOf } from '../pattern/index.ts';
import type { Change } from './types.ts';

const whole = (garment: Garment, { level, pieces }: Girth): number =>
  pieces.reduce(
    (sum, { piece, factor, level: own }) => sum + factor * levelWidth(pieceOf(garment, piece), own ?? level),
    0,
  );

/** Finished girths at the levels of changed pieces: by how much each grew, and what it is now. */
export const girthChanges = (before: Garment, after: Garment): readonly Change[] =>
  after.girths.flatMap((girth): Change[] => {
    const old = before.girths.find(({ level, half }) => level === girth.level && half === girth.half);
    const same = old === girth && girth.pieces.every(({ piece }) => pieceOf(before, piece) === pieceOf(after, piece));
    if (same) return [];
    const now = whole(after, girth);
    const by = old ? now - whole(before, old) : now;
    return Math.abs(by) <= tolerance.length ? [] : [{ what: 'girth', level: girth.level, by, now }];
  });
