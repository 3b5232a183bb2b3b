import {
  type Cubic,
  type Path,
  type Point,
  pathLength,
  segmentPointAt,
  splitPathAtLength,
  tolerance,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { fallingCurve, parameterAtHeight } from './side-seam.ts';
import { type Cap, type CapShape, fitCap } from './sleeve-cap.ts';

export interface ShirtSleeveRequest {
  /** Finished girth at the upper arm, mm. */
  readonly upperArm: number;
  /** Cap top to wrist edge or hem, mm. */
  readonly length: number;
  /** A short sleeve is lengthened to leave this below the underarm line, mm; a long one is as long as the arm. */
  readonly leastBelow?: number;
  /** Width at the wrist edge or hem, mm. */
  readonly wrist: number;
  /** Whole armhole in front of the shoulder point and behind it, mm. */
  readonly frontArmhole: number;
  readonly backArmhole: number;
  /** Ease of each half of the cap, mm. */
  readonly ease: { readonly front: number; readonly back: number };
}

export interface ShirtSleeve {
  readonly cap: Cap;
  /** From the front underarm down, and from the back underarm. */
  readonly front: Cubic;
  readonly back: Cubic;
  /** Heights below the underarm line, mm. */
  readonly armLevel: number;
  readonly wristLevel: number;
}

/** A shirt's cap is low and flat: hardly hollow, front and back nearly alike. */
const shirtCap: { readonly front: CapShape; readonly back: CapShape } = {
  front: { across: 0.45, up: 0.41, head: 0.52, hollow: 0.82 },
  back: { across: 0.4, up: 0.41, head: 0.52, hollow: 0.6 },
};

/** Where the upper arm is measured, below the underarm line, mm. */
const armBelow = 15;

/** How much of the slope of a straight underarm seam is left at its top and at the wrist. */
const slopes = { top: 0.9, wrist: 0.35 } as const;

/** The seam never leaves the underarm further from the grain than this slope: a cap square to a steeper seam has no room to be hollow. */
const mostAtTop = 0.2;

/** The seam never meets the wrist further from square than this slope: about 4°. */
const mostAtWrist = 0.07;

/** A shirt's cap is likely to be this share of the upper arm high; the taper hardly depends on it. */
const likelyCap = 0.3;

/** A sleeve shorter than this below its underarm line is none. */
const leastBelow = 40;

const shortArm = (length: number) => bad('drafting.arm-too-short', { arm: { mm: Math.round(length) } });

/** The sleeve for one width at the underarm line. */
const sleeveOf = (asked: ShirtSleeveRequest, width: number, rise: number): Result<ShirtSleeve> => {
  const { length, wrist, ease } = asked;
  const fitted = fitCap({
    width,
    frontLength: asked.frontArmhole + ease.front,
    backLength: asked.backArmhole + ease.back,
    rise,
    ...shirtCap,
  });
  if (!fitted.ok) return fitted;
  const cap = fitted.value;
  // Where no height serves both halves at once, the cap found is as long as one of them alone asks.
  const off =
    pathLength(cap.front) + pathLength(cap.back) - asked.frontArmhole - asked.backArmhole - ease.front - ease.back;
  if (Math.abs(off) > tolerance.seam) {
    return bad('drafting.cap-cannot-fit', {
      armhole: { mm: Math.round(asked.frontArmhole + asked.backArmhole) },
      sleeve: { mm: Math.round(width) },
    });
  }
  const wristLevel = Math.max(length - cap.height, asked.leastBelow ?? 0);
  if (wristLevel < leastBelow) return shortArm(length);
  const taper = (width - wrist) / 2;
  const atWrist = Math.min((slopes.wrist * taper) / wristLevel, mostAtWrist);
  const seam = (at: number, inward: 1 | -1): Cubic =>
    fallingCurve({ x: at, y: 0 }, { x: at + inward * taper, y: wristLevel }, inward * Math.tan(rise), inward * atWrist);
  return good({
    cap,
    front: seam(-cap.frontWidth, 1),
    back: seam(cap.backWidth, -1),
    armLevel: armBelow,
    wristLevel,
  });
};

/** Rounds in which the width at the underarm line comes to give the upper arm its girth; each gains two digits. */
const rounds = 3;

/**
 * A shirt sleeve in one piece: a low cap fitted to the armhole with little ease, underarm seams alike, tapering to
 * the wrist edge or hem, which they meet nearly square.
 *
 * Construction as taught in manuals of metric pattern cutting (shirt sleeve). Problems `drafting.cap-cannot-fit`,
 * `drafting.arm-too-short`.
 */
export const draftShirtSleeve = (asked: ShirtSleeveRequest): Result<ShirtSleeve> => {
  const { upperArm, length, wrist } = asked;
  const likely = Math.max(length - likelyCap * upperArm, asked.leastBelow ?? 0);
  if (likely < leastBelow) return shortArm(length);
  const rise = Math.atan(Math.min((slopes.top * (upperArm - wrist)) / 2 / likely, mostAtTop));
  let width = upperArm + 2 * armBelow * Math.tan(rise);
  let sleeve = sleeveOf(asked, width, rise);
  for (let round = 0; round < rounds && sleeve.ok; round++) {
    const [front, back] = shirtSleeveAt(sleeve.value, armBelow);
    width += upperArm - (back.x - front.x);
    sleeve = sleeveOf(asked, width, rise);
  }
  return sleeve;
};

/** Both ends of the sleeve's width at a height below the underarm line. */
export const shirtSleeveAt = ({ front, back }: ShirtSleeve, level: number): readonly [Point, Point] => {
  const at = (curve: Cubic): Point => ({ ...segmentPointAt(curve, parameterAtHeight(curve, level)), y: level });
  return [at(front), at(back)];
};

/** The cap in three, as front, yoke and back meet it: each as long as its armhole and its share of the ease, mm. */
export const capInThree = (cap: Cap, front: number, back: number): readonly [Path, Path, Path] => {
  const [capFront, yokeFront] = splitPathAtLength(cap.front, front);
  const [yokeBack, capBack] = splitPathAtLength(cap.back, pathLength(cap.back) - back);
  if (!capFront || !yokeFront || !yokeBack || !capBack) throw new Error('A cap is shorter than the armhole it is for');
  return [capFront, [...yokeFront, ...yokeBack], capBack];
};
