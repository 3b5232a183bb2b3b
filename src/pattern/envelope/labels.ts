import type { MeasureId } from '../../body/index.ts';
import { chartWords } from '../../words/index.ts';
import type { ClothRow, FinishedOf } from './types.ts';

const escaped = (words: readonly string[]): string =>
  words.map((word) => word.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&')).join('|');
const leftAway = new RegExp(`\\b(?:${escaped(chartWords.leftAway)})\\b\\.?`, 'g');
const around = new RegExp(`\\b(?:${escaped(chartWords.around)})\\b`, 'g');

/** A label as it is compared: small letters, no marks, brackets, or words that say only what kind of chart it is. */
const plainLabel = (label: string, leave: RegExp | null): string => {
  const plain = label
    .toLowerCase()
    .replace(/\([^)]*\)/g, ' ')
    .replace(/[*†‡°¹²³:.'’]/g, ' ')
    .replace(/[\s_]+/g, ' ');
  return (leave ? plain.replace(leave, ' ') : plain).replace(/\s+/g, ' ').replace(/^[\s,/-]+|[\s,/-]+$/g, '');
};

const table = <Id extends string>(words: Readonly<Record<string, readonly string[]>>): ReadonlyMap<string, Id> =>
  new Map(Object.entries(words).flatMap(([id, names]) => names.map((name) => [name, id as Id] as const)));

const bodyWords = table<MeasureId>(chartWords.body);
const finishedWords = table<FinishedOf>(chartWords.finished);
const layerWords = table<ClothRow['layer']>(chartWords.layers);

const look = <Id>(words: ReadonlyMap<string, Id>, label: string, leave: RegExp | null): Id | null => {
  const whole = plainLabel(label, null);
  const left = plainLabel(label, leave);
  const bare = left.replace(around, ' ').replace(/\s+/g, ' ').trim();
  return words.get(whole) ?? words.get(left) ?? words.get(bare) ?? null;
};

/** The body measure a printed label means, by the trade's words; null where it is none of them. A finished measurement is none. */
export const bodyMeasureOf = (label: string): MeasureId | null =>
  /\bfinished\b|\bgarment\b/i.test(label) ? null : look(bodyWords, label, leftAway);

/** What a printed label of a finished measurement means; null where it is none of the trade's words. */
export const finishedKindOf = (label: string): FinishedOf | null => look(finishedWords, label, leftAway);

export const clothLayerOf = (label: string): ClothRow['layer'] | null => look(layerWords, label, null);

const heads = new Set<string>(chartWords.heads);
const titles = new Set<string>(chartWords.titles);
const all = new Set<string>(chartWords.allViews);
const prices = new Set<string>(chartWords.prices);
const words = (label: string): readonly string[] => label.toLowerCase().split(/[^\p{L}]+/u);

export const isColumnHead = (label: string): boolean => heads.has(plainLabel(label, null));

export const isTitle = (label: string): boolean => words(label).some((word) => titles.has(word));

export const isAllViews = (label: string): boolean => all.has(plainLabel(label, null));

export const isPrice = (text: string): boolean => /\p{Sc}/u.test(text) || words(text).some((word) => prices.has(word));
