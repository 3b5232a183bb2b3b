import {
  distance,
  fitCubics,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathTangentAtLength,
  smoothThrough,
  splitPathAtLength,
  tolerance,
} from '../../geometry/index.ts';
import { edgeRuns } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import { follow } from '../follow.ts';
import { heldOthers } from '../held-edges.ts';
import type { Alteration } from '../types.ts';
import { beginWork, finishWork, redrawEdges } from '../work.ts';
import { type Leg, legsOf, needsLegs, type WhichLegs, which } from './leg.ts';

/** The curve is scooped over the lower half of the crotch seam. */
const curvedShare = 0.42;

const spacing = 20;

/** The lower part of the crotch seam bowed out of the piece's way by `amount` at its middle, its ends and their directions kept. */
const bowed = (path: Path, amount: number): Path => {
  const length = pathLength(path);
  const count = Math.max(4, Math.ceil(length / spacing));
  const points = Array.from({ length: count + 1 }, (_, i): Point => {
    const mm = (length * i) / count;
    const p = pathPointAtLength(path, mm);
    const tangent = pathTangentAtLength(path, mm, 'before');
    const share = Math.sin((Math.PI * mm) / length) ** 2;
    // Right of travel along a clockwise outline lies the piece: a deeper curve goes into it.
    return { x: p.x - tangent.y * amount * share, y: p.y + tangent.x * amount * share };
  });
  const drawn = smoothThrough(points, {
    startTangent: pathTangentAtLength(path, 0),
    endTangent: pathTangentAtLength(path, length, 'before'),
  });
  return fitCubics(drawn, tolerance.holds);
};

const curve = (leg: Leg, amount: number): Path | null => {
  const [path, more] = edgeRuns(leg.piece, leg.crotch);
  if (!path || more) return null;
  const endsThere = distance(pathEnd(path), leg.crotchPoint) < distance(pathStart(path), leg.crotchPoint);
  const length = pathLength(path);
  const [head, tail] = splitPathAtLength(path, endsThere ? length * (1 - curvedShare) : length * curvedShare);
  if (!head || !tail) return null;
  return endsThere ? [...head, ...bowed(tail, amount)] : [...bowed(head, amount), ...tail];
};

/**
 * Crotch curve deeper (or flatter) by `amount` at its deepest, front or back; both its ends stay, and so do the directions
 * in which it meets the inside leg and runs up to the waist. Source: fitting manuals on scooping the crotch for a full or
 * low seat.
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
    const path = leg && edgeRuns(leg.piece, leg.crotch)[0];
    if (!leg || !path) return null;
    const at = pathPointAtLength(path, pathLength(path) * (1 - curvedShare / 2));
    return { piece: leg.piece.id, at, perMillimetre: { x: leg.outward * 0.7, y: 0.7 } };
  },
  reverse: (params) => ({ alteration: 'crotch-curve', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['waist-stays', 'sides-stay', 'inside-leg-stays', 'seam-walks'],
  follows: ['crotch-grows'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const legs = legsOf(garment, params.where as WhichLegs);
    let work = beginWork(garment);
    for (const leg of legs) {
      const drawn = curve(leg, amount);
      if (!drawn) return bad('alter.cut-not-clear', { piece: leg.piece.name });
      work = redrawEdges(work, leg.piece.id, { [leg.crotch]: [drawn] });
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const done = followed.value;
    return finishWork(done, {
      held: legs.flatMap((leg) => heldOthers(done, leg.piece.id, [leg.crotch])),
    });
  },
};
