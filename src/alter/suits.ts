import type { Garment } from '../pattern/index.ts';
import type { Alteration, Params } from './types.ts';

/** The usual parameters of an alteration, one set for every place there is a choice of. */
const usualParams = (alteration: Alteration): readonly Params[] => {
  let sets: Record<string, number | string>[] = [{}];
  for (const [name, param] of Object.entries(alteration.params)) {
    const values = param.unit === 'choice' ? param.choices : [param.usual[1]];
    sets = sets.flatMap((set) => values.map((value) => ({ ...set, [name]: value })));
  }
  return sets;
};

/** Whether an alteration is for a garment: in some place its usual amount can be applied to the pieces as they are. */
export const suits = (alteration: Alteration, garment: Garment): boolean =>
  usualParams(alteration).some((params) => alteration.apply(garment, params).ok);
