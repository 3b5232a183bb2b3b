import {
  add,
  angleOf,
  applyToPath,
  type Cubic,
  directionAt,
  distance,
  type Line,
  midpoint,
  normalize,
  type Path,
  type Point,
  perpendicular,
  rotate,
  rotation,
  scale,
  segmentPointAt,
  segmentTangentAt,
  splitSegment,
  subtract,
  tolerance,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { draftArmhole } from './armhole.ts';
import type { BlousePlan } from './blouse-plan.ts';
import { draftNeckline } from './neckline.ts';
import { draftSide, parameterAtHeight, type Side, sideAt } from './side-seam.ts';
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

/** How far below the bust level the bust dart's upper leg meets the side seam, mm. */
const dartBelowBust = 14;

/** How far at least the bust point lies below the front's underarm, mm. */
const leastAboveBust = 18;

/** A parameter or angle found to this is found to well under `tolerance.same`. */
const fine = 1e-12;

/** How finely front and back share the bust, mm. */
const shareWithin = 0.1;

/** The necklines lie this much outside the base of the neck: along the shoulder, down the front, down the back. */
const jewel = { shoulder: 6, front: 8, back: 3 } as const;

const along = (from: Point, angle: number, mm: number): Point => add(from, scale(directionAt(angle), mm));

interface Shoulder {
  readonly base: Point;
  readonly neckPoint: Point;
  readonly point: Point;
  /** At the neck and at the shoulder point. */
  readonly directions: readonly [number, number];
}

/**
 * The back shoulder with its dart. The dart's bisector runs along the grain and its legs are equal; stitched,
 * the shoulder is one straight line. So the part outside the dart falls more steeply by the dart's angle,
 * and the whole is tilted until the line from neck point to shoulder point has the slope wanted.
 */
const backShoulder = ({ neck, shoulder }: BlousePlan) => {
  const base: Point = { x: neck.backWidth, y: -neck.rise };
  const angle = 2 * Math.asin(shoulder.dartIntake / (2 * shoulder.dartLength));
  const sewn = shoulder.length + shoulder.ease;
  // Just inside the middle, where the shoulder blade lies.
  const inner = 0.48 * sewn;
  const at = (tilt: number) => {
    const start = along(base, tilt, inner);
    const end: Point = { x: start.x + shoulder.dartIntake, y: start.y };
    return { start, end, point: along(end, tilt + angle, sewn - inner) };
  };
  const tilt = solveBetween(
    (candidate) => angleOf(subtract(at(candidate).point, base)) - shoulder.backSlope,
    shoulder.backSlope - 1,
    shoulder.backSlope + 1,
    fine,
  );
  if (tilt === null) throw new Error('A back shoulder cannot be tilted to its slope');
  const { start, end, point } = at(tilt);
  const dartPoint: Point = {
    x: start.x + shoulder.dartIntake / 2,
    y: start.y + shoulder.dartLength * Math.cos(angle / 2),
  };
  return {
    base,
    neckPoint: along(base, tilt, jewel.shoulder),
    start,
    end,
    point,
    dartPoint,
    directions: [tilt, tilt + angle] as const,
  };
};

const frontShoulder = (plan: BlousePlan, baseLevel: number): Shoulder => {
  const { length, frontSlope } = plan.shoulder;
  const base: Point = { x: plan.neck.frontWidth, y: baseLevel };
  return {
    base,
    neckPoint: along(base, frontSlope, jewel.shoulder),
    point: along(base, frontSlope, length),
    directions: [frontSlope, frontSlope],
  };
};

/** The bust dart and the height of the front neck point, which hang together. */
const balance = (plan: BlousePlan, depth: number, backShoulderLevel: number) => {
  const drop = plan.shoulder.length * Math.sin(plan.shoulder.frontSlope);
  const backHeight = depth - backShoulderLevel;
  const heightFor = (intake: number, base: number) => depth - intake - (base + drop);
  const asMeasured = plan.waistLevel - plan.frontWaistLength;
  // The intake that leaves the front armhole 22 less high than the back, with the front as long as measured.
  const asked = heightFor(0, asMeasured) - (backHeight - 22);
  const intake = settle(
    (asked + plan.bustIntake) / 2,
    Math.max(22, 0.75 * plan.bustIntake),
    Math.min(64, 1.3 * plan.bustIntake),
  );
  const height = settle(heightFor(intake, asMeasured), backHeight - 30, backHeight - 12);
  return { intake, baseLevel: depth - intake - height - drop };
};

/** Height of the bust dart's lower leg on the closed side seam: the dart rises a little from the seam to the bust. */
const mouthLevel = (plan: BlousePlan, bustPoint: Point, depth: number, intake: number): number =>
  settle(bustPoint.y + dartBelowBust + intake, depth + 44, plan.waistLevel - 25);

/** The front's side seam with its dart opened, and where the dart points. */
const openSide = (plan: BlousePlan, closed: Side, bustPoint: Point, mouth: number, intake: number) => {
  const [beforeDart, afterDart] = splitSegment(closed[1], parameterAtHeight(closed[1], mouth)) as readonly [
    Cubic,
    Cubic,
  ];
  const low = beforeDart.to;
  let aim: Point = { x: low.x, y: low.y - intake / 2 };
  let point = bustPoint;
  let angle = 0;
  // The dart's axis passes through the bust point: each round starts from the last one's mouth and gains two digits.
  for (let round = 0; round < 12; round++) {
    point = add(bustPoint, scale(normalize(subtract(aim, bustPoint)), plan.dartShort));
    angle = 2 * Math.asin(intake / (2 * distance(point, low)));
    aim = midpoint(low, rotate(low, -angle, point));
  }
  const above = applyToPath(rotation(-angle, point), [closed[0], beforeDart]) as readonly [Cubic, Cubic];
  return { above, below: [afterDart, closed[2], closed[3]] as const, point };
};

/** Where the opened side seam passes a height, and at what height that place lies while the dart is closed. */
const onOpened = (above: readonly [Cubic, Cubic], closed: Side, mouth: number, level: number) => {
  const [curve, from, to] =
    level < above[0].to.y ? [above[0], closed[0].from.y, closed[0].to.y] : [above[1], closed[1].from.y, mouth];
  // A level outside the seam is that of its end; the finished bust then cannot be met, and the draft says so.
  const t = solveBetween((at) => segmentPointAt(curve, at).y - level, 0, 1, fine) ?? (level < curve.from.y ? 0 : 1);
  return { point: { ...segmentPointAt(curve, t), y: level }, closedHeight: from + t * (to - from) };
};

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
  // Opening the dart draws the front in at the bust level; it is cut wider by that, so that back and front still share the bust.
  const even = solveBetween(
    (wider) => {
      const shared = withBust(wider);
      return shared === null ? -1 : shared.atFront.x - shared.atBack.x - 2 * plan.frontWider;
    },
    plan.frontWider,
    mostWider,
    shareWithin,
  );
  const sides = withBust(even ?? mostWider);
  if (sides === null) return bad('drafting.bodice-cannot-fit', { bust: { mm: Math.round(4 * plan.bustQuarter) } });

  const acrossBack = settle(plan.acrossBackHalf, shoulderBack.point.x - 32, shoulderBack.point.x - 9);
  const acrossFront = settle(plan.acrossFrontHalf, shoulderFront.point.x - 40, shoulderFront.point.x - 15);
  const armhole = (
    side: Cubic,
    shoulder: { readonly point: Point; readonly directions: readonly [number, number] },
    across: number,
    at: number,
    hollow: number,
  ) => {
    const underarm = side.from;
    const narrowest: Point = { x: across, y: shoulder.point.y + at * (underarm.y - shoulder.point.y) };
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
  const backArmhole = armhole(sides.back[0], shoulderBack, acrossBack, 0.5, 0.58);
  const frontArmhole = armhole(sides.front.above[0], shoulderFront, acrossFront, 0.54, 0.66);
  const nape: Point = { x: 0, y: jewel.back };
  const centreNeck: Point = { x: 0, y: baseLevel + plan.neck.frontDepth + jewel.front };
  return good({
    back: {
      neck: draftNeckline({
        centre: nape,
        neckPoint: shoulderBack.neckPoint,
        shoulderDirection: shoulderBack.directions[0],
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
        fullness: 0.66,
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
