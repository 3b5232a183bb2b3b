/** What the pattern room has to say. */
export const patternProblems = {
  'pattern.not-json': {
    message: 'This file cannot be read: it is not a pattern document, or it was cut short.',
    remedy: 'Fetch or copy the file again, then bring it in once more. Nothing was stored.',
  },
  'pattern.not-a-pattern': {
    message: 'This file is not a pattern document: it does not say which format it is.',
    remedy: 'Choose a file whose first line says “format”: “easewright-pattern/1”.',
  },
  'pattern.unknown-version': {
    message: 'This pattern is written in a form this program does not know ({format}).',
    remedy: 'It may come from a newer Easewright: update the program, then bring the file in again.',
  },
  'pattern.field': {
    message: 'Something in the file is not as it should be, at {where}: {what}.',
    remedy: 'Mend that entry, or ask whoever made the file. docs/pattern-format.md says what belongs there.',
  },
  'pattern.open-edges': {
    message: 'The outline of {piece} is open: after {edge} there is a gap of {gap}.',
    remedy:
      'Every edge must begin exactly where the one before it ends. Close the outline and bring the file in again.',
  },
  'pattern.edge-unknown': {
    message: '{piece} has no edge called {edge}, though something refers to it.',
    remedy: 'Name the edge in the list of edges and in the outline alike.',
  },
  'pattern.dart-without-mouth': {
    message: 'The dart {dart} of {piece} does not open on any edge, or an opening has no dart.',
    remedy: 'A dart needs its point and a mouth of the same name in the outline.',
  },
  'pattern.notch-off-edge': {
    message: 'The notch {notch} of {piece} does not lie on its edge.',
    remedy: 'A notch lies at a share between 0 and 1 along an edge of the piece.',
  },
  'pattern.dart-legs': {
    message: 'The legs of the dart {dart} on {piece} differ by {apart}, so it would not fold flat.',
    remedy: 'Make both legs the same length.',
  },
  'pattern.dart-outside': {
    message: 'The point of the dart {dart} lies outside {piece}.',
    remedy: 'Move the point inside the piece.',
  },
  'pattern.fold-not-on-grain': {
    message: 'The edge {edge} of {piece} is to be laid on the fold but is not straight on the grain.',
    remedy: 'Straighten it along the grain, or cut the piece with a seam there instead.',
  },
  'pattern.too-few-edges': {
    message: '{piece} has too few edges to be a piece.',
    remedy: 'An outline needs at least three edges.',
  },
  'pattern.wrong-way-round': {
    message: 'The outline of {piece} runs the wrong way round.',
    remedy: 'List its edges clockwise, as the piece is seen lying face up.',
  },
  'pattern.crosses-itself': {
    message: 'The outline of {piece} crosses itself.',
    remedy: 'Redraw it so that no edge runs over another.',
  },
  'pattern.landmark-outside': {
    message: 'The mark {landmark} lies outside {piece}.',
    remedy: 'Place it on the piece.',
  },
  'pattern.notion-missing': {
    message: 'In size {size} a notion follows an edge that is not there: {edge} of {piece}.',
    remedy: 'Bring in the pattern with all its pieces, or write the notion in words.',
  },
  'pattern.mate-missing': {
    message: 'The seam {seam} joins a piece that is not there: {piece}.',
    remedy: 'Bring in the pattern with all its pieces, or leave the seam out.',
  },
  'pattern.level-missing': {
    message: 'The piece {piece} does not say where the {level} level lies, so it cannot be measured there.',
    remedy: 'Give the piece a line for that level.',
  },
  'pattern.size-unknown': {
    message: 'There is no size {size} in {pattern}.',
    remedy: 'Its sizes are {sizes}.',
  },
  'pattern.not-an-alteration-list': {
    message: 'This file is not an alteration list: it does not say which format it is.',
    remedy: 'Choose a file whose first line says “format”: “easewright-alterations/1”.',
  },
  'pattern.unknown-list-version': {
    message: 'This alteration list is written in a form this program does not know ({format}).',
    remedy: 'It may come from a newer Easewright: update the program, then try again.',
  },
} as const;

export const patternWords = {} as const;
