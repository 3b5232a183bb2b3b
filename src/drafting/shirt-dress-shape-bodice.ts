import { distance, endTangent, pathLength, pathStart, turnBetween } from '../geometry/index.ts';
import { dartOf, levelWidth, pieceOf } from '../pattern/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import { edgeBend, inDegrees, landmarkIn, legsApart, meanOf, runOf, turnAtDart } from './shape-garment.ts';
import { asideOf, leastRadius } from './shape-measures.ts';
import { check, smooth, sources, square } from './shape-rules.ts';
import { armholeRound, differenceOf, fullness, lengthOf } from './shirt-dress-measures.ts';
import { gathers } from './shirt-dress-seams.ts';

import { moreInFront } from './usual-cup.ts';

const { block, truing, sewing } = sources;

/** Yoke, pleat, armhole and dart. */
export const bodiceShape: readonly ShapeCheck[] = [
  square('yoke-square-back', 'yoke', 'back', 'centre-back'),
  square('yoke-square-neck', 'yoke', 'centre-back', 'neck'),
  check('yoke-depth', 'The yoke ends over the shoulder blades', block, 'mm', [70, 135], (garment) =>
    lengthOf(garment, 'yoke', 'centre-back'),
  ),
  check(
    'shoulder-forward',
    'The front seam lies in front of the shoulder, where it is seen and not sat on by a strap',
    block,
    'mm',
    [15, 25],
    (garment) =>
      asideOf(
        pathStart(runOf(garment, 'yoke', 'front')),
        landmarkIn(garment, 'yoke', 'neck-point'),
        landmarkIn(garment, 'yoke', 'shoulder-point'),
      ),
  ),
  check('shoulder-forward-even', 'The front seam is parallel to the shoulder', block, 'mm', [0, 0.1], (garment) => {
    const from = (at: 0 | 1) =>
      asideOf(
        at === 0 ? pathStart(runOf(garment, 'yoke', 'front')) : pathStart(runOf(garment, 'yoke', 'armhole')),
        landmarkIn(garment, 'yoke', 'neck-point'),
        landmarkIn(garment, 'yoke', 'shoulder-point'),
      );
    return Math.abs(from(0) - from(1));
  }),
  smooth('neck-over-yoke', 'The neckline runs on from front to yoke', 'yoke-front', 0),
  smooth('armhole-over-yoke-front', 'The armhole runs on from front to yoke', 'yoke-front', 1),
  smooth('armhole-over-yoke-back', 'The armhole runs on from yoke to back', 'yoke-back', 1),
  check(
    'blade-shaped',
    'The back falls away from the yoke at the armhole, for the shoulder blade',
    block,
    'degrees',
    [3, 12],
    (garment) => inDegrees(Math.abs(turnBetween({ x: 1, y: 0 }, endTangent(runOf(garment, 'back', 'yoke'))))),
  ),
  square('yoke-seam-square-at-fold', 'back', 'centre-back', 'yoke'),
  check('pleat-taken', 'The box pleat takes 30–40 at each side of its face', sewing, 'mm', [59, 81], (garment) =>
    differenceOf(garment, 'yoke-back'),
  ),
  check(
    'pleat-folds-meet',
    'The pleat’s face is as wide as both folds behind it, so that they meet and do not lap',
    sewing,
    'mm',
    [0, 0.1],
    (garment) => {
      const back = pieceOf(garment, 'back');
      const at = (id: string) => back.lines.find((line) => line.id === id)?.path[0]?.from.x ?? Number.NaN;
      return Math.abs(
        at('pleat-under') - at('pleat-face') - (at('pleat-face') - pathStart(runOf(garment, 'back', 'yoke')).x),
      );
    },
  ),
  smooth('armhole-under-arm', 'Front and back armhole run into one another under the arm', 'side', 0),
  check(
    'armhole-bend-even',
    'No bend of either armhole is as tight as its seam allowance is wide',
    block,
    'mm',
    [15, Number.POSITIVE_INFINITY],
    (garment) =>
      Math.min(leastRadius(runOf(garment, 'front', 'armhole')), leastRadius(runOf(garment, 'back', 'armhole'))),
  ),
  check('armhole-bends', 'At most one change of bend in an armhole', block, 'count', [0, 1], (garment) =>
    Math.max(edgeBend(garment, 'front', 'armhole'), edgeBend(garment, 'back', 'armhole')),
  ),
  check(
    'armhole-round',
    'Armhole girth over bust girth',
    block,
    'share',
    [0.4, 0.58],
    (garment, body) => armholeRound(garment) / (body.bustGirth ?? 0),
  ),
  check(
    'bust-shared',
    'The side seam hangs at the side: front and back share the bust but for what the cup is larger, which is the front’s',
    block,
    'mm',
    [-4, 14],
    (garment, body) =>
      levelWidth(pieceOf(garment, 'front'), 'bust') +
      levelWidth(pieceOf(garment, 'button-stand'), 'bust') -
      levelWidth(pieceOf(garment, 'back'), 'bust') -
      moreInFront(body),
  ),
  check('dart-legs', 'The legs of the bust dart are equal', block, 'mm', [0, 0.1], (garment) =>
    legsApart(pieceOf(garment, 'front'), 'bust'),
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
    'side-smooth-at-dart',
    'The side seam is smooth where the bust dart is stitched',
    truing,
    'degrees',
    [0, 2],
    (garment) => turnAtDart(garment, 'front', 'side', 'bust'),
  ),
  check(
    'dart-clear-of-waist',
    'Below the bust dart the side seam is long enough to be gathered beside it',
    block,
    'mm',
    [12, 200],
    (garment) => pathLength(runOf(garment, 'front', 'side', 1)),
  ),
  check(
    'bodice-gathers',
    'The bodice is drawn in softly to its waistband',
    sewing,
    'share',
    [...gathers.bodice],
    (garment) => {
      const [least, most] = fullness(garment, ['*.waist', 'waist-*.top'], differenceOf(garment, 'yoke-back'));
      return least < gathers.bodice[0] ? least : most;
    },
  ),
];
