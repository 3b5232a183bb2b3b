import type { ProblemCatalogue } from './catalogue.ts';

export const makeProblems: ProblemCatalogue = {};

export const makeWords = {} as const;
