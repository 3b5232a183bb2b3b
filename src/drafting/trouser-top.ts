import {
  add,
  type Cubic,
  cubic,
  dot,
  fairCurve,
  lerp,
  line,
  type Path,
  type Point,
  pathLength,
  perpendicular,
  scale,
  segmentTangentAt,
  subtract,
  turnBetween,
} from '../geometry/index.ts';
import { fallingCurve } from './side-seam.ts';
import { solveBetween } from './solve.ts';
import type { FrontBack, Leg } from './trouser-leg.ts';

const degree = Math.PI / 180;

/**
 * The corner at the front crotch point is this much wider than square and the back's as much narrower: together they
 * make a straight line, so that the crotch curve runs on under the leg, falling to the front and flat behind.
 */
const corner = 11 * degree;

/** The top of a centre-front or seat seam: where it meets the waist, mm. */
export interface SeamTop {
  /** How far it leans in from the seam at the hip, towards the side; negative out. */
  readonly leansIn: number;
  /** Height, with the waist at the side at 0; negative above it. */
  readonly y: number;
}

/** Of the room between crotch point and hip line, the curve begins no higher than this. */
const curveBelowHip = 0.97;

/** Of the height from crotch point to hip line, the straight off the crotch point takes no more than this: above it the curve still has to turn. */
const turnsBelow = { front: 0.64, back: 0.58, atMost: 0.93 } as const;

/** Of the straight off a crotch point, the curve takes this much where it has the room: the rest stays straight, across the inside leg. */
const turning = 0.92;

/** How steeply the inside leg slants inward at the crotch point, radians. */
const slantOf = ({ inside }: Leg): number => {
  const down = segmentTangentAt(inside[0], 0);
  return Math.atan2(down.x, down.y);
};

const leanOf = ({ hipLevel }: Leg, top: SeamTop): number => top.leansIn / (hipLevel - top.y);

/** The steepest the crotch may leave a crotch point, radians. */
const steepest = (leg: Leg, top: SeamTop, share: number): number => {
  const { crotchPoint, hipLevel } = leg;
  const up = share * (crotchPoint.y - hipLevel);
  return Math.atan2(up, leanOf(leg, top) * (hipLevel - crotchPoint.y + up) - crotchPoint.x);
};

/** Where a straight off the crotch point and the seam meet, a round curve between both, its arms equal: handles as for an arc of a circle. */
const rounded = (from: Point, corner: Point, to: Point): Cubic => {
  const turn = turnBetween(subtract(corner, from), subtract(to, corner));
  const handle = ((4 / 3) * Math.tan(turn / 4)) / Math.tan(turn / 2);
  return cubic(from, lerp(from, corner, handle), lerp(to, corner, handle), to);
};

/**
 * Crotch point to waist: leaves the crotch point upward at an angle, a little straight, curves round and goes up in a
 * straight line through the hip. The curve has equal arms and ends below the hip line, so that the hip is as wide as
 * stated; where that leaves it short, more of the straight stays.
 */
const crotchSeam = (leg: Leg, top: SeamTop, rise: number): Path => {
  const { crotchPoint, hipLevel } = leg;
  const leaving: Point = { x: Math.cos(rise), y: -Math.sin(rise) };
  const lean = leanOf(leg, top);
  const seamAt = (y: number): Point => ({ x: lean * (hipLevel - y), y });
  // Where the straight off the crotch point meets the seam.
  const first = (seamAt(crotchPoint.y).x - crotchPoint.x) / (leaving.x + lean * leaving.y);
  const meeting = add(crotchPoint, scale(leaving, first));
  const up = Math.hypot(lean, 1);
  const arm = Math.min(turning * first, curveBelowHip * (meeting.y - hipLevel) * up);
  const bend = add(crotchPoint, scale(leaving, first - arm));
  const from = seamAt(meeting.y - arm / up);
  return [line(crotchPoint, bend), rounded(bend, meeting, from), line(from, seamAt(top.y))];
};

