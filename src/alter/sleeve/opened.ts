import { distance, type Point } from '../../geometry/index.ts';
import type { Garment, Seam } from '../../pattern/index.ts';
import { bad, type Problem, type Result } from '../../units/index.ts';
import { partBeside, swing } from '../move.ts';
import { cutAndMove, restructure, type Work } from '../work.ts';
import { needsSleeve, type Sleeve } from './anatomy.ts';

/** What a garment lacks for opening its sleeves along the middle: set-in sleeves of one part. */
export const needsOneSleeve = (garment: Garment): Problem | null =>
  garment.pieces.some(({ role }) => role === 'under-sleeve')
    ? bad('alter.sleeve-in-two', {}).problem
    : needsSleeve(garment);

/**
 * A sleeve cut down its middle from cap to hem and its halves turned about one end of the cut until they lie `amount`
 * apart at the other (negative: over each other). Every edge but the one that opens keeps its length.
 */
export const openAlong = (work: Work, sleeve: Sleeve, at: 'top' | 'wrist', amount: number): Result<Work> => {
  const [hinge, open]: readonly [Point, Point] =
    at === 'wrist' ? [sleeve.top, sleeve.wrist] : [sleeve.wrist, sleeve.top];
  // Turned by half each, the ends of the cut lie 2 L sin(½θ) apart.
  const half = Math.asin(amount / 2 / distance(hinge, open)) * (at === 'wrist' ? 1 : -1);
  return cutAndMove(
    work,
    sleeve.piece.id,
    { nodes: {}, cuts: [{ id: 'middle', from: sleeve.topEnd, to: sleeve.wristEnd }] },
    {
      // Going down the cut its right hand is the half on the left as seen: clockwise takes its hem further left.
      move: (pieces) =>
        swing(
          swing(pieces, partBeside(pieces, 'middle', 'right'), hinge, half),
          partBeside(pieces, 'middle', 'left'),
          hinge,
          -half,
        ),
      // Both edges are drawn anew by the alteration: the cap over its top, the hem from seam to seam.
      truing: () => 'none',
    },
  );
};

/** Seams of these edges of a sleeve allowed so many mm more of it (all of them together), gathered in. */
export const gatheredBy = (work: Work, sleeve: string, shares: ReadonlyMap<string, number>): Work =>
  restructure(work, (garment) => ({
    ...garment,
    seams: garment.seams.map((seam): Seam => {
      if (seam.a.piece === seam.b.piece) return seam;
      const first = seam.a.piece === sleeve ? shares.get(seam.a.edge) : undefined;
      const second = seam.b.piece === sleeve ? shares.get(seam.b.edge) : undefined;
      const more = first ?? (second === undefined ? undefined : -second);
      if (more === undefined || more === 0) return seam;
      const [low, high] = [seam.easeMin + more, seam.easeMax + more];
      const how = seam.how === 'pleated' || Math.max(low, high) <= 0 ? seam.how : 'gathered';
      return { ...seam, easeMin: low, easeMax: high, how };
    }),
  }));
