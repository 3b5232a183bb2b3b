import type { ProblemCatalogue } from './catalogue.ts';

export const cliProblems: ProblemCatalogue = {};

export const cliWords = {} as const;
