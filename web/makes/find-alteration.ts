import { type Alteration, type Family, families } from '../../src/alter/index.ts';
import type { Garment } from '../../src/pattern/index.ts';
import type { Problem } from '../../src/units/index.ts';
import { alterationAbout, alterationName } from './alteration-words.ts';

/** An alteration that a garment lacks something for, and what. */
export interface Lacking {
  readonly alteration: Alteration;
  readonly problem: Problem;
}

export interface Found {
  /** Those that can be done, by family, in the order a fitter works. */
  readonly families: readonly { readonly family: Family; readonly alterations: readonly Alteration[] }[];
  readonly lacking: readonly Lacking[];
  readonly count: number;
}

/** Every word typed has to be in the name or in what it is for, as it is or as the beginning of a word. */
const answers = (alteration: Alteration, typed: readonly string[]): boolean => {
  const said = `${alterationName(alteration.id)} ${alterationAbout(alteration.id)}`.toLowerCase();
  return typed.every((word) => said.includes(word));
};

/** The alterations that answer what was typed, parted into those this garment can be given and those it lacks something for. */
export const findAlterations = (catalogue: readonly Alteration[], garment: Garment, search: string): Found => {
  const typed = search.toLowerCase().split(/\s+/).filter(Boolean);
  const found = catalogue
    .filter((alteration) => answers(alteration, typed))
    .map((alteration) => ({ alteration, problem: alteration.needs(garment) }));
  const able = found.filter(({ problem }) => problem === null).map(({ alteration }) => alteration);
  return {
    families: families.flatMap((family) => {
      const alterations = able.filter((one) => one.family === family);
      return alterations.length > 0 ? [{ family, alterations }] : [];
    }),
    lacking: found.flatMap(({ alteration, problem }) => (problem ? [{ alteration, problem }] : [])),
    count: able.length,
  };
};
