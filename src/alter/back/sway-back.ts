import { tolerance } from '../../geometry/index.ts';
import { type Garment, levelWidth, onFold, type Piece } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { held } from '../checks.ts';
import { follow } from '../follow.ts';
import { heldOthers } from '../held-edges.ts';
import { levelLines } from '../level-lines.ts';
import { partBeside, swing } from '../move.ts';
import type { Alteration, Held } from '../types.ts';
import { walkSeams } from '../walk-seams.ts';
import { raiseCentre, waistEdges } from '../width/abdomen-seat.ts';
import { beginWork, cutAndMove, finishWork, pieceNow, trueEdges, type Work } from '../work.ts';
import { type BackChain, bottomOf, centreEdge, chainAt, seamedBacks } from './chain.ts';

const waistOf = (piece: Piece): number | null => piece.levels.find(({ id }) => id === 'waist')?.from.y ?? null;

/** Backs that go on below the waist, with a seam down the centre. */
const throughWaist = (garment: Garment): readonly BackChain[] =>
  seamedBacks(garment).flatMap((pieces) => {
    const chain = chainAt(pieces, (piece) => {
      const y = waistOf(piece);
      return y !== null && bottomOf(piece) - y > leastBelow ? y : null;
    });
    return chain ? [chain] : [];
  });

/** A back ends at the waist when less than this of it lies below, mm. */
const leastBelow = 40;

const needsBack = (garment: Garment): Problem | null => {
  if (throughWaist(garment).length > 0 || waistEdges(garment, 'back').length > 0) return null;
  const back = garment.pieces.find(({ role }) => role === 'back');
  if (!back) return bad('alter.no-piece', { role: 'back' }).problem;
  return onFold(back)
    ? bad('alter.sway-on-fold', { piece: back.name }).problem
    : bad('alter.no-waist-on-back', { piece: back.name }).problem;
};

/** One back, and its side back, folded out at the waist from the centre to nothing at the side. */
const folded = (given: Work, { links, reach }: BackChain, amount: number) => {
  const angle = 2 * Math.asin(amount / 2 / reach);
  let work = given;
  let passed = 0;
  for (const { piece, y, inner, outer, innerX, outward } of links) {
    // The hinge is the side of the last piece, as it would lie beside this one.
    const hinge = { x: innerX + outward * (reach - passed), y };
    const [from, to] = outward === 1 ? [inner, outer] : [outer, inner];
    const centre = centreEdge(given.garment, piece);
    const done = cutAndMove(
      work,
      piece.id,
      { nodes: {}, cuts: [{ id: 'waist', from, to }] },
      {
        move: (pieces) => swing(pieces, partBeside(pieces, 'waist', 'right'), hinge, outward * angle),
        // The centre back keeps the turn at the waist: drawn straight it would be wider above it.
        truing: ({ edge }) =>
          edge === centre || edge === inner.edge
            ? 'blend'
            : edge === outer.edge && passed + 1 > reach
              ? 'hinge'
              : 'blend',
      },
    );
    if (!done.ok) return done;
    const grain = { from: piece.grain.from, to: { x: piece.grain.from.x, y: piece.grain.to.y - amount / 2 } };
    const upright = Math.abs(piece.grain.to.x - piece.grain.from.x) <= tolerance.same;
    work = trueEdges(done.value, piece.id, {}, (made) => levelLines(piece, upright ? { ...made, grain } : made));
    passed += Math.abs((links.find((one) => one.piece === piece)?.outerX ?? innerX) - innerX);
  }
  return { ok: true as const, value: work };
};

/** Width of the back at the waist is what it was. */
const heldWaist = (work: Work, { links }: BackChain): readonly Held[] =>
  links.map(({ piece }) =>
    held(
      'width-kept',
      levelWidth(pieceNow(work, piece.id), 'waist') - levelWidth(piece, 'waist'),
      {
        piece: piece.id,
        level: 'waist',
      },
      tolerance.waistKept,
    ),
  );

/**
 * Sway back by `amount`: the back shorter by it at the centre, by nothing at the side.
 *
 *      |        |         cut at the waist from centre back to side, R wide;
 *      |--------o side    the lower part turns φ = 2 asin(w / 2R) about the side
 *      |        |         and overlaps the upper by w at the centre
 *      |        |
 *
 * A back that hangs from the waist is lowered there by as much at the centre instead, square to it. At depth D the centre
 * back swings out by D sin φ, so it needs a seam there.
 *
 * Problem `alter.sway-on-fold` for a back cut on the fold.
 * Source: fitting manuals on the sway back; formula of the wedge.
 */
export const swayBack: Alteration = {
  id: 'sway-back',
  version: 1,
  family: 'back',
  params: { amount: { unit: 'mm', min: 1, max: 60, usual: [6, 20] } },
  amount: 'amount',
  inAll: 1,
  needs: needsBack,
  handle: (garment) => {
    const link = throughWaist(garment)[0]?.links[0];
    if (link) return { piece: link.piece.id, at: { x: link.innerX, y: link.y }, perMillimetre: { x: 0, y: -1 } };
    const [edge] = waistEdges(garment, 'back');
    return edge ? { piece: edge.piece.id, at: edge.centre, perMillimetre: { x: -edge.up.x, y: -edge.up.y } } : null;
  },
  holds: ['side-stays', 'neck', 'back-waist', 'seam-walks'],
  follows: ['zip-length', 'lining', 'waistband'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const chains = throughWaist(garment);
    if (chains.length === 0) return raiseCentre(garment, waistEdges(garment, 'back'), -amount);
    let work = beginWork(garment);
    for (const chain of chains) {
      const done = folded(work, chain, amount);
      if (!done.ok) return done;
      work = done.value;
    }
    work = walkSeams(work);
    const followed = follow(work);
    if (!followed.ok) return followed;
    const done = followed.value;
    return finishWork(done, {
      held: chains.flatMap((chain) => [
        ...heldWaist(done, chain),
        ...chain.links.flatMap(({ piece, inner, outer }) =>
          heldOthers(done, piece.id, [inner.edge, outer.edge, 'hem']),
        ),
      ]),
      changes: chains.flatMap(({ links, reach }) => {
        const [first] = links;
        if (!first) return [];
        const out = (bottomOf(first.piece) - first.y) * Math.sin(2 * Math.asin(amount / 2 / reach));
        return [{ what: 'centre-swings-out', piece: first.piece.id, by: out, now: out }];
      }),
    });
  },
};
