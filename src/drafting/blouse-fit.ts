import { pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import { good, type Result } from '../units/index.ts';
import { type Bodice, draftBodice } from './blouse-bodice.ts';
import { fullerFront } from './blouse-fuller.ts';
import type { BodicePlan } from './blouse-plan.ts';
import { draftSleeve, type SleeveDraft } from './blouse-sleeve.ts';
import { solveBetween } from './solve.ts';
import type { EaseByLevel } from './types.ts';

export interface BlouseDraft {
  readonly plan: BodicePlan;
  /** Nape to underarm line at the back, mm. */
  readonly depth: number;
  readonly bodice: Bodice;
  readonly sleeve: SleeveDraft;
  /** Cap height over the mean depth of front and back armhole, shoulder point to underarm. */
  readonly capShare: number;
}

/** Mean height of the two armholes, shoulder point to underarm, mm. */
export const armholeHeight = ({ front, back }: Bodice): number =>
  (pathEnd(front.armhole).y - pathStart(front.armhole).y + pathEnd(back.armhole).y - pathStart(back.armhole).y) / 2;

const draftAt = (plan: BodicePlan, depth: number): Result<BlouseDraft> => {
  const drafted = draftBodice(plan, depth);
  if (!drafted.ok) return drafted;
  const bodice = drafted.value;
  const sleeve = draftSleeve(plan, pathLength(bodice.front.armhole), pathLength(bodice.back.armhole));
  if (!sleeve.ok) return sleeve;
  return good({ plan, depth, bodice, sleeve: sleeve.value, capShare: sleeve.value.cap.height / armholeHeight(bodice) });
};

/** A set-in blouse sleeve's cap stands between these shares of the armhole's height; shirts lie lower, tailored sleeves higher. */
export const capShares = { low: 0.64, high: 0.84 } as const;

/** A fuller front's underarm is turned up a little, so that the cap stands higher over the mean of both: for each mm of its width. */
const turnedUp = 0.001;

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
const settleUsual = (plan: BodicePlan): Result<BlouseDraft> => {
  const first = draftAt(plan, plan.armholeDepth);
  if (!first.ok) {
    // Too short to reach across the arm: the lowest underarm is the best there is.
    return draftAt(plan, plan.armholeDepth + room.lower);
  }
  const { low } = capShares;
  const high = capShares.high - turnedUp * Math.max(plan.fuller.width, 0);
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
  const widened = (by: number): BodicePlan => ({
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

/** Width at waist and hip is settled to this, mm: well inside `tolerance.girth`. */
const widthWithin = 0.01;

/** The plan whose waist and hip keep the girth asked for while each front takes `wider` more of it. */
const holding = (plan: BodicePlan, wider: number): BodicePlan => ({
  ...plan,
  waistQuarter: plan.waistQuarter - (plan.fuller.held.waist ? wider / 2 : 0),
  hipQuarter: plan.hipQuarter - (plan.fuller.held.hip ? wider / 2 : 0),
});

/** What waist and hip gain is stated with their ease, but for a girth that was asked for. */
const stating = (plan: BodicePlan, wider: number): EaseByLevel => ({
  ...plan.ease,
  ...(plan.fuller.held.waist ? {} : { waist: (plan.ease['waist'] ?? 0) + 2 * wider }),
  ...(plan.fuller.held.hip ? {} : { hip: (plan.ease['hip'] ?? 0) + 2 * wider }),
});

/**
 * The blouse settled for the usual cup, its front then made to the body's own (see `fullerFront`): sleeve and armholes
 * stay as they are.
 */
export const settleBlouse = (plan: BodicePlan): Result<BlouseDraft> => {
  const usual = settleUsual(plan);
  if (!usual.ok) return usual;
  const draft = usual.value;
  const { depth } = draft;
  let taken = 0;
  for (let round = 0; ; round++) {
    const drafted = round === 0 ? good(draft.bodice) : draftBodice(holding(draft.plan, taken), depth);
    const fuller = drafted.ok ? fullerFront(draft.plan, depth, drafted.value) : drafted;
    if (!fuller.ok) return fuller;
    const { bodice, wider } = fuller.value;
    const settled = Math.abs(wider - taken) < widthWithin;
    const { waist, hip } = plan.fuller.held;
    if (settled || !(waist || hip)) {
      const own = { ...draft.plan, ease: stating(draft.plan, wider) };
      return good({ ...draft, plan: own, bodice });
    }
    taken = wider;
  }
};
