import { add, type Point, scale } from '../../geometry/index.ts';
import { type Envelope, pieceOf } from '../../pattern/index.ts';
import { good, type Problem } from '../../units/index.ts';
import { swayBack } from '../back/sway-back.ts';
import type { PieceCut } from '../types.ts';
import { waistEdges } from '../width/abdomen-seat.ts';
import { type CarriedOut, carriedOut, pictureOf } from './carried-out.ts';
import { amountOf, askedAmount } from './limits.ts';
import { type CardMaker, say, sayAll } from './parts.ts';
import type { CardDimension, CardPicture } from './types.ts';

/** Two halves of the back. */
const halves = 2;

/** A cut across a back from its centre towards its side, and how far above either end the line lies that it is folded up to. */
interface Fold {
  readonly cut: PieceCut;
  readonly inner: Point;
  readonly outer: Point;
  readonly above: readonly [number, number];
}

/** The wedge folded out of each back: all of the amount at the centre, shared over a side back beside it, nothing at the side. */
const foldsOf = ({ before, cuts }: CarriedOut, amount: number): readonly Fold[] => {
  const backs = cuts.flatMap((cut) => {
    const [from, to] = [cut.points[0], cut.points.at(-1)];
    const piece = pieceOf(before, cut.piece);
    // What follows, such as a waistband, may be cut too.
    if (!from || !to || (piece.role !== 'back' && piece.role !== 'side-back')) return [];
    const [level] = piece.levels;
    const rightwards = !level || level.to.x > level.from.x;
    const [inner, outer] = to.x > from.x === rightwards ? [from, to] : [to, from];
    return [{ cut, inner, outer, width: Math.abs(to.x - from.x), begins: piece.role === 'back' }];
  });
  return backs.map(({ cut, inner, outer, width }, i) => {
    // From the centre of its own layer to its side: pieces from the last back that begins one to the next.
    const start = backs.findLastIndex(({ begins }, j) => begins && j <= i);
    const next = backs.findIndex(({ begins }, j) => begins && j > i);
    const half = backs.slice(start, next < 0 ? backs.length : next);
    const across = half.reduce((sum, one) => sum + one.width, 0);
    const passed = backs.slice(start, i).reduce((sum, one) => sum + one.width, 0);
    const above = (at: number): number => amount * (1 - at / across);
    return { cut, inner, outer, above: [above(passed), above(passed + width)] };
  });
};

const raised = (p: Point, by: number): Point => ({ x: p.x, y: p.y - by });

/** Cut and fold on each back, and the amount between them at its centre. */
const pictureOfFolds = (done: CarriedOut, folds: readonly Fold[], amount: number): CardPicture => {
  const dimensions = folds.flatMap(({ cut: { piece }, inner, above: [most] }): CardDimension[] =>
    most < amount ? [] : [{ piece, on: 'before', from: raised(inner, most), to: inner, mm: amount }],
  );
  return {
    ...pictureOf(done, dimensions),
    cuts: folds.flatMap(({ cut, inner, outer, above: [most, least] }) => [
      cut,
      { ...cut, id: 'fold', points: [raised(inner, most), raised(outer, least)] },
    ]),
  };
};

/** The waist of a back that hangs from it, lower by the amount at the centre. */
const pictureLowered = (done: CarriedOut, amount: number): CardPicture => {
  const dimensions = waistEdges(done.before, 'back').map(
    ({ piece, centre, up }): CardDimension => ({
      piece: piece.id,
      on: 'after',
      from: centre,
      to: add(centre, scale(up, -amount)),
      mm: amount,
    }),
  );
  return { ...pictureOf(done, dimensions), cuts: [] };
};

/** What is done to a back that goes on below the waist: a wedge is folded out of it. */
const foldedOut = (values: Problem['values']) => ({
  purpose: say('card.sway-back-purpose'),
  where: sayAll('card.sway-back-where', 'card.sway-back-where-waist-seam'),
  steps: [
    ...sayAll('card.sway-back-first', 'card.sway-back-mark'),
    say('card.sway-back-line', values),
    say('card.sway-back-fold', values),
    ...sayAll('card.sway-back-redraw', 'card.sway-back-grain', 'card.sway-back-walk'),
  ],
  follows: [say('card.sway-back-follows-zip', values), ...sayAll('card.follows-lining', 'card.follows-notches')],
  holds: sayAll('card.hold-side', 'card.hold-neck', 'card.hold-armhole', 'card.hold-back-waist'),
  cautions: sayAll('card.sway-back-fold-edge'),
});

/** What is done to a back that hangs from the waist: its upper edge is lowered at the centre. */
const lowered = (values: Problem['values']) => ({
  purpose: say('card.sway-back-purpose-hung'),
  where: sayAll('card.sway-back-where-hung'),
  steps: [
    ...sayAll('card.sway-back-first', 'card.sway-back-mark-hung'),
    say('card.sway-back-line-hung', values),
    ...sayAll('card.sway-back-darts-hung', 'card.sway-back-walk-hung'),
  ],
  follows: [
    say('card.sway-back-follows-zip', values),
    ...sayAll('card.sway-back-follows-band', 'card.follows-lining', 'card.follows-notches'),
  ],
  holds: sayAll('card.hold-side'),
  cautions: [],
});

/** Kinds of garment that hang from the waist. */
const hung: readonly Envelope['kind'][] = ['skirt', 'trousers'];

export const swayBackCard: CardMaker = (request) => {
  const { step, envelope } = request;
  const asked = askedAmount(step, amountOf(swayBack));
  if (!asked.ok) return asked;
  const amount = asked.value;
  const made = carriedOut(request, [{ alteration: swayBack, params: { amount } }]);
  const out = made.done?.changes.find(({ what }) => what === 'centre-swings-out')?.by;
  const values = { amount: { mm: amount }, count: halves, out: { mm: out ?? 0 } };
  const folds = made.done ? foldsOf(made.done, amount) : [];
  const isLowered = made.done ? folds.length === 0 : hung.includes(envelope.kind);
  const told = isLowered ? lowered(values) : foldedOut(values);
  return good({
    ...told,
    title: say('card.sway-back'),
    amounts: [
      {
        at: 'back-length',
        total: -amount,
        perPiece: -amount,
        count: halves,
        said: say('card.sway-back-amount', values),
      },
    ],
    cautions: [
      ...told.cautions,
      ...(out === undefined ? [] : [say('card.sway-back-out', values)]),
      ...(envelope.allowance === null ? [say('card.allowance-unknown')] : []),
    ],
    changes: { 'back-length': -amount },
    picture: made.done
      ? isLowered
        ? pictureLowered(made.done, amount)
        : pictureOfFolds(made.done, folds, amount)
      : null,
    notDrawn: made.done ? null : made.problem,
  });
};
