import { pieceOf } from '../pattern/index.ts';
import { heldEdges } from './checks.ts';
import type { Held } from './types.ts';
import type { Work } from './work-type.ts';

/** Edges of a piece that keep the length they had before the work began. */
export const heldLengths = (work: Work, id: string, edges: readonly string[]): readonly Held[] =>
  heldEdges(work.tape, pieceOf(work.before, id), pieceOf(work.garment, id), edges);

/** All edges of a piece but those that were to change keep their length. */
export const heldOthers = (work: Work, id: string, changed: readonly string[] = []): readonly Held[] =>
  heldLengths(
    work,
    id,
    pieceOf(work.before, id)
      .edges.map((edge) => edge.id)
      .filter((edge) => !changed.includes(edge)),
  );
