import {
  add,
  angleOf,
  applyToPath,
  type Cubic,
  directionAt,
  distance,
  line,
  type Path,
  type Point,
  perpendicular,
  rotate,
  rotation,
  scale,
  segmentTangentAt,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { draftArmhole } from './armhole.ts';
import { standsOutside } from './blouse-bodice.ts';
import { backShoulder, frontShoulder, neckLean } from './blouse-shoulder.ts';
import { balance } from './bust-dart.ts';
import type { JacketPlan } from './jacket-plan.ts';
import { draftNeckline } from './neckline.ts';
import { backPrincess, type Fall, fallAt, frontPrincess, type PrincessLevels } from './princess.ts';
import { draftSide, fallingCurve, type Side } from './side-seam.ts';
import { settle } from './solve.ts';

/** The panel at the centre: neck, its part of the shoulder, and the princess seam from there to the hem. */
export interface CentrePanel {
  readonly neck: Path;
  readonly shoulder: Path;
  readonly princess: Fall;
  /** Where the bust level ends on the princess seam. */
  readonly bust: Point;
}

/** The panel at the side, its princess seam from the shoulder to the hem. */
export interface SidePanel {
  readonly shoulder: Path;
  readonly armhole: Path;
  readonly across: Point;
  readonly princess: Fall;
  readonly side: Side;
  /** Ends of the bust level, on the princess seam and on the side seam. */
  readonly bust: readonly [Point, Point];
}

export interface JacketBody {
  readonly front: CentrePanel & { readonly bustPoint: Point; readonly notch: Point };
  readonly sideFront: SidePanel & { readonly notch: Point };
  readonly back: CentrePanel & { readonly centre: Fall; readonly blade: Point };
  readonly sideBack: SidePanel;
  /** How far the upper part of the side front is swung about the apex, radians. */
  readonly swing: number;
}

/** How far at least the bust point lies below the front's raised underarm, mm. */
const leastAboveBust = 18;

/** The tape passes the side seam at least this far below the underarm and above the waist, mm. */
const clear = { underarm: 14, waist: 55 } as const;

/** A side front narrower than this at the bust is no panel, mm. */
const leastPanel = 70;

/** Of the slope from underarm to waist, how much the side seam has above the bust: as `draftSide` draws it. */
const slantAboveBust = 0.3;

/** Centre back: along the grain to the shoulder blades, in to the waist, half way back at the hip, square to the hem. */
const centreBack = (plan: JacketPlan, nape: Point, blade: number): Fall => {
  const from: Point = { x: 0, y: settle(blade - 25, nape.y + 75, plan.waistLevel - 90) };
  const waist: Point = { x: plan.takenIn.centre, y: plan.waistLevel };
  const hip: Point = { x: plan.atHip.centre, y: plan.hipLevel };
  return [
    line(nape, from),
    fallingCurve(from, waist, 0, 0),
    fallingCurve(waist, hip, 0, 0),
    line(hip, { x: hip.x, y: plan.hemLevel }),
  ];
};

/** Where the underarm has to be so that the side seam passes `bust`: above it the seam is a straight slant to the waist's share. */
const underarmFor = (depth: number, bust: Point, waist: Point): Point => {
  const share = (slantAboveBust * (bust.y - depth)) / (waist.y - depth);
  return { x: (bust.x - share * waist.x) / (1 - share), y: depth };
};

/**
 * The four panels of the body, for one depth of armhole.
 *
 * 1. Back and front as a bodice's: necks, shoulders, the bust dart the bust asks for (see `draftBodice`). The dart is
 *    never drawn: the seams over bust and shoulder blade take it, and the shoulder blade's, in.
 * 2. Seams from the shoulder, not the armhole: one line over the bust takes in shoulder, bust, waist and hip, the
 *    armhole stays in one piece that the sleeve is set in to, and each can be let out or taken in by its whole length.
 * 3. What the waist is narrower than the straight from bust to hip is taken in by front and back princess seam, sides
 *    and centre back; the sides by what is left, so that the finished girths are exact.
 * 4. The bust is measured as the tape lies: level over the back and the centre front, and over the side front in the
 *    direction half way between the two in which its cloth lies level above and below the bust.
 *
 * Problem `drafting.bust-points-too-far-apart` where no panel is left beside them.
 */
export const draftJacketBody = (plan: JacketPlan, depth: number): Result<JacketBody> => {
  const shoulderBack = backShoulder(plan);
  const { intake, baseLevel } = balance(plan, depth, shoulderBack.point.y);
  const shoulderFront = frontShoulder(plan, baseLevel);
  const bustAcross = plan.bustSpanHalf - shoulderFront.base.x;
  const fallen = Math.sqrt(plan.bustDepth ** 2 - Math.min(Math.abs(bustAcross), plan.bustDepth / 2) ** 2);
  const bustPoint: Point = {
    x: plan.bustSpanHalf,
    y: settle(baseLevel + fallen, depth - intake + leastAboveBust, plan.waistLevel - 70),
  };
  const frontBust = (plan.bustHalf + plan.frontMore) / 2;
  const apex: Point = { x: Math.min(bustPoint.x + plan.dartShort, frontBust - leastPanel), y: bustPoint.y };
  if (apex.x < bustPoint.x - plan.dartShort) {
    return bad('drafting.bust-points-too-far-apart', { span: { mm: Math.round(2 * plan.bustSpanHalf) } });
  }
  const over = frontBust - apex.x;
  const swing = 2 * Math.asin(settle(intake / (2 * over), 0, 0.3));
  const bustLevel = settle(apex.y + over * Math.sin(swing / 2), depth + clear.underarm, plan.waistLevel - clear.waist);
  const levels = (openAtWaist: number, openAtHip: number): PrincessLevels => ({
    waist: plan.waistLevel,
    hip: plan.hipLevel,
    hem: plan.hemLevel,
    openAtWaist,
    openAtHip,
  });

  const inner = distance(shoulderBack.base, shoulderBack.start);
  const start = shoulderBack.start;
  const princessBack = backPrincess(
    start,
    plan.shoulder.dartIntake,
    plan.shoulder.dartLength,
    levels(plan.takenIn.back, plan.atHip.back),
  );
  const seamFront = add(shoulderFront.base, scale(directionAt(plan.shoulder.frontSlope), inner));
  const princessFront = frontPrincess(seamFront, apex, swing, levels(plan.takenIn.front, plan.atHip.front));
  const nape: Point = { x: 0, y: plan.neckOutside.back };
  const centre = centreBack(plan, nape, princessBack.blade.y);

  const backAt = fallAt(princessBack.back, bustLevel);
  const sideBackAt = fallAt(princessBack.sideBack, bustLevel);
  const lostAtBust = sideBackAt.x - backAt.x + fallAt(centre, bustLevel).x;
  const bustFront = princessFront.apexSide.x + Math.sqrt(over ** 2 - (bustLevel - apex.y) ** 2);
  const bustBack = plan.bustHalf - frontBust + lostAtBust;
  const { takenIn, atHip } = plan;
  const outAtWaist = (plan.waistHalf + takenIn.front + takenIn.back + takenIn.centre - bustFront - bustBack) / 2;
  const outAtHip = (plan.hipHalf + atHip.front + atHip.back + atHip.centre - bustFront - bustBack) / 2;
  const sideFor = (at: number): Side => {
    const waist: Point = { x: at + outAtWaist, y: plan.waistLevel };
    const hip: Point = { x: at + outAtHip, y: plan.hipLevel };
    return draftSide({
      underarm: underarmFor(depth, { x: at, y: bustLevel }, waist),
      bustLevel,
      waist,
      hip,
      hem: { x: hip.x, y: plan.hemLevel },
    });
  };
  const sideOfFront = sideFor(bustFront);
  const sideOfBack = sideFor(bustBack);

  const armhole = (
    underarm: Point,
    upward: Point,
    shoulder: { readonly point: Point; readonly directions: readonly [number, number] },
    acrossAsked: number,
    at: number,
    hollow: number,
  ) => {
    const drop = at * (underarm.y - shoulder.point.y);
    const [least, most] = standsOutside(drop, shoulder.directions[1]);
    const across: Point = {
      x: settle(acrossAsked, shoulder.point.x - most, shoulder.point.x - least),
      y: shoulder.point.y + drop,
    };
    const path = draftArmhole({
      shoulder: shoulder.point,
      shoulderDirection: shoulder.directions[1],
      across,
      underarm,
      underarmDirection: angleOf(perpendicular(upward)),
      hollow,
    });
    return { path, across };
  };
  const backArmhole = armhole(
    sideOfBack[0].from,
    segmentTangentAt(sideOfBack[0], 0),
    shoulderBack,
    plan.acrossBackHalf,
    0.5,
    0.58,
  );
  // The front's armhole is drawn with the dart in the side, where the body's across line is, and swung with its panel.
  const unswung = (segment: Cubic) => ({
    underarm: rotate(segment.from, -swing, apex),
    upward: rotate(segmentTangentAt(segment, 0), -swing),
  });
  const raised = unswung(sideOfFront[0]);
  const frontArmhole = armhole(raised.underarm, raised.upward, shoulderFront, plan.acrossFrontHalf, 0.54, 0.66);
  const swung = rotation(swing, apex);
  const neckPointOf = (shoulder: { readonly base: Point; readonly directions: readonly [number, number] }): Point =>
    add(shoulder.base, scale(directionAt(shoulder.directions[0]), plan.neckOutside.shoulder));
  const neckPoint = { back: neckPointOf(shoulderBack), front: neckPointOf(shoulderFront) };
  const sideFrontSide: Side = [
    { ...sideOfFront[0], from: rotate(raised.underarm, swing, apex) },
    sideOfFront[1],
    sideOfFront[2],
    sideOfFront[3],
  ];
  return good({
    swing,
    front: {
      neck: draftNeckline({
        centre: { x: 0, y: baseLevel + plan.neck.frontDepth + plan.neckOutside.front },
        neckPoint: neckPoint.front,
        shoulderDirection: shoulderFront.directions[0],
        lean: neckLean,
        fullness: 0.58,
      }),
      shoulder: [line(neckPoint.front, seamFront)],
      princess: princessFront.front,
      bust: apex,
      bustPoint,
      notch: princessFront.notch[0],
    },
    sideFront: {
      shoulder: applyToPath(swung, [line(seamFront, shoulderFront.point)]),
      armhole: applyToPath(swung, frontArmhole.path),
      across: rotate(frontArmhole.across, swing, apex),
      princess: princessFront.sideFront,
      side: sideFrontSide,
      bust: [princessFront.apexSide, { x: bustFront, y: bustLevel }],
      notch: princessFront.notch[1],
    },
    back: {
      neck: draftNeckline({
        centre: nape,
        neckPoint: neckPoint.back,
        shoulderDirection: shoulderBack.directions[0],
        lean: -neckLean,
        fullness: 0.62,
      }),
      shoulder: [line(neckPoint.back, start)],
      princess: princessBack.back,
      bust: backAt,
      centre,
      blade: princessBack.blade,
    },
    sideBack: {
      shoulder: [line(shoulderBack.end, shoulderBack.point)],
      armhole: backArmhole.path,
      across: backArmhole.across,
      princess: princessBack.sideBack,
      side: sideOfBack,
      bust: [sideBackAt, { x: bustBack, y: bustLevel }],
    },
  });
};
