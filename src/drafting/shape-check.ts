import type { Measures } from '../body/index.ts';
import type { Garment } from '../pattern/index.ts';

/** What a cutter looks at before cutting, as a number that has to lie between two. */
export interface ShapeCheck {
  readonly id: string;
  /** What is looked at and why. */
  readonly about: string;
  /** Where the rule is from. */
  readonly source: string;
  /** In which the value is told: `mm`, `degrees`, `share` of another length, or a `count`. */
  readonly unit: 'mm' | 'degrees' | 'share' | 'count';
  readonly low: number;
  readonly high: number;
  readonly value: (garment: Garment, body: Measures) => number;
}

export interface ShapeFinding {
  readonly check: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly ok: boolean;
}

/** Looks at a drafted garment with every check, in the order given. */
export const lookAtShape = (checks: readonly ShapeCheck[], garment: Garment, body: Measures): readonly ShapeFinding[] =>
  checks.map(({ id, low, high, value }) => {
    const found = value(garment, body);
    return { check: id, value: found, low, high, ok: found >= low && found <= high };
  });
