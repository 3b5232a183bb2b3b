import type { ProblemValue, Unit } from '../units/index.ts';
import { formatLength } from '../units/index.ts';

/** Under this, mm, a length is an amount of ease or an alteration and is written to the finer fraction, so that halves add up. */
const smallAmount = 150;

/** One value as a reader sees it: lengths in her own unit, numbers in her own script, words as they are. */
const printed = (value: ProblemValue, unit: Unit, locale: string): string => {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return new Intl.NumberFormat(locale, { maximumFractionDigits: 3 }).format(value);
  const purpose = value.purpose ?? (Math.abs(value.mm) < smallAmount ? 'amount' : 'measure');
  return formatLength(value.mm, unit, { locale, purpose });
};

/** A length that stands in a sentence itself, as `{70 mm}`. */
const lengthInWords = /\{([0-9]+(?:\.[0-9]+)?) mm\}/g;

/**
 * Puts values in the place of their `{name}`s, and lengths that stand there as `{70 mm}` in the reader's unit. A name
 * without a value is left standing, so that a missing one is seen and not read over.
 */
export const fill = (
  template: string,
  values: Readonly<Record<string, ProblemValue>>,
  unit: Unit,
  locale = 'en',
): string =>
  template
    .replace(/\{([A-Za-z0-9]+)\}/g, (standing, name: string) => {
      const value = values[name];
      return value === undefined ? standing : printed(value, unit, locale);
    })
    .replace(lengthInWords, (_standing, mm: string) => printed({ mm: Number(mm) }, unit, locale));
