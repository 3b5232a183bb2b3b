export { blouse } from './blouse.ts';
export { housePattern, housePatterns } from './house.ts';
export type { ShapeCheck, ShapeFinding } from './shape-check.ts';
export type { FlatSketch, SketchLine, SketchShape } from './sketch.ts';
export * from './types.ts';
