import type { Problem, ProblemValue, Unit } from '../units/index.ts';
import { formatLength, lengthAsShown } from '../units/index.ts';
import { cardWords } from './card.ts';
import { fill } from './fill.ts';

const named = (names: Readonly<Record<string, string>>, id: ProblemValue | undefined): ProblemValue | undefined =>
  typeof id === 'string' ? (names[id] ?? id) : id;

/** A sentence begins with a capital, whatever word it begins with. */
const asSentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * One saying of an alteration card, lengths in the reader's unit to what can be marked (1 mm, 1/16 inch). What is in
 * all is as often the printed amount as there are pieces: she marks the one and adds up the other.
 */
export const cardSentence = (saying: Problem, unit: Unit, locale = 'en'): string => {
  const templates: Readonly<Record<string, string>> = cardWords.sayings;
  const template = templates[saying.code] ?? saying.code;
  const given = saying.values ?? {};
  const write = (mm: number): string => formatLength(mm, unit, { purpose: 'amount', locale });
  const values: Record<string, ProblemValue> = Object.fromEntries(
    Object.entries(given).map(([name, value]) => [name, typeof value === 'object' ? write(value.mm) : value]),
  );
  const { each, times } = given;
  if (typeof each === 'object' && typeof times === 'number') {
    values.total = write(times * lengthAsShown(each.mm, unit, { purpose: 'amount' }));
  }
  const place = named(cardWords.places, given.place);
  const level = named(cardWords.levels, given.level);
  return asSentence(
    fill(template, { ...values, ...(place ? { place } : {}), ...(level ? { level } : {}) }, unit, locale),
  );
};
