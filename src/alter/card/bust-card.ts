import { widestDart } from '../../fit/index.ts';
import { dartsOf, type Garment, landmarkOf, type Piece } from '../../pattern/index.ts';
import { good } from '../../units/index.ts';
import { fullBust } from '../full-bust.ts';
import { smallBust } from '../small-bust.ts';
import { carriedOut, pictureOf } from './carried-out.ts';
import { amountOf, askedAmount } from './limits.ts';
import { type CardMaker, say, sayAll } from './parts.ts';
import type { CardDimension } from './types.ts';

/** Two halves of the front, whether it is cut on the fold or as a pair. */
const halves = 2;

/** How far the bust point moved, across and down, on each altered front. */
const dimensionsOf = (before: Garment, after: Garment): readonly CardDimension[] =>
  after.pieces.flatMap((piece): CardDimension[] => {
    const old = before.pieces.find(({ id }) => id === piece.id);
    const [from, to] = [old && landmarkOf(old, 'bust-point'), landmarkOf(piece, 'bust-point')];
    if (old === piece || !from || !to || piece.role !== 'front') return [];
    const corner = { x: to.x, y: from.y };
    return [
      { piece: piece.id, on: 'after', from, to: corner, mm: Math.abs(to.x - from.x) },
      { piece: piece.id, on: 'after', from: corner, to, mm: Math.abs(to.y - from.y) },
    ];
  });

/** How far short of the bust point a side dart ends, mm (trade). */
const pointBack = { near: 20, far: 40 } as const;

const frontOf = (garment: Garment): Piece | undefined =>
  garment.pieces.find((piece) => piece.role === 'front' && piece.darts.length > 0);

const bustCard =
  (full: boolean): CardMaker =>
  (request) => {
    const { step, envelope } = request;
    const alteration = full ? fullBust : smallBust;
    const asked = askedAmount(step, amountOf(alteration));
    if (!asked.ok) return asked;
    const each = asked.value;
    const name = alteration.id;
    const sign = full ? 1 : -1;
    const made = carriedOut(request, [{ alteration, params: { amount: each } }]);
    const front = made.done ? frontOf(made.done.before) : undefined;
    const dimensions = made.done ? dimensionsOf(made.done.before, made.done.after) : [];
    // The drop comes of how the hinge lies to the bust point, so the generic piece can only say about how much it is.
    const drop = sign * (dimensions[1]?.mm ?? 0);
    // Undrawn it is not known at all: then nothing is said of how much.
    const known = drop === 0 ? '-undrawn' : '';
    const altered = made.done?.after.pieces.find(({ id }) => id === front?.id);
    const intake = altered ? (dartsOf(altered)[0]?.intake ?? 0) : 0;
    const values = { each: { mm: each }, times: halves, drop: { mm: Math.abs(drop) }, intake: { mm: intake } };
    const total = sign * halves * each;
    return good({
      title: say(`card.${name}`, values),
      purpose: say(`card.${name}-purpose`),
      amounts: [
        {
          at: 'bust',
          total: sign * halves * each,
          perPiece: sign * each,
          count: halves,
          said: say(`card.${name}-amount`, values),
        },
        ...(drop === 0
          ? []
          : [
              {
                at: 'front-length',
                total: drop,
                perPiece: drop,
                count: halves,
                said: say(`card.${name}-drop`, values),
              },
            ]),
      ],
      where: sayAll('card.bust-where-hinge', 'card.bust-where-dart', 'card.bust-where-down', 'card.bust-where-centre'),
      steps: [
        say('card.bust-mark'),
        say('card.bust-draw'),
        say('card.bust-cut'),
        say(`card.${name}-swing`, values),
        say(`card.${name}-level${known}`, values),
        say('card.bust-dart', { near: { mm: pointBack.near }, far: { mm: pointBack.far } }),
        say('card.bust-redraw'),
        say('card.bust-walk'),
      ],
      follows: [
        say(`card.${name}-follows-centre${known}`, values),
        say(`card.${name}-follows-widths`, values),
        ...sayAll('card.follows-lining', 'card.follows-notches'),
      ],
      holds: sayAll(
        'card.hold-neck',
        'card.hold-shoulder',
        'card.hold-armhole',
        'card.hold-side-dart',
        'card.hold-legs',
      ),
      cautions: [
        ...(full && intake > widestDart ? [say('card.bust-wide', { ...values, widest: { mm: widestDart } })] : []),
        say(full ? 'card.full-bust-no-dart' : 'card.small-bust-no-dart'),
        say('card.toile'),
        ...(envelope.allowance === null ? [say('card.allowance-unknown')] : []),
      ],
      // Every width from the bust down to the hem; of a dress with a waist seam, those of its skirt with it.
      changes: { bust: total, waist: total, hip: total, 'hem-width': total, 'front-length': drop },
      picture: made.done ? pictureOf(made.done, dimensions) : null,
      notDrawn: made.done ? null : made.problem,
    });
  };

export const fullBustCard = bustCard(true);
export const smallBustCard = bustCard(false);
