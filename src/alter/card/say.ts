import { formatLength, lengthAsShown, lengthToBuy, type Unit } from '../../units/index.ts';
import { cardSentence, cardWords, fill, sentence } from '../../words/index.ts';
import type { Card, CardCloth, CardFinished } from './types.ts';

/** A card in words, ready for a page or a sheet of paper, lengths in the reader's unit. */
export interface SaidCard {
  readonly title: string;
  /** The pattern, its house and number, size and view. */
  readonly of: string;
  readonly purpose: string;
  readonly amounts: readonly string[];
  readonly where: readonly string[];
  readonly steps: readonly string[];
  readonly follows: readonly string[];
  readonly holds: readonly string[];
  readonly finished: readonly {
    readonly name: string;
    readonly before: string;
    readonly change: string;
    readonly after: string;
  }[];
  readonly cloth: readonly string[];
  readonly clothSaid: string;
  readonly cautions: readonly string[];
  /** What the drawing is of, or why there is none. */
  readonly drawing: string;
}

/** Two lengths this near, mm, are the same amount: the drawing strays by less. */
const close = 0.5;

/** A change as it is printed, mm: what is in all where the card says that, made of the printed amount on one piece. */
const changeShown = (card: Card, by: number, unit: Unit): number => {
  const shown = (mm: number): number => lengthAsShown(mm, unit, { purpose: 'amount' });
  const amount = card.amounts.find(
    ({ total, perPiece, count, said }) =>
      said.values?.each !== undefined && Math.abs(total - count * perPiece) < close && Math.abs(total - by) < close,
  );
  return amount ? amount.count * shown(amount.perPiece) : shown(by);
};

/** Sums come out as printed: what is after is what was before and the change, both as they are written. */
const saidFinished = (card: Card, row: CardFinished, unit: Unit, locale: string): SaidCard['finished'][number] => {
  const write = (mm: number, signed = false): string => formatLength(mm, unit, { purpose: 'amount', locale, signed });
  const by = row.by === 0 ? 0 : changeShown(card, row.by, unit);
  return {
    name: cardWords.finished[row.of],
    before: row.old === null ? cardWords.notKnown : write(row.old),
    change: row.by === 0 ? cardWords.stays : write(by, true),
    after: row.old === null ? cardWords.notKnown : write(lengthAsShown(row.old, unit, { purpose: 'amount' }) + by),
  };
};

const saidCloth = (row: CardCloth, unit: Unit, locale: string): string => {
  const nap = cardWords.naps[row.nap];
  return fill(
    row.more > 0 ? cardWords.clothRow : cardWords.clothRowSame,
    {
      layer: cardWords.layers[row.layer],
      width: formatLength(row.width, unit, { purpose: 'measure', locale }),
      nap: nap === '' ? '' : `, ${nap}`,
      old: formatLength(row.old, unit, { purpose: 'cloth', round: 'up', locale }),
      now: formatLength(lengthToBuy(row.now, unit), unit, { purpose: 'cloth', round: 'up', locale }),
    },
    unit,
    locale,
  );
};

/** Every sentence and figure of a card. */
export const sayCard = (card: Card, unit: Unit, locale = 'en'): SaidCard => {
  const all = (sayings: Card['steps']): readonly string[] => sayings.map((one) => cardSentence(one, unit, locale));
  const { name, house, number, view, size } = card.pattern;
  const facts = fill(view === null ? cardWords.facts : cardWords.factsView, { size, view: view ?? '' }, unit, locale);
  const drawn =
    card.picture === null
      ? fill(
          cardWords.notDrawn,
          { why: card.notDrawn ? sentence(card.notDrawn, unit, locale).message : '' },
          unit,
          locale,
        )
      : fill(
          card.picture.draftedFor === 'chart-body' ? cardWords.drawnFor : cardWords.drawnOwnSize,
          { house: card.picture.houseName.toLowerCase(), size },
          unit,
          locale,
        );
  return {
    title: cardSentence(card.title, unit, locale),
    // A pattern known only by its house and number is not named by them twice.
    of: [[...new Set([name, [house, number].filter(Boolean).join(' ')])].filter(Boolean).join(', '), facts].join('. '),
    purpose: cardSentence(card.purpose, unit, locale),
    amounts: all(card.amounts.map(({ said }) => said)),
    where: all(card.where),
    steps: all(card.steps),
    follows: all(card.follows),
    holds: all(card.holds),
    finished: card.finished.map((row) => saidFinished(card, row, unit, locale)),
    cloth: card.cloth.map((row) => saidCloth(row, unit, locale)),
    clothSaid: cardSentence(card.clothSaid, unit, locale),
    cautions: all(card.cautions),
    drawing: drawn,
  };
};
