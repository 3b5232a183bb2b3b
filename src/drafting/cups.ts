import type { Measures } from '../body/index.ts';

/**
 * The cup of a multi-cup pattern that is nearest to a body's (bust girth − upper bust girth, mm); the smaller of two
 * equally near, which is let out more easily than a full one is taken in. Undefined where there are no cups, or the
 * body's bust and upper bust are not both known.
 */
export const nearestCup = (cups: readonly number[], { bustGirth, upperBustGirth }: Measures): number | undefined => {
  if (bustGirth === undefined || upperBustGirth === undefined || cups.length === 0) return undefined;
  const own = bustGirth - upperBustGirth;
  return cups.reduce((best, cup) => (Math.abs(cup - own) < Math.abs(best - own) ? cup : best));
};
