import type { ProblemCatalogue } from './catalogue.ts';

export const formatsProblems: ProblemCatalogue = {
  'formats.nothing-to-print': {
    message: 'There is no piece to print.',
    remedy: 'Choose at least one piece of the garment.',
  },
  'formats.nothing-changed': {
    message: 'No piece differs from what it is compared with.',
    remedy: 'Print every piece, or alter something first.',
  },
  'formats.no-exchange': {
    message: 'On this paper no sheets can be exchanged: a print shop prints its sheets whole.',
    remedy: 'Print only the pieces that changed, or choose A4 or Letter.',
  },
  'formats.no-summary': {
    message: 'There is no alteration to sum up.',
    remedy: 'Add an alteration, or switch one on.',
  },
  'formats.summary-paper': {
    message: 'The summary is printed on A4 or Letter.',
    remedy: 'Choose one of these.',
  },
  'formats.no-cards': {
    message: 'There is no card to print.',
    remedy: 'Choose at least one alteration.',
  },
  'formats.font-unreadable': {
    message: 'The letters to print with cannot be read.',
    remedy: 'Install the program afresh: its font files are damaged or missing.',
  },
  'formats.cancelled': {
    message: 'Printing was stopped before the last sheet.',
    remedy: 'Nothing was saved. Start it again when you like.',
  },
  'formats.letter-missing': {
    message: 'The letter {letter} cannot be printed; a box stands in its place.',
    remedy: 'The pieces are right. Write the name with other letters if the box is in the way.',
  },
  'formats.label-left-out': {
    message: 'There is no room for words on {piece}.',
    remedy: 'Write its name on it when you have cut it out; the page map shows which it is.',
  },
};

/** What is printed on the sheets. `{name}` is filled by `fill`. */
export const formatsWords = {
  sizeFact: 'Size {size}',
  makeFact: 'For the make “{make}”',
  wearerFact: 'Worn by {wearer}',
  sheetsApart: '{count} sheets of {paper} to join, after this one. Print every sheet at its actual size, 100 %.',
  sheetApart: 'One sheet of {paper}, after this one. Print it at its actual size, 100 %.',
  sheetsHere: '{count} sheets of {paper}. Print every sheet at its actual size, 100 %.',
  sheetHere: 'One sheet of {paper}. Print it at its actual size, 100 %.',
  paper: { a4: 'A4', letter: 'Letter', a0: 'A0', roll36: '36-inch roll' },
  onlyFact: {
    changed: 'Only the pieces that changed.',
    overlay: 'Overlays to lay on the tissue, one for each piece that changed.',
  },
  exchangeFact: 'Only the sheets that are different now, to be exchanged in your earlier print.',
  notPrinted: 'What you have already',
  unchanged: 'Not printed here, because nothing about it changed: {pieces}.',
  exchangeThese:
    'Put these in place of the sheets of the same name, or add them: {what}. On the map each has a firm frame.',
  exchangeKeep: 'Keep: {what}.',
  exchangeGone: 'Take out, nothing is on them any more: {what}.',
  exchangeApart: 'On sheets of its own below the others, because there is no room for it where it lay: {what}.',
  exchangeStale: 'Cross out where it still shows on sheets you keep, and do not cut it there: {what}.',
  overlays: 'Laying an overlay',
  overlayLay:
    'Cut an overlay out along its frame. Lay every crossed square over the same corner, notch or line end of the tissue.',
  overlayTape:
    'Where all of them meet, tape it down. Where they do not, the tissue is of another size or was printed to another scale: stop and measure.',
  overlayTrue: 'Cut the piece along the firm new line. A level, a notch or the grain that moved is the new one.',
  lineCutApart: 'where a step of the list cut the piece, with its number',
  tileHeaderExchange: '{title} · exchange, sheet {number} of {count} · frame {step}',
  squareMetric: '100 mm',
  squareMetricHow:
    'Measure this square each way before you cut. Where it is not exactly 100 mm, print again at 100 %, not fitted to the page.',
  squareInch: '4 inches',
  squareInchHow: 'The same test for a rule in inches.',
  map: 'How the sheets join',
  mapOne: 'What lies where',
  // The map as a picture, before anything is printed.
  mapLabel: 'Sheets of {paper}: {count}. What lies on which: {pieces}',
  mapPiece: '{number} {name}: {sheets}',
  mapCover: 'Printed first',
  joining: 'Joining',
  joinTrim: 'Cut off the top and the left margin of a sheet along its frame, wherever a sheet joins it there.',
  joinLay: 'Lay it over the strip of its neighbour until frame meets frame and the two halves of each ring make one.',
  joinSigns: 'Rings side by side carry figures, rings one below the other carry letters; only equal signs meet.',
  joinName: 'A sheet’s name is its column and its row, as on this map.',
  lines: 'Lines',
  lineCut: 'cut here',
  lineSeam: 'stitch here',
  lineFold: 'fold; with a bracket: lay it on folded cloth',
  lineLevel: 'a level of the body',
  lineLengthen: 'lengthen or shorten here',
  lineOriginal: 'the pattern as bought, before alterations',
  pieces: 'Pieces',
  pieceEntry: '{name}: {cut}',
  alterations: 'Alterations made',
  noAlterations: 'None: these are the pieces as drafted.',
  grainNote: 'Grain along the arrow',
  altered: 'Altered: {what}',
  made: 'For {make}',
  tileHeader: '{title} · sheet {number} of {count} · frame {step}',
  tileSize: '{width} × {height} mm',
  cardFoot: '{title} · card {number} of {count}',
  pdfSubject: 'Full-scale sewing pattern. Print at 100 %.',
} as const;
