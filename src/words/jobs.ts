import type { ProblemCatalogue } from './catalogue.ts';

export const jobsProblems: ProblemCatalogue = {};

export const jobsWords = {} as const;
