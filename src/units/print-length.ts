import type { Unit } from './length.ts';
import { millimetresPer } from './length.ts';
import { setFraction } from './writing.ts';

/**
 * What a length is for decides how it is written:
 * - `measure`: off the tape. cm to 1 decimal; inches to the nearest ⅛.
 * - `amount`: ease and alterations. cm to 1 decimal; inches to the nearest 1/16.
 * - `fine`: what a seam differs by. mm to 1 decimal; inches to 2 decimals.
 * - `cloth`: metres to 2 decimals; yards to ⅛.
 * - `stature`: cm to 1 decimal; feet and inches to the nearest ½.
 */
export type LengthPurpose = 'measure' | 'amount' | 'fine' | 'cloth' | 'stature';

export interface LengthFormat {
  readonly purpose?: LengthPurpose;
  /** BCP 47 tag; decides the decimal mark. */
  readonly locale?: string;
  /** Write a plus before what is more than nothing. */
  readonly signed?: boolean;
  /** Leave the unit away, as in a table whose head names it. */
  readonly bare?: boolean;
}

/** No-break space: a number and its unit stay on one line. */
const space = '\u00a0';

const decimals = (value: number, locale: string, least: number, most: number): string =>
  new Intl.NumberFormat(locale, { minimumFractionDigits: least, maximumFractionDigits: most }).format(value);

/** Whole and fraction of a non-negative number of units, to the nearest 1/denominator, in lowest terms. */
const withFraction = (value: number, denominator: number, locale: string): string => {
  const parts = Math.round(value * denominator);
  const whole = Math.floor(parts / denominator);
  let numerator = parts - whole * denominator;
  let below = denominator;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    below /= 2;
  }
  if (numerator === 0) return decimals(whole, locale, 0, 0);
  const fraction = setFraction(numerator, below);
  return whole === 0 ? fraction : `${decimals(whole, locale, 0, 0)}${fraction}`;
};

const feetAndInches = (inches: number, locale: string): string => {
  const halves = Math.round(inches * 2);
  const feet = Math.floor(halves / 24);
  const rest = `${withFraction((halves - feet * 24) / 2, 2, locale)}″`;
  return feet === 0 ? rest : `${feet}′${space}${rest}`;
};

const unsigned = (mm: number, unit: Unit, format: LengthFormat): readonly [string, string] => {
  const locale = format.locale ?? 'en';
  const inches = mm / millimetresPer.in;
  switch (format.purpose ?? 'measure') {
    case 'cloth':
      return unit === 'cm'
        ? [decimals(mm / millimetresPer.m, locale, 1, 2), `${space}m`]
        : [withFraction(mm / millimetresPer.yd, 8, locale), `${space}yd`];
    case 'stature':
      return unit === 'cm' ? [decimals(mm / 10, locale, 1, 1), `${space}cm`] : [feetAndInches(inches, locale), ''];
    case 'fine':
      return unit === 'cm' ? [decimals(mm, locale, 1, 1), `${space}mm`] : [decimals(inches, locale, 2, 2), '″'];
    case 'amount':
      return unit === 'cm' ? [decimals(mm / 10, locale, 1, 1), `${space}cm`] : [withFraction(inches, 16, locale), '″'];
    case 'measure':
      return unit === 'cm' ? [decimals(mm / 10, locale, 1, 1), `${space}cm`] : [withFraction(inches, 8, locale), '″'];
  }
};

/** Nothing but zeros was printed: then no sign belongs before it. */
const printsAsZero = (digits: string): boolean => !/[1-9½⅓⅔¼¾⅛⅜⅝⅞¹²³⁴-⁹]/.test(digits);

/** Writes a length of `mm` millimetres as a reader of `unit` expects it. Throws on what is not a number. */
export const formatLength = (mm: number, unit: Unit, format: LengthFormat = {}): string => {
  if (!Number.isFinite(mm)) throw new Error(`not a length: ${mm}`);
  const [digits, name] = unsigned(Math.abs(mm), unit, format);
  const sign = printsAsZero(digits) ? '' : mm < 0 ? '−' : format.signed ? '+' : '';
  return `${sign}${digits}${format.bare ? '' : name}`;
};

/**
 * The length to ask for at the counter: rounded up to the next 0.1 m, or ⅛ yd. Millimetres in and out.
 * A length that is whole already, but for rounding of the last 0.001 mm, is not rounded up again.
 */
export const lengthToBuy = (mm: number, unit: Unit): number => {
  const step = unit === 'cm' ? 100 : millimetresPer.yd / 8;
  return Math.ceil(mm / step - 1e-6) * step;
};
