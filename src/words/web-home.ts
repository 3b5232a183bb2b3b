/** The first page of a new workroom. */
export const firstWords = {
  title: 'Where would you like to begin?',
  about:
    'Easewright is a work table for what you sew. It keeps measures, patterns and cloth, says whether a pattern will fit and what to alter, checks the seams, lays the pieces on your cloth, and prints the sheets to cut from.',
  private: 'Everything stays on this computer.',
  demo: 'Look round the demo workroom',
  demoAbout:
    'The workroom of a choir singer in a rainy harbour town, with people, patterns and cloth already in it. Change what you like; it is not yours.',
  own: 'Start my own',
  ownAbout: 'An empty workroom, for your own measures and cloth. The house patterns are in it.',
  starting: 'Setting up the workroom …',
} as const;

/** What is on the table now. */
export const homeWords = {
  title: 'On the table',
  empty: 'Nothing is on the table yet.',
  emptyAbout: 'A make is one garment, from plan to cutting: a wearer, a pattern and a cloth.',
  start: 'Start a make',
  goOn: 'Go on with it',
  waits: 'It waits for',
  waitsSize: 'a starting size',
  waitsCloth: 'a cloth',
  waitsCutting: 'the scissors; its sheets can be printed',
  waitsScissors: 'the scissors',
  waitsTight: '{waits}, but it is too tight at the {tight}',
  waitsSewing: 'sewing',
  waitsWearing: 'being worn',
  waitsNothing: 'nothing; it has been set aside',
  others: 'Also begun',
  demo: 'This is the demo workroom: nothing in it is yours, and anything may be changed.',
  of: '{pattern} for {wearer}',
  inCloth: 'in {cloth}',
  noCloth: 'cloth not chosen',
  gone: 'someone no longer kept',
} as const;
