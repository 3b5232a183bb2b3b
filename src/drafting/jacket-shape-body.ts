import { maximumTurn, nearestPlace, pathEnd, pathStart } from '../geometry/index.ts';
import { differenceOf, lengthOf, takenInAtWaist, widthOf } from './jacket-shape-measures.ts';
import type { ShapeCheck } from './shape-check.ts';
import { cornerBetween, edgeBend, inDegrees, landmarkIn, meanOf, runOf } from './shape-garment.ts';
import { leastRadius, slopeOf } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';

const { block, truing, tailoring, sewing } = sources;

const slopeOfShoulder = (garment: Parameters<ShapeCheck['value']>[0], piece: 'front' | 'back'): number => {
  const run = runOf(garment, piece, 'shoulder');
  return inDegrees(slopeOf(pathStart(run), pathEnd(run)));
};

const panels = ['front', 'side-front', 'side-back', 'back'] as const;

/** Panels: how they are shaped over the body and run into one another. */
export const jacketBodyShape: readonly ShapeCheck[] = [
  check(
    'shoulder-slope',
    'Mean slope of front and back shoulder, over a thin pad',
    block,
    'degrees',
    [8, 27],
    (garment) => meanOf(slopeOfShoulder(garment, 'front'), slopeOfShoulder(garment, 'back')),
  ),
  check(
    'front-shoulder-steeper',
    'The front shoulder slopes more than the back, which leaves room for the blade',
    block,
    'degrees',
    [2, 12],
    (garment) => slopeOfShoulder(garment, 'front') - slopeOfShoulder(garment, 'back'),
  ),
  check(
    'princess-over-bust',
    'The front seam passes close outside the bust point',
    block,
    'mm',
    [0, 20],
    (garment) => nearestPlace(runOf(garment, 'front', 'princess'), landmarkIn(garment, 'front', 'bust-point')).distance,
  ),
  check(
    'bust-ease',
    'The side front is eased over the bust by no more than cloth takes without a pucker',
    tailoring,
    'mm',
    [0.5, 5],
    (garment) => differenceOf(garment, 'princess-front'),
  ),
  check('bust-round', 'The side front is rounded over the bust, not pointed', tailoring, 'mm', [50, 1500], (garment) =>
    leastRadius(runOf(garment, 'side-front', 'princess')),
  ),
  check(
    'princess-bends-front',
    'The centre front’s seam bends no more often than the body does: bust, waist, hip',
    truing,
    'count',
    [0, 3],
    (garment) => edgeBend(garment, 'front', 'princess'),
  ),
  check(
    'princess-bends-side-front',
    'The side front’s seam is hollow above the bust, round over it, hollow at the waist, round at the hip',
    truing,
    'count',
    [0, 3],
    (garment) => edgeBend(garment, 'side-front', 'princess'),
  ),
  check(
    'princess-bends-back',
    'The back’s seam is round over the blade, hollow at the waist, round at the hip',
    truing,
    'count',
    [0, 2],
    (garment) => edgeBend(garment, 'back', 'princess'),
  ),
  check(
    'princess-smooth',
    'No kink in any of the four edges of the princess seams',
    truing,
    'degrees',
    [0, 0.5],
    (garment) =>
      Math.max(...panels.map((piece) => inDegrees(Math.abs(maximumTurn(runOf(garment, piece, 'princess')).angle)))),
  ),
  check('front-takes-in', 'What the front princess seam takes in at the waist', block, 'mm', [-12, 48], (garment) =>
    takenInAtWaist(garment, 'front', 'side-front'),
  ),
  check('back-takes-in', 'What the back princess seam takes in at the waist', block, 'mm', [-12, 52], (garment) =>
    takenInAtWaist(garment, 'back', 'side-back'),
  ),
  check(
    'panels-shared-front',
    'Width of the side front over that of the centre front, at the bust',
    tailoring,
    'share',
    [0.65, 2.2],
    (garment) => widthOf(garment, 'side-front', 'bust') / widthOf(garment, 'front', 'bust'),
  ),
  check(
    'panels-shared-back',
    'Width of the side back over that of the centre back, at the waist',
    tailoring,
    'share',
    [0.5, 2.2],
    (garment) => widthOf(garment, 'side-back', 'waist') / widthOf(garment, 'back', 'waist'),
  ),
  check(
    'bust-shared',
    'The side seam hangs at the side: the front has a little more of the bust',
    block,
    'mm',
    [-4, 14],
    (garment) =>
      widthOf(garment, 'front', 'bust') +
      widthOf(garment, 'side-front', 'bust') -
      widthOf(garment, 'side-back', 'bust') -
      widthOf(garment, 'back', 'bust'),
  ),
  smooth(
    'shoulder-over-princess-front',
    'The shoulder is one line across the front princess seam',
    'princess-front',
    0,
  ),
  smooth('shoulder-over-princess-back', 'The shoulder is one line across the back princess seam', 'princess-back', 0),
  smooth('hem-over-princess-front', 'The hem runs on across the front princess seam', 'princess-front', 1),
  smooth('hem-over-princess-back', 'The hem runs on across the back princess seam', 'princess-back', 1),
  smooth('hem-over-side', 'The hem runs on across the side seam', 'side', 1),
  smooth('neck-over-shoulder', 'Front and back neckline run into one another over the shoulder', 'shoulder', 0),
  smooth('armhole-over-shoulder', 'Front and back armhole run into one another over the shoulder', 'shoulder-side', 1),
  smooth('armhole-under-arm', 'Front and back armhole run into one another under the arm', 'side', 0),
  square('hem-square-front', 'front', 'hem', 'front-edge'),
  square('edge-square-neck', 'front', 'front-edge', 'neck-stand'),
  square('hem-square-back', 'back', 'hem', 'centre-back'),
  square('neck-square-back', 'back', 'centre-back', 'neck'),
  square('armhole-square-front', 'side-front', 'shoulder', 'armhole'),
  square('armhole-square-back', 'side-back', 'shoulder', 'armhole'),
  check(
    'neck-on-stand',
    'The neckline runs on along the stand without a corner at the centre',
    truing,
    'degrees',
    [179.5, 180.5],
    (garment) => cornerBetween(garment, 'front', 'neck-stand', 'neck'),
  ),
  check(
    'neck-bends',
    'No stray bend in either neckline',
    block,
    'count',
    [0, 0],
    (garment) => edgeBend(garment, 'front', 'neck') + edgeBend(garment, 'back', 'neck'),
  ),
  check(
    'neck-bend-even',
    'The back neckline turns up to the shoulder without a hook',
    block,
    'mm',
    [10, 120],
    (garment) => leastRadius(runOf(garment, 'back', 'neck')),
  ),
  check(
    'length',
    'From the hip level to the hem',
    tailoring,
    'mm',
    [35, 60],
    (garment) => pathEnd(runOf(garment, 'side-front', 'side')).y - landmarkIn(garment, 'side-front', 'hip-side').y,
  ),
  check(
    'overlap',
    'The stand is as wide beyond the centre as a button is, no more',
    sewing,
    'mm',
    [18, 26],
    (garment) => lengthOf(garment, 'front', 'neck-stand'),
  ),
];
