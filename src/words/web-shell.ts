/** What stands around every page: places, unit, folding, and what a page's head says while it opens. */
export const shellWords = {
  skip: 'Go to the words',
  places: 'Places',
  table: 'On the table',
  wearers: 'Wearers',
  patterns: 'Patterns',
  cloths: 'Cloth',
  unit: 'Lengths in',
  inches: 'inches',
  centimetres: 'centimetres',
  foldTable: 'Fold the table away',
  unfoldTable: 'Unfold the table',
  foldWords: 'Fold the words away',
  unfoldWords: 'Unfold the words',
  folding: 'Table and words',
  opening: 'Opening …',
  reload: 'Load the page again',
  toTable: 'Go to the table',
  title: '{page} – Easewright',
} as const;

/** The table and its tape. */
export const tableWords = {
  region: 'The table',
  bare: 'The table is bare',
  keys: 'Arrow keys move the table, plus and minus bring it closer or further, 0 shows all of it.',
  closer: 'Closer',
  further: 'Further',
  seeAll: 'See all of it',
  measure: 'Measure',
  tapeStart: 'First end of the tape. It reads {length}. Arrow keys move it, with Shift by a little.',
  tapeEnd: 'Other end of the tape. It reads {length}. Arrow keys move it, with Shift by a little.',
} as const;

/** Taking something away, and putting it back. */
export const removalWords = {
  removed: '{name} was taken away.',
  putBack: 'Put it back',
  notRestored: 'It could not be put back just now. Try again in a moment.',
  dismiss: 'Leave it so',
} as const;

/** Units beside fields, and a field left empty. */
export const fieldWords = {
  in: 'in',
  cm: 'cm',
  m: 'm',
  yd: 'yd',
  required: 'Write something here first.',
} as const;
