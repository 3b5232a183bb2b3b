import { edgeLength, finishedGirths, type Garment, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { edgeBend, hollow, inDegrees, landmarkIn, meanOf, runOf, shoulderSlope } from './shape-garment.ts';
import { leastRadius, slopeOf } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';

const { block, fitting, children } = sources;

/** Whole finished girth at a level less the body's. */
const easeAt = (garment: Garment, level: string, body: number): number =>
  (finishedGirths(garment).find((girth) => girth.level === level)?.finished ?? Number.NaN) - body;

const hemRound = (garment: Garment): number =>
  2 * (edgeLength(pieceOf(garment, 'front'), 'hem') + edgeLength(pieceOf(garment, 'back'), 'hem'));

export const raincoatBodyShape: readonly ShapeCheck[] = [
  check(
    'shoulder-slope',
    'Mean slope of front and back shoulder: a dropped shoulder is laid straighter than the body’s',
    children,
    'degrees',
    [8, 22],
    (garment) => meanOf(shoulderSlope(garment, 'front'), shoulderSlope(garment, 'back')),
  ),
  check(
    'front-shoulder-steeper',
    'The front shoulder slopes a little more than the back',
    block,
    'degrees',
    [0.5, 5],
    (garment) => shoulderSlope(garment, 'front') - shoulderSlope(garment, 'back'),
  ),
  check(
    'shoulder-dropped',
    'Neck point to sleeve, less the shoulder’s own length: the seam lies down on the arm',
    children,
    'mm',
    [2, 70],
    (garment, body) => edgeLength(pieceOf(garment, 'front'), 'shoulder') - (body.shoulderLength ?? 0),
  ),
  check(
    'roomy-across',
    'The narrowest place of the back armhole, both halves, less the body’s across back: arms reach forward over a jumper',
    fitting,
    'mm',
    [25, 140],
    (garment, body) => 2 * landmarkIn(garment, 'back', 'across-back').x - (body.acrossBack ?? 0),
  ),
  check(
    'front-armhole-hollower',
    'The front armhole is hollowed deeper than the back',
    block,
    'share',
    [0.003, 0.15],
    (garment) => hollow(garment, 'front') - hollow(garment, 'back'),
  ),
  check(
    'front-narrower-across',
    'At its narrowest the front is narrower than the back',
    block,
    'mm',
    [2, 25],
    (garment) => landmarkIn(garment, 'back', 'across-back').x - landmarkIn(garment, 'front', 'across-front').x,
  ),
  check(
    'armhole-open',
    'The radius of the tightest bend of either armhole: wider than its seam allowance, so that a felled seam lies flat',
    children,
    'mm',
    [15.5, 120],
    (garment) =>
      Math.min(leastRadius(runOf(garment, 'front', 'armhole')), leastRadius(runOf(garment, 'back', 'armhole'))),
  ),
  check('armhole-bends', 'No change of bend in an armhole', block, 'count', [0, 1], (garment) =>
    Math.max(edgeBend(garment, 'front', 'armhole'), edgeBend(garment, 'back', 'armhole')),
  ),
  check(
    'armholes-as-long',
    'The front armhole over the back: nearly as long, for the sleeve is set in flat',
    children,
    'share',
    [0.97, 1.06],
    (garment) => edgeLength(pieceOf(garment, 'front'), 'armhole') / edgeLength(pieceOf(garment, 'back'), 'armhole'),
  ),
  square('armhole-square-front', 'front', 'shoulder', 'armhole'),
  square('armhole-square-back', 'back', 'shoulder', 'armhole'),
  smooth('armhole-over-shoulder', 'Front and back armhole run into one another over the shoulder', 'shoulder', 1),
  smooth('armhole-under-arm', 'Front and back armhole run into one another under the arm', 'side', 0),
  smooth('neck-over-shoulder', 'Front and back neckline run into one another over the shoulder', 'shoulder', 0),
  smooth('hem-over-side', 'The hem runs on level across the side seam', 'side', 1),
  square('neck-square-front', 'front', 'centre-front', 'neck'),
  square('neck-square-back', 'back', 'centre-back', 'neck-centre'),
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
    (garment) =>
      edgeBend(garment, 'front', 'neck') + edgeBend(garment, 'back', 'neck') + edgeBend(garment, 'back', 'neck-centre'),
  ),
  check(
    'neck-opened',
    'The whole neckline over the base of the neck: room for a collar under it, and no rain down it',
    children,
    'share',
    [1.12, 1.4],
    (garment, body) =>
      (2 *
        (edgeLength(pieceOf(garment, 'front'), 'neck') +
          edgeLength(pieceOf(garment, 'back'), 'neck') +
          edgeLength(pieceOf(garment, 'back'), 'neck-centre'))) /
      (body.neckBaseGirth ?? 0),
  ),
  check(
    'bust-ease',
    'Ease at the bust: over a pullover, and into a second winter; more only where wide hips widen the whole coat',
    fitting,
    'mm',
    [195, 420],
    (garment, body) => easeAt(garment, 'bust', body.bustGirth ?? 0),
  ),
  check('hip-ease', 'Ease at the hip: to sit and stride in', fitting, 'mm', [115, 520], (garment, body) =>
    easeAt(garment, 'hip', body.hipGirth ?? 0),
  ),
  check('flare', 'The side slants outward, as an A-line’s does', children, 'degrees', [1.5, 15.5], (garment) => {
    const side = runOf(garment, 'front', 'side')[0];
    return side ? 90 - inDegrees(slopeOf(side.from, side.to)) : Number.NaN;
  }),
  check(
    'hem-strides',
    'Hem over hip girth: a child runs in it',
    children,
    'share',
    [1.2, 2.1],
    (garment, body) => hemRound(garment) / (body.hipGirth ?? 0),
  ),
  check(
    'to-mid-thigh',
    'The hem’s place between knee (0) and crotch (1): to the thigh’s middle, clear of the knee',
    children,
    'share',
    [0.2, 0.85],
    (garment, body) => {
      const hem = landmarkIn(garment, 'back', 'hem-centre').y - landmarkIn(garment, 'back', 'waist-side').y;
      const { waistHeight = 0, kneeHeight = 0, insideLeg = 0 } = body;
      return (waistHeight - hem - kneeHeight) / (insideLeg - kneeHeight);
    },
  ),
];
