import type { Measures } from '../body/index.ts';
import { type FinishedGirth, finishedGirths, type Pattern } from '../pattern/index.ts';

/** What fit needs of one size: its chart, and its finished girths. */
export interface SizeFigures {
  readonly size: string;
  readonly body: Measures;
  readonly girths: readonly FinishedGirth[];
}

/**
 * A pattern's figures, size by size, smallest first as the pattern lists them. Measured off the pieces;
 * whoever fits many bodies to one pattern computes them once and passes them in.
 */
export const patternFigures = (pattern: Pattern): readonly SizeFigures[] =>
  pattern.sizes.map((size) => ({ size: size.id, body: size.body, girths: finishedGirths(size.garment) }));
