import type { ProblemCatalogue } from './catalogue.ts';

/** What an envelope's document and its charts can have wrong. */
export const envelopeProblems: ProblemCatalogue = {
  'envelope.not-an-envelope': {
    message: 'This is not a pattern’s envelope: it does not say which format it is.',
    remedy: 'Choose a file whose first line says “format”: “easewright-envelope/1”.',
  },
  'envelope.unknown-version': {
    message: 'This envelope is written in a form this program does not know ({format}).',
    remedy: 'It may come from a newer Easewright: update the program, then try again.',
  },
  'envelope.field': {
    message: 'Something in the envelope is not as it should be, at {where}: {what}.',
    remedy: 'Mend that entry. docs/envelopes.md says what belongs there.',
  },
  'envelope.size-twice': {
    message: 'The size {size} is there twice.',
    remedy: 'Give every size its own name, or take one of them out.',
  },
  'envelope.view-twice': {
    message: 'The view {view} is there twice.',
    remedy: 'Give every view its own letter or name, or take one of them out.',
  },
  'envelope.measure-twice': {
    message: 'The body chart has two rows for the same measure ({measure}).',
    remedy: 'Keep the row that is printed and take the other out.',
  },
  'envelope.figures-count': {
    message: 'Row {row} of the {chart} chart has {found} figures for {sizes} sizes.',
    remedy: 'Give every size its figure; leave it empty where none is printed.',
  },
  'envelope.range-reversed': {
    message: 'Row {row} of the {chart} chart has a range that ends before it begins, in size {size}.',
    remedy: 'Write the smaller figure first.',
  },
  'envelope.weight-reversed': {
    message: 'The weight of the cloth advised ends before it begins.',
    remedy: 'Write the lighter figure first.',
  },
  'envelope.view-missing': {
    message: 'Something is entered for the view {view}, which this pattern does not have.',
    remedy: 'Add the view, or enter it for one of those there are.',
  },
  'envelope.size-missing': {
    message: 'Something is entered for the size {size}, which this pattern does not have.',
    remedy: 'Its sizes are {sizes}.',
  },
  'envelope.flat-no-pieces': {
    message: 'No piece has been measured yet.',
    remedy: 'Measure each piece the level runs over and enter them all.',
  },
  'envelope.flat-no-length': {
    message: 'What is entered for {piece} is no length.',
    remedy: 'Enter what the tape reads, and 0 where nothing is to be left out.',
  },
  'envelope.flat-times': {
    message: '{piece} must be counted at least once, and a whole number of times.',
    remedy: 'Enter 2 for a piece on the fold or a pair, 1 for a piece cut once.',
  },
  'envelope.flat-nothing-left': {
    message: 'Of {piece}, {flat} wide, {out} is to be left out: nothing remains.',
    remedy: 'Look at the unit and the decimal mark of each figure.',
  },
  'envelope.flat-too-long': {
    message: 'The pieces come to {sum}, which is more than any garment measures.',
    remedy: 'Look at the units, and at how often each piece is counted.',
  },
};
