import { type Bounds, pathBounds, translation, unionOfBounds } from '../geometry/index.ts';
import { cutLine, type Garment, type Piece } from '../pattern/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { drawingOf } from './marks.ts';
import { moveMarks } from './move.ts';
import { type PieceOptions, pieceGroup } from './piece.ts';
import { sideBySide } from './side-by-side.ts';
import type { Drawing } from './types.ts';

export interface GarmentOptions extends Omit<PieceOptions, 'original'> {
  /** The garment before its alterations, drawn under it in grey, piece by piece. */
  readonly original?: Garment;
  /** Width over height to come near to. */
  readonly aspect?: number;
}

/** Wider than high, as a table is. */
export const usualAspect = 1.5;

/** What the papers of a piece cover: the piece, and the piece as bought where that is drawn too. */
export const paperBounds = (piece: Piece, original: Piece | undefined): Bounds => {
  const own = pathBounds(cutLine(piece));
  return original ? unionOfBounds(own, pathBounds(cutLine(original))) : own;
};

/** All pieces laid side by side, like papers on a table. */
export const drawGarmentPieces = (garment: Garment, options: GarmentOptions): Drawing => {
  const { original, aspect = usualAspect, ...rest } = options;
  const before = garment.pieces.map((piece) => original?.pieces.find((one) => one.id === piece.id));
  const boxes = garment.pieces.map((piece, index) => paperBounds(piece, before[index]));
  const places = sideBySide(boxes, aspect);
  const marks = garment.pieces.flatMap((piece, index) => {
    const under = before[index];
    const place = places[index];
    return place
      ? moveMarks([pieceGroup(piece, { ...rest, ...(under ? { original: under } : {}) })], translation(place))
      : [];
  });
  const names = garment.pieces.map((piece) => piece.name).join(', ');
  return drawingOf(fill(drawWords.piecesLabel, { names }, options.unit, options.locale), marks, 10);
};
