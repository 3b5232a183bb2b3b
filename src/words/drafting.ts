import type { ProblemCatalogue } from './catalogue.ts';

export const draftingProblems: ProblemCatalogue = {};

export const draftingWords = {} as const;
