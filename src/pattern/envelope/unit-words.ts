import type { LengthUnit } from '../../units/index.ts';

export type UnitSystem = 'inches' | 'cm';

export const systemOf = (unit: LengthUnit): UnitSystem =>
  unit === 'in' || unit === 'ft' || unit === 'yd' ? 'inches' : 'cm';

const names: readonly (readonly [LengthUnit, string])[] = [
  ['cm', 'cms?|centimet(?:re|er)s?'],
  ['mm', 'mm|millimet(?:re|er)s?'],
  ['in', 'inch(?:es)?|ins?'],
  ['yd', 'yds?|yards?|yardage'],
  ['m', 'm|mtrs?|met(?:re|er)s?'],
];
const any = names.map(([, name]) => name).join('|');

const unitOf = (word: string): LengthUnit | null =>
  word === '"' ? 'in' : (names.find(([, name]) => new RegExp(`^(?:${name})$`, 'i').test(word))?.[0] ?? null);

/** A unit stands in brackets, after a comma or dash, or last; longer words (inches, metres) anywhere. */
const bracketed = new RegExp(
  String.raw`[([]\s*(?:in\s+)?(${any}|")\.?\s*(?:(?:/|,|and|&|or|\()\s*(${any}|")\.?\s*)?[)\]]+`,
  'gi',
);
const long =
  /\b(?:in\s+)?(cms?|centimet(?:re|er)s?|millimet(?:re|er)s?|inch(?:es)?|yards?|yardage|met(?:re|er)s?)\b\.?/gi;
const last = new RegExp(String.raw`(?:^|[\s,/-])(?:in\s+)?(${any}|")\.?$`, 'i');

export interface UnitsSaid {
  /** In the order written, each once. */
  readonly units: readonly LengthUnit[];
  /** The writing without them. */
  readonly rest: string;
}

/**
 * Units a label, heading or head of a column names — `Bust (in)`, `Waist, cm`, `Measurements in inches (cm)`. A `"` in
 * a label counts only where no figure stands before it; there it belongs to a width.
 */
export const unitsSaid = (text: string): UnitsSaid => {
  const found: { readonly unit: LengthUnit; readonly at: number }[] = [];
  // What is taken leaves its room empty, so that places stay what they were.
  const take = (all: string, at: number, ...words: readonly (string | undefined)[]): string => {
    for (const word of words) {
      const unit = word === undefined ? null : unitOf(word.toLowerCase());
      if (unit && !found.some((one) => one.unit === unit)) found.push({ unit, at: at + found.length / 10 });
    }
    return ' '.repeat(all.length);
  };
  let rest = text.replace(bracketed, (all: string, one: string, other: string | undefined, at: number) =>
    take(all, at, one, other),
  );
  const afterFigure = (at: number): boolean => /[\d½¼¾⅛⅜⅝⅞] ?-?$/.test(rest.slice(0, at));
  rest = rest.replace(long, (all: string, one: string, at: number) => (afterFigure(at) ? all : take(all, at, one)));
  // A capital M at the end is a view or a size, and no metre.
  const atEnd = (all: string, one: string, at: number): string =>
    one === 'M' || afterFigure(at) ? all : take(all, at, one);
  rest = rest.trimEnd().replace(last, atEnd);
  const units = found.toSorted((a, b) => a.at - b.at).map(({ unit }) => unit);
  return {
    units,
    rest: rest
      .replace(/\s+/g, ' ')
      .replace(/[\s,:;/(-]+$/, '')
      .trim(),
  };
};

/** A cell that is nothing but a unit. */
export const onlyUnit = (text: string): LengthUnit | null => unitOf(text.replace(/[().[\]\s]/g, '').toLowerCase());
