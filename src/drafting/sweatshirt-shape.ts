import { angleOf, distance, pathBounds, pathEnd, pathStart, subtract } from '../geometry/index.ts';
import { dartOf, edgeLength, type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { edgeBend, inDegrees, landmarkIn, legsApart, runOf, turnAtDart } from './shape-garment.ts';
import { bulges, leastRadius } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';
import { bands, type SweatshirtView, sweatStretch } from './sweatshirt-plan.ts';

const { block, truing, fitting, knit } = sources;

const raglanRule = 'raglan from a set-in block, as taught in manuals of metric pattern cutting';

type Half = 'front' | 'back';

const length = (garment: Garment, piece: string, edge: string): number => edgeLength(pieceOf(garment, piece), edge);

const sum = (garment: Garment, piece: string, edges: readonly string[]): number =>
  edges.reduce((all, edge) => all + length(garment, piece, edge), 0);

/** The whole neckline, and the whole band along it. */
const neckline = (garment: Garment): number =>
  2 * (length(garment, 'front', 'neck') + length(garment, 'sleeve', 'neck') + length(garment, 'back', 'neck'));

const neckBand = (garment: Garment): number =>
  2 * sum(garment, 'neck-band', ['neck-front', 'neck-sleeve', 'neck-back']);

const hemBand = (garment: Garment): number => 2 * sum(garment, 'hem-band', ['hem-front', 'hem-back']);

const hem = (garment: Garment): number => 2 * (length(garment, 'front', 'hem') + length(garment, 'back', 'hem'));

const raglanApart = (garment: Garment, which: Half): number =>
  Math.abs(length(garment, 'sleeve', `raglan-${which}`) - length(garment, which, 'raglan'));

/** How steeply the straight from neck to underarm falls, degrees. */
const raglanSlope = (garment: Garment, which: Half): number => {
  const raglan = runOf(garment, which, 'raglan');
  return inDegrees(angleOf(subtract(pathEnd(raglan), pathStart(raglan))));
};

/** How far the raglan rises above the straight from the neck to its notch. */
const raglanRound = (garment: Garment, which: Half): number => bulges(runOf(garment, which, 'raglan').slice(0, 1)).left;

const raglanHollow = (garment: Garment, which: Half): number => bulges(runOf(garment, which, 'raglan')).right;

const worst = (of: (which: Half) => number, pick: (...values: number[]) => number): number =>
  pick(of('front'), of('back'));

const neckDepth = (garment: Garment, piece: Half): number => {
  const { minY, maxY } = pathBounds(runOf(garment, piece, 'neck'));
  return maxY - minY;
};

const bustRound = (garment: Garment): number =>
  2 * (levelWidth(pieceOf(garment, 'front'), 'bust') + levelWidth(pieceOf(garment, 'back'), 'bust'));

/** How far the side strays at the waist from the straight between underarm and hip. */
const drawnIn = (garment: Garment, piece: Half): number => {
  const [underarm, waist, hip] = ['underarm', 'waist-side', 'hip-side'].map((id) => landmarkIn(garment, piece, id));
  if (!underarm || !waist || !hip) return Number.NaN;
  return underarm.x + ((hip.x - underarm.x) * (waist.y - underarm.y)) / (hip.y - underarm.y) - waist.x;
};

const notchAt = (garment: Garment, piece: string, id: string): number => {
  const found = pieceOf(garment, piece).notches.find((notch) => notch.id === id);
  return found ? found.at * length(garment, piece, found.edge) : Number.NaN;
};

const shoulderDart = (garment: Garment) => dartOf(pieceOf(garment, 'sleeve'), 'shoulder');

const sleeveEnds = (garment: Garment): number =>
  landmarkIn(garment, 'sleeve', 'hem-centre').y - landmarkIn(garment, 'sleeve', 'shoulder-point').y;

/** Checks of raglan and sleeve, whatever the view. */
const raglanChecks: readonly ShapeCheck[] = [
  check(
    'raglan-front-alike',
    'Body and sleeve are as long along the front raglan',
    raglanRule,
    'mm',
    [0, 0.1],
    (garment) => raglanApart(garment, 'front'),
  ),
  check(
    'raglan-back-alike',
    'Body and sleeve are as long along the back raglan',
    raglanRule,
    'mm',
    [0, 0.1],
    (garment) => raglanApart(garment, 'back'),
  ),
  check(
    'raglan-slope',
    'The raglan runs from neck to underarm slantwise, neither level nor upright',
    raglanRule,
    'degrees',
    [38, 66],
    (garment) => raglanSlope(garment, 'front'),
  ),
  check(
    'raglan-slopes-alike',
    'Front and back raglan slant much alike',
    raglanRule,
    'degrees',
    [-2, 12],
    (garment) => raglanSlope(garment, 'back') - raglanSlope(garment, 'front'),
  ),
  check(
    'raglan-back-longer',
    'The back raglan is the longer: its neck is higher',
    raglanRule,
    'mm',
    [5, 45],
    (garment) => length(garment, 'back', 'raglan') - length(garment, 'front', 'raglan'),
  ),
  check(
    'raglan-bends',
    'The body’s raglan is round above its notch and hollow below, and nothing else',
    raglanRule,
    'count',
    [1, 1],
    (garment) => worst((which) => edgeBend(garment, which, 'raglan'), Math.max),
  ),
  check(
    'raglan-slightly-round',
    'How far the raglan rises above the straight from the neck to its notch: slightly',
    raglanRule,
    'mm',
    [2, 20],
    (garment) => worst((which) => raglanRound(garment, which), Math.max),
  ),
  check('raglan-hollow', 'How far the raglan is hollowed next to the underarm', raglanRule, 'mm', [2, 30], (garment) =>
    worst((which) => raglanHollow(garment, which), Math.min),
  ),
  check(
    'raglan-open',
    'The radius of the tightest bend of the body’s raglan: no pocket at the underarm, and wider than the allowance',
    block,
    'mm',
    [9, 120],
    (garment) => worst((which) => leastRadius(runOf(garment, which, 'raglan')), Math.min),
  ),
  check(
    'sleeve-raglan-bends',
    'The sleeve’s raglan is hollow all along, without a wave',
    raglanRule,
    'count',
    [0, 0],
    (garment) => worst((which) => edgeBend(garment, 'sleeve', `raglan-${which}`), Math.max),
  ),
  check(
    'sleeve-raglan-open',
    'The radius of the tightest bend of the sleeve’s raglan',
    raglanRule,
    'mm',
    [10, 200],
    (garment) => worst((which) => leastRadius(runOf(garment, 'sleeve', `raglan-${which}`)), Math.min),
  ),
  check(
    'notch-front',
    'The front notch lies as far from the neck on sleeve and body',
    truing,
    'mm',
    [-0.1, 0.1],
    (garment) =>
      length(garment, 'sleeve', 'raglan-front') -
      notchAt(garment, 'sleeve', 'raglan-front') -
      notchAt(garment, 'front', 'raglan-front'),
  ),
  check(
    'notch-back',
    'The back notch lies as far from the neck on sleeve and body',
    truing,
    'mm',
    [-0.1, 0.1],
    (garment) => notchAt(garment, 'sleeve', 'raglan-back') - notchAt(garment, 'back', 'raglan-back'),
  ),
  smooth('neck-over-raglan-front', 'The neckline runs on from front to sleeve', 'raglan-front', 1),
  smooth('neck-over-raglan-back', 'The neckline runs on from back to sleeve', 'raglan-back', 0),
  smooth('raglan-under-arm', 'Front and back raglan run into one another under the arm', 'side', 0),
  smooth('sleeve-under-arm', 'Both raglan edges of the sleeve run into one another under the arm', 'underarm', 0, 4),
  check(
    'neck-over-shoulder',
    'The sleeve’s neck turns little where the shoulder dart is stitched',
    truing,
    'degrees',
    [0, 6],
    (garment) => turnAtDart(garment, 'sleeve', 'neck', 'shoulder'),
  ),
  check('dart-legs', 'Legs of the shoulder dart are equal', block, 'mm', [0, 0.1], (garment) =>
    legsApart(pieceOf(garment, 'sleeve'), 'shoulder'),
  ),
  check(
    'dart-angle',
    'The shoulder dart follows the slope of the shoulder without standing away',
    raglanRule,
    'degrees',
    [3, 26],
    (garment) => inDegrees(shoulderDart(garment).angle),
  ),
  check(
    'dart-over-shoulder',
    'The shoulder dart runs out over the round of the shoulder, a little beyond the shoulder point',
    raglanRule,
    'mm',
    [8, 30],
    (garment) => shoulderDart(garment).point.y - landmarkIn(garment, 'sleeve', 'shoulder-point').y,
  ),
  check('dart-long', 'The shoulder dart is as long as a shoulder', raglanRule, 'mm', [85, 210], (garment) => {
    const { point, legs } = shoulderDart(garment);
    return distance(point, legs[0]);
  }),
  check(
    'sleeve-neck',
    'How much of half the neckline the sleeve has',
    raglanRule,
    'share',
    [0.2, 0.36],
    (garment) => (2 * length(garment, 'sleeve', 'neck')) / neckline(garment),
  ),
  check(
    'sleeve-shared',
    'Front share of the sleeve at the underarm line: half or a little less',
    raglanRule,
    'share',
    [0.45, 0.51],
    (garment) => {
      const front = -landmarkIn(garment, 'sleeve', 'underarm-front').x;
      return front / (front + landmarkIn(garment, 'sleeve', 'underarm-back').x);
    },
  ),
  check('underarm-seams', 'Both underarm seams of the sleeve are equal', raglanRule, 'mm', [0, 0.1], (garment) =>
    Math.abs(length(garment, 'sleeve', 'underarm-front') - length(garment, 'sleeve', 'underarm-back')),
  ),
  check(
    'underarm-bends',
    'No stray bend in the underarm seam',
    raglanRule,
    'count',
    [0, 0],
    (garment) => edgeBend(garment, 'sleeve', 'underarm-front') + edgeBend(garment, 'sleeve', 'underarm-back'),
  ),
  check(
    'underarms-level',
    'Both underarms of the sleeve lie as low',
    raglanRule,
    'mm',
    [-0.1, 0.1],
    (garment) => landmarkIn(garment, 'sleeve', 'underarm-front').y - landmarkIn(garment, 'sleeve', 'underarm-back').y,
  ),
  check(
    'sleeve-lies-flat',
    'Shoulder point to underarm line over the sleeve’s width there: between a shirt’s and a set-in sleeve’s',
    raglanRule,
    'share',
    [0.24, 0.48],
    (garment) =>
      landmarkIn(garment, 'sleeve', 'underarm-front').y /
      (landmarkIn(garment, 'sleeve', 'underarm-back').x - landmarkIn(garment, 'sleeve', 'underarm-front').x),
  ),
];

const bodyChecks: readonly ShapeCheck[] = [
  square('neck-square-front', 'front', 'centre-front', 'neck'),
  square('neck-square-back', 'back', 'centre-back', 'neck'),
  square('hem-square-front', 'front', 'hem', 'centre-front'),
  square('hem-square-back', 'back', 'hem', 'centre-back'),
  square('hem-square-side-front', 'front', 'side', 'hem'),
  square('hem-square-side-back', 'back', 'side', 'hem'),
  check(
    'neck-bends',
    'No stray bend in either neckline',
    block,
    'count',
    [0, 0],
    (garment) => edgeBend(garment, 'front', 'neck') + edgeBend(garment, 'back', 'neck'),
  ),
  check(
    'neck-deeper-in-front',
    'Depth of the front neck over that of the back, what is the body’s',
    block,
    'share',
    [2.5, 14],
    (garment) => neckDepth(garment, 'front') / neckDepth(garment, 'back'),
  ),
  check('side-bends', 'A side seam bends at most once the other way', block, 'count', [0, 1], (garment) =>
    worst((which) => edgeBend(garment, which, 'side'), Math.max),
  ),
  check('side-straight', 'The side hangs nearly straight from underarm to hip', knit, 'mm', [-16, 16], (garment) =>
    drawnIn(garment, 'front'),
  ),
  check('sides-alike', 'Front and back side seam are one curve', knit, 'mm', [0, 0.1], (garment) =>
    Math.abs(drawnIn(garment, 'front') - drawnIn(garment, 'back')),
  ),
  check(
    'as-wide',
    'Front and back are as wide at the bust',
    knit,
    'mm',
    [-0.1, 0.1],
    (garment) => levelWidth(pieceOf(garment, 'front'), 'bust') - levelWidth(pieceOf(garment, 'back'), 'bust'),
  ),
  check(
    'roomy',
    'Ease at the bust: roomy',
    fitting,
    'mm',
    [100, 140],
    (garment, body) => bustRound(garment) - (body.bustGirth ?? 0),
  ),
  check(
    'armhole-deeper',
    'The underarm below the arm crease, from the lowered edge of the back neck: deeper than a set-in tee’s, which hardly clears it',
    raglanRule,
    'mm',
    [0, 110],
    (garment, body) =>
      landmarkIn(garment, 'back', 'underarm').y - landmarkIn(garment, 'back', 'nape').y - (body.armholeDepth ?? 0),
  ),
  check(
    'arm-clears',
    'The sleeve at the upper arm less the arm',
    fitting,
    'mm',
    [60, 220],
    (garment, body) => levelWidth(pieceOf(garment, 'sleeve'), 'upper-arm') - (body.upperArmGirth ?? 0),
  ),
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
          (garment, body) => length(garment, 'sleeve', 'hem') - (body.handGirth ?? 0),
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
          (garment) => length(garment, 'cuff', 'sleeve') / length(garment, 'sleeve', 'hem'),
        ),
        check(
          'hand-passes',
          'The cuff stretched by what the cloth has to give, less the hand',
          'every ring that must be passed: cuff × (1 + stretch) ≥ hand girth',
          'mm',
          [0, 60],
          (garment, body) => length(garment, 'cuff', 'sleeve') * (1 + sweatStretch) - (body.handGirth ?? 0),
        ),
        check(
          'cuff-round-wrist',
          'The cuff over the wrist: it holds without binding',
          fitting,
          'share',
          [1.05, 1.45],
          (garment, body) => length(garment, 'cuff', 'sleeve') / (body.wristGirth ?? 0),
        ),
        smooth('sleeve-hem-over-seam', 'The sleeve’s end turns little across its seam', 'underarm', 1, 20),
      ];

