import { follow } from '../follow.ts';
import type { Alteration, Change } from '../types.ts';
import { beginWork, finishWork, lengthNow, redrawEdges } from '../work.ts';
import { centreOf, deepened } from './neckline.ts';
import { type Neckline, necklinesOf, needsNeckline } from './upper.ts';

const chosen = (necklines: readonly Neckline[], where: unknown): readonly Neckline[] =>
  necklines.filter(({ side }) => side === where);

/**
 * A neckline lower by `amount` at the centre of front or back (negative: higher), the shoulder end kept.
 *
 *     |  \\            the centre slides along its own line; the curve keeps
 *     |    \\_ neck    its direction at the shoulder, and at the centre, where
 *     *.____\\         it stays square: opened out, it runs smoothly across
 *     |´-.__ \\
 *     * amount
 *
 * Facings are traced again, bands and collars made as much longer, what runs on beyond the centre over a stand
 * moves with it. Problems: `alter.neck-too-flat`; those of what follows.
 * Source: neckline drafting of pattern-cutting manuals.
 */
export const necklineDepth: Alteration = {
  id: 'neckline-depth',
  version: 1,
  family: 'shoulder-neck',
  params: {
    amount: { unit: 'mm', min: -30, max: 120, usual: [5, 25] },
    where: { unit: 'choice', choices: ['front', 'back'], usual: 'front' },
  },
  amount: 'amount',
  inAll: 1,
  needs: needsNeckline,
  options: (garment, parameter) =>
    parameter === 'where' ? ['front', 'back'].filter((side) => chosen(necklinesOf(garment), side).length > 0) : [],
  handle: (garment, params) => {
    const [neckline] = chosen(necklinesOf(garment), params['where']);
    if (!neckline) return null;
    const { x, y } = centreOf(neckline);
    return {
      piece: neckline.piece.id,
      at: { x, y: y + Number(params['amount'] ?? 0) },
      perMillimetre: { x: 0, y: 1 },
    };
  },
  reverse: (params) => ({ alteration: 'neckline-depth', params: { ...params, amount: -Number(params['amount']) } }),
  holds: ['shoulder', 'seam-walks'],
  follows: ['facings', 'collar'],
  apply: (garment, params) => {
    let work = beginWork(garment);
    const necklines = chosen(necklinesOf(garment), params['where']);
    for (const neckline of necklines) {
      const drawn = deepened(neckline, Number(params['amount']));
      if (!drawn.ok) return drawn;
      work = redrawEdges(work, neckline.piece.id, drawn.value);
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const now = followed.value;
    return finishWork(now, {
      changes: necklines.map(({ piece, edges }): Change => {
        const length = (of: (edge: string) => number): number => edges.reduce((sum, edge) => sum + of(edge), 0);
        const is = length((edge) => lengthNow(now, piece.id, edge));
        return { what: 'neckline', piece: piece.id, by: is - length((edge) => now.tape.edge(piece, edge)), now: is };
      }),
    });
  },
};
