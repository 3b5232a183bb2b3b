import type { ProblemCatalogue } from './catalogue.ts';

export const geometryProblems: ProblemCatalogue = {
  'geometry.svg-path': {
    message: 'The path cannot be read: found {found} at place {at}.',
    remedy: 'Write it as one run of M, L, C and Z with absolute coordinates in millimetres.',
  },
};

export const geometryWords = {} as const;
