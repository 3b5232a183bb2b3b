import type { ProblemCatalogue } from './catalogue.ts';

export const bodyProblems: ProblemCatalogue = {};

export const bodyWords = {} as const;
