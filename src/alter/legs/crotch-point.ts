import { distance, type Path, type Point, pathEnd, pathLength, pathStart, tolerance } from '../../geometry/index.ts';
import { edgeRuns } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import { follow } from '../follow.ts';
import { heldOthers } from '../held-edges.ts';
import { secant } from '../secant.ts';
import type { Alteration } from '../types.ts';
import { alongToHeight } from '../width/shift.ts';
import { beginWork, finishWork, redrawEdges, type Work } from '../work.ts';
import { type Leg, legsOf, needsLegs, type WhichLegs, which } from './leg.ts';
import { endMoved } from './shift-inside.ts';

/** The crotch curve moves with its point below the hip; where the piece shows none, over this share of its length. */
const curveShare = 0.5;

const curveReach = ({ hip }: Leg, path: Path, end: 'start' | 'end'): number => {
  const length = pathLength(path);
  if (hip === null) return curveShare * length;
  const above = alongToHeight(path, hip);
  return Math.max(end === 'end' ? length - above : above, length / 3);
};

const only = (leg: Leg, edge: string): Path | null => {
  const [path, more] = edgeRuns(leg.piece, edge);
  return path && !more ? path : null;
};

const endAt = (path: Path, point: Point): 'start' | 'end' =>
  distance(pathEnd(path), point) < distance(pathStart(path), point) ? 'end' : 'start';

/** How far down the inside leg moves with its upper end, mm: to the knee or, without one, to the hem. */
const insideReach = (leg: Leg, path: Path): number =>
  Math.max((leg.knee ?? leg.bottom) - leg.crotchPoint.y, pathLength(path) / 3);

/** Up and down, mm, the point is tried first to either side of where it lies. */
const firstTry = 1;

/** A leg's crotch point moved out by so much across, and up or down by what keeps the inside leg as long as it was. */
export const movePoint = (work: Work, leg: Leg, amount: number): Work | null => {
  const [crotch, inside] = [only(leg, leg.crotch), only(leg, leg.inside)];
  if (!crotch || !inside) return null;
  const wanted = pathLength(inside);
  const by = (down: number): Point => ({ x: -leg.outward * amount, y: down });
  const drawn = (down: number): Path =>
    endMoved(inside, endAt(inside, leg.crotchPoint), by(down), insideReach(leg, inside));
  const down = secant((y) => pathLength(drawn(y)) - wanted, 0, firstTry, tolerance.walk);
  if (down === null) return null;
  const end = endAt(crotch, leg.crotchPoint);
  return redrawEdges(work, leg.piece.id, {
    [leg.crotch]: [endMoved(crotch, end, by(down), curveReach(leg, crotch, end))],
    [leg.inside]: [drawn(down)],
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
      held: legs.flatMap((leg) => heldOthers(done, leg.piece.id, [leg.crotch])),
    });
  },
};
