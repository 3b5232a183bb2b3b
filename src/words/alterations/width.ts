import type { FamilyWords } from './family.ts';

export const widthWords: FamilyWords = {
  alterations: {
    blend: {
      name: 'Run the sides into another size',
      about:
        'Draws the side seams from the starting size into another at waist or hip. For a waist or hip of another size than the shoulders.',
    },
  },
};
