import type { ProblemCatalogue } from './catalogue.ts';

export const patternProblems: ProblemCatalogue = {};

export const patternWords = {} as const;
