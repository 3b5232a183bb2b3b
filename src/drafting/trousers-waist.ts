import { pathLength } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { settle } from './solve.ts';
import type { SettledLegs } from './trouser-fit.ts';
import type { FrontBack } from './trouser-leg.ts';
import { draftTop, draftTopOfLength, type LegTop } from './trouser-top.ts';
import type { TrousersPlan } from './trousers-plan.ts';

/** The waist of one side of the trousers, mm. */
export interface TrousersWaist {
  readonly tops: FrontBack<LegTop>;
  /** The flat front band, from centre to side. */
  readonly frontBand: number;
  /** The back band as cut, and gathered on its elastic as worn. */
  readonly backBand: number;
  readonly gathered: number;
  /** Ease at the waist, as it came out, whole girth. */
  readonly ease: number;
}

/** The front waist is this much longer than its band and is eased on to it: the band lies closer than the hip below it. */
export const frontEase = 6;

/** How far the side may be drawn in from hip to waist, mm; negative out. A flat front has no dart, so its side may take more. */
const sideIn = { front: [-130, 42], back: [-45, 24], straight: -4 } as const;

/** Cloth of the back waist over its elastic: the least wished for and the least at all, the most before it is drawn in at the side, the most that gathers well. */
export const gathers = { least: 1.1, atLeast: 1.06, full: 1.5, most: 1.9 } as const;

/** The front's share of the waist. */
const frontShare = 0.535;

/**
 * The waist shared between a flat front and a gathered back.
 *
 * 1. The front takes a little more than half, as far as a flat front can be drawn in at side and centre alone.
 * 2. The back goes up from the hip almost straight, and is gathered on to what is left.
 * 3. Where the front must be wider (a narrow waist over a full hip), the back is gathered more, and drawn in
 *    at the side when the gathers would be too full. Over a belly both run out at the side, the back first.
 * 4. A back that would gather to less than about half leaves the waist wider, and the ease is stated so.
 *
 * Refuses (`drafting.waist-cannot-be-had`) a waist that was asked for and cannot be had so.
 */
export const draftWaist = (plan: TrousersPlan, settled: SettledLegs): Result<TrousersWaist> => {
  const { waistHalf, waistToHip } = plan;
  const { legs, crotch } = settled;
  const straight = pathLength(draftTop(legs.back, crotch.back, waistToHip, sideIn.straight).waist);
  const widest = pathLength(draftTop(legs.back, crotch.back, waistToHip, sideIn.back[0]).waist);
  const wished = Math.max(frontShare * waistHalf, waistHalf - widest / gathers.atLeast);
  const front = draftTopOfLength(legs.front, crotch.front, waistToHip, wished + frontEase, sideIn.front);
  const frontBand = pathLength(front.waist) - frontEase;
  const left = waistHalf - frontBand;
  const cloth = settle(straight, gathers.least * left, gathers.full * left);
  const back = draftTopOfLength(legs.back, crotch.back, waistToHip, cloth, sideIn.back);
  const backBand = pathLength(back.waist);
  const gathered = Math.max(left, backBand / gathers.most);
  const cannot = backBand < 1.01 * gathered || (plan.waistWished && gathered > left + 0.01);
  if (cannot) return bad('drafting.waist-cannot-be-had', { waist: { mm: Math.round(2 * waistHalf) } });
  return good({
    tops: { front, back },
    frontBand,
    backBand,
    gathered,
    ease: 2 * (frontBand + gathered) - plan.body.waistGirth,
  });
};
