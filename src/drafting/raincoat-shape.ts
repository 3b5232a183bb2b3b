import type { ShapeCheck } from './shape-check.ts';
export const raincoatShape = (_lined: boolean): readonly ShapeCheck[] => [];
