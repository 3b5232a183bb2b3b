import { pathEnd, pathStart } from '../geometry/index.ts';
import { edgeLength, type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { apart } from './shape-measures.ts';
import { check, sources, square } from './shape-rules.ts';
import { legShape } from './trouser-shape.ts';
import { band, elasticShare } from './trousers-pieces.ts';
import type { TrouserView } from './trousers-plan.ts';

const { trousers, sewing, fitting, truing } = sources;

const length = (garment: Garment, piece: string, edge: string): number => edgeLength(pieceOf(garment, piece), edge);

/** Half the front band, and half the back band as cut and as gathered. */
const bandOf = (garment: Garment) => ({
  front: length(garment, 'front-waistband', 'left'),
  cut: length(garment, 'back-waistband', 'left'),
  gathered: levelWidth(pieceOf(garment, 'back-waistband'), 'waist') / 2,
});

/** How far the side is drawn in from hip to waist. */
const drawnIn = (garment: Garment, half: 'front' | 'back'): number =>
  landmarkIn(garment, half, 'hip-side').x - landmarkIn(garment, half, 'waist-side').x;

/** What is opened to get in: both bands laid flat, and twice the zip, which runs through the band. */
const waistOpened = (garment: Garment): number => {
  const { front, cut } = bandOf(garment);
  return 2 * (front + cut) + 2 * (length(garment, 'front', 'side-upper') + band.width);
};

/** What a cutter looks at before she would cut from the trousers. */
export const trousersShape = (view: TrouserView): readonly ShapeCheck[] => [
  ...legShape({ crotch: [15, 66], rise: [6, 60], thigh: [20, 110], hemTurn: view === 'straight' ? 4 : 14 }),
  check(
    'front-eased',
    'The front waist is longer than its band by what is eased on',
    sewing,
    'mm',
    [2, 12],
    (garment) => length(garment, 'front', 'waist') - bandOf(garment).front,
  ),
  check(
    'back-gathered',
    'The back band as cut over its length on the elastic',
    sewing,
    'share',
    [1.02, 1.92],
    (garment) => {
      const { cut, gathered } = bandOf(garment);
      return cut / gathered;
    },
  ),
  check(
    'elastic-stretches',
    'The back band laid flat over the elastic cut for it: what elastic stretches to without strain',
    sewing,
    'share',
    [1.1, 2.1],
    (garment) => {
      const { cut, gathered } = bandOf(garment);
      return cut / (elasticShare * gathered);
    },
  ),
  check(
    'waist-ease',
    'The waist, the back band gathered as worn, less the body’s',
    fitting,
    'mm',
    [10, 60],
    (garment, body) => {
      const { front, gathered } = bandOf(garment);
      return 2 * (front + gathered) - (body.waistGirth ?? Number.NaN);
    },
  ),
  check(
    'hip-passes',
    'The waist opened at the zip, the back laid flat, less the hip that has to pass it',
    'every ring that must be passed: waist laid flat + twice the zip ≥ hip girth + 20',
    'mm',
    [20, 900],
    (garment, body) => waistOpened(garment) - (body.hipGirth ?? Number.NaN),
  ),
  check(
    'zip-below-hip',
    'The zip ends below the hip, so that what lies below it is as wide as the hip',
    sewing,
    'mm',
    [5, 90],
    (garment) => pathEnd(runOf(garment, 'front', 'side-upper')).y - landmarkIn(garment, 'front', 'hip-side').y,
  ),
  check(
    'front-share',
    'The flat front’s share of the finished waist: the side seam stays at the side',
    trousers,
    'share',
    [0.44, 0.72],
    (garment) => {
      const { front, gathered } = bandOf(garment);
      return front / (front + gathered);
    },
  ),
  check(
    'front-side-drawn-in',
    'The front’s side is drawn in no more than a flat front can be without a dart',
    trousers,
    'mm',
    [-76, 43],
    (garment) => drawnIn(garment, 'front'),
  ),
  check(
    'back-side-straight',
    'The back’s side goes up nearly straight, its fullness gathered',
    trousers,
    'mm',
    [-46, 25],
    (garment) => drawnIn(garment, 'back'),
  ),
  check('mouth', 'The pocket’s mouth: a hand goes in aslant', sewing, 'mm', [140, 260], (garment) => {
    const piece = pieceOf(garment, 'front');
    const at = piece.notches.find(({ id }) => id === 'mouth')?.at ?? Number.NaN;
    return (1 - at) * edgeLength(piece, 'side-upper');
  }),
  check(
    'pocket-copies-side',
    'The bag’s side is the front’s',
    truing,
    'mm',
    [0, 0.01],
    (garment) => apart(runOf(garment, 'pocket', 'side'), runOf(garment, 'front', 'side-upper')).most,
  ),
  check(
    'pocket-at-waist',
    'The bag’s top lies on the front’s waist and ends before the centre',
    truing,
    'share',
    [0.38, 0.96],
    (garment) => {
      const centre = pathStart(runOf(garment, 'front', 'waist'));
      const side = pathEnd(runOf(garment, 'front', 'waist'));
      return (side.x - pathStart(runOf(garment, 'pocket', 'waist')).x) / (side.x - centre.x);
    },
  ),
  check('pocket-deep', 'The bag reaches below its mouth', sewing, 'mm', [80, 130], (garment) => {
    const bag = runOf(garment, 'pocket', 'bag');
    return Math.max(...bag.map(({ to }) => to.y)) - pathStart(bag).y;
  }),
  square('band-square-front', 'front-waistband', 'end-outer', 'left'),
  square('band-square-back', 'back-waistband', 'end-outer', 'right'),
];
