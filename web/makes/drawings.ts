import { type Drawing, drawBeforeAfter, drawEase, drawLayout, drawSeamWalk } from '../../src/draw/index.ts';
import type { Fit } from '../../src/fit/index.ts';
import type { Layout, LayoutProblem } from '../../src/lay/index.ts';
import type { Garment, SeamWalk } from '../../src/pattern/index.ts';
import type { Unit } from '../../src/units/index.ts';
import { locale } from '../app/settings.tsx';
import { readableSize, tableAspect } from '../parts/draw-garment.ts';

const only = (garment: Garment, piece: string): Garment =>
  piece === '' ? garment : { ...garment, pieces: garment.pieces.filter((one) => one.id === piece) };

/** The em of words for a before-and-after of these pieces: taken once a size, so that words do not swell under a slider. */
export const sizeForWords = (garment: Garment, piece: string): number => {
  const shown = only(garment, piece);
  return readableSize(drawBeforeAfter(shown, shown, { unit: 'cm', textSize: 1, aspect: tableAspect }));
};

/** The pieces as bought and as altered, one over the other; all of them, or one. */
export const drawChanges = (
  before: Garment,
  after: Garment,
  piece: string,
  textSize: number,
  label: string,
  unit: Unit,
): Drawing => ({
  ...drawBeforeAfter(only(before, piece), only(after, piece), { unit, locale, textSize, aspect: tableAspect }),
  label,
});

export const drawWalk = (walk: SeamWalk, garment: Garment, unit: Unit): Drawing =>
  drawSeamWalk(walk, garment, { unit, locale });

/** Ease at every level in every size against what is usual. */
export const drawFit = (fit: Fit, size: string, label: string, unit: Unit): Drawing => ({
  ...drawEase(fit, { unit, locale, size }),
  label,
});

/** The plan on the cloth, in the cloth's own colour. */
export const drawPlan = (
  problem: LayoutProblem,
  plan: Layout,
  garment: Garment,
  colour: string,
  unit: Unit,
): Drawing => {
  const longest = Math.max(plan.length, problem.cloth.width);
  return drawLayout(problem, plan, { unit, locale, garment, colour, textSize: longest / 52 });
};
