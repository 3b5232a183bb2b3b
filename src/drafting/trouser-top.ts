import {
  add,
  type Cubic,
  cubic,
  dot,
  fairCurve,
  line,
  type Path,
  type Point,
  pathLength,
  perpendicular,
  scale,
  segmentTangentAt,
  subtract,
} from '../geometry/index.ts';
import { fallingCurve } from './side-seam.ts';
import { settle, solveBetween } from './solve.ts';
import type { Leg } from './trouser-leg.ts';

const degree = Math.PI / 180;

/**
 * The corner at the front crotch point is this much wider than square and the back's as much narrower: together they
 * make a straight line, so that the crotch curve runs on under the leg, falling to the front and flat behind.
 */
const corner = 8 * degree;

/** The top of a centre-front or seat seam: where it meets the waist, mm. */
export interface SeamTop {
  /** How far it leans in from the seam at the hip, towards the side; negative out. */
  readonly leansIn: number;
  /** Height, with the waist at the side at 0; negative above it. */
  readonly y: number;
}

/** Of the room between crotch point and hip line, the curve begins no higher than this. */
const curveBelowHip = 0.97;

/**
 * Crotch point to waist: leaves the crotch point square to the inside leg (but for `corner`), curves round and goes up
 * in a straight line through the hip. The curve begins as high as makes both its arms alike, below the hip
 * line, so that the hip is as wide as stated.
 */
export const draftCrotch = (leg: Leg, top: SeamTop, which: 'front' | 'back'): Path => {
  const { crotchPoint, hipLevel, inside } = leg;
  const down = segmentTangentAt(inside[0], 0);
  // Square to the inside leg, towards the centre and upward where the inside leg slants.
  const slant = Math.atan2(down.x, down.y);
  const rise = slant + (which === 'front' ? corner : -corner);
  const leaving: Point = { x: Math.cos(rise), y: -Math.sin(rise) };
  const lean = top.leansIn / (hipLevel - top.y);
  const seamAt = (y: number): Point => ({ x: lean * (hipLevel - y), y });
  // Where the straight off the crotch point meets the seam.
  const out = seamAt(crotchPoint.y).x - crotchPoint.x;
  const first = out / (leaving.x + lean * leaving.y);
  const meeting = add(crotchPoint, scale(leaving, first));
  const room = curveBelowHip * (meeting.y - hipLevel);
  const second = settle(Math.min(1.05 * first, room), 10, Math.max(room, 10));
  const from = seamAt(meeting.y - second);
  const up = subtract(meeting, from);
  // Both handles reach the same share of their arm: the curve is as full at either end.
  const share = which === 'front' ? 0.58 : 0.6;
  return [
    cubic(crotchPoint, add(crotchPoint, scale(leaving, share * first)), add(from, scale(up, share)), from),
    line(from, seamAt(top.y)),
  ];
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
    return fallingCurve(top, hip, (1.7 * sideIn) / (hip.y - y), 0);
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
