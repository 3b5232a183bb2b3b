import type { ProblemCatalogue } from './catalogue.ts';

export const unitsProblems: ProblemCatalogue = {};

export const unitsWords = {} as const;
