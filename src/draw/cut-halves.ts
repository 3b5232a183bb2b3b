import { applyToPath, applyToPoint, mirrorX, pathStart } from '../geometry/index.ts';
import { type AlterationStep, edgeRuns, type Garment } from '../pattern/index.ts';
import type { CutPlace } from './cut-place.ts';

/** How the left half of a piece is told: under which id, and mirrored at which x. */
export interface LeftHalf {
  readonly piece: string;
  readonly atX: number;
}

/**
 * Where right and left are told apart a piece is either opened at its fold or cut once for each; null where it is neither.
 * `told` is the garment in the pieces she has, `half` one half of it, alike on both sides.
 */
export const leftHalfOf = (piece: string, told: Garment, half: Garment): LeftHalf | null => {
  const left = `${piece}-left`;
  if (told.pieces.some(({ id }) => id === left)) return { piece: left, atX: 0 };
  const [whole, own] = [told, half].map(({ pieces }) => pieces.find(({ id }) => id === piece));
  const fold = own?.edges.find(({ finish }) => finish === 'fold');
  const run = own && fold ? edgeRuns(own, fold.id)[0] : undefined;
  if (!whole || !run || whole.edges.some(({ finish }) => finish === 'fold')) return null;
  return { piece, atX: pathStart(run).x };
};

/** The pieces a step touched, by the ids of the paper she has: where right and left are cut apart, those of the half it was done on. */
export const piecesTold = (pieces: readonly string[], { params }: AlterationStep, told: Garment): readonly string[] =>
  pieces.flatMap((id) => {
    const left = `${id}-left`;
    if (params['side'] === 'right' || !told.pieces.some((piece) => piece.id === left)) return [id];
    return params['side'] === 'left' ? [left] : [id, left];
  });

const turnedOver = (place: CutPlace, { piece, atX }: LeftHalf): CutPlace => {
  const over = mirrorX(atX);
  return {
    ...place,
    piece,
    path: applyToPath(over, place.path),
    hinge: place.hinge && applyToPoint(over, place.hinge),
  };
};

/**
 * The cuts of one step on the pieces as they are told once right and left differ: a step is done on one half, and the
 * paper has both. `told` is the garment in the pieces she has, `half` the one the step made, alike on both sides;
 * `apart` where the halves differed and `cuts` are the right half’s first, the left half’s after them.
 */
export const cutsOnHalves = (
  cuts: readonly CutPlace[],
  { params }: AlterationStep,
  told: Garment,
  half: Garment,
  apart: boolean,
): readonly CutPlace[] =>
  cuts.flatMap((cut, index): readonly CutPlace[] => {
    const left = leftHalfOf(cut.piece, told, half);
    if (!left || params['side'] === 'right') return [cut];
    if (params['side'] === 'left') return [turnedOver(cut, left)];
    if (apart) return [index < cuts.length / 2 ? cut : turnedOver(cut, left)];
    return [cut, turnedOver(cut, left)];
  });
