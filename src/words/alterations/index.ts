import { backWords } from './back.ts';
import { bustWords } from './bust.ts';
import type { AlterationWords, FamilyWords } from './family.ts';
import { legsWords } from './legs.ts';
import { lengthWords } from './length.ts';
import { seamsWords } from './seams.ts';
import { shoulderNeckWords } from './shoulder-neck.ts';
import { sleeveWords } from './sleeve.ts';
import { structureWords } from './structure.ts';
import { widthWords } from './width.ts';

export type { AlterationWords, FamilyWords, NamedKind, SayAmount, SayNamed, SpokenStep } from './family.ts';

/** The words of every family, in the order a fitter works. */
export const familyWords: readonly FamilyWords[] = [
  lengthWords,
  bustWords,
  shoulderNeckWords,
  backWords,
  sleeveWords,
  widthWords,
  legsWords,
  structureWords,
  seamsWords,
];

type Kind = 'parameters' | 'choices' | 'holds' | 'follows' | 'held' | 'changed';

/** One kind of words of all families, over the general ones. */
export const wordsOfAll = (kind: Kind, general: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.assign({}, general, ...familyWords.map((family) => family[kind] ?? {}));

export const alterationWords: Readonly<Record<string, AlterationWords>> = Object.assign(
  {},
  ...familyWords.map((family) => family.alterations),
);
