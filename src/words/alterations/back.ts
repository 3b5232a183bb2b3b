import type { FamilyWords } from './family.ts';

export const backWords: FamilyWords = {
  alterations: {
    'sway-back': {
      name: 'Sway back',
      about:
        'Takes length out of the centre back at the waist, to nothing at the side. For a back hollow at the waist, where slack folds lie across above it.',
    },
  },
};