/**
 * Both crotch seams, front and back, from the crotch point to the waist. Each leaves it about square to its inside leg,
 * and where the legs are joined one runs on into the other: what the back's corner is narrower than square, the
 * front's is wider. Where a deep fork under a low hip leaves no room for both to turn, they share what there is.
 */
export const draftCrotches = (legs: FrontBack<Leg>, tops: FrontBack<SeamTop>): FrontBack<Path> => {
  const both = slantOf(legs.front) + slantOf(legs.back);
  const most = {
    front: steepest(legs.front, tops.front, turnsBelow.front),
    back: steepest(legs.back, tops.back, turnsBelow.back),
  };
  const wished = Math.min(slantOf(legs.back) - corner, most.back);
  const back =
    both - wished > most.front ? Math.min(both - most.front, (both * most.back) / (most.front + most.back)) : wished;
  return {
    front: crotchSeam(
      legs.front,
      tops.front,
      Math.min(both - back, steepest(legs.front, tops.front, turnsBelow.atMost)),
    ),
    back: crotchSeam(legs.back, tops.back, Math.min(back, steepest(legs.back, tops.back, turnsBelow.atMost))),
  };
};

/** What lies above the hip at the side: from the waist down to the hip, as long on front and back. */
export interface LegTop {
  /** Centre to side. */
  readonly waist: Path;
  /** Waist to hip. */
  readonly sideAbove: Cubic;
}

/** How finely lengths are found, mm. */
const fine = 1e-6;

/**
 * The side above the hip, drawn in by `sideIn` at the waist (out where negative): as long as the body is there, so
 * that front and back walk whatever each is drawn in by.
 */
const sideAboveHip = (leg: Leg, waistToHip: number, sideIn: number): Cubic => {
  const hip = leg.side[0].from;
  const from = (y: number): Cubic => {
    const top: Point = { x: hip.x - sideIn, y };
    return fallingCurve(top, hip, ((sideIn < 0 ? 1.5 : 1.7) * sideIn) / (hip.y - y), 0);
  };
  const highest = hip.y - waistToHip;
  const top = solveBetween((y) => pathLength([from(y)]) - waistToHip, highest, highest + 0.6 * waistToHip, fine);
  return from(top ?? highest);
};

/**
 * The waist seam, square to the seam at the centre and to the side, so that it runs on across both.
 */
const waistSeam = (centre: Point, crotch: Path, side: Cubic): Path => {
  const seam = crotch.at(-1);
  if (!seam) throw new Error('A crotch seam needs a straight at its top');
  const upward = segmentTangentAt(seam, 1);
  const square = perpendicular(upward);
  const start = dot(square, { x: 1, y: 0 }) > 0 ? square : scale(square, -1);
  const falling = segmentTangentAt(side, 0);
  return [fairCurve(centre, start, side.from, { x: falling.y, y: -falling.x })];
};

export const draftTop = (leg: Leg, crotch: Path, waistToHip: number, sideIn: number): LegTop => {
  const sideAbove = sideAboveHip(leg, waistToHip, sideIn);
  const centre = crotch.at(-1)?.to as Point;
  return { waist: waistSeam(centre, crotch, sideAbove), sideAbove };
};

/**
 * The side drawn in until the waist seam is as long as wished, between two amounts; the nearer of them where it cannot be.
 */
export const draftTopOfLength = (
  leg: Leg,
  crotch: Path,
  waistToHip: number,
  wished: number,
  [least, most]: readonly [number, number],
): LegTop => {
  const miss = (sideIn: number): number => pathLength(draftTop(leg, crotch, waistToHip, sideIn).waist) - wished;
  const found = solveBetween(miss, least, most, fine);
  return draftTop(leg, crotch, waistToHip, found ?? (miss(least) < 0 ? least : most));
};
