import { pathLength, splitPathAtLength } from '../geometry/index.ts';
import { edgeLength, type Garment, levelWidth, pieceOf, walkSeam } from '../pattern/index.ts';
import { inDegrees, landmarkIn, runOf } from './shape-garment.ts';

/** What shape checks measure on legs, mm and degrees. */

export type Half = 'front' | 'back';

export const length = (garment: Garment, piece: string, edge: string): number =>
  edgeLength(pieceOf(garment, piece), edge);

/** How far the crotch point stands out beyond its seam at the hip. */
export const fork = (garment: Garment, half: Half): number =>
  landmarkIn(garment, half, 'hip-centre').x - landmarkIn(garment, half, 'crotch-point').x;

/** How the seam above the hip leans in from the grain, degrees; negative out. */
export const leans = (garment: Garment, half: Half): number => {
  const [top, hip] = [landmarkIn(garment, half, 'centre-waist'), landmarkIn(garment, half, 'hip-centre')];
  return inDegrees(Math.atan2(top.x - hip.x, hip.y - top.y));
};

/** Part of an edge before or after one of its notches. */
export const partOf = (garment: Garment, half: Half, edge: string, notch: string, after: boolean): number => {
  const piece = pieceOf(garment, half);
  const at = piece.notches.find((mark) => mark.id === notch)?.at ?? Number.NaN;
  const [before, rest] = splitPathAtLength(runOf(garment, half, edge), at * edgeLength(piece, edge));
  const part = after ? rest : before;
  return part ? pathLength(part) : 0;
};

/** Distance of the grain from the middle of a line across the leg. */
export const offCrease = (garment: Garment, half: Half, left: string, right: string): number => {
  const { grain } = pieceOf(garment, half);
  const middle = (landmarkIn(garment, half, left).x + landmarkIn(garment, half, right).x) / 2;
  return Math.abs(middle - grain.from.x) + Math.abs(grain.to.x - grain.from.x);
};

export const hemOffCrease = (garment: Garment, half: Half): number => {
  const [hem] = runOf(garment, half, 'hem');
  const { grain } = pieceOf(garment, half);
  return hem ? Math.abs((hem.from.x + hem.to.x) / 2 - grain.from.x) : Number.NaN;
};

export const both = (of: (half: Half) => number): number => Math.max(of('front'), of('back'));

/** Rise as drafted: down the side from waist to hip, and from there to the crotch point's height. */
export const rise = (garment: Garment): number => {
  const front = pieceOf(garment, 'front');
  const hip = front.notches.find(({ id }) => id === 'hip');
  const toHip = hip ? hip.at * edgeLength(front, 'side-upper') : Number.NaN;
  return toHip + landmarkIn(garment, 'front', 'crotch-point').y - landmarkIn(garment, 'front', 'hip-side').y;
};

export const crotch = (garment: Garment): number =>
  length(garment, 'front', 'crotch') + length(garment, 'back', 'crotch');

export const hem = (garment: Garment): number => length(garment, 'front', 'hem') + length(garment, 'back', 'hem');

export const limb = (garment: Garment, level: string): number =>
  levelWidth(pieceOf(garment, 'front'), level) + levelWidth(pieceOf(garment, 'back'), level);

export const seamTurnOf = (garment: Garment, id: string): number => {
  const seam = garment.seams.find((one) => one.id === id);
  return seam ? walkSeam(garment, seam).difference : Number.NaN;
};
