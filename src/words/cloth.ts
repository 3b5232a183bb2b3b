import type { ProblemCatalogue } from './catalogue.ts';

export const clothProblems: ProblemCatalogue = {};

export const clothWords = {
  noShrinkage: 'No shrinkage is entered, so none is counted.',
  /** What the first wash usually takes, by what the cloth is. */
  usualShrinkage: {
    knit: 'The first wash usually takes {from} to {to} of a knit’s length.',
    'linen-viscose': 'The first wash usually takes {from} to {to} of the length of linen or viscose.',
    cotton: 'The first wash usually takes {from} to {to} of the length of cotton.',
    polyester: 'The first wash usually takes {from} to {to} of the length of polyester.',
  },
  enterShrinkage: 'Wash and measure a square of it and enter what it lost, or enter a usual figure.',
} as const;
