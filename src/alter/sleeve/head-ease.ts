import { tolerance } from '../../geometry/index.ts';
import { type Garment, pieceOf } from '../../pattern/index.ts';
import { isBody, matesOf } from '../parts.ts';
import type { Change } from '../types.ts';
import type { Work } from '../work.ts';

/** What a sleeve's cap is longer than the armholes it is sewn into, mm. */
const headEase = (work: Work, garment: Garment, sleeve: string): number => {
  const piece = pieceOf(garment, sleeve);
  return piece.edges.reduce(
    (sum, { id }) =>
      matesOf(garment, sleeve, id)
        .filter((mate) => isBody(mate.piece))
        .reduce((total, mate) => total + work.tape.edge(piece, id) - work.tape.edge(mate.piece, mate.edge), sum),
    0,
  );
};

/** Sleeve-head ease, where it changed by more than can be measured. */
export const headEaseChanges = (work: Work, sleeve: string): readonly Change[] => {
  const [was, now] = [headEase(work, work.before, sleeve), headEase(work, work.garment, sleeve)];
  return Math.abs(now - was) <= tolerance.holds ? [] : [{ what: 'head-ease', piece: sleeve, by: now - was, now }];
};
