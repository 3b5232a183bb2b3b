import type { ProblemCatalogue } from './catalogue.ts';

export const alterProblems: ProblemCatalogue = {};

export const alterWords = {} as const;
