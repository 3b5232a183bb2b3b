import { housePattern } from '../../drafting/index.ts';
import type { AlterationStep, Garment } from '../../pattern/index.ts';
import { applyAlterations } from '../apply.ts';
import type { Altered } from '../types.ts';

/** A step as it is tried in a test: what is done, and with which values. */
export type Tried = readonly [alteration: string, params: AlterationStep['params']];

const steps = (tried: readonly Tried[]): readonly AlterationStep[] =>
  tried.map(([alteration, params], i) => ({ id: `step-${i}`, alteration, version: 1, on: true, params }));

/** The middle size of one of our own patterns. Throws where there is none of that name. */
export const houseGarment = (pattern: string, view?: string): Garment => {
  const sizes = housePattern(pattern)?.pattern(view === undefined ? {} : { view }).sizes ?? [];
  const middle = sizes[Math.floor(sizes.length / 2)];
  if (!middle) throw new Error(`There is no pattern ${pattern}`);
  return middle.garment;
};

/** A garment after these steps. Throws where one is refused. */
export const altered = (garment: Garment, ...tried: readonly Tried[]): Altered => {
  const done = applyAlterations(garment, steps(tried));
  if (done.refusal) throw new Error(`${done.refusal.alteration} is refused: ${done.refusal.problem.code}`);
  return done;
};

/** The code of the problem a step is refused with. Throws where none is. */
export const refusalOf = (garment: Garment, ...tried: readonly Tried[]): string => {
  const { refusal } = applyAlterations(garment, steps(tried));
  if (!refusal) throw new Error('Nothing is refused');
  return refusal.problem.code;
};
