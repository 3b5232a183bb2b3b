import { type Path, pathLength, pathStart } from '../geometry/index.ts';
import { edgeLength, type Garment, pieceOf, walkSeam } from '../pattern/index.ts';

import { meanOf, runOf } from './shape-garment.ts';

/** What the shape checks of the shirt dress measure on its pieces; mm and shares. */

export const lengthOf = (garment: Garment, piece: string, edge: string): number =>
  edgeLength(pieceOf(garment, piece), edge);

export const differenceOf = (garment: Garment, id: string): number => {
  const seam = garment.seams.find((one) => one.id === id);
  if (!seam) throw new Error(`No seam ${id}`);
  return walkSeam(garment, seam).difference;
};

/** The cap's three edges as one line, front underarm to back underarm. */
export const capOf = (garment: Garment): Path =>
  ['cap-front', 'cap-yoke', 'cap-back'].flatMap((edge) => [...runOf(garment, 'sleeve', edge)]);

export const armholeRound = (garment: Garment): number =>
  lengthOf(garment, 'front', 'armhole') + lengthOf(garment, 'yoke', 'armhole') + lengthOf(garment, 'back', 'armhole');

/** The least and greatest of what a gathered seam's two halves take up, as shares of the plain edge. */
export const fullness = (
  garment: Garment,
  [gathered, plain]: readonly [string, string],
  pleated = 0,
): readonly [number, number] => {
  const of = (half: string): number => {
    const [piece, edge] = gathered.replace('*', half).split('.') as [string, string];
    const [onPiece, onEdge] = plain.replace('*', half).split('.') as [string, string];
    return (lengthOf(garment, piece, edge) - (half === 'back' ? pleated : 0)) / lengthOf(garment, onPiece, onEdge) - 1;
  };
  const both = [of('front'), of('back')];
  return [Math.min(...both), Math.max(...both)];
};

/** Heights of the marks of one sort on the button stand, top down. */
export const buttonsOf = (garment: Garment): readonly number[] =>
  pieceOf(garment, 'button-stand')
    .lines.filter(({ id }) => id.startsWith('button-'))
    .map(({ path }) => pathStart(path).y + pathLength(path) / 2)
    .toSorted((a, b) => a - b);

export const spacings = (garment: Garment): readonly number[] => {
  const heights = buttonsOf(garment).slice(1);
  return heights.slice(1).map((at, i) => at - (heights[i] ?? 0));
};

/** Heights on the button stand at which a seam runs across it. */
export const seamsAcross = (garment: Garment): readonly number[] =>
  ['front', 'waist', 'skirt']
    .filter((edge) =>
      pieceOf(garment, 'button-stand').edges.some(({ id }) => id === (edge === 'skirt' ? 'tier' : edge)),
    )
    .map((edge) => runOf(garment, 'button-stand', edge).at(-1)?.to.y ?? 0);

export const standHem = (garment: Garment): number => pathStart(runOf(garment, 'button-stand', 'hem')).y;

/** The sides of the skirt at centre front, waist to hem, and half the waistband: from the waist to the hem. */
export const waistToHem = (garment: Garment): number =>
  standHem(garment) -
  meanOf(
    pathStart(runOf(garment, 'button-stand', 'waist')).y,
    runOf(garment, 'button-stand', 'waist').at(-1)?.to.y ?? 0,
  );
