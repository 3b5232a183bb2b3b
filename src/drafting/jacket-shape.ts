import type { JacketView } from './jacket-plan.ts';
import { jacketBodyShape } from './jacket-shape-body.ts';
import { jacketCollarShape, jacketInsideShape } from './jacket-shape-inside.ts';
import { jacketSleeveShape } from './jacket-shape-sleeve.ts';
import type { ShapeCheck } from './shape-check.ts';

/**
 * What a cutter looks at before she would cut from the jacket in a view, by measuring the drafted pieces alone.
 */
export const jacketShape = (view: JacketView): readonly ShapeCheck[] => [
  ...jacketBodyShape,
  ...jacketSleeveShape,
  ...jacketInsideShape,
  ...(view === 'collar' ? jacketCollarShape : []),
];
