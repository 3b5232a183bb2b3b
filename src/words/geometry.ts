import type { ProblemCatalogue } from './catalogue.ts';

export const geometryProblems: ProblemCatalogue = {};

export const geometryWords = {} as const;
