import { tolerance } from '../../geometry/index.ts';
import { bad } from '../../units/index.ts';
import { crossingsAt } from '../across.ts';
import { held } from '../checks.ts';
import { follow } from '../follow.ts';
import { heldOthers } from '../held-edges.ts';
import { levelLines } from '../level-lines.ts';
import { partBeside, swing } from '../move.ts';
import type { Alteration } from '../types.ts';
import { walkSeams } from '../walk-seams.ts';
import { beginWork, cutAndMove, finishWork, lengthNow, trueEdges } from '../work.ts';
import { type Leg, legsOf, needsLegs, type WhichLegs, which } from './leg.ts';

/** Where the wedge is cut: at the hip, from the crotch seam to a hinge on the side. */
const hipCut = (leg: Leg) => {
  if (leg.hip === null) return null;
  const [left, right, more] = crossingsAt(leg.piece, leg.hip);
  if (!left?.end || !right?.end || more) return null;
  const [inner, outer] = leg.outward === 1 ? [left, right] : [right, left];
  if (inner.end?.edge !== leg.crotch || !outer.end) return null;
  return { from: left.end, to: right.end, inner, outer, y: leg.hip, reach: Math.abs(outer.x - inner.x) };
};

/**
 * Crotch longer (or shorter) by `amount` on front or back: the hip line cut from the crotch seam to the side, the upper part
 * turned about the side until the seam has opened by the amount; negative folds it out, for a flat seat.
 *
 *      /‾‾‾‾‾|
 *     /      |      the part above turns 2 asin(w / 2R) about the side o,
 *    )-------o      R from crotch seam to side
 *   /        |
 *
 * Waist, side and inside leg keep their lengths. Need = body arc + ease − seam arc, split at the inside-leg point.
 * Source: the crotch wedge of fitting manuals.
 */
export const crotchLength: Alteration = {
  id: 'crotch-length',
  version: 1,
  family: 'legs',
  params: { where: which, amount: { unit: 'mm', min: -40, max: 50, usual: [-12, 20] } },
  amount: 'amount',
  inAll: 1,
  needs: needsLegs,
  handle: (garment, params) => {
    const [leg] = legsOf(garment, params.where as WhichLegs);
    const cut = leg && hipCut(leg);
    return leg && cut
      ? { piece: leg.piece.id, at: { x: cut.inner.x, y: cut.y }, perMillimetre: { x: 0, y: -1 } }
      : null;
  },
  reverse: (params) => ({ alteration: 'crotch-length', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['waist-stays', 'sides-stay', 'inside-leg-stays', 'seam-walks'],
  follows: ['crotch-grows', 'pockets', 'facings'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const legs = legsOf(garment, params.where as WhichLegs);
    let work = beginWork(garment);
    for (const leg of legs) {
      const { piece, outward } = leg;
      const cut = hipCut(leg);
      if (!cut) return bad('alter.cut-not-clear', { piece: piece.name });
      const hinge = { x: cut.outer.x, y: cut.y };
      const done = cutAndMove(
        work,
        piece.id,
        { nodes: {}, cuts: [{ id: 'hip', from: cut.from, to: cut.to }] },
        {
          // Going to the right the left hand is the part above. Clockwise, positive, takes what lies to the left of the hinge up.
          move: (pieces) =>
            swing(pieces, partBeside(pieces, 'hip', 'left'), hinge, outward * 2 * Math.asin(amount / 2 / cut.reach)),
          owners: (pieces) => {
            const below = partBeside(pieces, 'hip', 'right');
            return { levels: { hip: { from: below, to: below } } };
          },
          truing: () => 'blend',
        },
      );
      if (!done.ok) return done;
      work = trueEdges(done.value, piece.id, {}, (made) => levelLines(piece, { ...made, grain: piece.grain }));
    }
    const followed = follow(walkSeams(work));
    if (!followed.ok) return followed;
    const done = followed.value;
    return finishWork(done, {
      held: legs.flatMap((leg) => {
        const grew = lengthNow(done, leg.piece.id, leg.crotch) - done.tape.edge(leg.piece, leg.crotch);
        return [
          ...heldOthers(done, leg.piece.id, [leg.crotch]),
          held('crotch-grows', grew - amount, { piece: leg.piece.id, edge: leg.crotch }, tolerance.wedge),
        ];
      }),
    });
  },
};
