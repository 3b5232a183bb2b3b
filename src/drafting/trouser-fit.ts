import { distance, type Path, pathLength } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { settle, solveBetween } from './solve.ts';
import { draftLegs, type FrontBack, type Leg, type LegFrame } from './trouser-leg.ts';
import { draftCrotches, type SeamTop } from './trouser-top.ts';

/** What legs are settled from, mm: the body's measures, and the design's ease at them. */
export interface LegPlan {
  readonly body: {
    readonly hipGirth: number;
    readonly thighGirth: number;
    readonly bodyRise: number;
    readonly crotchLength: number;
    readonly crotchLengthFront: number;
    readonly crotchLengthBack: number;
  };
  /** Ease where the body is in the middle; a body whose crotch length does not go with its rise and thigh gets a little more or less. */
  readonly ease: { readonly rise: number; readonly crotchLength: number; readonly thigh: number };
  /** Ease at the thigh that was asked for: kept to, as far as a fork can be drawn. */
  readonly thighWished?: number;
  readonly legs: Pick<LegFrame, 'hip' | 'hipLevel' | 'kneeLevel' | 'hemLevel' | 'kneeHalf' | 'hemHalf' | 'lower'>;
  /** How far the centre-front seam leans in at the waist. */
  readonly frontLeansIn: number;
}

export interface SettledLegs {
  readonly frame: LegFrame;
  readonly legs: FrontBack<Leg>;
  readonly tops: FrontBack<SeamTop>;
  /** Crotch point to waist. */
  readonly crotch: FrontBack<Path>;
  /** Finished, one leg. */
  readonly thigh: number;
  /** Both crotch seams together, waist through the legs to waist. */
  readonly crotchLength: number;
}

/** The back inside leg is this much shorter above the knee and stretched on to the front's, mm. */
export const backStretch = 8;

/** Both forks together over the hip girth: as deep as a body is, front to back, at least; the most that still hangs. */
const forkShares = { least: 0.105, most: 0.265 } as const;

/** The front's share of both forks. */
const frontFork = 0.33;

/** The curve of the crotch needs this much height between hip line and crotch point, mm. */
const leastFork = 60;

/** How far the crotch length asks for more than the middle body's, in steps of about 45 mm: what the draft can give. */
const room = { least: -6, most: 7 } as const;

/** From waist to hip, and from crotch to knee, a leg has to have at least this, mm. */
const leastLevels = { hip: 60, knee: 90 } as const;

const fine = 1e-5;

/**
 * How the crotch seams get their length. A manual's middle draft has a front waist hardly dipped at the centre and a back
 * raised by 40 on a seat seam that slants; a body with a longer way through the legs than its rise leads one to expect
 * sits deeper or has more seat. So of each 45 mm more, the back is raised 20 more and slanted to match, the front dipped
 * 6 less, the crotch point lowered 3, the thigh eased 8 more (which widens the fork), and 4 of ease are spared.
 */
const postureOf = (plan: LegPlan, t: number) => {
  const { body, ease } = plan;
  // Half a reading of how the length is split at the inside leg is believed, for the split is hard to take; the rest is shared.
  const behind = settle(0.1 * (body.crotchLengthBack - body.crotchLengthFront - 75), -8, 8);
  return {
    crotchLevel: Math.max(body.bodyRise + settle(ease.rise + 3 * t, 8, 45), plan.legs.hipLevel + leastFork),
    raise: settle(40 + 20 * t, 0, 140) + behind,
    dip: settle(2 - 6 * t, -15, 30) + behind,
    thighEase: plan.thighWished ?? settle(ease.thigh + 8 * t, 30, 150),
    crotchEase: ease.crotchLength - 4 * t,
  };
};

const thighOf = ({ front, back }: FrontBack<Leg>): number => distance(...front.thigh) + distance(...back.thigh);

/** Legs whose forks make the thigh as wide as wished; the widest or narrowest fork where that is not enough. */
const legsOfThigh = (plan: LegPlan, crotchLevel: number, thigh: number) => {
  const { body, legs } = plan;
  const share = frontFork - settle((body.crotchLengthBack - body.crotchLengthFront - 75) * 0.0003, -0.025, 0.025);
  const frameOf = (fork: number): LegFrame => ({
    ...legs,
    crotchLevel,
    fork: { front: share * fork, back: (1 - share) * fork },
    stretch: backStretch,
  });
  const least = forkShares.least * body.hipGirth;
  const most = forkShares.most * body.hipGirth;
  const miss = (fork: number): number => {
    const drafted = draftLegs(frameOf(fork));
    return drafted === null ? Number.NaN : thighOf(drafted) - thigh;
  };
  const fork = solveBetween(miss, least, most, fine) ?? (miss(least) > 0 ? least : most);
  const frame = frameOf(fork);
  const drafted = draftLegs(frame);
  return drafted === null ? null : { frame, legs: drafted };
};

/**
 * The seat seam slants so that the raised back waist falls to the side square to it: more for a back raised more. The
 * width it falls over is the hip less the slant itself.
 */
const seatTop = (leg: Leg, hip: number, raise: number): SeamTop => {
  const y = -raise;
  const fall = raise + 6;
  const slope = settle(fall / (0.95 * (hip - 0.16 * leg.hipLevel)), 0.1, 0.42);
  return { y, leansIn: slope * (leg.hipLevel - y) };
};

const settledAt = (plan: LegPlan, t: number): SettledLegs | null => {
  const posture = postureOf(plan, t);
  const drafted = legsOfThigh(plan, posture.crotchLevel, plan.body.thighGirth + posture.thighEase);
  if (drafted === null) return null;
  const { frame, legs } = drafted;
  const tops = {
    front: { y: posture.dip, leansIn: plan.frontLeansIn },
    back: seatTop(legs.back, frame.hip.back, posture.raise),
  };
  const crotch = draftCrotches(legs, tops);
  return {
    frame,
    legs,
    tops,
    crotch,
    thigh: thighOf(legs),
    crotchLength: pathLength(crotch.front) + pathLength(crotch.back),
  };
};

/**
 * Legs for a body: the thigh, the rise and the crotch length settled together.
 *
 * Each of the three has a usual ease, but no body is bound to have measures that let all be had: the depth and the fork
 * fix most of the crotch's length. So one number says how far the crotch length asks for more than depth and fork
 * make, and everything that can give a little gives its part (see `postureOf`), until the seam is as long as the
 * body and its ease. Where even the most is not enough, the nearest there is is drafted.
 * Refuses (`drafting.legs-cannot-walk`) where front and back leg cannot be made equal, or its levels lie too close.
 */
export const settleLegs = (plan: LegPlan): Result<SettledLegs> => {
  const miss = (t: number): number => {
    const settled = settledAt(plan, t);
    return settled === null
      ? Number.NaN
      : settled.crotchLength - plan.body.crotchLength - postureOf(plan, t).crotchEase;
  };
  const { hipLevel, kneeLevel } = plan.legs;
  const crotchLevel = plan.body.bodyRise + plan.ease.rise;
  if (hipLevel < leastLevels.hip || kneeLevel < crotchLevel + leastLevels.knee) return bad('drafting.legs-cannot-walk');
  const found = solveBetween(miss, room.least, room.most, fine);
  const settled = settledAt(plan, found ?? (miss(room.least) > 0 ? room.least : room.most));
  return settled === null ? bad('drafting.legs-cannot-walk') : good(settled);
};
