import {
  distance,
  dot,
  endTangent,
  joinPaths,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathWithStart,
  reversePath,
  scale,
  splitPathAtLength,
  subtract,
} from '../../geometry/index.ts';
import { edgeRuns, type Garment, walkSeam } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { type Course, easedField, inDirection } from '../fields.ts';
import { follow } from '../follow.ts';
import { heldOthers } from '../held-edges.ts';
import type { Alteration } from '../types.ts';
import { warped } from '../warp.ts';
import { alongToHeight } from '../width/shift.ts';
import { beginWork, finishWork, redrawEdges, type Work } from '../work.ts';
import { type Leg, legsOf, needsLegs, type WhichLegs, which } from './leg.ts';

/** Where a crotch seam shows no straight, its curve begins this share of its height above the crotch point. */
const curvedShare = 0.3;

/** A crotch seam told from the waist down: the part that runs straight, and the curve from there to the crotch point. */
interface CrotchSeam {
  readonly straight: Path;
  readonly curve: Path;
  /** The way the straight runs, down, and square to it towards the crotch point; unit vectors. */
  readonly down: Point;
  readonly across: Point;
  /** How far across the crotch point lies from the straight, mm. */
  readonly reach: number;
  /** Whether the outline runs up it. */
  readonly reversed: boolean;
}

const crotchSeam = ({ piece, crotch, crotchPoint }: Leg): CrotchSeam | null => {
  const [path, more] = edgeRuns(piece, crotch);
  if (!path || more) return null;
  const reversed = distance(pathStart(path), crotchPoint) < distance(pathEnd(path), crotchPoint);
  const seam = reversed ? reversePath(path) : path;
  const curved = seam.findIndex(({ kind }) => kind === 'cubic');
  const waist = pathStart(seam).y;
  const begins =
    curved > 0
      ? pathLength(seam.slice(0, curved))
      : alongToHeight(seam, crotchPoint.y + curvedShare * (waist - crotchPoint.y));
  const [straight, curve] = splitPathAtLength(seam, begins);
  if (!straight || !curve) return null;
  const down = endTangent(straight);
  const aside = { x: -down.y, y: down.x };
  const reach = dot(subtract(pathEnd(curve), pathStart(curve)), aside);
  const across = scale(aside, Math.sign(reach));
  return { straight, curve, down, across, reach: Math.abs(reach), reversed };
};

/** How much of the drop a place so far across from the straight gets: all beside the straight, nothing at the crotch point. */
const dropped = (reach: number, w: number): number => 1 - w / reach;

/**
 * The curve dropped along the straight by `amount`, evenly less towards the crotch point; the straight is as much longer. A
 * shear: where the curve did not bend back before, it does not now.
 */
const scooped = ({ straight, curve, down, across, reach, reversed }: CrotchSeam, amount: number): Path => {
  const drop = scale(down, amount);
  const length = pathLength(straight);
  const evenly = scale(drop, 1 / length);
  const nothing = { by: { x: 0, y: 0 }, rate: evenly };
  const upper = warped(straight, easedField(0, length, nothing, { by: drop, rate: evenly }));
  const course: Course = (w) => ({ by: scale(drop, dropped(reach, w)), rate: scale(drop, -1 / reach) });
  const lower = warped(curve, inDirection(pathStart(curve), across, course));
  const seam = joinPaths(upper, pathWithStart(lower, pathEnd(upper)));
  return reversed ? reversePath(seam) : seam;
};

/** A crotch seam that turns by less than this across the inside leg, radians (4°), is evened out in the sewing. */
const leastBend = Math.PI / 45;

/** Where front and back meet at the inside leg, the crotch seam that runs across turns more than it did. */
const bentAcross = (work: Work, { piece, inside, crotch }: Leg): readonly Problem[] => {
  const turnOf = (garment: Garment): number =>
    Math.max(
      0,
      ...garment.seams
        .filter(({ a, b }) => [a, b].some((side) => side.piece === piece.id && side.edge === inside))
        .flatMap((seam) => walkSeam(garment, seam).ends)
        .filter(({ edges }) => edges.includes(crotch))
        .map(({ turn }) => Math.abs(turn)),
    );
  const now = turnOf(work.garment);
  return now > leastBend && now > turnOf(work.before)
    ? [bad('alter.crotch-bends', { piece: piece.name, degrees: Math.round((now * 180) / Math.PI) }).problem]
    : [];
};

/**
 * Crotch curve deeper (or flatter) by `amount`, front or back: where it leaves the straight of the seam it lies so much
 * lower, evenly less towards the crotch point. Both its ends stay, and the direction in which it runs up to the waist.
 *
 *        |
 *        |
 *        :|      the straight goes on down by the amount
 *     __.´:
 *    ___.´      from the crotch point the curve sets out flatter
 *
 * Source: fitting manuals on scooping the crotch for a full or low seat.
 */
export const crotchCurve: Alteration = {
  id: 'crotch-curve',
  version: 1,
  family: 'legs',
  params: { where: which, amount: { unit: 'mm', min: -15, max: 25, usual: [-5, 10] } },
  amount: 'amount',
  inAll: 1,
  needs: needsLegs,
  handle: (garment, params) => {
    const [leg] = legsOf(garment, params.where as WhichLegs);
    const seam = leg && crotchSeam(leg);
    if (!seam) return null;
    const { curve, down, across, reach } = seam;
    const at = pathPointAtLength(curve, pathLength(curve) / 2);
    const share = dropped(reach, dot(subtract(at, pathStart(curve)), across));
    return { piece: leg.piece.id, at, perMillimetre: scale(down, share) };
  },
  reverse: (params) => ({ alteration: 'crotch-curve', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['waist-stays', 'sides-stay', 'inside-leg-stays', 'seam-walks'],
  follows: ['crotch-grows'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const legs = legsOf(garment, params.where as WhichLegs);
    let work = beginWork(garment);
    for (const leg of legs) {
      const seam = crotchSeam(leg);
      if (!seam) return bad('alter.cut-not-clear', { piece: leg.piece.name });
      work = redrawEdges(work, leg.piece.id, { [leg.crotch]: [scooped(seam, amount)] });
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const done = followed.value;
    return finishWork(done, {
      held: legs.flatMap((leg) => heldOthers(done, leg.piece.id, [leg.crotch])),
      warnings: legs.flatMap((leg) => bentAcross(done, leg)),
    });
  },
};
