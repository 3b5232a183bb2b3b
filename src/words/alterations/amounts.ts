import type { SayAmount, SpokenStep } from './family.ts';

/** The amount of a step, mm, without its sign. */
export const howMuch = ({ params }: SpokenStep): number => Math.abs(Number(params['amount'] ?? 0));

/** Whether a step takes away, or goes the way its amount says with less than nothing. */
export const isLess = ({ params }: SpokenStep): boolean => Number(params['amount'] ?? 0) < 0;

/** Whether a step is done on one half of the body only. */
export const onOneHalf = ({ params }: SpokenStep): boolean => params['side'] === 'right' || params['side'] === 'left';

/**
 * What is added up of an amount on the whole garment, after a comma; nothing where it is put in once. On one half of the
 * body it is put in half as often.
 */
export const inAll = (step: SpokenStep, say: SayAmount, times: 2 | 4): string => {
  const here = onOneHalf(step) ? times / 2 : times;
  return here === 1 ? '' : `, ${say(howMuch(step), here)} in all`;
};

/** One phrase for both halves of the body, another for one half only. */
export const byHalves = (step: SpokenStep, both: string, one: string): string => (onOneHalf(step) ? one : both);
