import { harbourBlouse } from '../../../fit/testing/envelope.ts';
import type { AlterationStep } from '../../../pattern/index.ts';
import { alterationCard, type Card, type CardPicture, type CardRequest } from '../index.ts';

export const step = (alteration: string, params: AlterationStep['params']): AlterationStep => ({
  id: alteration,
  alteration,
  version: 1,
  on: true,
  params,
});

/** The card of a step in view A and size 14 of the blouse from the harbour, or as the request says. Throws where there is none. */
export const cardOf = (wanted: AlterationStep, request: Partial<CardRequest> = {}): Card => {
  const card = alterationCard({ envelope: harbourBlouse, view: 'a', size: '14', step: wanted, ...request });
  if (!card.ok) throw new Error(card.problem.code);
  return card.value;
};

/** A card's picture. Throws where it is not drawn. */
export const pictureOn = ({ picture }: Card): CardPicture => {
  if (!picture) throw new Error('not drawn');
  return picture;
};

/** How much each finished measurement grows, mm. */
export const byOf = (card: Card) => Object.fromEntries(card.finished.map(({ of, by }) => [of, by]));
