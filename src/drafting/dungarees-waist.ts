import { pathLength } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { DungareesPlan } from './dungarees-plan.ts';
import { settle, solveBetween } from './solve.ts';
import type { SettledLegs } from './trouser-fit.ts';
import type { FrontBack } from './trouser-leg.ts';
import { draftTop, type LegTop } from './trouser-top.ts';

export interface DungareesWaist {
  readonly tops: FrontBack<LegTop>;
  /** Each waist seam, which is half its bib's lower edge. */
  readonly front: number;
  readonly back: number;
  /** Whole girth. */
  readonly ease: number;
}

/** The side is drawn in by this share of what the hip is more than the waist, between two amounts, and out no more than this, mm. */
const sideIn = { share: 0.125, least: 14, most: 46, out: -90, mostWished: 60 } as const;

const fine = 1e-6;

/**
 * The waist hangs free: front and back are drawn in at the side by the same, a finger or two, and no further than the
 * body and the least ease allow; over a belly they run out. The ease follows. Refuses
 * (`drafting.waist-cannot-be-had`) a waist that was asked for and cannot be had so.
 */
export const draftDungareesWaist = (plan: DungareesPlan, settled: SettledLegs): Result<DungareesWaist> => {
  const { legs, crotch } = settled;
  const { waistToHip, leastWaistHalf, waistWished } = plan;
  const topsAt = (by: number): FrontBack<LegTop> => ({
    front: draftTop(legs.front, crotch.front, waistToHip, by),
    back: draftTop(legs.back, crotch.back, waistToHip, by),
  });
  const halfAt = (by: number): number => {
    const { front, back } = topsAt(by);
    return pathLength(front.waist) + pathLength(back.waist);
  };
  const { hipGirth, waistGirth } = plan.body;
  const most =
    waistWished === undefined
      ? settle(sideIn.share * (hipGirth - waistGirth), sideIn.least, sideIn.most)
      : sideIn.mostWished;
  const free = waistWished === undefined && halfAt(most) >= leastWaistHalf;
  const by = free ? most : solveBetween((tried) => halfAt(tried) - leastWaistHalf, sideIn.out, most, fine);
  if (by === null) return bad('drafting.waist-cannot-be-had', { waist: { mm: Math.round(2 * leastWaistHalf) } });
  const tops = topsAt(by);
  const [front, back] = [pathLength(tops.front.waist), pathLength(tops.back.waist)];
  return good({ tops, front, back, ease: 2 * (front + back) - plan.body.waistGirth });
};
