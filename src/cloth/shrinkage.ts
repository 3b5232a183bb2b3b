import type { Cloth } from './types.ts';

export type ShrinkageOf = 'knit' | 'linen-viscose' | 'cotton' | 'polyester';

/** What the first wash usually takes along the length, as fractions, and of what kind of cloth that is said. */
export interface UsualShrinkage {
  readonly of: ShrinkageOf;
  readonly from: number;
  readonly to: number;
}

/**
 * Usual shrinkage in the first wash, lengthwise (trade: cotton 2–5 %, linen and viscose 3–8, knits 5–10,
 * polyester 0–1). Of mixed fibres the one that shrinks most speaks; null where the trade has no figure, as for
 * wool and silk, which are not always washed at all.
 */
export const usualShrinkage = (cloth: Pick<Cloth, 'structure' | 'fibres'>): UsualShrinkage | null => {
  if (cloth.structure === 'knit') return { of: 'knit', from: 0.05, to: 0.1 };
  const fibres = cloth.fibres.toLowerCase();
  if (/linen|flax|viscose|rayon/.test(fibres)) return { of: 'linen-viscose', from: 0.03, to: 0.08 };
  if (/cotton/.test(fibres)) return { of: 'cotton', from: 0.02, to: 0.05 };
  if (/polyester/.test(fibres)) return { of: 'polyester', from: 0, to: 0.01 };
  return null;
};
