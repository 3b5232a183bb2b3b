import type { FamilyWords } from './family.ts';

export const structureWords: FamilyWords = {
  alterations: {},
};
