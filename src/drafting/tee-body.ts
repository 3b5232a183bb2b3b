import {
  add,
  angleOf,
  type Cubic,
  cubic,
  directionAt,
  type Line,
  line,
  type Path,
  type Point,
  pathLength,
  perpendicular,
  scale,
  segmentTangentAt,
  tolerance,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { draftArmhole } from './armhole.ts';
import { draftNeckline } from './neckline.ts';
import { sideAt } from './side-seam.ts';
import { settle, solveBetween } from './solve.ts';
import type { TeePlan } from './tee-plan.ts';
import { draftPlainSide, type PlainSide } from './tee-side.ts';

/** Front or back of the tee: half of it, its centre on the fold along x = 0. */
export interface TeeHalf {
  readonly neck: Path;
  readonly shoulder: Line;
  readonly armhole: Path;
  /** The narrowest place of the armhole, on the across line. */
  readonly across: Point;
  readonly side: PlainSide;
  /** Where the bust level ends on the side seam. */
  readonly bustSide: Point;
}

export interface TeeBody {
  readonly front: TeeHalf;
  readonly back: TeeHalf;
  readonly bustPoint: Point;
}

const along = (from: Point, angle: number, mm: number): Point => add(from, scale(directionAt(angle), mm));

/**
 * The front neckline leaves the shoulder this much steeper than square, the back as much flatter, radians: so the front is
 * round instead of pointed, the back lies shallow across the nape, and the two still run into one another.
 */
const turned = (14 * Math.PI) / 180;

/**
 * How a neckline is opened from the base of the neck: for each mm along the shoulder so much down the front and the
 * back. The shoulder is opened at least by the band's width less what the band may climb, and at most by a share
 * of its length; what is then still missing goes into the front.
 */
const opening = { front: 1.35, back: 0.6, least: 14, most: 90, ofShoulder: 0.3 } as const;

interface NeckOf {
  readonly base: Point;
  readonly centre: Point;
  readonly slope: number;
  /** What the neckline is square to at the shoulder: the slope, turned. */
  readonly squareTo: number;
  readonly fullness: number;
}

const neckline = ({ base, centre, slope, squareTo, fullness }: NeckOf, outward: number, down: number): Path =>
  draftNeckline({
    centre: { x: 0, y: centre.y + down },
    neckPoint: along(base, slope, outward),
    shoulderDirection: squareTo,
    fullness,
  });

/**
 * Both necklines, opened alike until they are as long as the head needs.
 * Problem `drafting.head-cannot-pass` where that would take more than a tee's neckline.
 */
const draftNecks = (
  plan: TeePlan,
  front: NeckOf,
  back: NeckOf,
): Result<{ readonly front: Path; readonly back: Path }> => {
  const mostOut = opening.ofShoulder * plan.shoulder.length;
  const at = (by: number) => ({
    front: neckline(front, Math.min(by, mostOut), opening.front * by),
    back: neckline(back, Math.min(by, mostOut), opening.back * by),
  });
  const short = (by: number): number => {
    const necks = at(by);
    return 2 * (pathLength(necks.front) + pathLength(necks.back)) - plan.neck.leastRound;
  };
  if (short(opening.least) >= 0) return good(at(opening.least));
  const by = solveBetween(short, opening.least, opening.most, tolerance.same);
  return by === null
    ? bad('drafting.head-cannot-pass', { neckline: { mm: Math.round(plan.neck.leastRound) } })
    : good(at(by));
};

/** The bust is measured level under the arms, and well above the waist, whatever a height says, mm. */
const bustClear = { underarm: 20, waist: 40 } as const;

/** How far the underarm may lie outside or inside the bust's own quarter, mm. */
const underarmWithin = 120;

/**
 * A side seam with the width wanted at the bust level.
 * Problem `drafting.bodice-cannot-fit` where no width at the underarm makes it.
 */
const sideThrough = (plan: TeePlan, bustLevel: number, depth: number): Result<PlainSide> => {
  const side = (underarm: number): PlainSide =>
    draftPlainSide({
      underarm: { x: underarm, y: depth },
      waist: { x: plan.waistQuarter, y: plan.waistLevel },
      hip: { x: plan.hipQuarter, y: plan.hipLevel },
      hem: { x: plan.hipQuarter, y: plan.hemLevel },
    });
  const underarm = solveBetween(
    (candidate) => sideAt(side(candidate), bustLevel).x - plan.bustQuarter,
    plan.bustQuarter - underarmWithin,
    plan.bustQuarter + underarmWithin,
    tolerance.same,
  );
  return underarm === null
    ? bad('drafting.bodice-cannot-fit', { bust: { mm: Math.round(4 * plan.bustQuarter) } })
    : good(side(underarm));
};

const movedOut = ([toWaist, toHip, toHem]: PlainSide, by: number): PlainSide => {
  const out = (point: Point): Point => ({ x: point.x + by, y: point.y });
  const cubicOut = ({ from, control1, control2, to }: Cubic): Cubic =>
    cubic(out(from), out(control1), out(control2), out(to));
  return [cubicOut(toWaist), cubicOut(toHip), line(out(toHem.from), out(toHem.to))];
};

/** The underarm lies at least this far outside either across line, mm. */
const leastHole = 5;

/** Where the across line lies from shoulder point to underarm, and how far the armhole is hollowed under it. */
const armholes = { back: { at: 0.5, hollow: 0.57 }, front: { at: 0.54, hollow: 0.66 } } as const;

/**
 * Front and back of the tee for one depth of armhole.
 *
 * 1. Back: nape at (0, 0), centre back down the y axis; waist, hip and hem at their levels below it. Front: the
 *    same levels, centre front on the fold; its neck point a little higher than the back's.
 * 2. Necklines a fifth of the neck's base wide, opened alike until the stretched band passes the head.
 * 3. Both side seams are one curve, moved outward in front by what the bust is fuller there: so they walk.
 * 4. Armholes from shoulder point over the across lines to the underarm, the front more hollow.
 *
 * Knit block without darts as taught in manuals of metric pattern cutting. Problems `drafting.head-cannot-pass`,
 * `drafting.bodice-cannot-fit`.
 */
export const draftTeeBody = (plan: TeePlan, depth: number): Result<TeeBody> => {
  const { length, backSlope, frontSlope } = plan.shoulder;
  const backBase: Point = { x: plan.neck.backWidth, y: -plan.neck.rise };
  const frontBase: Point = { x: plan.neck.frontWidth, y: -plan.neck.rise - plan.neck.raise };
  const necks = draftNecks(
    plan,
    {
      base: frontBase,
      centre: { x: 0, y: frontBase.y + plan.neck.frontDepth },
      slope: frontSlope,
      squareTo: frontSlope - turned,
      fullness: 0.6,
    },
    { base: backBase, centre: { x: 0, y: 0 }, slope: backSlope, squareTo: backSlope + turned, fullness: 0.7 },
  );
  if (!necks.ok) return necks;
  const bustAcross = Math.min(Math.abs(plan.bustSpanHalf - frontBase.x), plan.bustDepth / 2);
  const bustLevel = settle(
    frontBase.y + Math.sqrt(plan.bustDepth ** 2 - bustAcross ** 2),
    depth + bustClear.underarm,
    plan.waistLevel - bustClear.waist,
  );
  const quarter = sideThrough(plan, bustLevel, depth);
  if (!quarter.ok) return quarter;
  const half = (
    neck: Path,
    base: Point,
    slope: number,
    acrossHalf: number,
    { at, hollow }: { readonly at: number; readonly hollow: number },
    by: number,
    inside: readonly [number, number],
  ): TeeHalf => {
    const side = movedOut(quarter.value, by);
    const point = along(base, slope, length);
    const across: Point = {
      x: settle(acrossHalf, point.x - inside[1], point.x - inside[0]),
      y: point.y + at * (depth - point.y),
    };
    const armhole = draftArmhole({
      shoulder: point,
      shoulderDirection: slope,
      across,
      underarm: side[0].from,
      underarmDirection: angleOf(perpendicular(segmentTangentAt(side[0], 0))),
      hollow,
    });
    const neckPoint = neck.at(-1)?.to as Point;
    return { neck, shoulder: line(neckPoint, point), armhole, across, side, bustSide: sideAt(side, bustLevel) };
  };
  const back = half(
    necks.value.back,
    backBase,
    backSlope,
    plan.acrossBackHalf,
    armholes.back,
    -plan.frontWider,
    [12, 28],
  );
  const front = half(
    necks.value.front,
    frontBase,
    frontSlope,
    plan.acrossFrontHalf,
    armholes.front,
    plan.frontWider,
    [16, 34],
  );
  // A bust much narrower than waist and hip puts the underarm inside the across lines: no arm goes through that.
  if ([front, back].some(({ side, across }) => side[0].from.x < across.x + leastHole)) {
    return bad('drafting.bodice-cannot-fit', { bust: { mm: Math.round(4 * plan.bustQuarter) } });
  }
  return good({ front, back, bustPoint: { x: plan.bustSpanHalf, y: bustLevel } });
};
