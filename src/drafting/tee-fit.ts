import { pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import { good, type Result } from '../units/index.ts';
import { settle, solveBetween } from './solve.ts';
import { draftTeeBody, type TeeBody } from './tee-body.ts';
import type { TeePlan } from './tee-plan.ts';
import { draftTeeSleeve, type TeeSleeve } from './tee-sleeve.ts';

export interface TeeDraft {
  readonly plan: TeePlan;
  readonly body: TeeBody;
  readonly sleeve: TeeSleeve;
  /** Cap height over the mean height of front and back armhole, shoulder point to underarm. */
  readonly capShare: number;
}

const heightOf = ({ front, back }: TeeBody): number =>
  (pathEnd(front.armhole).y - pathStart(front.armhole).y + pathEnd(back.armhole).y - pathStart(back.armhole).y) / 2;

const draftAt = (plan: TeePlan, depth: number): Result<TeeDraft> => {
  const drafted = draftTeeBody(plan, depth);
  if (!drafted.ok) return drafted;
  const body = drafted.value;
  const sleeve = draftTeeSleeve(plan, pathLength(body.front.armhole), pathLength(body.back.armhole));
  if (!sleeve.ok) return sleeve;
  return good({ plan, body, sleeve: sleeve.value, capShare: sleeve.value.cap.height / heightOf(body) });
};

/** The cap of a knit sleeve stands between these shares of the armhole's height; a woven set-in sleeve's is higher. */
const capShares = { low: 0.52, high: 0.7 } as const;

/** How much the underarm may be lowered or raised, and the sleeve widened, to bring the cap between them, mm. */
const room = { lower: 30, raise: 5, wider: 120 } as const;

/** How finely the depth and width are found, mm. */
const fine = 0.01;

const widened = (plan: TeePlan, by: number): TeePlan => ({
  ...plan,
  ease: { ...plan.ease, 'upper-arm': (plan.ease['upper-arm'] ?? 0) + by },
  sleeve: { ...plan.sleeve, upperArm: plan.sleeve.upperArm + by, hem: plan.sleeve.hem + by },
});

/**
 * Armhole and sleeve settled together.
 *
 * The sleeve's width is the upper arm and its ease, so an armhole too short for the arm gives a flat cap that drags
 * up the body, and one too long a cap that stands too high for a knit. Where the first draft's cap lies outside
 * the usual shares, the underarm is lowered or raised to bring it to the nearer one; where that is not
 * enough for a slim arm in a wide armhole, the sleeve is cut wider and its ease is stated so.
 */
export const settleTee = (plan: TeePlan): Result<TeeDraft> => {
  const first = draftAt(plan, plan.armholeDepth);
  const { low, high } = capShares;
  if (first.ok && first.value.capShare >= low && first.value.capShare <= high) return first;
  const aim = first.ok && first.value.capShare > high ? high : low;
  const lowest = Math.max(
    plan.armholeDepth,
    Math.min(plan.armholeDepth + room.lower, plan.waistLevel - room.lower * 2),
  );
  const furthest = aim === low ? lowest : plan.armholeDepth - room.raise;
  const share = (tried: TeePlan, depth: number): number => {
    const draft = draftAt(tried, depth);
    return draft.ok ? draft.value.capShare : 0;
  };
  const depth = solveBetween((tried) => share(plan, tried) - aim, plan.armholeDepth, furthest, fine);
  if (depth !== null) return draftAt(plan, depth);
  if (aim === low || !plan.sleeve.mayWiden) return draftAt(plan, furthest);
  const wider = solveBetween((by) => share(widened(plan, by), furthest) - aim, 0, room.wider, fine);
  return draftAt(widened(plan, settle(wider ?? room.wider, 0, room.wider)), furthest);
};
