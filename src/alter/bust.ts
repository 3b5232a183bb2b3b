import { pathPointAtLength } from '../geometry/index.ts';
import type { Garment } from '../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';
import { type CutAcross, slideAcross } from './across.ts';
import { dartedFront } from './anatomy.ts';
import { type BustFront, bustFront, movedBustPoint } from './bust-front.ts';
import { matesOf } from './parts.ts';
import { placeAlongEdge, type RingRun, ringOf } from './ring.ts';
import type { Tape } from './tape.ts';
import type { Applied, Handle } from './types.ts';
import { beginWork, finishWork, type Work, withJoined } from './work.ts';

/**
 * What is sewn to the centre (a facing, a button stand) drops with it: cut across at the same place along the seam.
 * A facing that ends above the bust point is untouched.
 */
const followCentre = (garment: Garment, front: BustFront, tape: Tape): Result<readonly CutAcross[]> => {
  const followed: CutAcross[] = [];
  const { edge, along, drop } = front.centre;
  for (const { piece, edge: sewn, reversed } of matesOf(garment, front.before.id, edge)) {
    if (piece.id === front.before.id) continue;
    const ring = ringOf(piece);
    const place = placeAlongEdge(piece, ring, sewn, reversed ? tape.edge(piece, sewn) - along : along);
    const { y } = pathPointAtLength((ring.runs[place.run] as RingRun).path, place.at);
    const made = slideAcross(piece, y, drop);
    if (!made.ok) return made;
    followed.push(made.value);
  }
  return good(followed);
};

/** What a garment lacks for a bust alteration through a side dart: a front, its bust point, the dart. */
export const needsDartedFront = (garment: Garment): Problem | null => {
  const fronts = garment.pieces.filter(({ role }) => role === 'front');
  if (fronts.length === 0) return bad('alter.no-piece', { role: 'front' }).problem;
  for (const front of fronts) {
    const found = dartedFront(front);
    if (!found.ok) return found.problem;
  }
  return null;
};

/** Every front with a side dart given a mm more (or less) room, with what hangs on it. */
export const bust = (garment: Garment, a: number): Result<Applied> => {
  let work = beginWork(garment);
  const fronts: BustFront[] = [];
  for (const piece of garment.pieces.filter(({ role }) => role === 'front')) {
    const made = bustFront(piece, a, work.tape);
    if (!made.ok) return made;
    fronts.push(made.value);
    const followed = followCentre(garment, made.value, work.tape);
    if (!followed.ok) return followed;
    work = [made.value, ...followed.value].reduce<Work>((now, one) => withJoined(now, one), work);
  }
  if (fronts.length === 0) return bad('alter.no-piece', { role: 'front' });
  return finishWork(work, {
    held: fronts.flatMap(({ held }) => held),
    changes: fronts.flatMap(({ changes }) => changes),
    warnings: fronts.flatMap(({ warnings }) => warnings),
  });
};

/** The bust point of the first front, as it lies with a mm more room; `times` −1 where a grows as the amount shrinks. */
export const bustHandle = (garment: Garment, a: number, times: 1 | -1 = 1): Handle | null => {
  const front = garment.pieces.find(({ role }) => role === 'front');
  const moved = front && movedBustPoint(front, a);
  if (!front || !moved) return null;
  const { x, y } = moved.perMillimetre;
  return { piece: front.id, at: moved.at, perMillimetre: { x: times * x, y: times * y } };
};
