import type { MeasureId } from '../../src/body/index.ts';
import type { Cloth } from '../../src/cloth/index.ts';
import { type EaseCell, easeCells, type Fit, type PatternFigures } from '../../src/fit/index.ts';
import { type FinishedGirth, finishedGirths, type Garment, type Size } from '../../src/pattern/index.ts';

/** Ease of the pieces as altered, measured off them as it is off the pattern's. */
export const easeAsAltered = (
  fit: Fit,
  figures: PatternFigures,
  size: Size,
  garment: Garment,
  cloth: Cloth | null,
): readonly EaseCell[] => {
  const question = {
    figures,
    measures: fit.body,
    estimated: new Set(fit.estimated),
    cloth: cloth ?? undefined,
  };
  const drafted = figures.sizes.find((one) => one.size === size.id);
  if (!drafted) return [];
  const now = finishedGirths(garment);
  // What is usual is set against the design, so the design's own girths are asked and what was altered is added to them.
  const added = (measure: MeasureId): number => {
    const of = (girths: readonly FinishedGirth[]) => girths.find((girth) => girth.measure === measure)?.finished ?? 0;
    return of(now) - of(drafted.girths);
  };
  return easeCells(question, drafted, added);
};

/** The fit with the chosen size's ease as altered, so that its picture shows what will be cut. */
export const fitAsAltered = (fit: Fit, size: string, cells: readonly EaseCell[]): Fit => ({
  ...fit,
  sizes: fit.sizes.map((one) => (one.size === size ? { ...one, cells } : one)),
});
