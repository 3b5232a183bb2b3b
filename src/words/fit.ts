import type { ProblemCatalogue } from './catalogue.ts';

export const fitProblems: ProblemCatalogue = {};

export const fitWords = {} as const;
