import type { ProblemCatalogue } from './catalogue.ts';

export const clothProblems: ProblemCatalogue = {
  'cloth.convert-no-length': {
    message: 'The cloth needed is no length that could be bought.',
    remedy: 'Enter the length as printed, for example 2.3 m or 2 1/2 yd; nothing over 50 m.',
  },
  'cloth.convert-no-width': {
    message: 'That is no width cloth is woven in.',
    remedy: 'Enter the width between the selvages, for example 115 cm or 45 in.',
  },
  'cloth.convert-shrinkage': {
    message: 'That is more than any wash takes of a cloth.',
    remedy: 'Enter what a washed square of it lost, between 0 and 50 %.',
  },
  'cloth.convert-no-pieces': {
    message: 'The area or the width of the pieces is no number.',
    remedy: 'Measure them again, or leave them out: the answer is an estimate either way.',
  },
  'cloth.convert-piece-too-wide': {
    message: 'The widest piece takes {piece}, and there is {width} for it.',
    remedy: 'Lay the cloth in a single layer, choose wider cloth, or join the piece with a seam.',
  },
};

export const clothWords = {
  noShrinkage: 'No shrinkage is entered, so none is counted.',
  /** What the first wash usually takes, by what the cloth is. */
  usualShrinkage: {
    knit: 'The first wash usually takes {from} to {to} of a knit’s length.',
    'linen-viscose': 'The first wash usually takes {from} to {to} of the length of linen or viscose.',
    cotton: 'The first wash usually takes {from} to {to} of the length of cotton.',
    polyester: 'The first wash usually takes {from} to {to} of the length of polyester.',
  },
  /** Why converted cloth comes to what it does, by reason; the amount is added unless the sentence says saved. */
  converted: {
    'cloth.convert-narrower': 'Narrower cloth of the same area: {amount} more.',
    'cloth.convert-wider':
      'Wider cloth: {amount} saved, three quarters of what the area alone would save, because pieces seldom fill a wider cloth as well.',
    'cloth.convert-apart': 'Pieces that no longer lie side by side: {amount} more.',
    'cloth.convert-widest': 'The widest pieces must follow one another instead of lying side by side: {amount} more.',
    'cloth.convert-nap': 'All laid one way, which the printed length does not allow for: {amount} more.',
    'cloth.convert-fold': 'Cut on a fold where the printed length is for a single layer: {amount} more.',
    'cloth.convert-area': 'The pieces alone cover more: {amount} more.',
    'cloth.convert-shrinkage-added': 'For the first wash: {amount} more.',
    'cloth.convert-usual-shrinkage': 'For the most the first wash usually takes of such cloth: {amount} more.',
    'cloth.convert-squaring': 'To square the ends: {amount} more.',
  } as Readonly<Record<string, string>>,
  estimateOnly:
    'An estimate: how the pieces will lie is only known once they do. Lay the tissue out on a sheet of that width before buying dear cloth.',
  enterShrinkage: 'Wash and measure a square of it and enter what it lost, or enter a usual figure.',
} as const;
