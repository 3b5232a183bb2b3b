import type { Unit } from './length.ts';
import { millimetresPer } from './length.ts';
import { setFraction } from './writing.ts';

/**
 * What a length is for decides how it is written:
 * - `measure`: off the tape. cm to 1 decimal; inches to the nearest ⅛.
 * - `amount`: ease and alterations. cm to 1 decimal; inches to the nearest 1/16.
 * - `fine`: what a seam differs by. mm to 1 decimal; inches to 2 decimals.
 * - `cloth`: metres to 2 decimals; yards to ⅛ where they come out even, else yards and inches to ⅛.
 * - `stature`: cm to 1 decimal; feet and inches to the nearest ½.
 */
export type LengthPurpose = 'measure' | 'amount' | 'fine' | 'cloth' | 'stature';

/** `up` is never less than it is, as for cloth that must be there; `down` never more, as for cloth in hand. */
export type LengthRounding = 'nearest' | 'up' | 'down';

export interface LengthFormat {
  readonly purpose?: LengthPurpose;
  /** Which way the last figure is rounded; to the nearest unless said. */
  readonly round?: LengthRounding;
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

/** Rounding of the last 0.000001 of a step is no reason to go a whole step on. */
const evenly = 1e-6;

const counted = (count: number, round: 'up' | 'down'): number =>
  round === 'up' ? Math.ceil(count - evenly) : Math.floor(count + evenly);

/** Whole and fraction of a number of parts, `denominator` to the unit, in lowest terms. */
const withFraction = (parts: number, denominator: number, locale: string): string => {
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

const feetAndInches = (halves: number, locale: string): string => {
  const feet = Math.floor(halves / 24);
  const rest = `${withFraction(halves - feet * 24, 2, locale)}″`;
  return feet === 0 ? rest : `${feet}′${space}${rest}`;
};

/** Eighths of an inch in a yard, and in an eighth of a yard. */
const inYard = 36 * 8;
const inEighthYard = inYard / 8;

/** `2¼ yd` where eighths of a yard say it exactly, as at the counter; else `1 yd 10⅞″`. */
const yardsAndInches = (eighths: number, locale: string): readonly [string, string] => {
  if (eighths % inEighthYard === 0) return [withFraction(eighths / inEighthYard, 8, locale), `${space}yd`];
  const yards = Math.floor(eighths / inYard);
  const rest = withFraction(eighths - yards * inYard, 8, locale);
  return yards === 0 ? [rest, '″'] : [`${decimals(yards, locale, 0, 0)}${space}yd${space}${rest}`, '″'];
};

/** What the last figure of each purpose stands for, mm. */
const steps: Readonly<Record<LengthPurpose, Readonly<Record<Unit, number>>>> = {
  measure: { cm: 1, in: millimetresPer.in / 8 },
  amount: { cm: 1, in: millimetresPer.in / 16 },
  fine: { cm: 0.1, in: millimetresPer.in / 100 },
  cloth: { cm: 10, in: millimetresPer.in / 8 },
  stature: { cm: 1, in: millimetresPer.in / 2 },
};

/** A non-negative number of steps as figures and unit. */
const written = (count: number, unit: Unit, purpose: LengthPurpose, locale: string): readonly [string, string] => {
  switch (purpose) {
    case 'cloth':
      return unit === 'cm' ? [decimals(count / 100, locale, 1, 2), `${space}m`] : yardsAndInches(count, locale);
    case 'stature':
      return unit === 'cm' ? [decimals(count / 10, locale, 1, 1), `${space}cm`] : [feetAndInches(count, locale), ''];
    case 'fine':
      return unit === 'cm'
        ? [decimals(count / 10, locale, 1, 1), `${space}mm`]
        : [decimals(count / 100, locale, 2, 2), '″'];
    case 'amount':
      return unit === 'cm'
        ? [decimals(count / 10, locale, 1, 1), `${space}cm`]
        : [withFraction(count, 16, locale), '″'];
    case 'measure':
      return unit === 'cm' ? [decimals(count / 10, locale, 1, 1), `${space}cm`] : [withFraction(count, 8, locale), '″'];
  }
};

/** Steps of the last figure, signed: up and down are up and down for what is below nothing too. */
const stepsIn = (mm: number, unit: Unit, { purpose = 'measure', round = 'nearest' }: LengthFormat): number => {
  if (!Number.isFinite(mm)) throw new Error(`not a length: ${mm}`);
  const count = mm / steps[purpose][unit];
  // Halves go away from nothing, so that −1.25 and 1.25 are written alike.
  return round === 'nearest' ? Math.sign(count) * Math.round(Math.abs(count)) : counted(count, round);
};

/** The length a reader sees, mm: what `formatLength` writes, for sums that must come out as printed. */
export const lengthAsShown = (mm: number, unit: Unit, format: LengthFormat = {}): number =>
  stepsIn(mm, unit, format) * steps[format.purpose ?? 'measure'][unit] + 0;

/** Writes a length of `mm` millimetres as a reader of `unit` expects it. Throws on what is not a number. */
export const formatLength = (mm: number, unit: Unit, format: LengthFormat = {}): string => {
  const count = stepsIn(mm, unit, format);
  const [digits, name] = written(Math.abs(count), unit, format.purpose ?? 'measure', format.locale ?? 'en');
  const sign = count === 0 ? '' : count < 0 ? '−' : format.signed ? '+' : '';
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
