import { pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import { good, type Result } from '../units/index.ts';
import { type Bodice, draftBodice } from './blouse-bodice.ts';
import { type ShirtDressPlan, shirtDress, wristOf } from './shirt-dress-plan.ts';
import { draftShirtSleeve, type ShirtSleeve } from './shirt-sleeve.ts';
import { solveBetween } from './solve.ts';
import { cutYoke, type YokeCut } from './yoke.ts';

export interface ShirtDressDraft {
  readonly plan: ShirtDressPlan;
  readonly bodice: Bodice;
  readonly cut: YokeCut;
  readonly sleeve: ShirtSleeve;
}

/** Sleeve-head ease, mm: crisp cotton takes 0–20, a shirt's low cap little of it. */
export const shirtHeadEase = { front: 4, back: 5 } as const;

/** A shirt sleeve's cap stands between these shares of its armhole's height; a blouse's higher. */
const capShares = { low: 0.48, high: 0.67 } as const;

/** How much the underarm may be lowered or raised, and the sleeve widened, to bring the cap between them, mm. */
const room = { lower: 28, raise: 10, wider: 120 } as const;

/** How finely depth and width are found, mm: well inside what a seam or girth is held to. */
const fine = 0.01;

const armholeHeight = ({ front, back }: Bodice): number =>
  (pathEnd(front.armhole).y - pathStart(front.armhole).y + pathEnd(back.armhole).y - pathStart(back.armhole).y) / 2;

interface Settled {
  readonly plan: ShirtDressPlan;
  readonly bodice: Bodice;
  readonly sleeve: ShirtSleeve;
  readonly capShare: number;
}

const sleeveFor = (plan: ShirtDressPlan, bodice: Bodice): Result<Settled> => {
  const { upperArm, length } = plan.sleeve;
  const sleeve = draftShirtSleeve({
    upperArm,
    length,
    wrist: plan.view.sleeve === 'long' ? wristOf(plan, upperArm) : shortHem(upperArm),
    frontArmhole: pathLength(bodice.front.armhole),
    backArmhole: pathLength(bodice.back.armhole),
    ease: shirtHeadEase,
  });
  if (!sleeve.ok) return sleeve;
  return good({ plan, bodice, sleeve: sleeve.value, capShare: sleeve.value.cap.height / armholeHeight(bodice) });
};

/** A short sleeve is a little narrower at its hem than at the upper arm. */
const shortHem = (upperArm: number): number => upperArm - 16;

const settledAt = (plan: ShirtDressPlan, depth: number): Result<Settled> => {
  const bodice = draftBodice(plan.bodice, depth);
  return bodice.ok ? sleeveFor(plan, bodice.value) : bodice;
};

const widened = (plan: ShirtDressPlan, by: number): ShirtDressPlan => ({
  ...plan,
  ease: { ...plan.ease, 'upper-arm': (plan.ease['upper-arm'] ?? 0) + by },
  sleeve: { ...plan.sleeve, upperArm: plan.sleeve.upperArm + by },
});

/**
 * Armhole and sleeve settled together, as a shirt's: where the cap would stand too low (a thick arm) the underarm is
 * lowered; where too high (a slim arm in a wide armhole) the sleeve is made wider, and its ease is stated so. A shirt
 * takes width before height: it is meant to be reached in.
 */
const settle = (plan: ShirtDressPlan): Result<Settled> => {
  const depth = plan.bodice.armholeDepth;
  const first = settledAt(plan, depth);
  if (!first.ok) return settledAt(plan, depth + room.lower);
  const { low, high } = capShares;
  if (first.value.capShare < low) {
    const missBy = (at: number): number => {
      const draft = settledAt(plan, at);
      return (draft.ok ? draft.value.capShare : 0) - low;
    };
    return settledAt(plan, solveBetween(missBy, depth, depth + room.lower, fine) ?? depth + room.lower);
  }
  if (first.value.capShare <= high) return first;
  const { bodice } = first.value;
  const tooHigh = (by: number): number => {
    const draft = sleeveFor(widened(plan, by), bodice);
    return (draft.ok ? draft.value.capShare : 0) - high;
  };
  return sleeveFor(widened(plan, solveBetween(tooHigh, 0, room.wider, fine) ?? room.wider), bodice);
};

/** The dress's bodice and sleeve, settled and cut at the yoke. Problems: those of bodice and sleeve. */
export const settleShirtDress = (plan: ShirtDressPlan): Result<ShirtDressDraft> => {
  const settled = settle(plan);
  if (!settled.ok) return settled;
  const { bodice } = settled.value;
  return good({ ...settled.value, cut: cutYoke(bodice.back, bodice.front, shirtDress.forward) });
};
