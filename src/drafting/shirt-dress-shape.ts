import type { ShapeCheck } from './shape-check.ts';
import { shirtDressViews } from './shirt-dress-plan.ts';
import { bodiceShape } from './shirt-dress-shape-bodice.ts';
import { closingShape, turnedCollarShape } from './shirt-dress-shape-closing.ts';
import { kneeLengthShape, pocketShape, skirtShape, tierShape } from './shirt-dress-shape-skirt.ts';
import { longSleeveShape, shortSleeveShape, sleeveShape } from './shirt-dress-shape-sleeve.ts';

const always: readonly ShapeCheck[] = [...bodiceShape, ...sleeveShape, ...closingShape, ...skirtShape, ...pocketShape];

/** What a cutter looks at before she would cut from a view of the shirt dress, by measuring the drafted pieces alone. */
export const shirtDressShape = (view: string): readonly ShapeCheck[] => {
  const made = shirtDressViews[view];
  if (!made) return always;
  return [
    ...always,
    ...(made.tier ? tierShape : kneeLengthShape),
    ...(made.sleeve === 'long' ? longSleeveShape : shortSleeveShape),
    ...(made.collar ? turnedCollarShape : []),
  ];
};
