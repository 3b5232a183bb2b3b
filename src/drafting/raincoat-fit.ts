import { type Cubic, pathLength } from '../geometry/index.ts';
import { good, type Result } from '../units/index.ts';
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

const draftSleeve = (plan: RaincoatPlan, body: RaincoatBody, capGuess: number): Result<RaincoatSleeve> => {
  const below = plan.sleeve.length - capGuess;
  const taper = taperFor(plan.sleeve.upperArm, plan.sleeve.hem, armBelow, below);
  const fitted = fitCap({
    width: plan.sleeve.hem + 2 * taper,
    frontLength: pathLength(body.front.armhole) + flatHeadEase.front,
    backLength: pathLength(body.back.armhole) + flatHeadEase.back,
    rise: riseOf(taper, below),
    ...lowCap,
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

/** The cap stands between these shares of the armhole's height; a set-in sleeve's is nearly twice as high. */
const capShares = { low: 0.36, aim: 0.44, high: 0.54 } as const;

/** How far the underarm may be lowered or raised to bring the cap there, mm. */
const room = { lower: 45, raise: 14 } as const;

/** How finely the depth is found, mm. */
const fine = 0.01;

const heightOf = ({ front, back, depth }: RaincoatBody): number =>
  depth - (front.shoulder.to.y + back.shoulder.to.y) / 2;

/**
 * Armhole, sleeve and hood settled together. The sleeve's width is the arm's and its ease, so its cap follows from
 * the armhole: where that makes it flatter or higher than a low cap is, the underarm is lowered or raised. The
 * hood is drafted to the neckline, last.
 */
export const settleRaincoat = (plan: RaincoatPlan): Result<RaincoatDraft> => {
  const at = (depth: number): { readonly body: RaincoatBody; readonly sleeve: Result<RaincoatSleeve> } => {
    const body = draftRaincoatBody(plan, depth);
    return { body, sleeve: draftSleeve(plan, body, capShares.aim * heightOf(body)) };
  };
  const share = (depth: number): number => {
    const { body, sleeve } = at(depth);
    return sleeve.ok ? sleeve.value.cap.height / heightOf(body) : 0;
  };
  const first = share(plan.armholeDepth);
  const aim = first < capShares.low ? capShares.low : first > capShares.high ? capShares.high : null;
  const furthest = aim === capShares.low ? plan.armholeDepth + room.lower : plan.armholeDepth - room.raise;
  const depth =
    aim === null
      ? plan.armholeDepth
      : (solveBetween((tried) => share(tried) - aim, plan.armholeDepth, furthest, fine) ?? furthest);
  const { body, sleeve } = at(depth);
  if (!sleeve.ok) return sleeve;
  const hood = draftHood(plan, pathLength(body.front.neck), pathLength(body.back.neck));
  return hood.ok ? good({ plan, body, sleeve: sleeve.value, hood: hood.value }) : hood;
};
