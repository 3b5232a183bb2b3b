import type { Notion } from '../pattern/index.ts';
import type { Unit } from '../units/index.ts';
import { fill, notionLines, notionWords } from '../words/index.ts';

/** Notions whose size is a diameter; of all others it is a width. */
const round: readonly string[] = ['button', 'press-stud'];

/** A notion as it stands on a shopping list, in the reader's unit: `concealed zip, 56 cm`, `9 buttons, 1.2 cm across`. */
export const sayNotion = (notion: Notion, unit: Unit, locale = 'en'): string => {
  const { what, count, length, size } = notion;
  const name = count === 1 ? notionWords[what].one : notionWords[what].many;
  const values = { what: name, count, ...(length === undefined ? {} : { length: { mm: length } }) };
  const line =
    length === undefined
      ? count === 1
        ? name
        : fill(notionLines.several, values, unit, locale)
      : fill(count === 1 ? notionLines.long : notionLines.severalLong, values, unit, locale);
  if (size === undefined) return line;
  const sized = fill(
    round.includes(what) ? notionLines.across : notionLines.wide,
    { size: { mm: size } },
    unit,
    locale,
  );
  return `${line}, ${sized}`;
};
