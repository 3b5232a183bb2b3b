import type { ProblemCatalogue } from './catalogue.ts';

export const cautionProblems: ProblemCatalogue = {};

export const cautionWords = {} as const;
