import type { LengthUnit } from '../../units/index.ts';

export type UnitSystem = 'inches' | 'cm';

export const systemOf = (unit: LengthUnit): UnitSystem =>
  unit === 'in' || unit === 'ft' || unit === 'yd' ? 'inches' : 'cm';

const names: readonly (readonly [LengthUnit, string])[] = [
  ['cm', String.raw`cms?|centimet(?:re|er)s?`],
  ['mm', String.raw`mm|millimet(?:re|er)s?`],
  ['in', String.raw`inch(?:es)?|ins?`],
  ['yd', String.raw`yds?|yards?|yardage`],
  ['m', String.raw`m|mtrs?|met(?:re|er)s?`],
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
  const found: LengthUnit[] = [];
  const take = (...words: readonly (string | undefined)[]): string => {
    for (const word of words) {
      const unit = word === undefined ? null : unitOf(word.toLowerCase());
      if (unit && !found.includes(unit)) found.push(unit);
    }
    return ' ';
  };
  let rest = text.replace(bracketed, (_, one: string, other?: string) => take(one, other));
  rest = rest.replace(long, (all: string, one: string, at: number) =>
    /[\d½¼¾⅛⅜⅝⅞] ?-?$/.test(rest.slice(0, at)) ? all : take(one),
  );
  rest = rest
    .trim()
    .replace(last, (all: string, one: string, at: number) =>
      /[\d½¼¾⅛⅜⅝⅞] ?$/.test(rest.trim().slice(0, at)) ? all : take(one),
    );
  return {
    units: found,
    rest: rest
      .replace(/\s+/g, ' ')
      .replace(/[\s,:;/(-]+$/, '')
      .trim(),
  };
};

/** A cell that is nothing but a unit. */
export const onlyUnit = (text: string): LengthUnit | null => unitOf(text.replace(/[().[\]\s]/g, '').toLowerCase());
