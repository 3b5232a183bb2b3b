import type { Alteration, Params } from './types.ts';

/** Amounts are looked for in steps of half a millimetre: less cannot be cut. */
const step = 0.5;

/**
 * The largest amount, in the direction asked for, of which the alteration holds: bisection on real applications between
 * the least and the most its parameter allows, in half millimetres. Does not depend on how much was asked for. Null
 * where even the least does not hold.
 */
export const largestThatHolds = (
  alteration: Alteration,
  params: Params,
  holds: (params: Params) => boolean,
): number | null => {
  const name = alteration.amount;
  if (name === null) return null;
  const parameter = alteration.params[name];
  const asked = params[name];
  if (parameter?.unit !== 'mm' || typeof asked !== 'number') return null;
  const sign = asked < 0 ? -1 : 1;
  const most = sign < 0 ? -parameter.min : parameter.max;
  const least = Math.max(sign < 0 ? -parameter.max : parameter.min, step);
  const at = (steps: number): number => sign * (least + steps * step);
  const works = (steps: number): boolean => holds({ ...params, [name]: at(steps) });
  let high = Math.floor((most - least) / step);
  if (high < 0 || !works(0)) return null;
  if (works(high)) return at(high);
  let low = 0;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (works(middle)) low = middle;
    else high = middle;
  }
  return at(low);
};
