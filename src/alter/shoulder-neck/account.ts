import { tolerance } from '../../geometry/index.ts';
import { pieceOf } from '../../pattern/index.ts';
import { isLining } from '../parts.ts';
import { headEaseChanges } from '../sleeve/head-ease.ts';
import type { Change } from '../types.ts';
import type { Work } from '../work.ts';
import type { Armhole } from './upper.ts';

/** Sleeve-head ease before and after, of every sleeve of the shell set into an armhole that changed. */
export const headEase = (work: Work): readonly Change[] =>
  work.garment.pieces
    .filter((piece) => piece.role === 'sleeve' && !isLining(piece))
    .flatMap(({ id }) => headEaseChanges(work, id));

/** The armholes of the shell, edges of one piece together: by how much each is longer, and how long it is now. */
export const armholeChanges = (work: Work, armholes: readonly Armhole[]): readonly Change[] =>
  armholes
    .filter(({ piece }) => !isLining(piece))
    .flatMap(({ piece, edges }): Change[] => {
      const after = pieceOf(work.garment, piece.id);
      const length = (of: typeof piece): number => edges.reduce((sum, edge) => sum + work.tape.edge(of, edge), 0);
      const by = length(after) - length(piece);
      return Math.abs(by) <= tolerance.told ? [] : [{ what: 'armhole', piece: piece.id, by, now: length(after) }];
    });
