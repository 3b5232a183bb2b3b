import type { FamilyWords } from './family.ts';

export const shoulderNeckWords: FamilyWords = {
  alterations: {},
};
