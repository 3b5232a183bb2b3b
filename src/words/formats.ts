import type { ProblemCatalogue } from './catalogue.ts';

export const formatsProblems: ProblemCatalogue = {};

export const formatsWords = {} as const;
