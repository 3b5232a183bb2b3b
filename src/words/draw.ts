import type { ProblemCatalogue } from './catalogue.ts';

export const drawProblems: ProblemCatalogue = {};

export const drawWords = {} as const;
