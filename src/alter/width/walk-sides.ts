import { tolerance } from '../../geometry/index.ts';
import { pieceOf } from '../../pattern/index.ts';
import { moveCorner } from '../corner.ts';
import { walked } from '../tape.ts';
import { lowerEnd } from '../true-seams.ts';
import { pieceNow, trueEdges, type Work } from '../work.ts';
import { sideSeams } from './sides.ts';

/** More than this, mm, at the lower end of a seam is no truing any more. */
const mostTrued = 4;

/** Side seams walked and the longer of the two marked off at its lower corner where its mate ends. */
export const walkSides = (given: Work): Work => {
  let work = given;
  for (const seam of sideSeams(given.garment)) {
    if (!work.worked.has(seam.a.piece) && !work.worked.has(seam.b.piece)) continue;
    const { difference } = walked(work.tape, seam, (id) => pieceOf(work.garment, id));
    const was = walked(work.tape, seam, (id) => pieceOf(work.before, id)).difference;
    const over = difference - was;
    if (Math.abs(over) <= tolerance.seam / 4 || Math.abs(over) > mostTrued) continue;
    const longer = over > 0 ? seam.a : seam.b;
    const piece = pieceNow(work, longer.piece);
    const cut = moveCorner(piece, longer.edge, lowerEnd(piece, longer.edge), -Math.abs(over));
    work = trueEdges(work, piece.id, {}, () => cut);
  }
  return work;
};
