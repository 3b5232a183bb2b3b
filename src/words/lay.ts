/** What the layout room has to say. */
export const layProblems = {
  'lay.not-a-layout': {
    message: 'This file does not describe a cutting layout.',
    remedy: 'It should name the cloth and list the pieces, as in docs/layout-format.md.',
  },
  'lay.field': {
    message: 'Something in the layout file is not as it should be, at {where}: {what}.',
    remedy: 'Mend that entry and try again. docs/layout-format.md says what belongs there.',
  },
  'lay.same-id': {
    message: 'Two pieces in the layout file share the id {piece}.',
    remedy: 'Give each piece an id of its own; say how many with its number of copies.',
  },
  'lay.no-width': {
    message: 'The width of the cloth is not known.',
    remedy: 'Measure the cloth between its selvages and enter that width.',
  },
  'lay.bad-gap': {
    message: 'The gap between pieces is not a length.',
    remedy: 'Enter the room the blade needs, from nothing to about 3 mm.',
  },
  'lay.nothing': {
    message: 'No piece is to be cut from this cloth.',
    remedy: 'Choose another layer, or check how many of each piece are to be cut.',
  },
  'lay.no-outline': {
    message: '{piece} has no shape that could be cut.',
    remedy: 'Its cut line must enclose some cloth. Look at the piece and its last alteration.',
  },
  'lay.crossed-outline': {
    message: 'The cut line of {piece} crosses itself.',
    remedy: 'Look at the piece: an alteration or an allowance has folded its outline over.',
  },
  'lay.bad-count': {
    message: 'How many of {piece} are to be cut is not a whole number.',
    remedy: 'Enter how many to cut.',
  },
  'lay.no-turn': {
    message: '{piece} has no way to lie on the cloth.',
    remedy: 'Give it a grain line.',
  },
  'lay.wider-than-cloth': {
    message: '{piece} is {width} across, and the cloth only {cloth} wide.',
    remedy: 'Take wider cloth, put a seam in the piece, or cut it on the cross grain if the cloth allows.',
  },
  'lay.fold-off-grain': {
    message: 'The grain line of {piece} does not run along the edge that is laid to the fold.',
    remedy: 'A piece on the fold is cut along the grain: turn its grain line, or give it a seam in place of the fold.',
  },
  'lay.fold-not-straight': {
    message: 'The fold edge of {piece} is not straight.',
    remedy: 'Only a straight edge can be laid to a fold: redraw it straight, or give the piece a seam there.',
  },
  'lay.cancelled': {
    message: 'The layout was stopped before there was a first plan.',
    remedy: 'Start it again when you like.',
  },
} as const;

export const layWords = {
  kinds: { single: 'single layer', folded: 'folded lengthwise' },
  fits: {
    yes: 'It fits on the cloth in hand.',
    tight: 'It fits only if the ends of the cloth are square already.',
    no: 'It does not fit on the cloth in hand.',
  },
  spare: '{piece}: {copies} more than asked, because folded cloth is cut in pairs.',
  restSingle: 'What has no partner is laid on a single layer after the folded part.',
} as const;
