import { angleOf, perpendicular, segmentTangentAt } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { draftRaglan, type RaglanHalf } from './raglan.ts';
import { draftRaglanSleeve, type RaglanSleeve, shoulderDart } from './raglan-sleeve.ts';
import { solveBetween } from './solve.ts';
import type { SweatshirtPlan } from './sweatshirt-plan.ts';
import { draftTeeBody, type TeeBody, type TeeHalf } from './tee-body.ts';

export interface SweatshirtDraft {
  readonly plan: SweatshirtPlan;
  readonly body: TeeBody;
  readonly front: RaglanHalf;
  readonly back: RaglanHalf;
  readonly sleeve: RaglanSleeve;
}

const degree = Math.PI / 180;

/** Share of each neck that goes with the sleeve: about 40 in front, 25 behind. */
const neckShares = { front: 0.25, back: 0.3 } as const;

/**
 * How a raglan gives way to an arm thicker (more steps) or thinner (fewer) than the armhole: in four things together, so
 * that a pattern grows evenly. The line is tilted more where body and sleeve part, within what is neither a straight nor a hook;
 * the underarm is lowered; the sleeve has less ease over the arm; and it hangs less steeply than the shoulders slope. That
 * is the shoulder dart, 17 degrees front and back together where nothing gives way: less lifts the arm like a wing,
 * more stands away in a thick knit. Radians and mm a step.
 */
const giving = {
  tilt: { middle: 8 * degree, by: 4 * degree },
  depth: 8,
  dart: { middle: 17 * degree, by: -3 * degree, least: 6 * degree },
  ease: -11,
  from: -1.6,
  to: 3.2,
} as const;

const tiltAt = (step: number): number => giving.tilt.middle + giving.tilt.by * Math.tanh(0.7 * step);

const dartAt = (step: number): number => Math.max(giving.dart.middle + giving.dart.by * step, giving.dart.least);

/** How finely the step is found: a thousandth of a mm of the underarm. */
const fine = 1e-4;

/** With less of a shoulder dart than this, radians, the sleeve's shoulders would lie over one another. */
const leastDart = 2 * degree;

interface Halves {
  readonly body: TeeBody;
  readonly front: RaglanHalf;
  readonly back: RaglanHalf;
}

const raglanOn = (half: TeeHalf, neckShare: number, tilt: number): RaglanHalf | null =>
  draftRaglan({
    neck: half.neck,
    shoulder: half.shoulder,
    underarm: half.side[0].from,
    underarmDirection: angleOf(perpendicular(segmentTangentAt(half.side[0], 0))),
    neckShare,
    tilt,
  });

const halvesAt = (body: TeeBody, tilt: number): Halves | null => {
  const front = raglanOn(body.front, neckShares.front, tilt);
  const back = raglanOn(body.back, neckShares.back, tilt);
  return front && back && { body, front, back };
};

/** How much wider the sleeve may be cut to suit a deep armhole, mm. */
const mostWider = 120;

const widened = (plan: SweatshirtPlan, by: number): SweatshirtPlan => ({
  ...plan,
  ease: { ...plan.ease, 'upper-arm': (plan.ease['upper-arm'] ?? 0) + by },
  sleeve: { ...plan.sleeve, upperArm: plan.sleeve.upperArm + by },
});

/**
 * Body and sleeve settled together: tilt, underarm, ease and shoulder dart give way by as many steps as make the sleeve's width
 * go with the armhole. A thin arm in a deep armhole for which that is not enough gets a wider sleeve, and its ease is
 * stated so; for a very thick one the dart is what it comes to. Problem `drafting.raglan-cannot-fit` where the arm does
 * not go through at all.
 */
export const settleSweatshirt = (plan: SweatshirtPlan): Result<SweatshirtDraft> => {
  const at = (step: number): SweatshirtPlan => (plan.sleeve.mayWiden ? widened(plan, giving.ease * step) : plan);
  const halves = (step: number): Result<Halves | null> => {
    const depth = Math.min(plan.armholeDepth + giving.depth * step, plan.lowestDepth);
    const body = draftTeeBody(plan.block, depth);
    return body.ok ? good(halvesAt(body.value, tiltAt(step))) : body;
  };
  /** How much the shoulder dart is over what is wished, radians; what cannot be drawn counts as far under. */
  const over = (step: number, tried: SweatshirtPlan): number => {
    const drawn = halves(step);
    if (!drawn.ok || !drawn.value) return -1;
    return shoulderDart(drawn.value.front, drawn.value.back, tried.sleeve) - dartAt(step);
  };
  const found = solveBetween((step) => over(step, at(step)), giving.from, giving.to, fine);
  const thin = found === null && over(giving.from, at(giving.from)) > 0;
  const step = found ?? (thin ? giving.from : giving.to);
  const drawn = halves(step);
  if (!drawn.ok) return drawn;
  if (!thin || !plan.sleeve.mayWiden) return finish(at(step), drawn.value);
  const wider = solveBetween((by) => over(step, widened(at(step), by)), 0, mostWider, fine) ?? mostWider;
  return finish(widened(at(step), wider), drawn.value);
};

const finish = (plan: SweatshirtPlan, halves: Halves | null): Result<SweatshirtDraft> => {
  const sleeve = halves && draftRaglanSleeve(halves.front, halves.back, plan.sleeve);
  return halves && sleeve && sleeve.dart >= leastDart
    ? good({ plan, ...halves, sleeve })
    : bad('drafting.raglan-cannot-fit', {
        sleeve: { mm: Math.round(plan.sleeve.upperArm) },
        depth: { mm: Math.round(plan.armholeDepth) },
      });
};
