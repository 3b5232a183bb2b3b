import type { Make } from '../../src/make/index.ts';
import { envelopePageWords, fill, webWords } from '../../src/words/index.ts';

const words = webWords.home;

/** What a make waits for next, in words, and the passage of its page where that is done. */
export interface Waits {
  readonly words: string;
  readonly passage: 'fit' | 'alterations' | 'layout' | 'print' | null;
}

/**
 * A size first, then a cloth, then the scissors; what is sewn and worn is told by its state. From an envelope cards are
 * printed, not sheets. `tight` names where it is too tight as it stands: that comes before the scissors.
 */
export const waitsFor = (make: Make, knownBy: 'pieces' | 'envelope' = 'pieces', tight = ''): Waits => {
  if (make.state === 'cut') return { words: words.waitsSewing, passage: null };
  if (make.state === 'sewn') return { words: words.waitsWearing, passage: null };
  if (make.state === 'worn' || make.state === 'set-aside') return { words: words.waitsNothing, passage: null };
  if (make.size === null) return { words: words.waitsSize, passage: 'fit' };
  if (tight !== '') {
    const waits = make.cloth === null ? words.waitsCloth : words.waitsScissors;
    return { words: fill(words.waitsTight, { waits, tight }, 'cm'), passage: 'alterations' };
  }
  if (make.cloth === null) return { words: words.waitsCloth, passage: 'layout' };
  if (knownBy === 'envelope') return { words: envelopePageWords.make.waitsCutting, passage: 'alterations' };
  return { words: words.waitsCutting, passage: 'print' };
};
