import type { Cubic, Point } from '../geometry/index.ts';
import { good, type Result } from '../units/index.ts';
import { type Cap, type CapShape, fitCap } from './sleeve-cap.ts';
import { riseOf, seamAt, taperedSeam, taperFor } from './tapered-sleeve.ts';
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
  const taper = taperFor(upperArm, hem, armBelow, below);
  const fitted = fitCap({
    width: hem + 2 * taper,
    frontLength: frontArmhole + knitHeadEase.front,
    backLength: backArmhole + knitHeadEase.back,
    rise: riseOf(taper, below),
    ...knitCap,
  });
  if (!fitted.ok) return fitted;
  const cap = fitted.value;
  return good({
    cap,
    front: taperedSeam(-cap.frontWidth, 1, taper, below),
    back: taperedSeam(cap.backWidth, -1, taper, below),
    armLevel: armBelow,
    hemLevel: below,
  });
};

/** Front and back underarm seam at a height below the underarm line. */
export const teeSleeveAt = (sleeve: TeeSleeve, level: number): readonly [Point, Point] => [
  seamAt(sleeve.front, level),
  seamAt(sleeve.back, level),
];
