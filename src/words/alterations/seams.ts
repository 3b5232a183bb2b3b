import type { FamilyWords } from './family.ts';

export const seamsWords: FamilyWords = {
  alterations: {},
};
