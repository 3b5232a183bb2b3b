import { pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import { good, type Result } from '../units/index.ts';
import { type Bodice, draftBodice } from './blouse-bodice.ts';
import type { BlousePlan } from './blouse-plan.ts';
import { draftSleeve, type SleeveDraft } from './blouse-sleeve.ts';
import { solveBetween } from './solve.ts';

export interface BlouseDraft {
  readonly plan: BlousePlan;
  readonly bodice: Bodice;
  readonly sleeve: SleeveDraft;
  /** Cap height over the mean depth of front and back armhole, shoulder point to underarm. */
  readonly capShare: number;
}

/** Mean height of the two armholes, shoulder point to underarm, mm. */
export const armholeHeight = ({ front, back }: Bodice): number =>
  (pathEnd(front.armhole).y - pathStart(front.armhole).y + pathEnd(back.armhole).y - pathStart(back.armhole).y) / 2;

const draftAt = (plan: BlousePlan, depth: number): Result<BlouseDraft> => {
  const drafted = draftBodice(plan, depth);
  if (!drafted.ok) return drafted;
  const bodice = drafted.value;
  const sleeve = draftSleeve(plan, pathLength(bodice.front.armhole), pathLength(bodice.back.armhole));
  if (!sleeve.ok) return sleeve;
  return good({ plan, bodice, sleeve: sleeve.value, capShare: sleeve.value.cap.height / armholeHeight(bodice) });
};

/** A set-in blouse sleeve's cap stands between these shares of the armhole's height; shirts lie lower, tailored sleeves higher. */
export const capShares = { low: 0.64, high: 0.84 } as const;

/** How much the underarm may be lowered or raised, and the sleeve widened, to bring the cap between them, mm. */
const room = { lower: 28, raise: 10, wider: 120 } as const;

/** How finely the depth and width are found, mm: well inside what a seam or girth is held to. */
const fine = 0.01;

/**
 * Armhole and sleeve settled together.
 *
 * The sleeve's width is the upper arm and its ease, so an armhole too short for the arm gives a flat cap
 * that drags, and one too long a cap that stands like a pipe. Where the first draft's cap lies outside the
 * usual shares, the underarm is lowered or raised to bring it to the nearer one. A slim arm in a wide
 * armhole, where raising is not enough, gets a wider sleeve, and its ease is stated so.
 */
export const settleBlouse = (plan: BlousePlan): Result<BlouseDraft> => {
  const first = draftAt(plan, plan.armholeDepth);
  if (!first.ok) {
    // Too short to reach across the arm: the lowest underarm is the best there is.
    return draftAt(plan, plan.armholeDepth + room.lower);
  }
  const { low, high } = capShares;
  if (first.value.capShare >= low && first.value.capShare <= high) return first;
  const aim = first.value.capShare < low ? low : high;
  const furthest = plan.armholeDepth + (aim === low ? room.lower : -room.raise);
  const missBy = (depth: number): number => {
    const draft = draftAt(plan, depth);
    return (draft.ok ? draft.value.capShare : 0) - aim;
  };
  const depth = solveBetween(missBy, plan.armholeDepth, furthest, fine);
  if (depth !== null) return draftAt(plan, depth);
  if (aim === low) return draftAt(plan, furthest);
  const widened = (by: number): BlousePlan => ({
    ...plan,
    ease: { ...plan.ease, 'upper-arm': (plan.ease['upper-arm'] ?? 0) + by },
    sleeve: { ...plan.sleeve, upperArm: plan.sleeve.upperArm + by },
  });
  const tooHigh = (by: number): number => {
    const draft = draftAt(widened(by), furthest);
    return (draft.ok ? draft.value.capShare : 0) - aim;
  };
  const wider = solveBetween(tooHigh, 0, room.wider, fine);
  return draftAt(widened(wider ?? room.wider), furthest);
};
