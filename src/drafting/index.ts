export { blouse } from './blouse.ts';
export { menChart } from './chart-men.ts';
export { womenChart } from './chart-women.ts';
export { housePattern, housePatterns } from './house.ts';
export { lookAtShape, type ShapeCheck, type ShapeFinding } from './shape-check.ts';
export type { FlatSketch, SketchLine, SketchShape } from './sketch.ts';
export { tee, teeMen } from './tee.ts';
export * from './types.ts';
