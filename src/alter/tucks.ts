import { tolerance } from '../geometry/index.ts';
import { pieceOf, type Seam } from '../pattern/index.ts';
import { bad, type Problem } from '../units/index.ts';
import { isLining } from './parts.ts';
import { walked } from './tape.ts';
import { restructure, type Work } from './work.ts';

/**
 * A lining that is folded into tucks where its shell has darts takes up what its mate gained or lost by folding them deeper
 * or less deep: the ease of its seam shifts by as much. Gives the work and, for every lining piece, a warning that says how much.
 */
export const deeperTucks = (work: Work): { readonly work: Work; readonly warnings: readonly Problem[] } => {
  const warned = new Map<string, Problem>();
  const seams = work.garment.seams.map((seam): Seam => {
    if (seam.how !== 'pleated') return seam;
    const old = work.before.seams.find(({ id }) => id === seam.id);
    if (!old) return seam;
    const was = walked(work.tape, old, (id) => pieceOf(work.before, id)).difference;
    const now = walked(work.tape, seam, (id) => pieceOf(work.garment, id)).difference;
    const lining = pieceOf(work.garment, seam.a.piece);
    if (Math.abs(now - was) <= tolerance.holds || !isLining(lining)) return seam;
    const values = { piece: lining.name, by: { mm: Math.abs(now - was) } };
    warned.set(lining.id, bad(now > was ? 'alter.tucks-deeper' : 'alter.tucks-shallower', values).problem);
    return { ...seam, easeMin: seam.easeMin + now - was, easeMax: seam.easeMax + now - was };
  });
  return warned.size === 0
    ? { work, warnings: [] }
    : { work: restructure(work, (garment) => ({ ...garment, seams })), warnings: [...warned.values()] };
};
