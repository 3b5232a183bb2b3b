import { chartWords } from '../../words/index.ts';
import { isAllViews } from './labels.ts';
import type { EnvelopeView } from './types.ts';

const letters = String.raw`[A-Za-z](?:\s*(?:,|&|\+|/|-|\band\b)\s*[A-Za-z])*(?![A-Za-z])`;
const afterWord = new RegExp(
  String.raw`[(,;:-]?\s*\bviews?\b\s*:?\s*(${letters}|\d{1,2}(?:\s*(?:,|&|\+|and)\s*\d{1,2})*(?!["\d./]| ?(?:cm|in|m)\b))\s*[),;:]?`,
  'i',
);
const alone = /^[A-H](?:\s*(?:,|&|\+|\/|-|\band\b)\s*[A-H])*$/;
const before = /^([A-H](?:\s*(?:,|&|\+|\/|\band\b)\s*[A-H])*)\s*(?:[:-]\s*(?=\S)|\s(?=\d))/;
const beforeWidth = /^(.*\p{L}{3,})[\s,:-]+([A-H](?:\s*(?:,|&|\+|\/|\band\b)\s*[A-H])*)\s+(?=\d)/u;
const last = /^(.*\p{L}{3,})[\s,:-]+([A-H](?:\s*(?:,|&|\+|\/|\band\b)\s*[A-H])*)$/u;

/** Ids of the views a run of letters or numbers names: `A`, `A, B`, `A and B`, `A-C`. */
const idsOf = (run: string): readonly string[] => {
  const ids = run.toUpperCase().split(/\s*(?:,|&|\+|\/|\bAND\b)\s*/);
  return ids.flatMap((id) => {
    const [from, to] = id.split(/\s*-\s*/).map((letter) => letter.charCodeAt(0));
    if (from === undefined || to === undefined || to < from) return id.split(/\s*-\s*/);
    return Array.from({ length: to - from + 1 }, (_, index) => String.fromCharCode(from + index));
  });
};

/** A view known already that goes by this letter: as its id, its name, or the beginning of its name. */
const knownAs = (letter: string, known: readonly EnvelopeView[]): string => {
  const called = new RegExp(`^(?:views?\\s+)?${letter}(?![\\p{L}\\d])`, 'iu');
  const found =
    known.find(({ id }) => id.toUpperCase() === letter) ??
    known.find(({ id, name }) => called.test(name) || called.test(id.replaceAll('-', ' ')));
  return found?.id ?? letter;
};

export interface ViewsSaid {
  /** Null where none is named; empty for all of them. */
  readonly views: readonly string[] | null;
  readonly rest: string;
}

/**
 * The views a label or a first column names, by a known view's name, after the word `view`, or as capital letters
 * alone, last, or before a width; and the label without them.
 */
export const viewsSaid = (text: string, known: readonly EnvelopeView[]): ViewsSaid => {
  const plain = text.trim().replace(/:$/, '');
  if (isAllViews(plain)) return { views: [], rest: '' };
  const named = known.find(({ id, name }) => [id, name].some((one) => one.toLowerCase() === plain.toLowerCase()));
  if (named) return { views: [named.id], rest: '' };
  const ids = (run: string | undefined): readonly string[] => idsOf(run ?? '').map((id) => knownAs(id, known));
  const word = afterWord.exec(text);
  if (word) {
    const rest = `${text.slice(0, word.index)} ${text.slice(word.index + word[0].length)}`;
    return { views: ids(word[1]), rest: rest.replace(/\s+/g, ' ').replace(/^[\s,:;-]+|[\s,:;-]+$/g, '') };
  }
  if (alone.test(plain)) return { views: ids(plain), rest: '' };
  const start = before.exec(plain);
  if (start) return { views: ids(start[1]), rest: plain.slice(start[0].length) };
  const middle = beforeWidth.exec(plain);
  if (middle) return { views: ids(middle[2]), rest: `${middle[1]} ${plain.slice(middle[0].length)}` };
  const end = last.exec(plain);
  if (end && !/\bcup$/i.test(end[1] ?? ''))
    return { views: ids(end[2]), rest: (end[1] ?? '').replace(/[\s,:-]+$/, '') };
  return { views: null, rest: text.trim() };
};

/** A view first met in a chart. */
export const viewCalled = (id: string): EnvelopeView => ({
  id,
  name: chartWords.view.replace('{letter}', id),
  about: '',
});
