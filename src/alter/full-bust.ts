import { bust, bustHandle, needsDartedFront } from './bust.ts';
import { type Alteration, sideParameter } from './types.ts';

/**
 * Full bust, side dart: `amount` mm more width on every front, so twice that in all on a garment of two fronts or one
 * on the fold. The front over the bust is longer, the dart deeper; neck, shoulder, armhole and side seam stay as long
 * as they were.
 *
 *        neck ___ shoulder
 *            |    \
 *            |     ) armhole
 *            |    H----.        the part H–side–dart swings about H,
 *            |   /      \       BP moves out by a and down by v
 *     centre |--BP-------| side
 *            |   |  dart |
 *            |   |       |      below BP: centre drops v, side slides (a, v)
 *             hem
 *
 * Source: the slash-and-spread full bust alteration of fitting manuals; formulas in bust-front.ts.
 */
export const fullBust: Alteration = {
  id: 'full-bust',
  version: 1,
  family: 'bust',
  params: { amount: { unit: 'mm', min: 1, max: 60, usual: [6, 30] }, side: sideParameter },
  amount: 'amount',
  inAll: 2,
  needs: needsDartedFront,
  reverse: (params) => ({ alteration: 'small-bust', params }),
  holds: ['neck', 'shoulder', 'armhole', 'side', 'dart-legs', 'dart-angle', 'width-grows', 'seam-walks'],
  follows: ['centre-facing', 'hem', 'levels'],
  handle: (garment, params) => bustHandle(garment, Number(params.amount)),
  apply: (garment, params) => bust(garment, Number(params.amount)),
};
