import { pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import { good, type Result } from '../units/index.ts';
import { draftJacketBody, type JacketBody } from './jacket-body.ts';
import type { JacketPlan } from './jacket-plan.ts';
import type { CapShape } from './sleeve-cap.ts';
import { solveBetween } from './solve.ts';
import { draftTwoPieceSleeve, type TwoPieceSleeve } from './two-piece-sleeve.ts';

export interface JacketDraft {
  readonly plan: JacketPlan;
  readonly body: JacketBody;
  readonly sleeve: TwoPieceSleeve;
  /** Cap height over the mean height of front and back armhole. */
  readonly capShare: number;
}

/**
 * A tailored cap: rounder at the head than a blouse's. Its hollow ends beyond the front seam and before the back one,
 * so that each seam cuts the same curve in every size.
 */
const tailoredCap: { readonly front: CapShape; readonly back: CapShape } = {
  front: { across: 0.45, up: 0.48, head: 0.57, hollow: 0.72 },
  back: { across: 0.37, up: 0.46, head: 0.58, hollow: 0.82 },
};

/** Sleeve-head ease, mm: soft wool takes 30–50. All of it lies in the top sleeve, a little more of it behind. */
export const headEase = { front: 17, back: 20 } as const;

/** What the hem measures over the hand, and what it is at least of the upper arm. */
const hem = { overHand: 42, leastShare: 0.69 } as const;

/** Over the blouse's sleeve the bent elbow has at least this much ease, mm. */
const elbowEase = 78;

/** A tailored sleeve's cap stands between these shares of the armhole's height. */
export const capShares = { low: 0.7, high: 0.96 } as const;

/** How much the underarm may be lowered or raised, and the sleeve widened, to bring the cap between them, mm. */
const room = { lower: 28, raise: 10, wider: 120 } as const;

/** How finely the depth and width are found, mm: well inside what a seam or girth is held to. */
const fine = 0.01;

const heightOf = (body: JacketBody): number => {
  // The front's armhole as it is swung: its height along the chord is what the cap has to stand up to.
  const back = pathEnd(body.sideBack.armhole).y - pathStart(body.sideBack.armhole).y;
  const { armhole } = body.sideFront;
  const [top, low] = [pathStart(armhole), pathEnd(armhole)];
  const cos = Math.cos(body.swing);
  const sin = Math.sin(body.swing);
  const front = (low.y - top.y) * cos - (low.x - top.x) * sin;
  return (back + front) / 2;
};

const draftAt = (plan: JacketPlan, depth: number): Result<JacketDraft> => {
  const drafted = draftJacketBody(plan, depth);
  if (!drafted.ok) return drafted;
  const body = drafted.value;
  const { upperArm, elbow, hand, length } = plan.sleeve;
  const sleeve = draftTwoPieceSleeve({
    width: upperArm,
    frontLength: pathLength(body.sideFront.armhole) + headEase.front,
    backLength: pathLength(body.sideBack.armhole) + headEase.back,
    ...tailoredCap,
    length,
    elbow: elbow + elbowEase,
    hem: Math.max(hand + hem.overHand, hem.leastShare * upperArm),
  });
  if (!sleeve.ok) return sleeve;
  return good({ plan, body, sleeve: sleeve.value, capShare: sleeve.value.cap.height / heightOf(body) });
};

/**
 * Armhole and sleeve settled together, as the blouse's are: the underarm is lowered or raised where the arm would
 * make the cap flat or stand like a pipe; a slim arm in a wide armhole gets a wider sleeve, and its ease is stated so.
 */
export const settleJacket = (plan: JacketPlan): Result<JacketDraft> => {
  const first = draftAt(plan, plan.armholeDepth);
  if (!first.ok) return draftAt(plan, plan.armholeDepth + room.lower);
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
  const widened = (by: number): JacketPlan => ({
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
