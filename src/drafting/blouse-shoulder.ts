import { add, angleOf, directionAt, type Point, scale, subtract } from '../geometry/index.ts';
import type { BlousePlan } from './blouse-plan.ts';
import { solveBetween } from './solve.ts';

/** A parameter or angle found to this is found to well under `tolerance.same`. */
const fine = 1e-12;

/** The necklines lie this much outside the base of the neck: along the shoulder, down the front, down the back. */
export const jewel = { shoulder: 6, front: 8, back: 3 } as const;

/**
 * How far the neckline leans from square to the shoulder, radians. Square, the shallow back neck would have to turn
 * sharply just behind the seam and the front would run down to a V; leaning, both share the turn and are round.
 */
export const neckLean = (14 * Math.PI) / 180;

const along = (from: Point, angle: number, mm: number): Point => add(from, scale(directionAt(angle), mm));

export interface Shoulder {
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
export const backShoulder = ({ neck, shoulder }: BlousePlan) => {
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

/** The front shoulder, one straight line from a neck point whose base lies at the level given. */
export const frontShoulder = (plan: BlousePlan, baseLevel: number): Shoulder => {
  const { length, frontSlope } = plan.shoulder;
  const base: Point = { x: plan.neck.frontWidth, y: baseLevel };
  return {
    base,
    neckPoint: along(base, frontSlope, jewel.shoulder),
    point: along(base, frontSlope, length),
    directions: [frontSlope, frontSlope],
  };
};
