import { outlineArea, selfIntersections, tolerance } from '../geometry/index.ts';
import { type Garment, outlineOf, type Piece, pieceOf } from '../pattern/index.ts';
import { bad, type Problem } from '../units/index.ts';
import { type Put, sumOf } from './put.ts';
import { type Tape, walked } from './tape.ts';
import type { Held, PieceReport } from './types.ts';

/** One thing held: off by so many mm, judged by tolerance.holds unless another is named. */
export const held = (
  what: string,
  by: number,
  where: Omit<Held, 'what' | 'by' | 'ok'> = {},
  within: number = tolerance.holds,
): Held => ({
  what,
  ...where,
  by,
  ok: Math.abs(by) <= within,
});

/** Edges that keep their length, one by one. */
export const heldEdges = (tape: Tape, before: Piece, after: Piece, edges: readonly string[]): readonly Held[] =>
  edges.map((edge) => held('edge-length', tape.edge(after, edge) - tape.edge(before, edge), { piece: after.id, edge }));

/** Ids of pieces that are not the very ones they were, or are new. */
export const changedPieces = (before: Garment, after: Garment): ReadonlySet<string> => {
  const known = new Map(before.pieces.map((piece) => [piece.id, piece]));
  return new Set(after.pieces.filter((piece) => piece !== known.get(piece.id)).map(({ id }) => id));
};

/**
 * Every seam of a piece that changed, walked again. What counts is how far its difference lies outside its
 * ease; a seam that was off before is not made worse.
 */
export const heldSeams = (tape: Tape, before: Garment, after: Garment): readonly Held[] => {
  const changed = changedPieces(before, after);
  const known = new Map(before.seams.map((seam) => [seam.id, seam]));
  return after.seams
    .filter((seam) => changed.has(seam.a.piece) || changed.has(seam.b.piece))
    .map((seam) => {
      const old = known.get(seam.id);
      const was = old ? walked(tape, old, (id) => pieceOf(before, id)).excess : 0;
      const now = walked(tape, seam, (id) => pieceOf(after, id)).excess;
      const by = Math.abs(now) <= tolerance.seam ? now : Math.abs(now) > Math.abs(was) ? now - was : 0;
      return held('seam-walks', by, { seam: seam.id }, tolerance.seam);
    });
};

/** What keeps an altered piece from being cut: an outline that crosses itself or turned inside out. */
export const torn = (piece: Piece): Problem | null => {
  const outline = outlineOf(piece);
  if (outlineArea(outline) > 0 && selfIntersections(outline).length === 0) return null;
  return bad('alter.tears', { piece: piece.name }).problem;
};

/** What became of a piece, from its areas and what was put in. One that is new is put in whole. */
export const reportOf = (tape: Tape, before: Piece | null, after: Piece, done: readonly Put[]): PieceReport => {
  const areaBefore = before ? outlineArea(outlineOf(before)) : 0;
  const areaAfter = outlineArea(outlineOf(after));
  const puts = before ? done : [{ kind: 'piece' as const, at: after.id, area: areaAfter - sumOf(done) }, ...done];
  return {
    piece: after.id,
    lengthBefore: before ? tape.edges(before) : {},
    areaBefore,
    areaAfter,
    areaTrued: areaAfter - areaBefore - sumOf(puts),
    puts,
  };
};
