import type { FamilyWords } from './family.ts';

export const bustWords: FamilyWords = {
  alterations: {
    'full-bust': {
      name: 'Full bust',
      about:
        'Gives each front more width and length over the bust and a deeper side dart; neck, shoulder, armhole and side seam stay as they are. For a fuller bust than the pattern was drafted for.',
      sentence: ({ params }, say) =>
        `full bust: ${say(Number(params['amount'] ?? 0))} more on each half of the front, ${say(Number(params['amount'] ?? 0), 2)} in all`,
    },
    'small-bust': {
      name: 'Small bust',
      about:
        'Takes width and length out of each front over the bust and makes the side dart shallower; neck, shoulder, armhole and side seam stay as they are. For a smaller bust than the pattern was drafted for.',
      sentence: ({ params }, say) =>
        `small bust: ${say(Number(params['amount'] ?? 0))} less on each half of the front, ${say(Number(params['amount'] ?? 0), 2)} in all`,
    },
  },
};
