import type { ProblemCatalogue } from './catalogue.ts';

export const storeProblems: ProblemCatalogue = {};

export const storeWords = {} as const;
