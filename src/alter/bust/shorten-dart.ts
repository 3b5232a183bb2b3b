import { add, distance, lerp, normalize, scale, subtract } from '../../geometry/index.ts';
import { dartOf } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import { held } from '../checks.ts';
import { heldOthers } from '../held-edges.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, finishWork, pieceNow, withPiece } from '../work.ts';
import { dartNames, namedDart, needsDart } from './darts.ts';

/** What is left of a dart, mm: shorter and it makes a pucker. */
const leastLength = 40;

/**
 * A dart shorter (or longer) by `amount`: its point drawn back (or on) along its middle, its mouth as it was. A dart ends
 * short of what it aims at: 20 to 40 at the side, 10 to 25 at the waist. Source: fitting manuals.
 */
export const shortenDart: Alteration = {
  id: 'shorten-dart',
  version: 1,
  family: 'bust',
  params: {
    dart: { unit: 'named', of: 'dart' },
    amount: { unit: 'mm', min: -30, max: 60, usual: [-8, 15] },
    side: sideParameter,
  },
  amount: 'amount',
  inAll: 2,
  needs: needsDart,
  options: (garment, name) => (name === 'dart' ? dartNames(garment) : []),
  handle: (garment, params) => {
    const name = String(params.dart ?? dartNames(garment)[0] ?? '');
    if (!dartNames(garment).includes(name)) return null;
    const { piece, dart } = namedDart(garment, name);
    const { point, legs } = dartOf(piece, dart);
    return { piece: piece.id, at: point, perMillimetre: normalize(subtract(lerp(legs[0], legs[1], 1 / 2), point)) };
  },
  reverse: (params) => ({ alteration: 'shorten-dart', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['dart-legs', 'edges-closed', 'seam-walks'],
  follows: ['levels'],
  apply: (garment, params) => {
    const { piece, dart } = namedDart(garment, String(params.dart));
    const amount = Number(params.amount);
    const before = dartOf(piece, dart);
    const middle = lerp(before.legs[0], before.legs[1], 1 / 2);
    const length = distance(before.point, middle);
    if (length - amount < leastLength)
      return bad('alter.dart-too-short', { piece: piece.name, least: { mm: leastLength } });
    const point = add(before.point, scale(normalize(subtract(middle, before.point)), amount));
    const changed = { ...piece, darts: piece.darts.map((one) => (one.id === dart ? { ...one, point } : one)) };
    const work = withPiece(beginWork(garment), { piece: changed, untrued: changed, puts: [], cuts: [] });
    const after = pieceNow(work, piece.id);
    const now = dartOf(after, dart);
    return finishWork(work, {
      held: [
        ...heldOthers(work, piece.id),
        held('dart-legs', now.legLengths[0] - now.legLengths[1], { piece: piece.id }),
      ],
      changes: [{ what: 'dart-length', piece: piece.id, by: -amount, now: length - amount }],
    });
  },
};
