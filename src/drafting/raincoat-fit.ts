import { type Cubic, distance, pathLength } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { draftRaincoatBody, type RaincoatBody } from './raincoat-body.ts';
import { draftHood, type RaincoatHood } from './raincoat-hood.ts';
import type { RaincoatPlan } from './raincoat-plan.ts';
import { type Cap, type CapShape, fitCap } from './sleeve-cap.ts';
import { solveBetween } from './solve.ts';
import { riseOf, taperedSeam, taperFor } from './tapered-sleeve.ts';

export interface RaincoatSleeve {
  readonly cap: Cap;
  readonly front: Cubic;
  readonly back: Cubic;
  readonly armLevel: number;
  readonly hemLevel: number;
}

export interface RaincoatDraft {
  readonly plan: RaincoatPlan;
  readonly body: RaincoatBody;
  readonly sleeve: RaincoatSleeve;
  readonly hood: RaincoatHood;
}

/** A low cap is flat and nearly the same before and behind. */
const lowCap: { readonly front: CapShape; readonly back: CapShape } = {
  front: { across: 0.45, up: 0.42, head: 0.5, hollow: 0.8 },
  back: { across: 0.43, up: 0.42, head: 0.52, hollow: 0.76 },
};

/** Coated cloth does not shrink under the iron and the sleeve is sewn in flat: next to no ease, mm. */
export const flatHeadEase = { front: 1.5, back: 2, least: 0, most: 5 } as const;

/** Where the upper arm is measured, below the underarm line, mm. */
const armBelow = 15;

/** A sleeve this short below the underarm, mm, is no long sleeve: there is no room for its hem to turn back. */
const leastBelow = 100;

/** What the sleeve narrows at each seam, at most, for each mm below the underarm. */
const mostTaper = 0.17;

const draftSleeve = (plan: RaincoatPlan, body: RaincoatBody, capGuess: number): Result<RaincoatSleeve> => {
  const below = plan.sleeve.reach - distance(body.back.shoulder.from, body.back.shoulder.to) - capGuess;
  if (below < leastBelow) return bad('drafting.arm-too-short', { arm: { mm: Math.round(plan.sleeve.arm) } });
  const wished = taperFor(plan.sleeve.upperArm, plan.sleeve.hem, armBelow, below);
  // A short thick arm's sleeve narrows less, or its seam would slant too steeply for a low cap and for a hem turned back.
  const taper = Math.min(wished, mostTaper * below);
  const hem = plan.sleeve.upperArm - ((plan.sleeve.upperArm - plan.sleeve.hem) * taper) / wished;
  const fitted = fitCap({
    width: hem + 2 * taper,
    frontLength: pathLength(body.front.armhole) + flatHeadEase.front,
    backLength: pathLength(body.back.armhole) + flatHeadEase.back,
    rise: riseOf(taper, below),
    ...lowCap,
    flattest: 0.14,
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

/**
 * The cap stands between these shares of the armhole's height; a set-in sleeve's is nearly twice as high. One that
 * comes out flatter, or would not come out, is brought well clear of the least, where caps turn hollow at the arm.
 */
const capShares = { low: 0.36, clear: 0.42, high: 0.5 } as const;

/** How far the underarm may be lowered or raised, and the sleeve widened, to bring the cap there, mm. */
const room = { lower: 45, raise: 14, wider: 90, aboveWaist: 30 } as const;

/** How finely depth and width are found, mm. */
const fine = 0.01;

const heightOf = ({ front, back, depth }: RaincoatBody): number =>
  depth - (front.shoulder.to.y + back.shoulder.to.y) / 2;

interface Set {
  readonly body: RaincoatBody;
  readonly sleeve: Result<RaincoatSleeve>;
  /** Cap height over the armhole's; 0 where no cap fits, for then the armhole is too short. */
  readonly share: number;
}

const setIn = (plan: RaincoatPlan, depth: number): Set => {
  const body = draftRaincoatBody(plan, depth);
  const guessed = draftSleeve(plan, body, capShares.clear * heightOf(body));
  // The length below the arm, and with it the slant of the seam and the cap, follow from the cap's own height.
  const sleeve = guessed.ok ? draftSleeve(plan, body, guessed.value.cap.height) : guessed;
  return { body, sleeve, share: sleeve.ok ? sleeve.value.cap.height / heightOf(body) : 0 };
};

const widened = (plan: RaincoatPlan, by: number): RaincoatPlan => ({
  ...plan,
  ease: { ...plan.ease, 'upper-arm': (plan.ease['upper-arm'] ?? 0) + by },
  sleeve: { ...plan.sleeve, upperArm: plan.sleeve.upperArm + by, hem: plan.sleeve.hem + by / 2 },
});

/** Plan and depth at which the cap stands as high as a low cap should. */
const suited = (plan: RaincoatPlan): { readonly plan: RaincoatPlan; readonly depth: number } => {
  const { share } = setIn(plan, plan.armholeDepth);
  if (share >= capShares.low && share <= capShares.high) return { plan, depth: plan.armholeDepth };
  const short = share < capShares.low;
  const aim = short ? capShares.clear : capShares.high;
  const lowest = Math.min(plan.armholeDepth + room.lower, plan.waistLevel - room.aboveWaist);
  const furthest = short ? Math.max(lowest, plan.armholeDepth) : plan.armholeDepth - room.raise;
  const depth = solveBetween((tried) => setIn(plan, tried).share - aim, plan.armholeDepth, furthest, fine);
  if (depth !== null) return { plan, depth };
  if (short || !plan.sleeve.mayWiden) return { plan, depth: furthest };
  const wider = solveBetween((by) => setIn(widened(plan, by), furthest).share - aim, 0, room.wider, fine);
  return { plan: widened(plan, wider ?? room.wider), depth: furthest };
};

/**
 * Armhole, sleeve and hood settled together. The sleeve's width is the arm's and its ease, so its cap follows from
 * the armhole: where that makes it flatter or higher than a low cap is, the underarm is lowered or raised, and where
 * that is not enough for a slim arm the sleeve is cut wider and its ease stated so. The hood is drafted to the
 * neckline, last.
 */
export const settleRaincoat = (given: RaincoatPlan): Result<RaincoatDraft> => {
  const { plan, depth } = suited(given);
  const { body, sleeve } = setIn(plan, depth);
  if (!sleeve.ok) return sleeve;
  const hood = draftHood(plan, pathLength(body.front.neck), pathLength(body.back.neck));
  return hood.ok ? good({ plan, body, sleeve: sleeve.value, hood: hood.value }) : hood;
};
