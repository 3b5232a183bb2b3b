import type { FamilyWords } from './family.ts';

export const sleeveWords: FamilyWords = {
  alterations: {
    'full-upper-arm': {
      name: 'Full upper arm',
      about:
        'Gives each sleeve more width round the upper arm; cap, underarm seams and wrist keep their lengths. For an arm fuller at the top than the sleeve.',
    },
  },
};
