export {
  arrowHead,
  circle,
  drawingOf,
  estimatedTextWidth,
  filledMark,
  groupMark,
  markBounds,
  marksBounds,
  pathMark,
  rectangle,
  stroke,
  type TextWidth,
  textMark,
} from './marks.ts';
export { moveMarks } from './move.ts';
export { drawPiece, type PieceOptions, pieceGroup } from './piece.ts';
export { roomForWords } from './room-for-words.ts';
export { sayCut, sayId } from './say.ts';
export * from './types.ts';
