import type { Garment } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { landmarkIn, lengthIn } from './shape-garment.ts';
import { check, smooth, sources } from './shape-rules.ts';
import { bands, type SweatshirtView, sweatStretch } from './sweatshirt-plan.ts';

const { block, fitting, knit } = sources;

const sum = (garment: Garment, piece: string, edges: readonly string[]): number =>
  edges.reduce((all, edge) => all + lengthIn(garment, piece, edge), 0);

/** The whole neckline, and the whole band along it. */
const neckline = (garment: Garment): number =>
  2 * (lengthIn(garment, 'front', 'neck') + lengthIn(garment, 'sleeve', 'neck') + lengthIn(garment, 'back', 'neck'));

const neckBand = (garment: Garment): number =>
  2 * sum(garment, 'neck-band', ['neck-front', 'neck-sleeve', 'neck-back']);

const hemBand = (garment: Garment): number => 2 * sum(garment, 'hem-band', ['hem-front', 'hem-back']);

const hem = (garment: Garment): number => 2 * (lengthIn(garment, 'front', 'hem') + lengthIn(garment, 'back', 'hem'));

const sleeveEnds = (garment: Garment): number =>
  landmarkIn(garment, 'sleeve', 'hem-centre').y - landmarkIn(garment, 'sleeve', 'shoulder-point').y;

/** Checks of neck band and hem band. */
const bandChecks: readonly ShapeCheck[] = [
  check(
    'band-share',
    'The neck band over the neckline it is stretched on to',
    knit,
    'share',
    [bands.neck.least, bands.neck.most],
    (garment) => neckBand(garment) / neckline(garment),
  ),
  check(
    'band-round-neck',
    'The band, unstretched, over the base of the neck: it lies outside it',
    fitting,
    'share',
    [1, 1.6],
    (garment, body) => neckBand(garment) / (body.neckBaseGirth ?? 0),
  ),
  check(
    'head-passes',
    'The neck band stretched by what the cloth has to give, less the head',
    'every ring that must be passed: band × (1 + stretch) ≥ head girth',
    'mm',
    [0, 120],
    (garment, body) => neckBand(garment) * (1 + sweatStretch) - (body.headGirth ?? 0),
  ),
  check(
    'hem-band-share',
    'The hem band over the hem it is stretched on to',
    knit,
    'share',
    [bands.hem.least, bands.hem.most],
    (garment) => hemBand(garment) / hem(garment),
  ),
  check(
    'hem-band-at-hip',
    'How far the hem band is stretched round the hip: less than three tenths of what the cloth has to give',
    'extension in wear u = body ÷ garment − 1, at most 0.3 of the stretch',
    'share',
    [-0.3, 0.3 * sweatStretch],
    (garment, body) => (body.hipGirth ?? 0) / hemBand(garment) - 1,
  ),
];

/** Checks of the sleeve's end. */
const endChecks = (view: SweatshirtView): readonly ShapeCheck[] =>
  view === 'three-quarter'
    ? [
        check(
          'sleeve-length',
          'Shoulder point to hem over the length of the arm: below the elbow',
          block,
          'share',
          [0.62, 0.82],
          (garment, body) => sleeveEnds(garment) / (body.armLength ?? 0),
        ),
        check(
          'hem-passes-hand',
          'The sleeve’s hem less the girth of the hand',
          fitting,
          'mm',
          [10, 220],
          (garment, body) => lengthIn(garment, 'sleeve', 'hem') - (body.handGirth ?? 0),
        ),
        smooth('sleeve-hem-over-seam', 'The sleeve’s hem turns little across its seam', 'underarm', 1, 20),
      ]
    : [
        check(
          'sleeve-length',
          'Shoulder point to cuff seam, and the cuff, over the length of the arm',
          block,
          'share',
          [0.95, 1.08],
          (garment, body) => (sleeveEnds(garment) + bands.cuff.width) / (body.armLength ?? 0),
        ),
        check(
          'cuff-share',
          'The cuff over the sleeve it is stretched on to',
          knit,
          'share',
          [bands.cuff.least, bands.cuff.most],
          (garment) => lengthIn(garment, 'cuff', 'sleeve') / lengthIn(garment, 'sleeve', 'hem'),
        ),
        check(
          'hand-passes',
          'The cuff stretched by what the cloth has to give, less the hand',
          'every ring that must be passed: cuff × (1 + stretch) ≥ hand girth',
          'mm',
          [0, 60],
          (garment, body) => lengthIn(garment, 'cuff', 'sleeve') * (1 + sweatStretch) - (body.handGirth ?? 0),
        ),
        check(
          'cuff-round-wrist',
          'The cuff over the wrist: it holds without binding',
          fitting,
          'share',
          [1.05, 1.45],
          (garment, body) => lengthIn(garment, 'cuff', 'sleeve') / (body.wristGirth ?? 0),
        ),
        smooth('sleeve-hem-over-seam', 'The sleeve’s end turns little across its seam', 'underarm', 1, 20),
      ];

/** What a cutter looks at in the bands of the sweatshirt, and at the ends of its sleeves. */
export const sweatBandChecks = (view: SweatshirtView): readonly ShapeCheck[] => [...bandChecks, ...endChecks(view)];
