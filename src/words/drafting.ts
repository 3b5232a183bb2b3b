import type { ProblemCatalogue } from './catalogue.ts';

export const draftingProblems: ProblemCatalogue = {
  'drafting.no-bust': {
    message: 'Nothing can be drafted without the bust girth.',
    remedy: 'Measure level round the fullest part of the bust and enter it; what else is missing is estimated.',
  },
  'drafting.cap-cannot-fit': {
    message: 'No sleeve cap fits: the armhole measures {armhole} round and the sleeve {sleeve} across.',
    remedy: 'Look at upper arm, armhole depth and across back again; one of them does not go with the others.',
  },
};

export const draftingWords = {} as const;
