import { type Generic, genericGarments } from '../../fit/index.ts';
import { bad, good, type Problem } from '../../units/index.ts';
import { swayBackAmount } from './limits.ts';
import { type CardMaker, say, sayAll } from './parts.ts';
import { type SwayedBack, swayBack } from './sway-back.ts';
import type { CardRequest } from './types.ts';

/** Two halves of the back. */
const halves = 2;

const swayed = (
  request: CardRequest,
  amount: number,
): { readonly made: SwayedBack; readonly generic: Generic } | { readonly made: null; readonly problem: Problem } => {
  let problem: Problem | null = null;
  for (const generic of genericGarments(request.envelope, request.view, request.size)) {
    const made = swayBack(generic.garment, amount);
    if (made.ok) return { made: made.value, generic };
    problem ??= made.problem;
  }
  return { made: null, problem: problem ?? bad('alter.no-generic', { kind: request.envelope.kind }).problem };
};

export const swayBackCard: CardMaker = (request) => {
  const { amount } = request.step.params;
  if (typeof amount !== 'number' || !Number.isFinite(amount))
    return bad('alter.not-an-amount', { parameter: 'amount' });
  const { min, max } = swayBackAmount;
  if (amount < min || amount > max) {
    return bad('alter.out-of-range', { amount: { mm: amount }, least: { mm: min }, most: { mm: max } });
  }
  const drawn = swayed(request, amount);
  const { made } = drawn;
  const values = { amount: { mm: amount }, count: halves, out: { mm: made?.swungOut ?? 0 } };
  return good({
    title: say('card.sway-back'),
    purpose: say('card.sway-back-purpose'),
    amounts: [
      {
        at: 'back-length',
        total: -amount,
        perPiece: -amount,
        count: halves,
        said: say('card.sway-back-amount', values),
      },
    ],
    where: sayAll('card.sway-back-where', 'card.sway-back-where-waist-seam'),
    steps: [
      ...sayAll('card.sway-back-first', 'card.sway-back-mark'),
      say('card.sway-back-line', values),
      say('card.sway-back-fold', values),
      ...sayAll('card.sway-back-redraw', 'card.sway-back-grain', 'card.sway-back-walk'),
    ],
    follows: [say('card.sway-back-follows-zip', values), ...sayAll('card.follows-lining', 'card.follows-notches')],
    holds: sayAll('card.hold-side', 'card.hold-neck', 'card.hold-armhole', 'card.hold-back-waist'),
    cautions: [
      say('card.sway-back-fold-edge'),
      ...(made ? [say('card.sway-back-out', values)] : []),
      ...(request.envelope.allowance === null ? [say('card.allowance-unknown')] : []),
    ],
    changes: { 'back-length': -amount },
    picture: made
      ? {
          house: drawn.generic.house.id,
          houseName: drawn.generic.house.name,
          draftedFor: drawn.generic.draftedFor,
          before: drawn.generic.garment,
          after: made.after,
          cuts: made.cuts,
          dimensions: [{ piece: made.piece, on: 'before', from: made.wedge.upper, to: made.wedge.lower, mm: amount }],
          nested: [],
          held: made.held,
        }
      : null,
    notDrawn: made ? null : drawn.problem,
  });
};
