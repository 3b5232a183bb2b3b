export {
  type BeforeAfterOptions,
  drawBeforeAfter,
  placeInBeforeAfter,
} from './before-after.ts';
export { type CardDrawingOptions, drawCard } from './card.ts';
export { clipPath } from './clip-path.ts';
export { type CollectionEntry, drawCollection } from './collection.ts';
export { type ContactEntry, type ContactSheetOptions, drawContactSheet } from './contact-sheet.ts';
export { leftHalfOf, piecesTold } from './cut-halves.ts';
export type { CutPlace } from './cut-place.ts';
export { cutPlaces } from './cut-places.ts';
export { createDrawingCache, type DrawingCache } from './drawing-cache.ts';
export { drawEase, type EaseOptions } from './ease.ts';
export { drawFlatSketch } from './flat-sketch.ts';
export { drawGarmentPieces, type GarmentOptions } from './garment.ts';
export { type InkDiffering, inkDiffering, lineMarks, pieceDiffers } from './ink-differs.ts';
export { drawLayout, type LayoutOptions } from './layout.ts';
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
export { drawNest, type NestOptions } from './nest.ts';
export { drawOverlay, type Overlay, type OverlayOptions } from './overlay.ts';
export { drawPiece, type PieceOptions, pieceGroup } from './piece.ts';
export { type PieceChange, pieceChanges } from './piece-changes.ts';
export { roomForWords } from './room-for-words.ts';
export { sayCut, sayId } from './say.ts';
export { sayEdge, sayEdgeOf, saySeam } from './say-edge.ts';
export { sayNamed, sayOutcomes, sayStepOn } from './say-named.ts';
export { sayNotion } from './say-notion.ts';
export { drawSeamRoll, type SeamRollOptions } from './seam-roll.ts';
export { drawSeamWalk, type SeamWalkOptions } from './seam-walk.ts';
export { sayWalk } from './seam-words.ts';
export { sideBySide } from './side-by-side.ts';
export * from './types.ts';
