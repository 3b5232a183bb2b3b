import type { ProblemCatalogue } from './catalogue.ts';

export const clothProblems: ProblemCatalogue = {};

export const clothWords = {} as const;
