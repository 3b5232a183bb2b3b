import { angleOf, distance, pathEnd, pathStart, subtract } from '../geometry/index.ts';
import { dartOf, type Garment, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { edgeBend, inDegrees, landmarkIn, legsApart, lengthIn, notchIn, runOf, turnAtDart } from './shape-garment.ts';
import { bulges, leastRadius } from './shape-measures.ts';
import { check, smooth, sources } from './shape-rules.ts';

const { block, truing } = sources;

/** Where rules of a raglan's shape are from. */
export const raglanRule = 'raglan from a set-in block, as taught in manuals of metric pattern cutting';

type Half = 'front' | 'back';

const raglanApart = (garment: Garment, which: Half): number =>
  Math.abs(lengthIn(garment, 'sleeve', `raglan-${which}`) - lengthIn(garment, which, 'raglan'));

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

const shoulderDart = (garment: Garment) => dartOf(pieceOf(garment, 'sleeve'), 'shoulder');

/** What a cutter looks at in a raglan and its one-piece sleeve with a shoulder dart. */
export const raglanChecks: readonly ShapeCheck[] = [
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
    (garment) => lengthIn(garment, 'back', 'raglan') - lengthIn(garment, 'front', 'raglan'),
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
      lengthIn(garment, 'sleeve', 'raglan-front') -
      notchIn(garment, 'sleeve', 'raglan-front') -
      notchIn(garment, 'front', 'raglan-front'),
  ),
  check(
    'notch-back',
    'The back notch lies as far from the neck on sleeve and body',
    truing,
    'mm',
    [-0.1, 0.1],
    (garment) => notchIn(garment, 'sleeve', 'raglan-back') - notchIn(garment, 'back', 'raglan-back'),
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
    (garment) =>
      lengthIn(garment, 'sleeve', 'neck') /
      (lengthIn(garment, 'front', 'neck') + lengthIn(garment, 'sleeve', 'neck') + lengthIn(garment, 'back', 'neck')),
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
    Math.abs(lengthIn(garment, 'sleeve', 'underarm-front') - lengthIn(garment, 'sleeve', 'underarm-back')),
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
