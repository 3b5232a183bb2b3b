import type { EaseCell } from '../../src/fit/index.ts';
import { fitWords } from '../../src/words/index.ts';

/** Where one cannot move in the pieces as they are, in words: “waist and upper arm”; empty where nowhere. */
export const sayTight = (cells: readonly Pick<EaseCell, 'level' | 'verdict'>[], locale: string): string =>
  new Intl.ListFormat(locale, { type: 'conjunction' }).format(
    cells
      .filter(({ verdict }) => verdict === 'too-tight')
      .map(({ level }) => (fitWords.levels[level as keyof typeof fitWords.levels] ?? level).toLowerCase()),
  );
