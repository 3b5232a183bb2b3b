import { distance, intersectPaths, line, type Path, type Point, pathEnd, pathStart } from '../geometry/index.ts';
import { edgeLength, type Garment, levelWidth, pieceOf, walkSeam } from '../pattern/index.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { bulges } from './shape-measures.ts';

/** What the jacket's shape checks measure on its pieces. Millimetres. */

export const lengthOf = (garment: Garment, piece: string, edge: string): number =>
  edgeLength(pieceOf(garment, piece), edge);

export const widthOf = (garment: Garment, piece: string, level: string): number =>
  levelWidth(pieceOf(garment, piece), level);

/** How much longer the first side of a seam is. */
export const differenceOf = (garment: Garment, seam: string): number => {
  const found = garment.seams.find(({ id }) => id === seam);
  if (!found) throw new Error(`No seam ${seam}`);
  return walkSeam(garment, found).difference;
};

/** Where an edge passes a height. */
export const edgeAt = (garment: Garment, piece: string, edge: string, y: number): Point => {
  const [crossing] = intersectPaths(runOf(garment, piece, edge), [line({ x: -3000, y }, { x: 3000, y })]);
  if (!crossing) throw new Error(`${edge} of ${piece} does not pass ${y}`);
  return crossing.point;
};

/** A whole armhole: its upper and its under edge. */
export const armholeOf = (garment: Garment, piece: 'side-front' | 'side-back'): Path => [
  ...runOf(garment, piece, 'armhole'),
  ...runOf(garment, piece, 'armhole-under'),
];

/** How high an armhole is: from the middle between shoulder point and underarm's level, along the straight between them. */
export const armholeChord = (garment: Garment, piece: 'side-front' | 'side-back'): number =>
  distance(landmarkIn(garment, piece, 'shoulder-point'), landmarkIn(garment, piece, 'underarm'));

/** How far the armhole is hollowed below the straight from its across line to the underarm, as a share of that straight. */
export const hollowOf = (garment: Garment, piece: 'side-front' | 'side-back'): number => {
  const lower = armholeOf(garment, piece).slice(1);
  return bulges(lower).right / distance(pathStart(lower), pathEnd(lower));
};

export const capHeightOf = (garment: Garment): number =>
  landmarkIn(garment, 'under-sleeve', 'underarm').y - landmarkIn(garment, 'sleeve', 'cap-top').y;

/** What the seam between two panels takes in at the waist: how far their edges lie apart there, as both are drawn from one centre. */
export const takenInAtWaist = (
  garment: Garment,
  inner: 'front' | 'back',
  outer: 'side-front' | 'side-back',
): number => {
  const waist = landmarkIn(garment, outer, 'waist-side').y;
  return edgeAt(garment, outer, 'princess', waist).x - edgeAt(garment, inner, 'princess', waist).x;
};

/** The narrowest place of the front's lining between facing and princess seam, looked for level by level. */
export const narrowestLining = (garment: Garment): number => {
  const top = pathStart(runOf(garment, 'lining-front', 'princess')).y;
  const low = pathEnd(runOf(garment, 'lining-front', 'princess')).y;
  const widths = Array.from({ length: 24 }, (_, i) => {
    const y = top + ((i + 1) / 25) * (low - top);
    return edgeAt(garment, 'lining-front', 'princess', y).x - edgeAt(garment, 'front-facing', 'inner', y).x;
  });
  return Math.min(...widths);
};

/** Height of the collar's stand at the centre back: from the neck edge up to its roll line. */
export const standOf = (garment: Garment): number => {
  const roll = pieceOf(garment, 'under-collar').lines.find(({ id }) => id === 'roll');
  if (!roll) throw new Error('A collar without a roll line');
  return distance(pathStart(roll.path), pathEnd(runOf(garment, 'under-collar', 'neck-back')));
};
