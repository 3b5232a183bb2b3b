/**
 * The many ways one thing is written, brought to one: fraction characters become ` 5/8`, primes and
 * typographic quotes become ' and ", every kind of space a plain one, every dash a hyphen.
 */

const fractionCharacters: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const subscripts = '₀₁₂₃₄₅₆₇₈₉';

const plainDigits = (text: string, from: string): string =>
  [...text].map((character) => String(from.indexOf(character))).join('');

/** Numerator raised, denominator lowered, a fraction slash between: how fractions without a character of their own are set. */
export const setFraction = (numerator: number, denominator: number): string => {
  const plain = `${numerator}/${denominator}`;
  const own = Object.entries(fractionCharacters).find(([, written]) => written === plain)?.[0];
  if (own) return own;
  const raised = [...String(numerator)].map((digit) => superscripts[Number(digit)]).join('');
  const lowered = [...String(denominator)].map((digit) => subscripts[Number(digit)]).join('');
  return `${raised}⁄${lowered}`;
};

export const plainWriting = (text: string): string =>
  text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (character) => ` ${fractionCharacters[character]} `)
    .replace(
      /([⁰¹²³⁴-⁹]+)[⁄∕/]([₀-₉]+)/g,
      (_, above: string, below: string) => ` ${plainDigits(above, superscripts)}/${plainDigits(below, subscripts)} `,
    )
    .replace(/[⁄∕]/g, '/')
    .replace(/[′’‘ʹ´`‛]/g, "'")
    .replace(/[″”“„ʺ‟]/g, '"')
    .replace(/''/g, '"')
    .replace(/[−–—‐‑‒]/g, '-')
    .replace(/\s+/gu, ' ')
    .trim()
    .toLowerCase();
