import { lerp } from '../../geometry/index.ts';
import type { FinishedOf, Garment } from '../../pattern/index.ts';
import { bad, good } from '../../units/index.ts';
import { lengthenShorten } from '../lengthen-shorten.ts';
import type { PieceCut } from '../types.ts';
import { carriedOut, girthsChanged, pictureOf } from './carried-out.ts';
import { amountOf, askedAmount } from './limits.ts';
import { type CardMaker, say, sayAll } from './parts.ts';
import type { CardAmount, CardDimension } from './types.ts';

/** Finished lengths that pass a place on the body. */
const lengthsThrough: Readonly<Record<string, readonly FinishedOf[]>> = {
  'above-waist': ['back-length', 'front-length', 'side-length'],
  'below-waist': ['back-length', 'front-length', 'side-length'],
  rise: ['side-length'],
  leg: ['side-length', 'inside-leg'],
  sleeve: ['sleeve-length'],
};

/** Pieces that carry a place in the usual construction: halves of front and back, or a pair. */
const usualCount: Readonly<Record<string, number>> = {
  'above-waist': 4,
  'below-waist': 4,
  rise: 4,
  leg: 4,
  sleeve: 2,
};

/** What a place's alteration brings with it. */
const follows = (where: string): readonly string[] => {
  if (where === 'sleeve') return ['card.length-follows-lining', 'card.length-follows-placket'];
  if (where === 'leg') return ['card.follows-lining'];
  if (where === 'rise') return ['card.length-follows-zip', 'card.rise-follows-pocket', 'card.follows-lining'];
  return ['card.length-follows-facing', 'card.length-follows-zip'];
};

/** Depth put into front and back is put into the crotch seam twice over (trade: crotch). */
const crotchGrows = (amount: number): CardAmount => ({
  at: 'crotch',
  total: 2 * amount,
  perPiece: amount,
  count: 2,
  said: say(amount > 0 ? 'card.rise-crotch-more' : 'card.rise-crotch-less', {
    each: { mm: Math.abs(amount) },
    times: 2,
  }),
});

/** A pocket in the side seam is moved with the rise by hand: the generic piece is drawn without. */
const withoutPockets = (garment: Garment): Garment => {
  const pockets = new Set(garment.pieces.filter(({ role }) => role === 'pocket').map(({ id }) => id));
  return {
    ...garment,
    pieces: garment.pieces.filter(({ id }) => !pockets.has(id)),
    seams: garment.seams.filter(({ a, b }) => !pockets.has(a.piece) && !pockets.has(b.piece)),
  };
};

/** A fold takes two lines: the cut of a shortening, and the line it is folded up to. */
const linesOf = (cuts: readonly PieceCut[], amount: number): readonly PieceCut[] =>
  amount > 0
    ? cuts
    : cuts.flatMap((cut) => [
        cut,
        { ...cut, id: 'fold', points: cut.points.map(({ x, y }) => ({ x, y: y + amount })) },
      ]);

/** The amount as a height beside the cut, at a third of its length, where grain and names seldom lie. */
const dimensionsOf = (cuts: readonly PieceCut[], amount: number): readonly CardDimension[] =>
  cuts.flatMap(({ piece, points }) => {
    const [from, to] = [points[0], points.at(-1)];
    if (!from || !to) return [];
    const at = lerp(from, to, 1 / 3);
    const on = amount > 0 ? 'after' : 'before';
    return [{ piece, on, from: at, to: { x: at.x, y: at.y + amount }, mm: Math.abs(amount) }];
  });

export const lengthCard: CardMaker = (request) => {
  const { step, envelope } = request;
  const place = step.params.where ?? 'above-waist';
  const lengths = lengthsThrough[String(place)];
  if (!lengths) {
    return bad('alter.not-a-choice', {
      parameter: 'where',
      given: String(place),
      choices: Object.keys(lengthsThrough).join(', '),
    });
  }
  const asked = askedAmount(step, amountOf(lengthenShorten));
  if (!asked.ok) return asked;
  const amount = asked.value;
  if (amount === 0) return bad('alter.not-an-amount', { parameter: 'amount' });
  const longer = amount > 0;
  const where = String(place);
  const count = usualCount[where] ?? 1;
  const values = { amount: { mm: Math.abs(amount) }, half: { mm: Math.abs(amount) / 2 }, place: where, count };
  const made = carriedOut(
    request,
    [{ alteration: lengthenShorten, params: { where, amount } }],
    where === 'rise' ? withoutPockets : undefined,
  );
  const more = longer ? 'lengthen' : 'shorten';
  return good({
    title: say(`card.${more}`, values),
    purpose: say(`card.length-purpose-${where}`),
    amounts: [
      { at: where, total: amount, perPiece: amount, count, said: say(`card.${more}-amount`, values) },
      ...(where === 'rise' ? [crotchGrows(amount)] : []),
    ],
    where: [say(`card.length-where-${where}`), say('card.length-where-line'), say('card.length-where-same')],
    steps: [
      say('card.length-mark'),
      say('card.length-square'),
      ...(longer
        ? [say('card.lengthen-cut'), say('card.lengthen-spread', values), say('card.lengthen-tape')]
        : [say('card.shorten-line', values), say('card.shorten-fold', values)]),
      say('card.length-redraw'),
      say('card.length-walk'),
    ],
    follows: [...follows(where).map((code) => say(code, values)), say('card.follows-notches')],
    holds: sayAll(
      'card.hold-widths',
      'card.hold-grain',
      where === 'sleeve' ? 'card.hold-underarm' : 'card.hold-side',
      ...(where === 'leg' || where === 'rise' ? ['card.hold-inside-leg'] : []),
    ),
    cautions: [
      ...sayAll('card.length-no-dart'),
      ...(longer ? [] : [say('card.shorten-hem')]),
      ...(envelope.allowance === null ? [say('card.allowance-unknown')] : []),
    ],
    changes: {
      ...Object.fromEntries(lengths.map((of) => [of, amount])),
      ...(made.done ? girthsChanged(made.done) : {}),
    },
    picture: made.done
      ? {
          ...pictureOf(made.done, dimensionsOf(made.done.cuts, amount)),
          cuts: linesOf(made.done.cuts, amount),
        }
      : null,
    notDrawn: made.done ? null : made.problem,
  });
};
