import { type Path, type Point, tolerance } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { armholeBetween, armholeLooks } from './blouse-armhole.ts';
import { bustPointFor, drawFront, type FrontDraft, type FrontFrame, openFront } from './blouse-front.ts';
import type { BlousePlan } from './blouse-plan.ts';
import { backShoulder, jewel, neckLean } from './blouse-shoulder.ts';
import { balance, dartBelowBust, mouthLevel } from './bust-dart.ts';
import { draftNeckline } from './neckline.ts';
import { draftSide, type Side, sideAt } from './side-seam.ts';
import { solveBetween } from './solve.ts';

export { standsOutside } from './blouse-armhole.ts';
export type { FrontDraft } from './blouse-front.ts';

export interface BackDraft {
  readonly neck: Path;
  /** Neck to dart, dart to shoulder point. */
  readonly shoulder: readonly [Path[number], Path[number]];
  readonly dartPoint: Point;
  readonly armhole: Path;
  readonly across: Point;
  readonly side: Side;
  /** Where the bust level ends on the side seam. */
  readonly bustSide: Point;
}

export interface Bodice {
  readonly back: BackDraft;
  readonly front: FrontDraft;
  /** What the front was drawn from. */
  readonly frame: FrontFrame;
}

/** The front may be wider than a quarter, and the back narrower, by at most this, mm: the side seam stays at the side. */
const mostWider = 10;

/** How finely front and back share the bust, mm. */
const shareWithin = 0.1;

/**
 * Front and back of the bodice for the usual cup, side seams and armholes, for one depth of armhole.
 *
 * 1. Back: nape at (0, 0), centre back down the y axis; waist, hip and hem at their levels below it.
 *    Neck a fifth of the neck's base wide; shoulder at its slope, a dart of 12 in its middle.
 * 2. Front: waist, hip and hem at the same levels, centre front on the fold. The neck point lies the front
 *    waist length above the waist; a front longer than the back over the bust gives the bust dart, together
 *    with what bust and cup lead one to expect.
 * 3. Both side seams are one curve, drafted with the dart closed. The front's is cut at the dart's lower
 *    leg, and the part above swung about the dart's point: so both walk exactly, and the sewn seam is smooth.
 * 4. The width at the underarm is the one that makes the finished bust, measured on the bust level, what it
 *    should be.
 * 5. Armholes from shoulder point over the across lines to the underarm.
 *
 * Block construction as taught in manuals of metric pattern cutting, the dart swung from shoulder to side.
 * Problem `drafting.bodice-cannot-fit` where no width at the underarm makes the bust.
 */
export const draftBodice = (plan: BlousePlan, depth: number): Result<Bodice> => {
  const shoulderBack = backShoulder(plan);
  const { intake, baseLevel } = balance(plan, depth, shoulderBack.point.y);
  const bustPoint = bustPointFor(plan, depth, intake, baseLevel);
  const mouth = mouthLevel(plan, bustPoint, depth, intake);
  if (bustPoint.x + plan.dartShort + 2 * intake > plan.bustQuarter) {
    return bad('drafting.bust-points-too-far-apart', { span: { mm: Math.round(2 * plan.bustSpanHalf) } });
  }

  const sidesFor = (quarter: number, wider: number) => {
    const place = (by: number): Side =>
      draftSide({
        underarm: { x: quarter + by, y: depth },
        bustLevel: mouth - dartBelowBust,
        waist: { x: plan.waistQuarter + by, y: plan.waistLevel },
        hip: { x: plan.hipQuarter + by, y: plan.hipLevel },
        hem: { x: plan.hipQuarter + by, y: plan.hemLevel },
      });
    const back = place(-wider);
    const frame: FrontFrame = { closed: place(wider), intake, baseLevel, bustPoint, mouth };
    const front = openFront(plan, frame);
    // The same place on the sewn side seam: both are one curve while the dart is closed.
    const atBack = sideAt(back, front.closedHeight);
    return { back, frame, front, atBack };
  };
  const withBust = (wider: number) => {
    const quarter = solveBetween(
      (candidate) => {
        const { front, atBack } = sidesFor(candidate, wider);
        return front.bustSide.x + atBack.x - 2 * plan.bustQuarter;
      },
      plan.bustQuarter - 80,
      plan.bustQuarter + 120,
      tolerance.same,
    );
    return quarter === null ? null : sidesFor(quarter, wider);
  };
  // Opening the dart moves the front at the bust level in or out, as the dart lies to it; the side seam is set so that back and front share the bust all the same.
  const frontOver = (wider: number): number => {
    const shared = withBust(wider);
    return shared === null ? 0 : shared.front.bustSide.x - shared.atBack.x - 2 * plan.frontWider;
  };
  const even = solveBetween(frontOver, -mostWider, mostWider, shareWithin);
  const sides = withBust(even ?? (frontOver(0) > 0 ? -mostWider : mostWider));
  if (sides === null) return bad('drafting.bodice-cannot-fit', { bust: { mm: Math.round(4 * plan.bustQuarter) } });

  const backArmhole = armholeBetween(shoulderBack, sides.back[0], plan.acrossBackHalf, armholeLooks.back);
  return good({
    back: {
      neck: draftNeckline({
        centre: { x: 0, y: jewel.back },
        neckPoint: shoulderBack.neckPoint,
        shoulderDirection: shoulderBack.directions[0],
        lean: -neckLean,
        fullness: 0.62,
      }),
      shoulder: [
        { kind: 'line', from: shoulderBack.neckPoint, to: shoulderBack.start },
        { kind: 'line', from: shoulderBack.end, to: shoulderBack.point },
      ],
      dartPoint: shoulderBack.dartPoint,
      armhole: backArmhole.path,
      across: backArmhole.narrowest,
      side: sides.back,
      bustSide: sides.atBack,
    },
    front: drawFront(plan, sides.frame, sides.front),
    frame: sides.frame,
  });
};
