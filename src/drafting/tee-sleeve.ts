import { type Cubic, type Point, segmentPointAt } from '../geometry/index.ts';
import { good, type Result } from '../units/index.ts';
import { fallingCurve, parameterAtHeight } from './side-seam.ts';
import { type Cap, type CapShape, fitCap } from './sleeve-cap.ts';
import type { TeePlan } from './tee-plan.ts';

export interface TeeSleeve {
  readonly cap: Cap;
  /** From the front underarm down to the hem, and from the back underarm. */
  readonly front: Cubic;
  readonly back: Cubic;
  readonly armLevel: number;
  readonly hemLevel: number;
}

/** Flatter than a woven sleeve's cap, and front and back more alike: a knit follows the arm forward by itself. */
const knitCap: { readonly front: CapShape; readonly back: CapShape } = {
  front: { across: 0.45, up: 0.42, head: 0.5, hollow: 0.82 },
  back: { across: 0.42, up: 0.42, head: 0.52, hollow: 0.76 },
};

/** Sleeve-head ease, mm: shirts and knits take 0–12 in all, set in flat; a little more of it behind. */
export const knitHeadEase = { front: 3, back: 4, least: 0, most: 6 } as const;

/** Where the upper arm is measured, below the underarm line, mm. */
const armBelow = 15;

/**
 * How much of the slope of a straight underarm seam is left at its top and at the hem, which it so meets nearly square.
 * Twice the first and the second together make three: the least at which the seam never bends back.
 */
const slopes = { top: 1.3, hem: 0.4 } as const;

/** Share of the taper reached at a share of the underarm seam. */
const taperAt = (at: number): number =>
  slopes.top * (at - 2 * at ** 2 + at ** 3) + slopes.hem * (at ** 3 - at ** 2) + 3 * at ** 2 - 2 * at ** 3;

/**
 * A short sleeve in one piece, set in.
 *
 * 1. Cap fitted to both armholes with sleeve-head ease 7, as wide as the upper arm and its ease.
 * 2. Below the underarm line an eighth of the arm's length: to the middle of the upper arm.
 * 3. Underarm seams alike, tapering to a hem that still clears the upper arm where it is fullest; they come to
 *    the hem nearly square, so that it runs on across the seam.
 *
 * Construction as taught in manuals of metric pattern cutting.
 */
export const draftTeeSleeve = (plan: TeePlan, frontArmhole: number, backArmhole: number): Result<TeeSleeve> => {
  const { upperArm, hem, below } = plan.sleeve;
  const taper = (upperArm - hem) / 2 / (1 - taperAt(armBelow / below));
  const rise = Math.atan((slopes.top * taper) / below);
  const fitted = fitCap({
    width: hem + 2 * taper,
    frontLength: frontArmhole + knitHeadEase.front,
    backLength: backArmhole + knitHeadEase.back,
    rise,
    ...knitCap,
  });
  if (!fitted.ok) return fitted;
  const cap = fitted.value;
  const seam = (at: number, inward: 1 | -1): Cubic =>
    fallingCurve(
      { x: at, y: 0 },
      { x: at + inward * taper, y: below },
      (inward * slopes.top * taper) / below,
      (inward * slopes.hem * taper) / below,
    );
  return good({
    cap,
    front: seam(-cap.frontWidth, 1),
    back: seam(cap.backWidth, -1),
    armLevel: armBelow,
    hemLevel: below,
  });
};

/** Front and back underarm seam at a height below the underarm line. */
export const teeSleeveAt = (sleeve: TeeSleeve, level: number): readonly [Point, Point] => {
  const at = (curve: Cubic): Point => ({ ...segmentPointAt(curve, parameterAtHeight(curve, level)), y: level });
  return [at(sleeve.front), at(sleeve.back)];
};
