import type { Paper } from '../../src/make/index.ts';
import { envelopePageWords, fill } from '../../src/words/index.ts';

const words = envelopePageWords.make;

/** Papers cards are made up for: a sheet to hold in the hand. */
export const cardPapers = ['a4', 'letter'] as const;
export type CardPaper = (typeof cardPapers)[number];

/** The paper cards go on: as she has chosen for them, else the one the program is set to, where that is a sheet. */
export const cardPaper = (chosen: CardPaper | null, set: Paper): CardPaper =>
  chosen ?? (set === 'letter' ? 'letter' : 'a4');

/** How many pages came of how many cards. */
export const sayPrinted = (pages: number, cards: number, locale: string): string => {
  const counted = (count: number, one: string, many: string): string =>
    count === 1 ? one : fill(many, { count }, 'cm', locale);
  return fill(
    words.printed,
    { pages: counted(pages, words.onePage, words.pages), cards: counted(cards, words.oneCard, words.cards) },
    'cm',
    locale,
  );
};
