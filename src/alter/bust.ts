import { pathPointAtLength } from '../geometry/index.ts';
import { type Garment, pieceOf, type Seam, type SeamSide } from '../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';
import { type CutAcross, slideAcross } from './across.ts';
import { dartedFront } from './anatomy.ts';
import { type BustFront, bustFront, movedBustPoint } from './bust-front.ts';
import { cutsOf, heldSeams, replacePieces, reportOf } from './checks.ts';
import { girthChanges } from './girths.ts';
import { placeAlongEdge, type RingRun, ringOf } from './ring.ts';
import { createTape, type Tape } from './tape.ts';
import type { Applied, Handle } from './types.ts';

/** The other side of a seam, where one of its sides is this edge of this piece. */
const matesOf = (
  garment: Garment,
  piece: string,
  edge: string,
): readonly { readonly own: SeamSide; readonly mate: SeamSide }[] =>
  garment.seams.flatMap(({ a, b }: Seam) => {
    if (a.piece === piece && a.edge === edge) return [{ own: a, mate: b }];
    return b.piece === piece && b.edge === edge ? [{ own: b, mate: a }] : [];
  });

/**
 * What is sewn to the centre (a facing, a button stand) drops with it: cut across at the same place along the seam.
 * A facing that ends above the bust point is untouched.
 */
const followCentre = (garment: Garment, front: BustFront, tape: Tape): Result<readonly CutAcross[]> => {
  const followed: CutAcross[] = [];
  const { edge, along, drop } = front.centre;
  for (const { own, mate } of matesOf(garment, front.before.id, edge)) {
    if (mate.piece === front.before.id) continue;
    const piece = pieceOf(garment, mate.piece);
    const fromStart = own.reversed ? tape.edge(front.before, edge) - along : along;
    const whole = tape.edge(piece, mate.edge);
    const ring = ringOf(piece);
    const place = placeAlongEdge(piece, ring, mate.edge, mate.reversed ? whole - fromStart : fromStart);
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
  const tape = createTape();
  const fronts: BustFront[] = [];
  const mates: CutAcross[] = [];
  for (const piece of garment.pieces.filter(({ role }) => role === 'front')) {
    const made = bustFront(piece, a, tape);
    if (!made.ok) return made;
    fronts.push(made.value);
    const followed = followCentre(garment, made.value, tape);
    if (!followed.ok) return followed;
    mates.push(...followed.value);
  }
  if (fronts.length === 0) return bad('alter.no-piece', { role: 'front' });
  const changed = [...fronts, ...mates];
  const after = replacePieces(
    garment,
    changed.map((one) => one.after),
  );
  return good({
    garment: after,
    untrued: replacePieces(
      garment,
      changed.map(({ joined }) => joined.piece),
    ),
    held: [...fronts.flatMap(({ held }) => held), ...heldSeams(tape, garment, after)],
    changes: [...fronts.flatMap(({ changes }) => changes), ...girthChanges(garment, after)],
    warnings: fronts.flatMap(({ warnings }) => warnings),
    pieces: changed.map((one) => reportOf(tape, one.before, one.after, one.joined.puts)),
    cuts: cutsOf(changed),
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
