import { distance, pathBounds } from '../geometry/index.ts';
import { dartOf, edgeLength, levelWidth, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import {
  armholeHeight,
  capHeight,
  capHollow,
  cornerBetween,
  edgeBend,
  headEase,
  hollow,
  landmarkIn,
  legsApart,
  meanOf,
  runOf,
  shoulderSlope,
  turnAcross,
  turnAtDart,
} from './shape-garment.ts';
import { apart, asideOf, leastRadius } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';
import { moreInFront } from './usual-cup.ts';

const { block, truing, sleeve, fitting } = sources;

/**
 * What a cutter looks at before she would cut from the blouse, by measuring the drafted pieces alone.
 */
export const blouseShape: readonly ShapeCheck[] = [
  check('shoulder-slope', 'Mean slope of front and back shoulder', block, 'degrees', [12, 28], (garment) =>
    meanOf(shoulderSlope(garment, 'front'), shoulderSlope(garment, 'back')),
  ),
  check(
    'front-shoulder-steeper',
    'The front shoulder slopes more than the back',
    block,
    'degrees',
    [1, 8],
    (garment) => shoulderSlope(garment, 'front') - shoulderSlope(garment, 'back'),
  ),
  check(
    'front-armhole-hollower',
    'The front armhole is hollowed deeper than the back',
    block,
    'share',
    [0.01, 0.2],
    (garment) => hollow(garment, 'front') - hollow(garment, 'back'),
  ),
  check(
    'front-armhole-lower',
    'From shoulder point to underarm the front armhole is less high than the back, the more the fuller the bust',
    block,
    'mm',
    [0, 38],
    (garment) => armholeHeight(garment, 'back') - armholeHeight(garment, 'front'),
  ),
  check(
    'back-armhole-longer',
    'The back armhole is as long as the front or longer: the arm hangs and reaches forward',
    block,
    'mm',
    [-8, 28],
    (garment) => edgeLength(pieceOf(garment, 'back'), 'armhole') - edgeLength(pieceOf(garment, 'front'), 'armhole'),
  ),
  check(
    'bust-shared',
    'The side seam hangs at the side: front and back share the bust but for what the cup is larger, which is the front’s',
    block,
    'mm',
    [-4, 14],
    (garment, body) =>
      levelWidth(pieceOf(garment, 'front'), 'bust') - levelWidth(pieceOf(garment, 'back'), 'bust') - moreInFront(body),
  ),
  check(
    'armhole-bend-even',
    'No bend of either armhole is as tight as its seam allowance is wide',
    block,
    'mm',
    [16, Number.POSITIVE_INFINITY],
    (garment) =>
      Math.min(leastRadius(runOf(garment, 'front', 'armhole')), leastRadius(runOf(garment, 'back', 'armhole'))),
  ),
  square('armhole-square-front', 'front', 'shoulder', 'armhole'),
  square('armhole-square-back', 'back', 'shoulder', 'armhole'),
  smooth('armhole-over-shoulder', 'Front and back armhole run into one another over the shoulder', 'shoulder', 1),
  smooth('armhole-under-arm', 'Front and back armhole run into one another under the arm', 'side', 0),
  smooth('neck-over-shoulder', 'Front and back neckline run into one another over the shoulder', 'shoulder', 0),
  smooth('cap-under-arm', 'Both halves of the cap run into one another under the arm', 'underarm', 0),
  smooth('hem-over-side', 'The hem runs on across the side seam', 'side', 1),
  check('sleeve-hem-over-seam', 'The sleeve hem turns little across its seam', truing, 'degrees', [0, 9], (garment) =>
    turnAcross(garment, 'underarm', 1),
  ),
  square('neck-square-front', 'front', 'centre-front', 'neck'),
  square('neck-square-back', 'back', 'centre-back', 'neck'),
  square('hem-square-front', 'front', 'hem', 'centre-front'),
  square('hem-square-back', 'back', 'hem', 'centre-back'),
  square('hem-square-side-front', 'front', 'side', 'hem'),
  square('hem-square-side-back', 'back', 'side', 'hem'),
  check(
    'cap-top-smooth',
    'Both halves of the cap are one curve at the top',
    sleeve,
    'degrees',
    [179.5, 180.5],
    (garment) => cornerBetween(garment, 'sleeve', 'cap-front', 'cap-back'),
  ),
  check(
    'cap-height',
    'Cap height over the mean height of the armholes',
    sleeve,
    'share',
    [0.6, 0.85],
    (garment) => capHeight(garment) / meanOf(armholeHeight(garment, 'front'), armholeHeight(garment, 'back')),
  ),
  check(
    'cap-front-hollower',
    'The cap is hollower in front than behind',
    sleeve,
    'mm',
    [1, 12],
    (garment) => capHollow(garment, 'cap-front') - capHollow(garment, 'cap-back'),
  ),
  check(
    'cap-bends',
    'Each half of the cap changes from hollow to round once',
    sleeve,
    'count',
    [2, 2],
    (garment) => edgeBend(garment, 'sleeve', 'cap-front') + edgeBend(garment, 'sleeve', 'cap-back'),
  ),
  check('head-ease', 'Sleeve-head ease for general woven cloth', sleeve, 'mm', [15, 35], headEase),
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
    [11, 90],
    (garment) => leastRadius(runOf(garment, 'back', 'neck')),
  ),
  check('armhole-bends', 'At most one change of bend in an armhole', block, 'count', [0, 1], (garment) =>
    Math.max(edgeBend(garment, 'front', 'armhole'), edgeBend(garment, 'back', 'armhole')),
  ),
  check('dart-legs', 'Legs of both darts are equal', block, 'mm', [0, 0.1], (garment) =>
    Math.max(legsApart(pieceOf(garment, 'front'), 'bust'), legsApart(pieceOf(garment, 'back'), 'shoulder')),
  ),
  check('dart-short', 'The bust dart ends short of the bust point', block, 'mm', [20, 50], (garment) =>
    distance(dartOf(pieceOf(garment, 'front'), 'bust').point, landmarkIn(garment, 'front', 'bust-point')),
  ),
  check('dart-aims', 'The middle of the bust dart aims at the bust point', block, 'mm', [0, 1], (garment) => {
    const { point, legs } = dartOf(pieceOf(garment, 'front'), 'bust');
    const mouth = { x: meanOf(legs[0].x, legs[1].x), y: meanOf(legs[0].y, legs[1].y) };
    return asideOf(landmarkIn(garment, 'front', 'bust-point'), point, mouth);
  }),
  check(
    'dart-intake',
    'The bust dart takes in neither a sliver nor a gore: a wider one would be split in two',
    block,
    'mm',
    [20, 65],
    (garment) => dartOf(pieceOf(garment, 'front'), 'bust').intake,
  ),
  check(
    'side-smooth-at-dart',
    'The side seam is smooth where the bust dart is stitched',
    truing,
    'degrees',
    [0, 2],
    (garment) => turnAtDart(garment, 'front', 'side', 'bust'),
  ),
  check(
    'shoulder-straight-at-dart',
    'The back shoulder is straight where its dart is stitched',
    truing,
    'degrees',
    [0, 2],
    (garment) => turnAtDart(garment, 'back', 'shoulder', 'shoulder'),
  ),
  check(
    'neck-wider-behind',
    'The back neck is as wide as the front or a little wider',
    block,
    'mm',
    [0, 8],
    (garment) => landmarkIn(garment, 'back', 'neck-point').x - landmarkIn(garment, 'front', 'neck-point').x,
  ),
  check(
    'neck-deeper-in-front',
    'Depth of the front neck over that of the back',
    block,
    'share',
    [2.5, 6],
    (garment) => {
      const depth = (piece: string) => {
        const { minY, maxY } = pathBounds(runOf(garment, piece, 'neck'));
        return maxY - minY;
      };
      return depth('front') / depth('back');
    },
  ),
  check(
    'neck-round',
    'The finished neckline over the base of the neck',
    fitting,
    'share',
    [1, 1.2],
    (garment, body) =>
      (2 * (edgeLength(pieceOf(garment, 'front'), 'neck') + edgeLength(pieceOf(garment, 'back'), 'neck'))) /
      (body.neckBaseGirth ?? 0),
  ),
  check(
    'bust-point-inside',
    'The bust point lies well inside the across-front line',
    block,
    'mm',
    [30, 140],
    (garment) => landmarkIn(garment, 'front', 'across-front').x - landmarkIn(garment, 'front', 'bust-point').x,
  ),
  check(
    'shoulder-outside-across',
    'The shoulder point stands outside both across lines',
    block,
    'mm',
    [5, 45],
    (garment) =>
      Math.min(
        landmarkIn(garment, 'front', 'shoulder-point').x - landmarkIn(garment, 'front', 'across-front').x,
        landmarkIn(garment, 'back', 'shoulder-point').x - landmarkIn(garment, 'back', 'across-back').x,
      ),
  ),
  check(
    'front-narrower-across',
    'Across the front it is narrower than across the back',
    block,
    'mm',
    [2, 40],
    (garment) => landmarkIn(garment, 'back', 'across-back').x - landmarkIn(garment, 'front', 'across-front').x,
  ),
  check('underarm-seams', 'Both underarm seams of the sleeve are equal', sleeve, 'mm', [0, 0.1], (garment) =>
    Math.abs(
      edgeLength(pieceOf(garment, 'sleeve'), 'underarm-front') -
        edgeLength(pieceOf(garment, 'sleeve'), 'underarm-back'),
    ),
  ),
  check(
    'cap-evenly-shared',
    'Front share of the sleeve at the underarm line: half or a little less, as of the armhole',
    sleeve,
    'share',
    [0.44, 0.51],
    (garment) => {
      const top = landmarkIn(garment, 'sleeve', 'cap-top').x;
      const front = top - landmarkIn(garment, 'sleeve', 'underarm-front').x;
      return front / (front + landmarkIn(garment, 'sleeve', 'underarm-back').x - top);
    },
  ),
  check(
    'hem-passes-hand',
    'The sleeve hem less the girth of the hand',
    fitting,
    'mm',
    [10, 150],
    (garment, body) => edgeLength(pieceOf(garment, 'sleeve'), 'hem') - (body.handGirth ?? 0),
  ),
  check(
    'elbow-bends',
    'The sleeve leaves the bent elbow its least ease',
    fitting,
    'mm',
    [40, 160],
    (garment, body) => levelWidth(pieceOf(garment, 'sleeve'), 'elbow') - (body.elbowGirth ?? 0),
  ),
  check(
    'armhole-round',
    'Armhole girth over bust girth',
    block,
    'share',
    [0.38, 0.54],
    (garment, body) =>
      (edgeLength(pieceOf(garment, 'front'), 'armhole') + edgeLength(pieceOf(garment, 'back'), 'armhole')) /
      (body.bustGirth ?? 0),
  ),
  check(
    'facing-even',
    'The front facing is a band of even width: widest over narrowest',
    block,
    'share',
    [1, 1.7],
    (garment) => {
      const band = apart(runOf(garment, 'front-facing', 'outer'), runOf(garment, 'front', 'neck'));
      return band.most / band.least;
    },
  ),
];
