import type { Seam } from '../../pattern/index.ts';

/** A seam told from its other side: its sides and the pairs of its notches change places, its ease is as it was. */
export const turnedSeam = (seam: Seam): Seam => ({
  ...seam,
  a: seam.b,
  b: seam.a,
  notches: seam.notches.map(([a, b]) => [b, a] as const),
});
