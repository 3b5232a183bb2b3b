import { line } from '../geometry/index.ts';
import { edgeLength, type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import type { FlatSketch, SketchLine } from './sketch.ts';
import { type HungLeg, hangLeg, hungBand, legHem, mouthLines, onLeg } from './sketch-leg.ts';
import { band, hemAllowance } from './trousers-pieces.ts';

/** How far the stitching of a pocket's mouth is seen from the seam, mm; and how many gathers are drawn on half the back band. */
const seen = { mouth: 9, gathers: 9 } as const;

/** The pressed crease, from below the thigh to the hem. */
const creaseOf = (garment: Garment, half: 'front' | 'back', leg: HungLeg): SketchLine => {
  const { from, to } = pieceOf(garment, half).grain;
  return onLeg(leg, 'gathers', [line(from, to)]);
};

/** The trousers as they lie flat: mouths of the pockets in the side seams, the back gathered on its band, creases. */
export const trousersSketch = (garment: Garment): FlatSketch => {
  const waist =
    (edgeLength(pieceOf(garment, 'front-waistband'), 'left') +
      levelWidth(pieceOf(garment, 'back-waistband'), 'waist') / 2) /
    2;
  const hip = (levelWidth(pieceOf(garment, 'front'), 'hip') + levelWidth(pieceOf(garment, 'back'), 'hip')) / 2;
  const hem = (edgeLength(pieceOf(garment, 'front'), 'hem') + edgeLength(pieceOf(garment, 'back'), 'hem')) / 2;
  const front = hangLeg(garment, 'front', { hip, waist, hem });
  const back = hangLeg(garment, 'back', { hip, waist, hem });
  const lines = (half: 'front' | 'back', leg: HungLeg): readonly SketchLine[] => [
    legHem(leg, hemAllowance - 5),
    creaseOf(garment, half, leg),
  ];
  return {
    front: [
      front.shape([...lines('front', front), ...mouthLines(garment, 'front', front, seen.mouth)]),
      hungBand(front, 'front-band', band.width, 0),
    ],
    back: [back.shape(lines('back', back)), hungBand(back, 'back-band', band.width, seen.gathers)],
  };
};
