import { bust, bustHandle, needsDartedFront } from './bust.ts';
import { type Alteration, sideParameter } from './types.ts';

/**
 * Small bust, side dart: the full bust alteration the other way, `amount` mm less width on every front. The parts
 * overlap instead of spreading; it stops where the overlap has used up the dart's angle.
 *
 * Source: fitting manuals; formulas in bust-front.ts with a negative amount.
 */
export const smallBust: Alteration = {
  id: 'small-bust',
  version: 1,
  family: 'bust',
  params: { amount: { unit: 'mm', min: 1, max: 40, usual: [3, 8] }, side: sideParameter },
  amount: 'amount',
  inAll: 2,
  needs: needsDartedFront,
  reverse: (params) => ({ alteration: 'full-bust', params }),
  holds: ['neck', 'shoulder', 'armhole', 'side', 'dart-legs', 'dart-angle', 'width-grows', 'seam-walks'],
  follows: ['centre-facing', 'hem', 'levels'],
  handle: (garment, params) => bustHandle(garment, -Number(params.amount), -1),
  apply: (garment, params) => bust(garment, -Number(params.amount)),
};
