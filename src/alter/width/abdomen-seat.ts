import type { Garment, Piece } from '../../pattern/index.ts';
import { bad, type Problem, type Result } from '../../units/index.ts';
import { follow } from '../follow.ts';
import { heldLengths } from '../held-edges.ts';
import { deeperTucks } from '../tucks.ts';
import type { Alteration, Applied, Params } from '../types.ts';
import { beginWork, finishWork } from '../work.ts';
import { sidesOf } from './sides.ts';
import { tiltWaist, type WaistEdge, waistEdgeOf } from './tilt-waist.ts';

/** Waist edges of the pieces of one role that hang from the waist. */
export const waistEdges = (garment: Garment, role: Piece['role']): readonly WaistEdge[] =>
  sidesOf(garment).flatMap((side) => {
    const found = side.piece.role === role ? waistEdgeOf(side) : null;
    return found ? [found] : [];
  });

/** The waist of front or back raised by so much at the centre, to nothing at the side. */
export const raiseCentre = (garment: Garment, edges: readonly WaistEdge[], amount: number): Result<Applied> => {
  let work = beginWork(garment);
  for (const edge of edges) work = tiltWaist(work, edge, amount);
  const followed = follow(work);
  if (!followed.ok) return followed;
  const done = deeperTucks(followed.value);
  return finishWork(done.work, {
    held: edges.flatMap(({ piece, side }) => heldLengths(done.work, piece.id, side.edges)),
    warnings: done.warnings,
  });
};

const needsWaist =
  (role: Piece['role']) =>
  (garment: Garment): Problem | null =>
    waistEdges(garment, role).length > 0 ? null : bad('alter.no-waist-edge', { role }).problem;

const atCentre = (id: 'abdomen' | 'seat', role: 'front' | 'back'): Alteration => ({
  id,
  version: 1,
  family: 'width',
  params: { amount: { unit: 'mm', min: -40, max: 40, usual: [-10, 20] } },
  amount: 'amount',
  inAll: 1,
  needs: needsWaist(role),
  handle: (garment) => {
    const [edge] = waistEdges(garment, role);
    return edge ? { piece: edge.piece.id, at: edge.centre, perMillimetre: edge.up } : null;
  },
  reverse: (params: Params) => ({ alteration: id, params: { ...params, amount: -Number(params.amount) } }),
  holds: ['side-stays', 'seam-walks'],
  follows: ['waistband', 'facings', 'lining', 'zip-length'],
  apply: (garment, params) => raiseCentre(garment, waistEdges(garment, role), Number(params.amount)),
});

/**
 * Full abdomen (or a hollow one): the waist of the front raised by `amount` at the centre, to nothing at the side, so that
 * the front is long enough to go over the abdomen and its hem hangs level.
 *
 *     centre ___------.side      raised at the centre along it, square to it as before
 *           |_____----|
 *           |         |
 *
 * Source: fitting manuals on the hem that rides up at the front of a skirt or trousers.
 */
export const abdomen: Alteration = atCentre('abdomen', 'front');

/** Full (or flat) seat: the same on the back. On trousers the crotch seam is longer by as much, straight on at its top. */
export const seat: Alteration = atCentre('seat', 'back');
