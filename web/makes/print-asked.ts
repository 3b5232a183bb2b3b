import { useMemo } from 'react';
import { cutPlaces, piecesTold, sayOutcomes } from '../../src/draw/index.ts';
import type { SheetRequest, SummaryRequest } from '../../src/formats/index.ts';
import type { Paper } from '../../src/make/index.ts';
import { webWords } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { useMake } from './make-context.ts';

const words = webWords.make.print;

/** What of a make is printed. */
export const whats = ['all', 'changed', 'sheets', 'overlay', 'summary'] as const;
export type What = (typeof whats)[number];

type Summary = Omit<SummaryRequest, 'fonts'>;
export type Asked = SheetRequest | Summary;

/** What would be printed of the make as it is now. */
export const useRequest = (what: What): SheetRequest => {
  const { make, pattern, size, altered } = useMake();
  const say = useSay();
  const { name, paper } = make;
  return useMemo(() => {
    const said = sayOutcomes(size.garment, altered.outcomes, say.unit);
    const request: SheetRequest = {
      garment: altered.garment,
      ...(altered.outcomes.length > 0 && what !== 'sheets' ? { original: altered.before } : {}),
      title: pattern.name,
      size: size.id,
      make: name,
      alterations: altered.outcomes.map(({ step, applied }, place) => ({
        text: said[place] ?? '',
        pieces: piecesTold(
          applied.pieces.filter((report) => report.puts.length > 0).map((report) => report.piece),
          step,
          altered.garment,
        ),
      })),
      paper,
      unit: say.unit,
      locale,
    };
    if (what === 'changed') return { ...request, only: what };
    if (what === 'overlay') return { ...request, only: what, cuts: cutPlaces(altered.before, altered) };
    // An earlier print of this make was of the pattern as bought.
    if (what === 'sheets') return { ...request, printed: { garment: size.garment, alterations: [] } };
    return request;
  }, [altered, size, pattern.name, name, paper, say.unit, what]);
};

/** The page to work from; null while it is not asked for, or on paper it is not printed on. */
export const useSummary = (what: What): Summary | null => {
  const { make, pattern, size, altered } = useMake();
  const say = useSay();
  const { name, paper } = make;
  return useMemo(() => {
    if (what !== 'summary' || (paper !== 'a4' && paper !== 'letter')) return null;
    const subject = { title: pattern.name, size: size.id, make: name, before: altered.before, altered };
    return { ...subject, unit: say.unit, locale, paper };
  }, [altered, size, pattern.name, name, paper, say.unit, what]);
};

/** A file name from what a make is called and what of it is printed: letters and figures of any script, hyphens between. */
export const fileName = (name: string, paper: Paper, what: What = 'all'): string => {
  const plain = name
    .normalize('NFC')
    .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain || 'pattern'}-${words.fileParts[what]}${paper}.pdf`;
};
