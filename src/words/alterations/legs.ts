import type { FamilyWords } from './family.ts';

export const legsWords: FamilyWords = {
  alterations: {},
};
