import { pathBounds, segmentPointAt } from '../geometry/index.ts';
import { edgeLength, type Garment, pieceOf, walkAll } from '../pattern/index.ts';
import { placketWidth } from './raincoat-pieces.ts';
import type { ShapeCheck } from './shape-check.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { check, smooth, sources, square } from './shape-rules.ts';
import { parameterAtHeight } from './side-seam.ts';

const { children, sewing, truing } = sources;

const linesOf = (garment: Garment, piece: string, id: string) => {
  const found = pieceOf(garment, piece).lines.find((one) => one.id === id);
  if (!found) throw new Error(`${piece} has no ${id}`);
  return pathBounds(found.path);
};

/** Where the side seam passes at a height. */
const sideAt = (garment: Garment, y: number): number => {
  const side = runOf(garment, 'front', 'side')[0];
  return side ? segmentPointAt(side, parameterAtHeight(side, y)).x : Number.NaN;
};

export const raincoatPartsShape: readonly ShapeCheck[] = [
  check(
    'pocket-takes-hand',
    'The pocket’s width less half the girth of the hand: the hand goes in flat, in a glove',
    sewing,
    'mm',
    [18, 60],
    (garment, body) => edgeLength(pieceOf(garment, 'pocket'), 'top') - (body.handGirth ?? 0) / 2,
  ),
  check(
    'pocket-below-waist',
    'How far the flap begins below the waist: found with the arm bent',
    children,
    'mm',
    [0, 50],
    (garment) => linesOf(garment, 'front', 'pocket-flap').minY - landmarkIn(garment, 'front', 'waist-side').y,
  ),
  check(
    'pocket-above-hem',
    'Pocket to the hem’s level at the centre: clear of the turned-up hem',
    sewing,
    'mm',
    [38, 250],
    (garment) => landmarkIn(garment, 'front', 'hem-centre').y - linesOf(garment, 'front', 'pocket').maxY,
  ),
  check('pocket-clear-of-side', 'Flap to side seam: clear of its allowance', sewing, 'mm', [10, 90], (garment) => {
    const flap = linesOf(garment, 'front', 'pocket-flap');
    return sideAt(garment, flap.minY) - flap.maxX;
  }),
  check(
    'pocket-clear-of-placket',
    'Flap to the placket’s edge when the coat is closed: they do not catch on one another',
    sewing,
    'mm',
    [2, 90],
    (garment) => linesOf(garment, 'front', 'pocket-flap').minX - placketWidth,
  ),
  check(
    'flap-covers',
    'The flap is wider than its pocket on both sides',
    sewing,
    'mm',
    [4, 14],
    (garment) => edgeLength(pieceOf(garment, 'pocket-flap'), 'top') - edgeLength(pieceOf(garment, 'pocket'), 'top'),
  ),
  check(
    'placket-folds-in-half',
    'Both halves of the placket are as wide, and as long as the front edge',
    sewing,
    'mm',
    [0, 0.1],
    (garment) => {
      const placket = pieceOf(garment, 'placket');
      return (
        Math.abs(edgeLength(placket, 'top') - edgeLength(placket, 'top-under')) +
        Math.abs(edgeLength(placket, 'attach') - edgeLength(pieceOf(garment, 'front'), 'centre-front'))
      );
    },
  ),
  square('placket-square', 'placket', 'attach', 'top'),
  check(
    'facing-covers-zip',
    'The front facing’s width at the hem: over the zip’s tape and its rows of stitching',
    sewing,
    'mm',
    [38, 75],
    (garment) => pathBounds(runOf(garment, 'front-facing', 'hem')).maxX,
  ),
  smooth('facing-over-shoulder', 'Front and back facing run into one another over the shoulder', 'facing-shoulder', 1),
];

export const raincoatLiningShape: readonly ShapeCheck[] = [
  check(
    'lining-shorter',
    'Coat’s side less lining’s: the lining does not show, nor hold the hem up',
    sewing,
    'mm',
    [10, 22],
    (garment) => edgeLength(pieceOf(garment, 'front'), 'side') - edgeLength(pieceOf(garment, 'lining-front'), 'side'),
  ),
  check(
    'lining-pleat',
    'The lining’s pleat at the centre back, whole: 10 to 25 in all, as linings have it',
    sewing,
    'mm',
    [10, 25],
    (garment) => 2 * (walkAll(garment).find(({ seam }) => seam.id === 'lining-facing-back')?.difference ?? 0),
  ),
  smooth('lining-armhole-over-shoulder', 'The lining’s armholes run into one another', 'lining-shoulder', 1),
  check(
    'lining-as-wide',
    'Front of coat less lining and facing at the hem: nothing lost between them',
    truing,
    'mm',
    [-3, 6],
    (garment) =>
      edgeLength(pieceOf(garment, 'front'), 'hem') -
      edgeLength(pieceOf(garment, 'lining-front'), 'hem') -
      edgeLength(pieceOf(garment, 'front-facing'), 'hem'),
  ),
];
