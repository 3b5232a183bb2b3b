/** Sizes as patterns print them: 8, 10–12, 34, XS, 5X, S/M, 8T, 10 tall, 2 years, 18 m, `M (12-14)`. */
const number = String.raw`\d{1,3}(?: ?(?:t|tall|p|petite|s|short|r|regular|l|long|w|plus|[a-h]|dd|m|mths?|mos?|months?|y|yrs?|years?))?`;
const letters = String.raw`(?:x{0,5}-?(?:small|large|s|l)|medium|m|\d{1,2}x[sl]?)(?: ?(?:t|tall|p|petite))?`;
const one = `(?:${number}|${letters})`;
const sizeName = new RegExp(
  String.raw`^(?:(?:us|uk|eu|eur|fr|de|it) ?|size )?${one}(?: ?[-/+] ?${one})?(?: ?\([\w /-]{1,12}\))?$|^one size$`,
  'i',
);

export const isSizeName = (text: string): boolean => text.length <= 30 && sizeName.test(text);

/** Sizes are written with one kind of dash and no doubled spaces, so that the same size is the same name. */
export const sizeNameOf = (text: string): string => text.trim().replace(/ +/g, ' ');

export const sameSize = (a: string, b: string): boolean => keyOf(a) === keyOf(b);

const keyOf = (size: string): string => size.toLowerCase().replace(/[\s–—-]+/g, '');

const letterRank = (name: string): number | null => {
  const key = name.toLowerCase().replace('small', 's').replace('large', 'l').replace('medium', 'm').replaceAll('-', '');
  const counted = /^(\d{1,2})x([sl]?)/.exec(key);
  if (counted) return counted[2] === 's' ? -10 * Number(counted[1]) - 10 : 10 * Number(counted[1]) + 10;
  const written = /^(x*)([sl])/.exec(key);
  if (written) return (written[2] === 's' ? -1 : 1) * (10 + 10 * (written[1] ?? '').length);
  return /^m(?![a-z])/.test(key) ? 0 : null;
};

const lengthOfBody = (name: string): string => {
  const found =
    /(?:^|[\d ]|[a-z] )(tall|petite|short|regular|long|plus|t|p|s|r|l|w)$/i.exec(name)?.[1]?.toLowerCase() ?? '';
  return found === '' ? '' : found[0] === 'p' && found !== 'plus' ? 'p' : found.slice(0, found === 'plus' ? 4 : 1);
};

/**
 * Which run of sizes a size belongs to: tall, petite, short and long sizes, and cups, each grow among themselves.
 * Letter sizes are one run, with 1X to 5X after XL.
 */
export const runOf = (size: string): string => {
  const name = size.trim().toLowerCase();
  if (letterRank(name) !== null)
    return /(?: t|tall| p|petite)$/.test(name) ? `letters ${lengthOfBody(name)}` : 'letters';
  const cup = /^\d{1,3} ?([a-h]|dd)$/.exec(name)?.[1];
  return cup ? `cup ${cup}` : lengthOfBody(name);
};

/** How large a size's name says it is among its run; null where the name does not say. */
const rank = (size: string): number | null => {
  const byLetters = letterRank(size.trim());
  if (byLetters !== null) return byLetters;
  const figure = /\d{1,3}/.exec(size)?.[0];
  return figure === undefined ? null : Number(figure);
};

/** Places of the sizes, run by run, in the order given. */
export const sizeRuns = (sizes: readonly string[]): readonly (readonly number[])[] => {
  const runs = new Map<string, number[]>();
  for (const [index, size] of sizes.entries()) runs.set(runOf(size), [...(runs.get(runOf(size)) ?? []), index]);
  return [...runs.values()];
};

/** Printed largest first: every size's name says less than the one before it. */
export const descending = (sizes: readonly string[]): boolean => {
  const ranks = sizes.map(rank);
  return (
    sizes.length > 1 &&
    ranks.every((value, index) => value !== null && (index === 0 || value < (ranks[index - 1] ?? 0)))
  );
};
