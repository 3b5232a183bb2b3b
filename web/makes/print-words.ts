import type { PageMap, PrintedPattern } from '../../src/formats/index.ts';
import type { Paper } from '../../src/make/index.ts';
import { webWords } from '../../src/words/index.ts';
import type { Say } from '../app/settings.tsx';

const words = webWords.make.print;

/** How many sheets of what, in a sentence, before they are made. */
export const saySheets = ({ tiles, pages, length }: PageMap, paper: Paper, say: Say): string => {
  const count = tiles.length;
  const cover = pages - count;
  const values = { paper: words.papers[paper], count, pages, cover };
  if (length !== null)
    return say.words(words.sheetsRoll, { ...values, length: say.length(length, { purpose: 'cloth', round: 'up' }) });
  if (cover === 0) return say.words(count === 1 ? words.sheetHere : words.sheetsHere, values);
  if (count === 1) return say.words(words.sheetApart, values);
  return say.words(cover === 1 ? words.sheetsApart : words.sheetsAfterMore, values);
};

/** What was made, once it is there. */
export const madeWords = ({ pages, tiles }: PrintedPattern): string =>
  tiles.length === 0 ? words.madeSummary : pages === 1 ? words.madeOne : words.made;
