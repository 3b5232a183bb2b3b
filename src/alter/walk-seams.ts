import { tolerance } from '../geometry/index.ts';
import { pieceOf, type SeamSide } from '../pattern/index.ts';
import { moveCorner } from './corner.ts';
import { edgeEnds, lowerEnd } from './parts.ts';
import { walked } from './tape.ts';
import { pieceNow, trueEdges, type Work } from './work.ts';

/** More than this, mm, at the lower end of a seam is no truing any more. */
const mostTrued = 4;

/** More down than across: what is sewn along a waist or a neck follows in length instead. */
const upright = (work: Work, { piece, edge }: SeamSide): boolean => {
  const [from, to] = edgeEnds(pieceNow(work, piece), edge);
  return Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
};

/** Upright seams between pieces that were both altered, or one of them, walked and the one that grew marked off at its lower corner where its mate ends. */
export const walkSeams = (given: Work): Work => {
  let work = given;
  for (const seam of given.garment.seams) {
    if (seam.a.piece === seam.b.piece || !upright(work, seam.a) || !upright(work, seam.b)) continue;
    if (!work.worked.get(seam.a.piece)?.led && !work.worked.get(seam.b.piece)?.led) continue;
    const { difference, excess } = walked(work.tape, seam, (id) => pieceOf(work.garment, id));
    const over = difference - walked(work.tape, seam, (id) => pieceOf(work.before, id)).difference;
    if (Math.abs(excess) <= tolerance.seam / 4 || Math.abs(over) > mostTrued) continue;
    // The one that was altered is marked off; of two the longer.
    const altered = [seam.a, seam.b].filter(({ piece }) => work.worked.get(piece)?.led);
    const longer = over > 0 ? seam.a : seam.b;
    const side = altered.length === 1 ? (altered[0] as typeof longer) : longer;
    const piece = pieceNow(work, side.piece);
    const by = side === seam.a ? -over : over;
    const cut = moveCorner(piece, side.edge, lowerEnd(piece, side.edge), by);
    work = trueEdges(work, piece.id, {}, () => cut);
  }
  return work;
};
