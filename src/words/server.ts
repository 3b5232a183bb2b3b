import type { ProblemCatalogue } from './catalogue.ts';

export const serverProblems: ProblemCatalogue = {};

export const serverWords = {} as const;
