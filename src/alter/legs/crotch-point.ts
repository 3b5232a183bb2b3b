import {
  distance,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  splitPathAtLength,
} from '../../geometry/index.ts';
import { edgeRuns } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import { held } from '../checks.ts';
import { follow } from '../follow.ts';
import { heldOthers } from '../held-edges.ts';
import type { Alteration } from '../types.ts';
import { beginWork, finishWork, lengthNow, redrawEdges, type Work } from '../work.ts';
import { type Leg, legsOf, needsLegs, type WhichLegs, which } from './leg.ts';
import { endMoved } from './shift-inside.ts';

/** The crotch curve moves with its point from this share of its length on: above it the seam stays. */
const curveFrom = 0.45;

const only = (leg: Leg, edge: string): Path | null => {
  const [path, more] = edgeRuns(leg.piece, edge);
  return path && !more ? path : null;
};

/** The inside leg with its upper end moved, to nothing at the knee or, without one, at the hem. */
const insideMoved = (leg: Leg, path: Path, by: Point): Path => {
  const atStart = distance(pathStart(path), leg.crotchPoint) < distance(pathEnd(path), leg.crotchPoint);
  const length = pathLength(path);
  const from = atStart ? pathStart(path) : pathEnd(path);
  const down = (leg.knee ?? leg.bottom) - from.y;
  const upper = Math.min(Math.max(down, length / 3), length);
  if (upper > length - 1) return endMoved(path, atStart ? 'start' : 'end', by);
  const [head, tail] = splitPathAtLength(path, atStart ? upper : length - upper);
  if (!head || !tail) return endMoved(path, atStart ? 'start' : 'end', by);
  return atStart ? [...endMoved(head, 'start', by), ...tail] : [...head, ...endMoved(tail, 'end', by)];
};

const rounds = 6;

/** A leg's crotch point moved out by so much across, and up or down by what keeps the inside leg as long as it was. */
export const movePoint = (work: Work, leg: Leg, amount: number): Work | null => {
  const [crotch, inside] = [only(leg, leg.crotch), only(leg, leg.inside)];
  if (!crotch || !inside) return null;
  const endsAt =
    distance(pathEnd(crotch), leg.crotchPoint) < distance(pathStart(crotch), leg.crotchPoint) ? 'end' : 'start';
  const wanted = pathLength(inside);
  let down = 0;
  let drawn = inside;
  for (let round = 0; round < rounds; round += 1) {
    drawn = insideMoved(leg, inside, { x: -leg.outward * amount, y: down });
    const over = pathLength(drawn) - wanted;
    if (Math.abs(over) < 1e-3) break;
    down += over;
  }
  const by = { x: -leg.outward * amount, y: down };
  drawn = insideMoved(leg, inside, by);
  return redrawEdges(work, leg.piece.id, {
    [leg.crotch]: [endMoved(crotch, endsAt, by, curveFrom)],
    [leg.inside]: [drawn],
  });
};

/**
 * Crotch point out (or in) by `amount` on front or back: the crotch seam is longer there and the thigh wider, the inside
 * leg blended in at the knee and as long as it was.
 *
 *      |
 *      )
 *   ←‾‾          the point moves out along the crotch line,
 *    \\           the inside leg runs back in to the knee
 *     |
 *
 * Source: fitting manuals on the crotch point; full or thin inner thighs, a deep or flat seat.
 */
export const crotchPoint: Alteration = {
  id: 'crotch-point',
  version: 1,
  family: 'legs',
  params: { where: which, amount: { unit: 'mm', min: -20, max: 40, usual: [-8, 15] } },
  amount: 'amount',
  inAll: 2,
  needs: needsLegs,
  handle: (garment, params) => {
    const [leg] = legsOf(garment, params.where as WhichLegs);
    return leg ? { piece: leg.piece.id, at: leg.crotchPoint, perMillimetre: { x: -leg.outward, y: 0 } } : null;
  },
  reverse: (params) => ({ alteration: 'crotch-point', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['waist-stays', 'sides-stay', 'inside-leg-stays', 'seam-walks'],
  follows: ['crotch-grows', 'thigh-grows', 'lining'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const legs = legsOf(garment, params.where as WhichLegs);
    let work = beginWork(garment);
    for (const leg of legs) {
      const moved = movePoint(work, leg, amount);
      if (!moved) return bad('alter.cut-not-clear', { piece: leg.piece.name });
      work = moved;
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const done = followed.value;
    return finishWork(done, {
      held: legs.flatMap((leg) => {
        const grew = lengthNow(done, leg.piece.id, leg.crotch) - done.tape.edge(leg.piece, leg.crotch);
        return [
          ...heldOthers(done, leg.piece.id, [leg.crotch]),
          // Along the curve the point moves by the amount only as far as the seam runs level there.
          held('crotch-follows', Math.sign(grew) === Math.sign(amount) || Math.abs(grew) < 1 ? 0 : grew, {
            piece: leg.piece.id,
          }),
        ];
      }),
    });
  },
};
