import { tolerance } from '../../geometry/index.ts';
import { type Garment, levelWidth } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { held } from '../checks.ts';
import type { Knot } from '../course.ts';
import { follow } from '../follow.ts';
import { type Alteration, type Held, sideParameter } from '../types.ts';
import { walkSeams } from '../walk-seams.ts';
import { heldAtHeight, sidesMoved } from '../width/shift.ts';
import { beginWork, finishWork, pieceNow, redrawEdges, type Work } from '../work.ts';
import { type Leg, legsOf, needsLegs } from './leg.ts';

const places = ['knee', 'hem'] as const;
type Where = (typeof places)[number];

/** Where a leg's two seams move, and how far each: at the knee from nothing at the thigh on down; at the hem from nothing at the knee. */
const knotsFor = (leg: Leg, where: Where, each: number): readonly Knot[] | null => {
  const start = leg.crotchPoint.y + belowCrotch;
  if (where === 'hem') {
    const from = leg.knee ?? start;
    return leg.bottom - from > leastRun
      ? [
          { at: from, shift: 0 },
          { at: leg.bottom, shift: each },
        ]
      : null;
  }
  return leg.knee !== null && leg.knee - start > leastRun
    ? [
        { at: start, shift: 0 },
        { at: leg.knee, shift: each },
      ]
    : null;
};

/** The seams stay as they are this far below the crotch point, mm. */
const belowCrotch = 10;

/** A seam runs out over at least this, mm. */
const leastRun = 40;

const moveLeg = (work: Work, { piece, sides, inside, outward }: Leg, knots: readonly Knot[]): Work =>
  redrawEdges(work, piece.id, {
    ...sidesMoved(piece, sides, knots, outward),
    ...sidesMoved(piece, [inside], knots, -outward),
  });

const heldWidths = (work: Work, legs: readonly Leg[], where: Where, amount: number): readonly Held[] =>
  legs.flatMap(({ piece }) =>
    piece.levels
      .filter(({ id }) => id === where)
      .map(({ id }) =>
        held(
          'width-grows',
          levelWidth(pieceNow(work, piece.id), id) - levelWidth(piece, id) - amount,
          { piece: piece.id, level: id },
          tolerance.askew,
        ),
      ),
  );

/**
 * Leg wider (or narrower) by `amount` on front and on back each, half of it in the side seam and half in the inside leg, so
 * that grain and crease stay in the middle: at the knee, from nothing below the crotch, and all the way down; or at the hem,
 * from nothing at the knee. Source: pattern-cutting manuals on leg widths.
 */
export const legWidth: Alteration = {
  id: 'leg-width',
  version: 1,
  family: 'legs',
  params: {
    where: { unit: 'choice', choices: places, usual: 'hem' },
    amount: { unit: 'mm', min: -60, max: 120, usual: [-15, 30] },
    side: sideParameter,
  },
  amount: 'amount',
  inAll: 4,
  needs: (garment: Garment): Problem | null => {
    const lacking = needsLegs(garment);
    return (
      lacking ??
      (legsOf(garment).some((leg) => places.some((where) => knotsFor(leg, where, 1)))
        ? null
        : bad('alter.no-legs', {}).problem)
    );
  },
  options: (garment, name) =>
    name === 'where' ? places.filter((where) => legsOf(garment).every((leg) => knotsFor(leg, where, 1))) : [],
  handle: (garment, params) => {
    const [leg] = legsOf(garment);
    const knots = leg && knotsFor(leg, params.where as Where, 1);
    if (!leg || !knots) return null;
    return heldAtHeight(leg.piece, leg.sides, (knots.at(-1) as Knot).at, leg.outward / 2);
  },
  reverse: (params) => ({ alteration: 'leg-width', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['waist-stays', 'crotch-stays', 'width-grows-here', 'seam-walks'],
  follows: ['hem', 'pockets', 'lining'],
  apply: (garment, params) => {
    const where = params.where as Where;
    const amount = Number(params.amount);
    const legs = legsOf(garment);
    let work = beginWork(garment);
    for (const leg of legs) {
      const knots = knotsFor(leg, where, amount / 2);
      if (!knots) return bad('alter.no-leg-there', { where });
      work = moveLeg(work, leg, knots);
    }
    const followed = follow(walkSeams(work));
    if (!followed.ok) return followed;
    return finishWork(followed.value, { held: heldWidths(followed.value, legs, where, amount) });
  },
};
