import { type Point, scale, tolerance } from '../../geometry/index.ts';
import { type Garment, landmarkOf, type Piece } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { held } from '../checks.ts';
import type { Knot } from '../course.ts';
import { easedField } from '../fields.ts';
import { follow } from '../follow.ts';
import { heldOthers } from '../held-edges.ts';
import { endPoint, isBack, isFront, matesOf } from '../parts.ts';
import type { Drawn } from '../reshape.ts';
import { headEase } from '../shoulder-neck/account.ts';
import { type Armhole, armholesOf } from '../shoulder-neck/upper.ts';
import { type Alteration, type Held, sideParameter } from '../types.ts';
import { walkSeams } from '../walk-seams.ts';
import { heldAtHeight, shiftedEdges, sidesMoved } from '../width/shift.ts';
import { type Side, sidesOf } from '../width/sides.ts';
import { beginWork, finishWork, pieceNow, redrawEdges, type Work } from '../work.ts';

/** A back's armhole with the side below it, and the heights that matter. */
interface BackArmhole extends Armhole {
  readonly side: Side;
  readonly shoulder: Point;
  readonly underarmPoint: Point;
  /** Where the back is measured across, mm down the piece. */
  readonly across: number;
  readonly waist: number;
}

/** Across the back lies this share of the way down the armhole where the piece does not say (a lining). */
const usualAcross = 0.55;

/** A side shorter than this, mm, has no room to run back in. */
const leastSide = 60;

/**
 * Armholes of backs, from a shoulder point to the underarm: below a yoke, or on a raglan, an armhole does not begin at a
 * shoulder point, and there is nothing for the line to run back in to.
 */
const backArmholes = (garment: Garment): readonly BackArmhole[] => {
  const sides = sidesOf(garment);
  return armholesOf(garment).flatMap((armhole): BackArmhole[] => {
    const { piece, top, foot, underarm } = armhole;
    const side = sides.find((one) => one.piece.id === piece.id);
    const shouldered = matesOf(garment, piece.id, top.edge).some((mate) => isFront(mate.piece));
    if (!side || !underarm || !isBack(piece) || !shouldered) return [];
    const [shoulder, underarmPoint] = [endPoint(piece, top), endPoint(piece, foot)];
    const waist = side.heights['waist'] ?? side.bottom;
    if (waist - underarmPoint.y < leastSide) return [];
    const marked = landmarkOf(piece, 'across-back')?.y;
    const across = marked ?? shoulder.y + usualAcross * (underarmPoint.y - shoulder.y);
    return [{ ...armhole, side, shoulder, underarmPoint, across, waist }];
  });
};

/**
 * The armhole moved out at the line across the back and below it. From the shoulder point it sets out evenly towards that
 * line: at rest there it would curl.
 */
const armholeOut = ({ piece, edges, shoulder, across, side }: BackArmhole, amount: number): Drawn => {
  const out = { x: side.outward * amount, y: 0 };
  const evenly = scale(out, 1 / (across - shoulder.y));
  const course = easedField(shoulder.y, across, { by: { x: 0, y: 0 }, rate: evenly }, { by: out });
  return shiftedEdges(piece, edges, [across], course);
};

const needsArmhole = (garment: Garment): Problem | null =>
  backArmholes(garment).length > 0 ? null : bad('alter.no-armhole-on-back', {}).problem;

/**
 * Back broader (or narrower) by `amount` on each half: the armhole moved out from the line across the blades down to the
 * underarm, to nothing at the shoulder point; the side seam runs back in to the waist.
 *
 *      ___
 *         \\          shoulder stays
 *          )→        across the back, and at the underarm: out by the amount
 *          \\___→
 *           /        to nothing at the waist
 *
 * The armhole becomes a little longer or shorter, which the sleeve's ease must bear. Source: fitting manuals on broad and
 * narrow backs.
 */
export const backWidth: Alteration = {
  id: 'back-width',
  version: 1,
  family: 'back',
  params: { amount: { unit: 'mm', min: -25, max: 30, usual: [-8, 10] }, side: sideParameter },
  amount: 'amount',
  inAll: 2,
  needs: needsArmhole,
  handle: (garment) => {
    const [armhole] = backArmholes(garment);
    return armhole ? heldAtHeight(armhole.piece, armhole.edges, armhole.across, armhole.side.outward) : null;
  },
  reverse: (params) => ({ alteration: 'back-width', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['shoulder-stays', 'armhole-fits', 'seam-walks'],
  follows: ['lining', 'facings'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const armholes = backArmholes(garment);
    let work = beginWork(garment);
    for (const armhole of armholes) {
      const { piece, side, underarmPoint, waist } = armhole;
      const lower: readonly Knot[] = [
        { at: underarmPoint.y, shift: amount },
        { at: waist, shift: 0 },
      ];
      work = redrawEdges(work, piece.id, {
        ...armholeOut(armhole, amount),
        ...sidesMoved(piece, side.edges, lower, side.outward),
      });
    }
    const followed = follow(walkSeams(work));
    if (!followed.ok) return followed;
    const done = followed.value;
    return finishWork(done, {
      held: armholes.flatMap(({ piece, edges, side }) => [
        ...heldOthers(done, piece.id, [...edges, ...side.edges]),
        ...heldAcross(done, piece, side.outward * amount),
      ]),
      changes: headEase(done),
    });
  },
};

const acrossOf = (piece: Piece): number | null => landmarkOf(piece, 'across-back')?.x ?? null;

/** The mark across the back moved out by what was asked; a lining carries none. */
const heldAcross = (work: Work, piece: Piece, by: number): readonly Held[] => {
  const [was, now] = [acrossOf(piece), acrossOf(pieceNow(work, piece.id))];
  return was === null || now === null
    ? []
    : [held('across-grows', now - was - by, { piece: piece.id }, tolerance.askew)];
};
