import { tolerance } from '../../geometry/index.ts';
import { type Garment, landmarkOf, notchPlace, onFold, type Piece } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { held } from '../checks.ts';
import { follow } from '../follow.ts';
import { heldOthers } from '../held-edges.ts';
import { levelLines } from '../level-lines.ts';
import { partBeside, swing } from '../move.ts';
import type { Alteration } from '../types.ts';
import { walkSeams } from '../walk-seams.ts';
import { beginWork, cutAndMove, finishWork, lengthNow, trueEdges } from '../work.ts';
import { type BackChain, centreEdge, chainAt, seamedBacks } from './chain.ts';

/** The height of the shoulder blades: marked, or where the back is measured across, or a notch that meets it. */
const bladeOf = (piece: Piece): number | null => {
  const marked = landmarkOf(piece, 'blade') ?? landmarkOf(piece, 'across-back');
  if (marked) return marked.y;
  const notch = piece.notches.find(({ id }) => id === 'blade');
  return notch ? notchPlace(piece, notch).point.y : null;
};

/** Centre backs that can be slashed at the blades: from their seam to the edge beyond, where the hinge lies. */
const backsOf = (garment: Garment): readonly BackChain[] =>
  seamedBacks(garment).flatMap(([back]) => {
    const chain = back ? chainAt([back], bladeOf) : null;
    return chain ? [chain] : [];
  });

const needsBack = (garment: Garment): Problem | null => {
  if (backsOf(garment).length > 0) return null;
  const back = garment.pieces.find(({ role }) => role === 'back');
  if (!back) return bad('alter.no-piece', { role: 'back' }).problem;
  return onFold(back)
    ? bad('alter.no-centre-back-seam', { piece: back.name }).problem
    : bad('alter.no-landmark', { piece: back.name, landmark: 'across-back' }).problem;
};

/**
 * Round back by `amount`: slashed across at the shoulder blades from the centre back to a hinge at the armhole (or the
 * seam before it), the part above swung up until the centre is longer by the amount.
 *
 *      /‾‾‾‾\\
 *     /      |     the upper part turns about the hinge o,
 *     )------o     the centre back is drawn as a curve
 *     |      |
 *
 * Neck, shoulder and armhole keep their lengths. The centre back is no longer straight, so it needs a seam.
 * Source: fitting manuals on the rounded back.
 */
export const roundBack: Alteration = {
  id: 'round-back',
  version: 1,
  family: 'back',
  params: { amount: { unit: 'mm', min: 2, max: 30, usual: [5, 15] } },
  amount: 'amount',
  inAll: 1,
  needs: needsBack,
  handle: (garment) => {
    const link = backsOf(garment)[0]?.links[0];
    return link ? { piece: link.piece.id, at: { x: link.innerX, y: link.y }, perMillimetre: { x: 0, y: -1 } } : null;
  },
  holds: ['neck', 'shoulder-stays', 'armhole-fits', 'seam-walks'],
  follows: ['centre-back-curves', 'lining'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    let work = beginWork(garment);
    const chains = backsOf(garment);
    for (const { links, reach } of chains) {
      const [link] = links;
      if (!link) continue;
      const { piece, inner, outer, outward, outerX, y } = link;
      const [from, to] = outward === 1 ? [inner, outer] : [outer, inner];
      const done = cutAndMove(
        work,
        piece.id,
        { nodes: {}, cuts: [{ id: 'blades', from, to }] },
        {
          // Going to the right the left hand is the part above. Clockwise, positive, takes the centre on its left up.
          move: (pieces) =>
            swing(
              pieces,
              partBeside(pieces, 'blades', 'left'),
              { x: outerX, y },
              outward * 2 * Math.asin(amount / 2 / reach),
            ),
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
      held: chains.flatMap(({ links: [link] }) => {
        if (!link) return [];
        const { piece, inner, outer } = link;
        const centre = centreEdge(garment, piece) ?? inner.edge;
        return [
          ...heldOthers(done, piece.id, [centre, outer.edge]),
          held(
            'centre-grows',
            lengthNow(done, piece.id, centre) - done.tape.edge(piece, centre) - amount,
            { piece: piece.id, edge: centre },
            tolerance.wedge,
          ),
        ];
      }),
    });
  },
};
