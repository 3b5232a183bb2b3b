export { type BustAmount, bustAmount, lengthAmounts, type SuggestedAlteration } from './amounts.ts';
export { widestDart } from './bust-dart.ts';
export { type EaseCell, easeCells, type Verdict, verdictAsShown } from './ease-cells.ts';
export { envelopeFigures, levelsKnownBy } from './envelope-figures.ts';
export {
  type FigureFrom,
  type GirthFigure,
  type LengthZone,
  type PatternFigures,
  patternFigures,
  type SizeFigures,
  type UnknownFigure,
} from './figures.ts';
export { type Fit, type FitQuestion, fitPattern, isClothCaution } from './fit-pattern.ts';
export { type Generic, genericGarment, genericGarments } from './generic.ts';
export { nearestSize, type Reason, type SizeChoice, type SizeScale } from './starting-size.ts';
export {
  type EaseRange,
  type EaseWord,
  easeWord,
  girthOfLayer,
  knitEase,
  knitExtension,
  usualEase,
} from './usual-ease.ts';
export { mostRoundArm, type Way } from './ways.ts';
