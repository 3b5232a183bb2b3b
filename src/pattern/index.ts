export { cutLine } from './cut-line.ts';
export { closing, type DartShape, dartOf, dartsOf } from './dart.ts';
export {
  alterationStepSchema,
  readAlterationList,
  readPattern,
  readPatternText,
  sizeOf,
  writePattern,
} from './document.ts';
export { notchPlace, pointOnEdge, tangentOnEdge } from './edge.ts';
export * from './envelope/index.ts';
export { type FinishedGirth, finishedGirths, girthAround, levelWidth } from './level.ts';
export { type Notion, notionsOf } from './notions.ts';
export {
  edgeLength,
  edgeOf,
  edgeRuns,
  hasEdge,
  landmarkOf,
  onFold,
  outlineOf,
  pieceArea,
  pieceOf,
  transformPiece,
} from './piece.ts';
export { printedPiece, printedSeams } from './printed.ts';
export { type Trued, trueAcross, trueLength } from './truing.ts';
export * from './types.ts';
export { validateGarment, validatePiece } from './validate.ts';
export { type NotchMeeting, pointAlongSide, type SeamEnd, type SeamWalk, walkAll, walkSeam } from './walk.ts';
