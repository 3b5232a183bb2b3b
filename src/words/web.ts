import { clothsWords } from './web-cloths.ts';
import { firstWords, homeWords } from './web-home.ts';
import { makePageWords, newMakeWords } from './web-make.ts';
import { patternsWords } from './web-patterns.ts';
import { savingWords } from './web-saving.ts';
import { fieldWords, removalWords, shellWords, tableWords } from './web-shell.ts';
import { wearersWords } from './web-wearers.ts';

/** The page's own words, by place. `{name}` is filled in; see fill(). */
export const webWords = {
  name: 'Easewright',
  shell: shellWords,
  table: tableWords,
  saving: savingWords,
  first: firstWords,
  home: homeWords,
  wearers: wearersWords,
  cloths: clothsWords,
  patterns: patternsWords,
  newMake: newMakeWords,
  make: makePageWords,
  removal: removalWords,
  field: fieldWords,
} as const;
