import type { ProblemCatalogue } from './catalogue.ts';

export const bodyProblems: ProblemCatalogue = {
  'body.no-columns': {
    message: 'The first line names no measure that is known here.',
    remedy: 'Give a survey file whose first line holds its column names, such as stature and chestcircumference.',
  },
  'body.row-length': {
    message: 'Row {row} has {found} values where the first line names {expected}.',
    remedy: 'Look for a missing comma, or a decimal comma inside a number.',
  },
  'body.bad-cell': {
    message: 'Row {row} has “{text}” for {column}, which is not a length.',
    remedy: 'Write it in whole millimetres, or leave it empty if it was not measured.',
  },
};

export const bodyWords = {} as const;
