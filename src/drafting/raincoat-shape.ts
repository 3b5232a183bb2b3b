import { raincoatBodyShape } from './raincoat-shape-body.ts';
import { raincoatHoodShape } from './raincoat-shape-hood.ts';
import { raincoatLiningShape, raincoatPartsShape } from './raincoat-shape-parts.ts';
import { raincoatSleeveShape } from './raincoat-shape-sleeve.ts';
import type { ShapeCheck } from './shape-check.ts';

/** What a cutter looks at before she would cut from the raincoat, by measuring the drafted pieces alone. */
export const raincoatShape = (isLined: boolean): readonly ShapeCheck[] => [
  ...raincoatBodyShape,
  ...raincoatSleeveShape,
  ...raincoatHoodShape,
  ...raincoatPartsShape,
  ...(isLined ? raincoatLiningShape : []),
];
