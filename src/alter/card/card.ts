import type { Way } from '../../fit/index.ts';
import type { AlterationStep } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { blendCard } from './blend-card.ts';
import { fullBustCard, smallBustCard } from './bust-card.ts';
import { clothAfter } from './cloth.ts';
import { finishedAfter } from './finished.ts';
import { lengthCard } from './length-card.ts';
import { type CardMaker, say } from './parts.ts';
import { swayBackCard } from './sway-back-card.ts';
import type { Card, CardAlteration, CardRequest } from './types.ts';
import { upperArmCard } from './upper-arm-card.ts';

const makers: Readonly<Record<CardAlteration, CardMaker>> = {
  'lengthen-shorten': lengthCard,
  'full-bust': fullBustCard,
  'small-bust': smallBustCard,
  'full-upper-arm': upperArmCard,
  'sway-back': swayBackCard,
  blend: blendCard,
};

const isCard = (alteration: string): alteration is CardAlteration => Object.hasOwn(makers, alteration);

/**
 * What to do on the tissue of a bought pattern for one alteration, after those that come before it: amounts in all and per piece, steps, what follows
 * and what holds, finished measurements and cloth afterwards, and the alteration carried out on a generic piece.
 *
 * Problems: a size the envelope has not (`fit.size-unknown`); an alteration there is no card for
 * (`alter.no-card`); an amount that is none or beyond what the alteration does (`alter.not-an-amount`,
 * `alter.out-of-range`, `alter.not-a-choice`); a blend to nowhere or without figures (`alter.card-no-blend`,
 * `alter.card-no-figures`).
 */
export const alterationCard = (request: CardRequest): Result<Card> => {
  const { envelope, view, size, step } = request;
  if (!envelope.sizes.includes(size)) {
    return bad('fit.size-unknown', { size, pattern: envelope.name, sizes: envelope.sizes.join(', ') });
  }
  const { alteration } = step;
  if (!isCard(alteration)) return bad('alter.no-card', { alteration });
  const made = makers[alteration](request);
  if (!made.ok) return made;
  const { changes, ...parts } = made.value;
  const before = (request.earlier ?? []).flatMap((one) => {
    const parted = isCard(one.alteration) ? makers[one.alteration]({ envelope, view, size, step: one }) : null;
    return parted?.ok ? [parted.value] : [];
  });
  const drawnBefore = before.flatMap(({ picture }) => picture ?? []);
  const cloth = clothAfter(envelope, view, size, parts.picture, drawnBefore);
  const more = Math.max(0, ...cloth.map((row) => row.more));
  return good({
    alteration,
    step,
    pattern: {
      name: envelope.name,
      house: envelope.house,
      number: envelope.number,
      view: envelope.views.find(({ id }) => id === view)?.name ?? null,
      size,
    },
    ...parts,
    finished: finishedAfter(
      envelope,
      view,
      size,
      changes,
      before.map((one) => one.changes),
    ),
    cloth,
    clothSaid: say(
      cloth.length === 0
        ? 'card.cloth-unknown'
        : [parts, ...before].some(({ picture }) => picture === null)
          ? 'card.cloth-not-drawn'
          : more > 0
            ? 'card.cloth-more'
            : 'card.cloth-same',
    ),
  });
};

/**
 * The steps of a way that want a card, in the order they are made on the tissue: lengths first, then the bust, and the
 * side seams last, all levels of a blend on one card.
 */
export const cardSteps = (way: Way): readonly AlterationStep[] => {
  const listed = way.alterations.map(
    ({ id, alteration, version, on, params }): AlterationStep => ({ id, alteration, version, on, params }),
  );
  const isLength = ({ alteration }: AlterationStep) => alteration === 'lengthen-shorten';
  const to = Object.fromEntries(way.blend.map(({ level, size }) => [level, size]));
  return [
    ...listed.filter(isLength),
    ...listed.filter((step) => !isLength(step)),
    ...(way.blend.length > 0 ? [{ id: 'blend', alteration: 'blend', version: 1, on: true, params: to }] : []),
  ];
};
