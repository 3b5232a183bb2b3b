import { mirrorX, tolerance } from '../../geometry/index.ts';
import { type Garment, type Piece, pieceOf, transformPiece } from '../../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../../units/index.ts';
import { createTape, walked } from '../tape.ts';
import { leftId, type Standing, standings } from './kinds.ts';
import { openFold } from './open-fold.ts';
import { splitGirths, splitSeams } from './seams.ts';
import { splice } from './splice.ts';

/** How a piece that is one of a pair is called once the two differ. */
const sideName = (name: string, side: 'right' | 'left'): string => `${name}, ${side}`;

/** One of a pair that is cut for itself: half as many; of pairs cut twice over each side still needs one turned over. */
const single = (piece: Piece, side: 'right' | 'left'): Piece => ({
  ...piece,
  name: sideName(piece.name, side),
  cut: piece.cut.map((order) => ({ ...order, count: order.count / 2, mirrored: order.count > 2 })),
});

const piecesOf = (
  right: Piece,
  left: Piece,
  before: Piece | undefined,
  standing: Standing,
): Result<readonly Piece[]> => {
  if (standing === 'alike') return good([right]);
  if (standing === 'whole') {
    if (!before) return bad('alter.whole-piece-one-side', { piece: right.name });
    const spliced = splice(before, right, left);
    return spliced.ok ? good([spliced.value]) : spliced;
  }
  if (standing === 'opened') {
    const opened = openFold(right, left);
    return opened.ok ? good([opened.value]) : opened;
  }
  return good([single(right, 'right'), { ...single(transformPiece(left, mirrorX()), 'left'), id: leftId(left.id) }]);
};

/** One garment of two halves told in given ways; see `combine`. */
const combineAs = (
  right: Garment,
  left: Garment,
  before: Garment,
  stand: ReadonlyMap<string, Standing>,
): Result<Garment> => {
  const known = new Map(before.pieces.map((piece) => [piece.id, piece]));
  const others = new Map(left.pieces.map((piece) => [piece.id, piece]));
  const pieces: Piece[] = [];
  for (const piece of right.pieces) {
    const made = piecesOf(piece, others.get(piece.id) ?? piece, known.get(piece.id), stand.get(piece.id) ?? 'alike');
    if (!made.ok) return made;
    pieces.push(...made.value);
  }
  return good({ pieces, seams: splitSeams(right, left, stand), girths: splitGirths(right, stand) });
};

/**
 * What no longer meets once the halves are told as one: sewn across the centre, right to left, and of two lengths; or sewn to a
 * piece that was levelled at the centre. Null where all of it meets as well as before.
 */
const halvesApart = (before: Garment, combined: Garment): Problem | null => {
  const known = new Map(before.seams.map((seam) => [seam.id, seam]));
  const tape = createTape();
  for (const seam of combined.seams) {
    const old = known.get(seam.id);
    const was = old ? walked(tape, old, (id) => pieceOf(before, id)).excess : 0;
    const { excess } = walked(tape, seam, (id) => pieceOf(combined, id));
    if (Math.abs(excess) > Math.abs(was) + 2 * tolerance.seam) {
      const piece = pieceOf(combined, seam.a.piece).name;
      return bad('alter.halves-do-not-meet', { piece, by: { mm: Math.abs(excess) } }).problem;
    }
  }
  return null;
};

/** A garment of two halves, and the unaltered one told in the same pieces. */
export interface Combined {
  readonly garment: Garment;
  readonly before: Garment;
  readonly stand: ReadonlyMap<string, Standing>;
}

/**
 * One garment of a right half and a left one that were altered apart. A pair of pieces that differ becomes two pieces cut
 * once each, the left one the mirror of its own half; a piece on the fold is opened and cut whole; what is alike stays as it
 * is. Seams and girths are told for each half where they differ.
 *
 * Problems: `alter.whole-piece-one-side` where a piece cut whole would have to differ; `alter.halves-do-not-meet` where
 * the two halves of a folded piece are no longer equally long at the centre.
 */
export const combine = (right: Garment, left: Garment, before: Garment): Result<Combined> => {
  const stand = standings(right, left);
  if (!stand) return bad('alter.halves-other-pieces', {});
  const garment = combineAs(right, left, before, stand);
  if (!garment.ok) return garment;
  const known = new Set(before.pieces.map(({ id }) => id));
  const unaltered = combineAs(before, before, before, new Map([...stand].filter(([id]) => known.has(id))));
  if (!unaltered.ok) return unaltered;
  const apart = halvesApart(unaltered.value, garment.value);
  return apart ? { ok: false, problem: apart } : good({ garment: garment.value, before: unaltered.value, stand });
};
