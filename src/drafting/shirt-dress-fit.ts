import { type Cubic, pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { type Bodice, draftBodice } from './blouse-bodice.ts';
import { fullerFront } from './blouse-fuller.ts';
import { splitAtStand } from './button-stand.ts';
import { draftFall, draftStand, type FallDraft, type StandDraft } from './shirt-collar.ts';
import { type ShirtDressPlan, shirtDress, wristOf } from './shirt-dress-plan.ts';
import { draftShirtSleeve, type ShirtSleeve } from './shirt-sleeve.ts';
import { solveBetween } from './solve.ts';
import { cutYoke, type YokeCut } from './yoke.ts';

export interface ShirtDressDraft {
  readonly plan: ShirtDressPlan;
  readonly bodice: Bodice;
  readonly cut: YokeCut;
  readonly sleeve: ShirtSleeve;
  /** The front's neckline from the centre: what the button stand covers, and the rest. */
  readonly neck: readonly [covered: Cubic, kept: Cubic];
  readonly stand: StandDraft;
  readonly fall: FallDraft | null;
}

/** Sleeve-head ease, mm: crisp cotton takes 0–20, a shirt's low cap little of it. */
export const shirtHeadEase = { front: 4, back: 5 } as const;

/** A shirt sleeve's cap stands between these shares of its armhole's height; a blouse's higher. */
const capShares = { low: 0.48, high: 0.67 } as const;

/** How much the underarm may be lowered, and the sleeve narrowed or widened, to bring the cap between them, mm. */
const room = { lower: 28, narrower: 50, wider: 120 } as const;

/** Least between the bust point and the seams round it, mm. */
const leastRoom = 15;

/** How finely depth and width are found, mm: well inside what a seam or girth is held to. */
const fine = 0.01;

const armholeHeight = ({ front, back }: Bodice): number =>
  (pathEnd(front.armhole).y - pathStart(front.armhole).y + pathEnd(back.armhole).y - pathStart(back.armhole).y) / 2;

interface Settled {
  /** Nape to underarm line at the back, mm. */
  readonly depth: number;
  readonly plan: ShirtDressPlan;
  readonly bodice: Bodice;
  readonly sleeve: ShirtSleeve;
  readonly capShare: number;
}

const sleeveFor = (plan: ShirtDressPlan, depth: number, bodice: Bodice): Result<Settled> => {
  const { upperArm, length } = plan.sleeve;
  const sleeve = draftShirtSleeve({
    upperArm,
    length,
    wrist: plan.view.sleeve === 'long' ? wristOf(plan, upperArm) : shortHem(upperArm),
    frontArmhole: pathLength(bodice.front.armhole),
    backArmhole: pathLength(bodice.back.armhole),
    ease: shirtHeadEase,
    ...(plan.view.sleeve === 'short' ? { leastBelow: leastShort } : {}),
  });
  if (!sleeve.ok) return sleeve;
  const elbow = plan.sleeve.elbow - sleeve.value.cap.height;
  if (plan.view.sleeve === 'long' && elbow < 2 * sleeve.value.armLevel) {
    return bad('drafting.arm-too-short', { arm: { mm: Math.round(length) } });
  }
  return good({ plan, depth, bodice, sleeve: sleeve.value, capShare: sleeve.value.cap.height / armholeHeight(bodice) });
};

/** Below the underarm a short sleeve has at least this, mm, however short the arm and deep the armhole. */
const leastShort = 60;

/** A short sleeve is a little narrower at its hem than at the upper arm. */
const shortHem = (upperArm: number): number => upperArm - 16;

const settledAt = (plan: ShirtDressPlan, depth: number): Result<Settled> => {
  const bodice = draftBodice(plan.bodice, depth);
  return bodice.ok ? sleeveFor(plan, depth, bodice.value) : bodice;
};

const widened = (plan: ShirtDressPlan, by: number): ShirtDressPlan => ({
  ...plan,
  ease: { ...plan.ease, 'upper-arm': (plan.ease['upper-arm'] ?? 0) + by },
  sleeve: { ...plan.sleeve, upperArm: plan.sleeve.upperArm + by },
});

/**
 * Armhole and sleeve settled together, as a shirt's. Where the cap would stand too low (a thick arm) the underarm is
 * lowered, and where that is not enough the sleeve gets less of the ease a shirt has beyond what an arm needs; where
 * too high (a slim arm in a wide armhole) the sleeve is made wider. Its ease is stated so. A shirt takes width before
 * height: it is meant to be reached in.
 */
const settle = (plan: ShirtDressPlan): Result<Settled> => {
  const depth = plan.bodice.armholeDepth;
  const { low, high } = capShares;
  const shareAt = (at: number, by: number): number => {
    const draft = settledAt(by === 0 ? plan : widened(plan, by), at);
    return draft.ok ? draft.value.capShare : 0;
  };
  const first = settledAt(plan, depth);
  if (!first.ok || first.value.capShare < low) {
    const lowest = depth + room.lower;
    const lowered = solveBetween((at) => shareAt(at, 0) - low, depth, lowest, fine);
    if (lowered !== null) return settledAt(plan, lowered);
    const narrowed = solveBetween((by) => shareAt(lowest, by) - low, -room.narrower, 0, fine);
    const narrow = settledAt(widened(plan, narrowed ?? -room.narrower), lowest);
    // Where nothing brings it there, as near as it comes.
    return narrow.ok ? narrow : first;
  }
  if (first.value.capShare <= high) return first;
  const wider = solveBetween((by) => shareAt(depth, by) - high, 0, room.wider, fine);
  return settledAt(widened(plan, wider ?? room.wider), depth);
};

/**
 * The dress's bodice and sleeve, settled, cut at the yoke, and the collar drafted to its neck. Problems: those of
 * bodice and sleeve, and `drafting.measures-contradict` where yoke or collar cannot be cut from them.
 */
export const settleShirtDress = (plan: ShirtDressPlan): Result<ShirtDressDraft> => {
  const settled = settle(plan);
  if (!settled.ok) return settled;
  // Back, armholes and sleeve are the usual cup's; the front alone takes what the body's own bust has more or less.
  const fuller = fullerFront(plan.bodice, settled.value.depth, settled.value.bodice);
  if (!fuller.ok) return fuller;
  const { bodice } = fuller.value;
  const { bustPoint, dartPoint } = bodice.front;
  // A bust that lies at the waist seam, or in the button stand, is no bust of this body.
  if (
    Math.max(bustPoint.y, dartPoint.y) > plan.bodiceLevel - leastRoom ||
    bustPoint.x < shirtDress.stand / 2 + leastRoom
  ) {
    return bad('drafting.measures-contradict');
  }
  const cut = cutYoke(bodice.back, bodice.front, shirtDress.forward);
  if (!cut.ok) return cut;
  const neck = splitAtStand(cut.value.front.neck[0] as Cubic, shirtDress.stand / 2);
  if (!neck) return bad('drafting.measures-contradict');
  const stand = draftStand({
    back: pathLength(cut.value.yoke.neck),
    front: pathLength([neck[1]]),
    stand: 2 * pathLength([neck[0]]),
  });
  if (!stand.ok) return stand;
  const fall = plan.view.collar ? draftFall(pathLength(stand.value.top)) : null;
  if (fall && !fall.ok) return fall;
  return good({ ...settled.value, bodice, cut: cut.value, neck, stand: stand.value, fall: fall ? fall.value : null });
};
