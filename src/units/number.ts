import type { Result } from './result.ts';
import { bad, good } from './result.ts';

/** A number as written, before its unit is known; a decimal's separators mean one thing beside `m` and may mean two beside `mm`. */
export type WrittenNumber =
  | { readonly kind: 'decimal'; readonly digits: string }
  | { readonly kind: 'fraction'; readonly whole: number; readonly numerator: number; readonly denominator: number };

const mixed = /^(\d+)(?: | ?- ?)(\d+) ?\/ ?(\d+)/;
const fraction = /^(\d+) ?\/ ?(\d+)/;
const decimal = /^(?:\d[\d.,]*|[.,]\d+)/;

/** The number at the beginning of plain writing and what follows it, or null where none begins. */
export const takeNumber = (text: string): { readonly number: WrittenNumber; readonly rest: string } | null => {
  const asMixed = mixed.exec(text);
  if (asMixed) {
    const [all, whole, numerator, denominator] = asMixed;
    return {
      number: writtenFraction(Number(whole), Number(numerator), Number(denominator)),
      rest: text.slice(all.length),
    };
  }
  const asFraction = fraction.exec(text);
  if (asFraction) {
    const [all, numerator, denominator] = asFraction;
    return { number: writtenFraction(0, Number(numerator), Number(denominator)), rest: text.slice(all.length) };
  }
  const asDecimal = decimal.exec(text);
  if (!asDecimal) return null;
  return { number: { kind: 'decimal', digits: asDecimal[0] }, rest: text.slice(asDecimal[0].length) };
};

const writtenFraction = (whole: number, numerator: number, denominator: number): WrittenNumber => ({
  kind: 'fraction',
  whole,
  numerator,
  denominator,
});

/** `1,234.5` and `1.234,5`: both marks, the last one the decimal; or the same mark twice, grouping threes. */
const groupedWithDecimals = /^(\d{1,3}(?:,\d{3})+\.\d+|\d{1,3}(?:\.\d{3})+,\d+)$/;
const groupedTwice = /^(\d{1,3}(?:,\d{3}){2,}|\d{1,3}(?:\.\d{3}){2,})$/;
const couldBeThousands = /^[1-9]\d{0,2}[.,]\d{3}$/;

/**
 * What a written number is worth. `finelyWritten` says that three decimals are usual beside its unit
 * (1.125 in, 1.664 m); where they are not, `1,664` may mean 1664 and is refused.
 */
export const worth = (number: WrittenNumber, finelyWritten: boolean): Result<number> => {
  if (number.kind === 'fraction') {
    const { whole, numerator, denominator } = number;
    if (denominator === 0) return bad('units.zero-denominator', { text: `${numerator}/${denominator}` });
    if (whole > 0 && numerator >= denominator) {
      return bad('units.fraction-too-large', { text: `${numerator}/${denominator}` });
    }
    return good(whole + numerator / denominator);
  }
  const { digits } = number;
  if (groupedWithDecimals.test(digits)) {
    const mark = digits.includes(',') && digits.indexOf(',') < digits.indexOf('.') ? ',' : '.';
    return good(Number(digits.replaceAll(mark, '').replace(',', '.')));
  }
  if (groupedTwice.test(digits)) return good(Number(digits.replace(/[.,]/g, '')));
  if (couldBeThousands.test(digits) && !finelyWritten) return bad('units.ambiguous-thousands', { text: digits });
  if (!/^\d*[.,]?\d+$/.test(digits)) return bad('units.not-a-number', { text: digits });
  return good(Number(digits.replace(',', '.')));
};
