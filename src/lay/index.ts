export { buyLength, type ClothNeeded } from './buy.ts';
export {
  type ClothAnswer,
  type ClothQuestion,
  type ClothWidths,
  clothAnswer,
  clothQuestions,
  usualWidths,
} from './cloth-table.ts';
export { type GarmentLayoutOptions, layoutProblemFor } from './garment.ts';
export { type LayoutFile, printedLayout, readLayoutFile } from './instance.ts';
export { placedOutline } from './place.ts';
export type { Polygon, Turn } from './polygon.ts';
export { type SearchOptions, searchLayout } from './search.ts';
export type { ClothFold, Layout, LayoutCloth, LayoutItem, LayoutProblem, Placement, Stretch } from './types.ts';
export { type LayoutFault, verifyLayout } from './verify.ts';
