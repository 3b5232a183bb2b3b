import { type Bounds, type Point, pathBounds, translation, unionOfBounds } from '../geometry/index.ts';
import { cutLine, type Garment, type Piece } from '../pattern/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { drawingOf, marksBounds } from './marks.ts';
import { moveMarks } from './move.ts';
import { type PieceOptions, pieceGroup } from './piece.ts';
import { sideBySide } from './side-by-side.ts';
import type { Drawing, GroupMark } from './types.ts';

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
  const groups = garment.pieces.map((piece, index) => {
    const under = before[index];
    return pieceGroup(piece, { ...rest, ...(under ? { original: under } : {}) });
  });
  // A name wider than its paper, or over it, needs a place of its own.
  const boxes = garment.pieces.map((piece, index) => {
    const drawn = marksBounds([groups[index] as GroupMark]);
    const paper = paperBounds(piece, before[index]);
    return drawn ? unionOfBounds(paper, drawn) : paper;
  });
  const places = sideBySide(boxes, aspect);
  const marks = groups.flatMap((group, index) => moveMarks([group], translation(places[index] as Point)));
  const names = garment.pieces.map((piece) => piece.name).join(', ');
  return drawingOf(fill(drawWords.piecesLabel, { names }, options.unit, options.locale), marks, 10);
};