const pocketChecks: readonly ShapeCheck[] = [
  check(
    'pocket-opening',
    'The pocket’s opening less half the hand: it goes in flat',
    sources.sewing,
    'mm',
    [30, 60],
    (garment, body) => length(garment, 'pocket', 'opening') - (body.handGirth ?? 0) / 2,
  ),
  check(
    'pocket-inside',
    'The pocket’s side lies well inside the side seam',
    sources.sewing,
    'mm',
    [30, 260],
    (garment) => {
      const { maxX } = pathBounds(pieceOf(garment, 'pocket').runs.flatMap(({ path }) => path));
      return Math.min(landmarkIn(garment, 'front', 'hip-side').x, landmarkIn(garment, 'front', 'waist-side').x) - maxX;
    },
  ),
  check('pocket-below-bust', 'The pocket’s top lies below the bust', sources.sewing, 'mm', [20, 400], (garment) => {
    const place = pieceOf(garment, 'front').lines.find(({ id }) => id === 'pocket');
    return place ? pathBounds(place.path).minY - landmarkIn(garment, 'front', 'bust-point').y : Number.NaN;
  }),
];

/** What a cutter looks at before she would cut from the sweatshirt, by measuring the drafted pieces alone. */
export const sweatshirtShape = (view: SweatshirtView): readonly ShapeCheck[] => [
  ...raglanChecks,
  ...bodyChecks,
  ...endChecks(view),
  ...(view === 'pocket' ? pocketChecks : []),
];
