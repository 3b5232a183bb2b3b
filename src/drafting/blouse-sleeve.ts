import type { Cubic, Point } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { BlousePlan } from './blouse-plan.ts';
import { fallingCurve, parameterAtHeight } from './side-seam.ts';
import { type Cap, type CapShape, fitCap } from './sleeve-cap.ts';
import { settle } from './solve.ts';

export interface SleeveDraft {
  readonly cap: Cap;
  /** From the front underarm down to the hem, and from the back underarm. */
  readonly front: Cubic;
  readonly back: Cubic;
  readonly hemLevel: number;
  readonly armLevel: number;
  readonly elbowLevel: number;
  readonly hemWidth: number;
}

/** The front of the cap is more hollow below and rounder above: the arm hangs forward. */
export const setInCap: { readonly front: CapShape; readonly back: CapShape } = {
  front: { across: 0.46, up: 0.43, head: 0.5, hollow: 0.75 },
  back: { across: 0.42, up: 0.43, head: 0.52, hollow: 0.7 },
};

/** Sleeve-head ease, mm: general woven cloth takes 15–35; a little more of it behind. */
export const headEase = { front: 11, back: 13 } as const;

/** A hem narrower than this share of the upper arm would make the sleeve a funnel. */
const leastHem = 0.66;

/** How far down the arm the elbow lies; the survey's women: 310 from shoulder point to elbow of 542 to the wrist. */
const elbowShareOfArm = 0.57;

/** Where the upper arm is measured, below the underarm line. */
const armBelow = 15;

/** How much of the slope of a straight underarm seam is left at its top and at the hem, which it so meets nearly square. */
const slopes = { top: 0.85, hem: 0.45 } as const;

/** The seam never meets the hem further from square than this slope: about 4°. */
const mostAtHem = 0.07;

/** Share of a sleeve's whole taper that is reached at a share of its underarm seam's length. */
const taperAt = (at: number): number =>
  slopes.top * (at - 2 * at ** 2 + at ** 3) + slopes.hem * (at ** 3 - at ** 2) + 3 * at ** 2 - 2 * at ** 3;

/** An armhole is about this share of its round high: an elbow nearer to the shoulder would lie above the underarm. */
const heightShareOfArmhole = 0.4;

const shortArm = (length: number) => bad('drafting.arm-too-short', { arm: { mm: Math.round(length) } });

/**
 * A long sleeve in one piece, set in.
 *
 * 1. Cap fitted to both armholes with sleeve-head ease 24, as wide as the upper arm and its ease.
 * 2. Length from the cap top to the wrist; the elbow lies 57 in a hundred of it below the cap top.
 * 3. Underarm seams alike, tapering to a hem the hand passes and wide enough that the bent elbow keeps its ease;
 *    they come to the hem nearly square, so that it runs on across the seam.
 *
 * Construction as taught in manuals of metric pattern cutting. Problems `drafting.cap-cannot-fit`,
 * `drafting.arm-too-short`.
 */
export const draftSleeve = (plan: BlousePlan, frontArmhole: number, backArmhole: number): Result<SleeveDraft> => {
  const { upperArm, elbow, hand, length } = plan.sleeve;
  if (elbowShareOfArm * length < heightShareOfArmhole * (frontArmhole + backArmhole)) return shortArm(length);
  // How deep the cap will be is not known yet; the taper hardly depends on it.
  const likelyCap = 0.42 * upperArm;
  const below = length - likelyCap;
  const elbowShare = settle((elbowShareOfArm * length - likelyCap) / below, 0.1, 0.7);
  const wanted = Math.max(hand + 20, leastHem * upperArm, upperArm - (upperArm - elbow - 53) / taperAt(elbowShare));
  const hemWidth = Math.min(wanted, upperArm - 12);
  const rise = Math.atan((slopes.top * (upperArm - hemWidth)) / 2 / below);
  const width = upperArm + 2 * armBelow * Math.tan(rise);
  const fitted = fitCap({
    width,
    frontLength: frontArmhole + headEase.front,
    backLength: backArmhole + headEase.back,
    rise,
    ...setInCap,
  });
  if (!fitted.ok) return fitted;
  const cap = fitted.value;
  const hemLevel = length - cap.height;
  const elbowLevel = elbowShareOfArm * length - cap.height;
  if (elbowLevel < 2 * armBelow) return shortArm(length);
  const taper = (width - hemWidth) / 2;
  const hemSlope = Math.min((slopes.hem * taper) / hemLevel, mostAtHem);
  const seam = (at: number, inward: 1 | -1): Cubic =>
    fallingCurve({ x: at, y: 0 }, { x: at + inward * taper, y: hemLevel }, inward * Math.tan(rise), inward * hemSlope);
  return good({
    cap,
    front: seam(-cap.frontWidth, 1),
    back: seam(cap.backWidth, -1),
    hemLevel,
    armLevel: armBelow,
    elbowLevel,
    hemWidth,
  });
};

/** The sleeve's width at a height below the underarm line, from seam to seam. */
export const sleeveAt = (sleeve: SleeveDraft, level: number): readonly [Point, Point] => {
  const at = (curve: Cubic): Point => {
    const t = parameterAtHeight(curve, level);
    const u = 1 - t;
    const x =
      u ** 3 * curve.from.x + 3 * u * u * t * curve.control1.x + 3 * u * t * t * curve.control2.x + t ** 3 * curve.to.x;
    return { x, y: level };
  };
  return [at(sleeve.front), at(sleeve.back)];
};
