import {
  angleOf,
  type Cubic,
  type Line,
  type Path,
  type Point,
  perpendicular,
  segmentTangentAt,
  tolerance,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { draftArmhole } from './armhole.ts';
import type { BlousePlan } from './blouse-plan.ts';
import { backShoulder, frontShoulder, jewel, neckLean } from './blouse-shoulder.ts';
import { balance, dartBelowBust, mouthLevel, onOpened, openSide } from './bust-dart.ts';
import { draftNeckline } from './neckline.ts';
import { draftSide, type Side, sideAt } from './side-seam.ts';
import { settle, solveBetween } from './solve.ts';

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

export interface FrontDraft {
  readonly neck: Path;
  readonly shoulder: Path[number];
  readonly armhole: Path;
  readonly across: Point;
  /** Underarm to the bust dart's upper leg. */
  readonly sideAbove: readonly [Cubic, Cubic];
  /** From its lower leg to the waist, the hip and the hem. */
  readonly sideBelow: readonly [Cubic, Cubic, Line];
  readonly dartPoint: Point;
  readonly bustPoint: Point;
  /** Where the bust level ends on the side seam. */
  readonly bustSide: Point;
}

export interface Bodice {
  readonly back: BackDraft;
  readonly front: FrontDraft;
}

/** The front may be wider than a quarter, and the back narrower, by at most this, mm: the side seam stays at the side. */
const mostWider = 10;

/** How far at least the bust point lies below the front's underarm, mm. */
const leastAboveBust = 18;

/** How finely front and back share the bust, mm. */
const shareWithin = 0.1;

/**
 * How far the shoulder point may stand outside an across line that lies `drop` below it, least and most, mm. The
 * armhole leaves the shoulder square, so at the slope given, and comes upright at the line: one even bend takes it
 * in by drop · tan(slope / 2), a straight by drop · tan(slope). Much less than the first makes a hook at the
 * shoulder, as much as the second a corner at the line. Readings of the across lines give way to that.
 */
export const standsOutside = (drop: number, slope: number): readonly [number, number] => [
  Math.max(0.7 * drop * Math.tan(slope / 2), 9),
  Math.min(0.75 * drop * Math.tan(slope), 32),
];

/**
 * Front and back of the bodice, side seams and armholes, for one depth of armhole.
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
  const shoulderFront = frontShoulder(plan, baseLevel);
  const bustAcross = plan.bustSpanHalf - shoulderFront.base.x;
  const fallen = Math.sqrt(plan.bustDepth ** 2 - Math.min(Math.abs(bustAcross), plan.bustDepth / 2) ** 2);
  // The bust is measured level under the arms, so it cannot lie above the underarm, whatever a height says.
  const bustPoint: Point = {
    x: plan.bustSpanHalf,
    y: Math.max(baseLevel + fallen, depth - intake + leastAboveBust),
  };
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
    const closed = place(wider);
    const front = openSide(plan, closed, bustPoint, mouth, intake);
    const level = settle(bustPoint.y, front.above[0].from.y + 12, front.above[1].to.y - 5);
    const { point: atFront, closedHeight } = onOpened(front.above, closed, mouth, level);
    // The same place on the sewn side seam: both are one curve while the dart is closed.
    const atBack = sideAt(back, closedHeight);
    return { back, front, atFront, atBack, wider };
  };
  const withBust = (wider: number) => {
    const quarter = solveBetween(
      (candidate) => {
        const { atFront, atBack } = sidesFor(candidate, wider);
        return atFront.x + atBack.x - 2 * plan.bustQuarter;
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
    return shared === null ? 0 : shared.atFront.x - shared.atBack.x - 2 * plan.frontWider;
  };
  const even = solveBetween(frontOver, -mostWider, mostWider, shareWithin);
  const sides = withBust(even ?? (frontOver(0) > 0 ? -mostWider : mostWider));
  if (sides === null) return bad('drafting.bodice-cannot-fit', { bust: { mm: Math.round(4 * plan.bustQuarter) } });

  const armhole = (
    side: Cubic,
    shoulder: { readonly point: Point; readonly directions: readonly [number, number] },
    acrossAsked: number,
    at: number,
    hollow: number,
  ) => {
    const underarm = side.from;
    const drop = at * (underarm.y - shoulder.point.y);
    const [least, most] = standsOutside(drop, shoulder.directions[1]);
    const narrowest: Point = {
      x: settle(acrossAsked, shoulder.point.x - most, shoulder.point.x - least),
      y: shoulder.point.y + drop,
    };
    const path = draftArmhole({
      shoulder: shoulder.point,
      shoulderDirection: shoulder.directions[1],
      across: narrowest,
      underarm,
      underarmDirection: angleOf(perpendicular(segmentTangentAt(side, 0))),
      hollow,
    });
    return { path, narrowest };
  };
  const backArmhole = armhole(sides.back[0], shoulderBack, plan.acrossBackHalf, 0.5, 0.58);
  const frontArmhole = armhole(sides.front.above[0], shoulderFront, plan.acrossFrontHalf, 0.54, 0.66);
  const nape: Point = { x: 0, y: jewel.back };
  const centreNeck: Point = { x: 0, y: baseLevel + plan.neck.frontDepth + jewel.front };
  return good({
    back: {
      neck: draftNeckline({
        centre: nape,
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
    front: {
      neck: draftNeckline({
        centre: centreNeck,
        neckPoint: shoulderFront.neckPoint,
        shoulderDirection: shoulderFront.directions[0],
        lean: neckLean,
        fullness: 0.58,
      }),
      shoulder: { kind: 'line', from: shoulderFront.neckPoint, to: shoulderFront.point },
      armhole: frontArmhole.path,
      across: frontArmhole.narrowest,
      sideAbove: sides.front.above,
      sideBelow: sides.front.below,
      dartPoint: sides.front.point,
      bustPoint,
      bustSide: sides.atFront,
    },
  });
};
