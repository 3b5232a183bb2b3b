import { type Generic, genericGarments } from '../../fit/index.ts';
import { bad, good, type Problem } from '../../units/index.ts';
import { upperArmAmount } from './limits.ts';
import { type CardMaker, say, sayAll } from './parts.ts';
import type { CardDimension, CardRequest } from './types.ts';
import { type WidenedSleeve, widenSleeve } from './upper-arm.ts';

/** A pair of sleeves. */
const sleeves = 2;

const widened = (
  request: CardRequest,
  amount: number,
): { readonly made: WidenedSleeve; readonly generic: Generic } | { readonly made: null; readonly problem: Problem } => {
  let problem: Problem | null = null;
  for (const generic of genericGarments(request.envelope, request.view, request.size)) {
    const made = widenSleeve(generic.garment, amount);
    if (made.ok) return { made: made.value, generic };
    // What the likest garment cannot bear outranks that another has no such sleeve.
    if (problem === null || problem.code === 'alter.no-piece') problem = made.problem;
  }
  return { made: null, problem: problem ?? bad('alter.no-generic', { kind: request.envelope.kind }).problem };
};

/** Sleeve-head ease: in shirts and knits at most, and in general woven cloth (trade: what a piece carries). */
const headEase = { close: 12, least: 15, most: 35 } as const;

/** How far an underarm moved out, and up towards the cap. */
const dimensionsOf = ({ piece, underarm: { before, after } }: WidenedSleeve): readonly CardDimension[] => [
  {
    piece,
    on: 'after',
    from: { x: before.x, y: after.y },
    to: after,
    mm: Math.abs(after.x - before.x),
  },
];

export const upperArmCard: CardMaker = (request) => {
  const { amount } = request.step.params;
  if (typeof amount !== 'number' || !Number.isFinite(amount))
    return bad('alter.not-an-amount', { parameter: 'amount' });
  const { min, max } = upperArmAmount;
  if (amount < min || amount > max) {
    return bad('alter.out-of-range', { amount: { mm: amount }, least: { mm: min }, most: { mm: max } });
  }
  const drawn = widened(request, amount);
  const { made } = drawn;
  const values = {
    amount: { mm: amount },
    half: { mm: amount / 2 },
    count: sleeves,
    falls: { mm: made?.capFalls ?? 0 },
    shorter: { mm: made?.shorter ?? 0 },
    ease: { mm: made?.headEase.after ?? 0 },
  };
  return good({
    title: say('card.upper-arm'),
    purpose: say('card.upper-arm-purpose'),
    amounts: [
      { at: 'upper-arm', total: amount, perPiece: amount, count: sleeves, said: say('card.upper-arm-amount', values) },
      ...(made
        ? [
            {
              at: 'sleeve-length',
              total: -made.shorter,
              perPiece: -made.shorter,
              count: sleeves,
              said: say('card.upper-arm-shorter', values),
            },
          ]
        : []),
    ],
    where: sayAll('card.upper-arm-where-middle', 'card.upper-arm-where-across', 'card.upper-arm-where-not'),
    steps: [
      say('card.upper-arm-mark'),
      say('card.upper-arm-cut'),
      say('card.upper-arm-pull', values),
      say('card.upper-arm-flat'),
      say('card.upper-arm-redraw'),
      say('card.upper-arm-give-back', values),
      say('card.upper-arm-walk'),
    ],
    follows: sayAll('card.upper-arm-follows-lining', 'card.upper-arm-follows-elbow', 'card.follows-notches'),
    holds: sayAll('card.hold-cap', 'card.hold-underarm-length', 'card.hold-wrist'),
    cautions: [
      say('card.upper-arm-ease', {
        close: { mm: headEase.close },
        least: { mm: headEase.least },
        most: { mm: headEase.most },
      }),
      say('card.upper-arm-flat-cap'),
      ...(request.envelope.allowance === null ? [say('card.allowance-unknown')] : []),
    ],
    changes: { 'upper-arm': amount, ...(made ? { 'sleeve-length': -made.shorter } : {}) },
    picture: made
      ? {
          house: drawn.generic.house.id,
          houseName: drawn.generic.house.name,
          draftedFor: drawn.generic.draftedFor,
          before: drawn.generic.garment,
          after: made.after,
          cuts: made.cuts,
          dimensions: dimensionsOf(made),
          nested: [],
          held: made.held,
        }
      : null,
    notDrawn: made ? null : drawn.problem,
  });
};
