import type { Unit } from './length.ts';
import { takeNumber, worth } from './number.ts';
import type { Result } from './result.ts';
import { bad, good } from './result.ts';
import { plainWriting } from './writing.ts';

/** Grams per square metre in one ounce (28.349523125 g) per square yard (0.83612736 m²). */
export const gramsPerSquareMetreInOunce = 28.349523125 / 0.83612736;

const readQuantity = (text: string): Result<{ readonly value: number; readonly unit: string }> => {
  const written = plainWriting(text.replace(/(m|yd) ?[²2]/gi, '$12'));
  if (written === '') return bad('units.empty');
  if (written.startsWith('-')) return bad('units.negative', { text: written });
  const taken = takeNumber(written);
  if (!taken) return bad('units.not-a-number', { text: written.slice(0, 40) });
  const value = worth(taken.number, true);
  if (!value.ok) return value;
  return good({ value: value.value, unit: taken.rest.replaceAll(' ', '') });
};

/** Reads the weight of cloth: `150 g/m²`, `150 gsm`, `4 1/2 oz/yd²`, `4.5 oz`, or a plain number in the unit she uses. Gives g/m². */
export const parseWeight = (text: string, unit: Unit): Result<number> => {
  const read = readQuantity(text);
  if (!read.ok) return read;
  const named = read.value.unit === '' ? (unit === 'cm' ? 'g' : 'oz') : read.value.unit;
  const factor = /^(?:g|gsm|g\/m2)$/.test(named)
    ? 1
    : /^(?:oz|oz\/yd2|oz\.?\/(?:sqyd|sq\.yd\.?))$/.test(named)
      ? gramsPerSquareMetreInOunce
      : null;
  if (factor === null) return bad('units.not-a-weight', { text });
  const weight = read.value.value * factor;
  // Felted coating weighs some 1000 g/m²; nothing sewn at home weighs three times that.
  return weight <= 3000 ? good(weight) : bad('units.too-heavy', { text });
};

/** Writes a weight of cloth in g/m² or, in inches, oz/yd² to one decimal. */
export const formatWeight = (gramsPerSquareMetre: number, unit: Unit, locale = 'en'): string =>
  unit === 'cm'
    ? `${new Intl.NumberFormat(locale, { maximumFractionDigits: 0 }).format(gramsPerSquareMetre)}\u00a0g/m²`
    : `${new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(gramsPerSquareMetre / gramsPerSquareMetreInOunce)}\u00a0oz/yd²`;

/**
 * Reads a share: `30 %`, `30`, `2,5 %`, `7 1/2 %`. Gives a fraction, 0.3. A plain number between nothing
 * and one may mean a share already (0.3) or a third of a percent, and is refused; with % it is taken.
 */
export const parsePercent = (text: string): Result<number> => {
  const read = readQuantity(text);
  if (!read.ok) return read;
  const { value, unit } = read.value;
  if (!/^(?:%|percent|percent\.|)$/.test(unit)) return bad('units.not-a-percentage', { text });
  if (unit === '' && value > 0 && value < 1) return bad('units.ambiguous-percentage', { text });
  return value <= 300 ? good(value / 100) : bad('units.percentage-too-large', { text });
};

/** Writes a fraction as a percentage to at most one decimal. */
export const formatPercent = (fraction: number, locale = 'en'): string =>
  `${new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(fraction * 100)}\u00a0%`;
