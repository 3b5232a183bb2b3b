/**
 * The house's import rule: a room imports only rooms listed above it, and only through their index.
 * The order is the one of docs/house.md; the planted violation in test/house proves that the rule bites.
 */
const rooms = [
  'units',
  'words',
  'geometry',
  'body',
  'cloth',
  'pattern',
  'drafting',
  'fit',
  'alter',
  'lay',
  'draw',
  'caution',
  'make',
  'wardrobe',
  'roundup',
  'formats',
  'jobs',
  'store',
  'server',
  'cli',
];
const pure = rooms.slice(0, rooms.indexOf('store'));
const tests = '\\.test\\.ts$|/testing/|/golden/';

module.exports = {
  forbidden: [
    ...rooms.map((room, place) => ({
      name: `${room}-looks-only-up`,
      severity: 'error',
      from: { path: `^src/${room}/`, pathNot: tests },
      to: { path: `^src/(${rooms.slice(place + 1).join('|') || 'nothing-below'})/` },
    })),
    ...rooms.map((room) => ({
      name: `${room}-through-its-index`,
      severity: 'error',
      from: { path: '^(src|web|demo)/', pathNot: `^src/${room}/|${tests}` },
      // types.ts of a room may be named directly by the room below it, where going through the index would be a circle.
      to: { path: `^src/${room}/(?!index\\.ts$|types\\.ts$|wearer\\.ts$|host-node\\.ts$|testing/)` },
    })),
    {
      name: 'pure-rooms-touch-nothing',
      severity: 'error',
      from: { path: `^src/(${pure.join('|')})/`, pathNot: `${tests}|host-node` },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-circles',
      severity: 'error',
      from: { path: '^src' },
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'oracle-judges-alone',
      severity: 'error',
      from: { path: '^test/oracle/' },
      to: { path: '^(src|web|demo)/' },
    },
    {
      name: 'src-knows-no-page',
      severity: 'error',
      from: { path: '^src/', pathNot: tests },
      to: { path: '^(web|test|bench)/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.mjs'] },
  },
};
