import { add, normalize, scale, subtract } from '../../geometry/index.ts';
import { bad } from '../../units/index.ts';
import { held } from '../checks.ts';
import { follow } from '../follow.ts';
import { endPoint, other } from '../parts.ts';
import type { Alteration } from '../types.ts';
import { beginWork, finishWork, lengthNow, redrawEdges } from '../work.ts';
import { widened } from './neckline.ts';
import { necklinesOf, needsNeckline, needsShoulder } from './upper.ts';

/**
 * A neckline wider by `amount` at each shoulder (negative: narrower), on front and back alike.
 *
 *              * --->*------      the neck point slides along the shoulder,
 *             /     /             the curve goes with it, evenly less
 *     |     _/    _/              towards the centre, which stays
 *     *--´´´ --´´´
 *
 * The shoulder is shorter by as much. Facings are traced again, bands and collars made as much longer.
 * Problems: `alter.edge-used-up` where the shoulder is not that long; those of what follows.
 * Source: neckline drafting of pattern-cutting manuals.
 */
export const necklineWidth: Alteration = {
  id: 'neckline-width',
  version: 1,
  family: 'shoulder-neck',
  params: { amount: { unit: 'mm', min: -20, max: 60, usual: [3, 15] } },
  amount: 'amount',
  inAll: 2,
  needs: (garment) => needsShoulder(garment) ?? needsNeckline(garment),
  handle: (garment, params) => {
    const neckline = necklinesOf(garment).find(({ side }) => side === 'front');
    if (!neckline) return null;
    const { piece, shoulder } = neckline;
    const from = endPoint(piece, shoulder);
    const along = normalize(subtract(endPoint(piece, { ...shoulder, end: other(shoulder.end) }), from));
    return { piece: piece.id, at: add(from, scale(along, Number(params['amount'] ?? 0))), perMillimetre: along };
  },
  reverse: (params) => ({ alteration: 'neckline-width', params: { ...params, amount: -Number(params['amount']) } }),
  holds: ['shoulder-shorter', 'seam-walks'],
  follows: ['facings', 'collar'],
  apply: (garment, params) => {
    const amount = Number(params['amount']);
    let work = beginWork(garment);
    const necklines = necklinesOf(garment);
    if (necklines.length === 0) return bad('alter.no-neckline', {});
    for (const neckline of necklines) {
      const drawn = widened(neckline, amount);
      if (!drawn.ok) return drawn;
      work = redrawEdges(work, neckline.piece.id, drawn.value);
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const now = followed.value;
    return finishWork(now, {
      held: necklines.map(({ piece, shoulder: { edge } }) =>
        held('shoulder-shorter', lengthNow(now, piece.id, edge) - now.tape.edge(piece, edge) + amount, {
          piece: piece.id,
          edge,
        }),
      ),
    });
  },
};
