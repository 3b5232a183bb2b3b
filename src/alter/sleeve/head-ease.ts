import { tolerance } from '../../geometry/index.ts';
import { type Garment, pieceOf } from '../../pattern/index.ts';
import type { Change } from '../types.ts';
import type { Work } from '../work.ts';

const bodyRoles: ReadonlySet<string> = new Set(['front', 'back', 'side-front', 'side-back', 'yoke']);

/** What a sleeve's cap is longer than the armholes it is sewn into, mm. */
const headEase = (work: Work, garment: Garment, sleeve: string): number =>
  garment.seams.reduce((sum, { a, b }) => {
    const length = ({ piece, edge }: typeof a): number => work.tape.edge(pieceOf(garment, piece), edge);
    if (a.piece === sleeve && bodyRoles.has(pieceOf(garment, b.piece).role)) return sum + length(a) - length(b);
    return b.piece === sleeve && bodyRoles.has(pieceOf(garment, a.piece).role) ? sum + length(b) - length(a) : sum;
  }, 0);

/** Sleeve-head ease, where it changed by more than can be measured. */
export const headEaseChanges = (work: Work, sleeve: string): readonly Change[] => {
  const [was, now] = [headEase(work, work.before, sleeve), headEase(work, work.garment, sleeve)];
  return Math.abs(now - was) <= tolerance.holds ? [] : [{ what: 'head-ease', piece: sleeve, by: now - was, now }];
};
