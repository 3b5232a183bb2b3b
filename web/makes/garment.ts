import { useMemo } from 'react';
import { type AlterationCache, type Altered, applyAlterations, createAlterationCache } from '../../src/alter/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { Pattern, Size } from '../../src/pattern/index.ts';

/** A make's pieces: as bought in its size, and as altered. */
export interface MakeGarment {
  readonly size: Size;
  readonly altered: Altered;
}

/** The size a make is in: the chosen one, else the one recommended, else the middle of the chart. */
export const sizeFor = (make: Make, pattern: Pattern, recommended: string | null): Size => {
  const wanted = make.size ?? recommended;
  const size = pattern.sizes.find((one) => one.id === wanted) ?? pattern.sizes[Math.floor(pattern.sizes.length / 2)];
  if (!size) throw new Error(`the pattern ${pattern.id} has no size`);
  return size;
};

/** Applies a make's alteration list. What was done before on the same size is not done again while a step is dragged. */
export const useMakeGarment = (make: Make, pattern: Pattern, recommended: string | null): MakeGarment => {
  const cache = useMemo((): AlterationCache => createAlterationCache(), []);
  const size = sizeFor(make, pattern, recommended);
  const altered = useMemo(() => applyAlterations(size.garment, make.steps, cache), [size, make.steps, cache]);
  return useMemo(() => ({ size, altered }), [size, altered]);
};
