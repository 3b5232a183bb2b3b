export { blouse, draftBlouse } from './blouse.ts';
export { blouseShape } from './blouse-shape.ts';
export { menChart } from './chart-men.ts';
export { womenChart } from './chart-women.ts';
export { housePattern, housePatterns } from './house.ts';
export { lookAtShape, type ShapeCheck, type ShapeFinding } from './shape-check.ts';
export { draftTee, tee, teeMen } from './tee.ts';
export { teeShape } from './tee-shape.ts';
export * from './types.ts';
