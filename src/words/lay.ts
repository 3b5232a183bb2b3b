import type { ProblemCatalogue } from './catalogue.ts';

export const layProblems: ProblemCatalogue = {};

export const layWords = {} as const;
