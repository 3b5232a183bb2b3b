import { intersectPaths, line } from '../../geometry/index.ts';
import { good } from '../../units/index.ts';
import { sleevesOf } from '../sleeve/anatomy.ts';
import { fullUpperArm } from '../sleeve/full-upper-arm.ts';
import type { PieceCut } from '../types.ts';
import { type CarriedOut, carriedOut, pictureOf } from './carried-out.ts';
import { askedAmount, upperArmAmount } from './limits.ts';
import { type CardMaker, say, sayAll } from './parts.ts';
import type { CardDimension } from './types.ts';

/** A pair of sleeves. */
const sleeves = 2;

/** Sleeve-head ease: in shirts and knits at most, and in general woven cloth (trade: what a piece carries). */
const headEase = { close: 12, least: 15, most: 35 } as const;

/** By how much the first sleeve, which is of cloth and not of lining, comes out lower and shorter, mm. */
const heightsOf = ({ changes }: CarriedOut) => {
  const lost = (wanted: string): number => -(changes.find(({ what }) => what === wanted)?.by ?? 0);
  return { falls: lost('cap-height'), shorter: lost('sleeve-length') };
};

/** How far either end of the upper arm's level moved out on the first sleeve. */
const dimensionsOf = ({ before, after }: CarriedOut): readonly CardDimension[] => {
  const [was, now] = [before, after].map((garment) => sleevesOf(garment)[0]?.piece);
  const [from, to] = [was, now].map((piece) => piece?.levels.find(({ id }) => id === 'upper-arm'));
  if (!now || !from || !to) return [];
  return (['from', 'to'] as const).map((end): CardDimension => {
    const [old, moved] = [{ x: from[end].x, y: to[end].y }, to[end]];
    return { piece: now.id, on: 'after', from: old, to: moved, mm: Math.abs(moved.x - old.x) };
  });
};

/**
 * The cuts as a person makes them, straight across between the underarms. The alteration's own meet lower down, clear of a
 * flat cap: the quarters turn about the same points, so the sleeve comes out the same.
 */
const cutsAcross = ({ before, cuts }: CarriedOut): readonly PieceCut[] => {
  const sleeves = sleevesOf(before);
  return cuts.flatMap((cut) => {
    const sleeve = sleeves.find(({ piece }) => piece.id === cut.piece);
    const end = cut.points.at(-1);
    if (!sleeve || !end) return [];
    const { top, wrist, corners } = sleeve;
    const [crossing] = intersectPaths([line(top, wrist)], [line(...corners)]);
    return [{ ...cut, points: [crossing?.point ?? cut.points[0] ?? top, end] }];
  });
};

export const upperArmCard: CardMaker = (request) => {
  const { step, envelope } = request;
  const asked = askedAmount(step, upperArmAmount);
  if (!asked.ok) return asked;
  const amount = asked.value;
  const made = carriedOut(request, [{ alteration: fullUpperArm, params: { amount } }]);
  const heights = made.done && heightsOf(made.done);
  const values = {
    amount: { mm: amount },
    half: { mm: amount / 2 },
    count: sleeves,
    falls: { mm: heights?.falls ?? 0 },
    shorter: { mm: heights?.shorter ?? 0 },
  };
  return good({
    title: say('card.upper-arm'),
    purpose: say('card.upper-arm-purpose'),
    amounts: [
      { at: 'upper-arm', total: amount, perPiece: amount, count: sleeves, said: say('card.upper-arm-amount', values) },
      ...(heights
        ? [
            {
              at: 'sleeve-length',
              total: -heights.shorter,
              perPiece: -heights.shorter,
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
      ...(envelope.allowance === null ? [say('card.allowance-unknown')] : []),
    ],
    changes: { 'upper-arm': amount, ...(heights ? { 'sleeve-length': -heights.shorter } : {}) },
    picture: made.done ? { ...pictureOf(made.done, dimensionsOf(made.done)), cuts: cutsAcross(made.done) } : null,
    notDrawn: made.done ? null : made.problem,
  });
};
