import {
  add,
  type Cubic,
  cubic,
  directionAt,
  type Line,
  line,
  type Path,
  type Point,
  scale,
  tolerance,
} from '../geometry/index.ts';
import { draftArmhole } from './armhole.ts';
import { draftNeckline } from './neckline.ts';
import { bustBelow, type RaincoatPlan } from './raincoat-plan.ts';
import { fallingCurve } from './side-seam.ts';
import { settle, solveBetween } from './solve.ts';

/** Front or back of the coat: half of it, its centre along x = 0. */
export interface RaincoatHalf {
  /** From the centre to the neck point. */
  readonly neck: Path;
  readonly shoulder: Line;
  readonly armhole: Path;
  /** The narrowest place of the armhole. */
  readonly across: Point;
  readonly side: Cubic;
  /** From the side to the centre. */
  readonly hem: Cubic;
}

export interface RaincoatBody {
  readonly front: RaincoatHalf;
  readonly back: RaincoatHalf;
  /** Nape to underarm line. */
  readonly depth: number;
}

/** Of the side's mean slant between bust and hip, how much it has at the bust: it falls nearly along the grain there and swings out below. */
const slantAtBust = 0.8;

/** How far the side slants outward for each mm down, at a height, for a depth of armhole. */
export const slantAt = (plan: RaincoatPlan, depth: number, y: number): number => {
  const bust = depth + bustBelow;
  const mean = (plan.hipQuarter - plan.bustQuarter) / (plan.hipLevel - bust);
  return mean * (slantAtBust + (2 * (1 - slantAtBust) * (y - bust)) / (plan.hipLevel - bust));
};

/** The side seam of an A-line, a shallow parabola through the widths at bust and hip: where it passes at a height. */
export const sideX = (plan: RaincoatPlan, depth: number, y: number): number => {
  const bust = depth + bustBelow;
  // A parabola's mean slant between two heights is that at the middle of them.
  return plan.bustQuarter + slantAt(plan, depth, (y + bust) / 2) * (y - bust);
};

/** The side seam from the underarm down to a height. */
export const sideSeam = (plan: RaincoatPlan, depth: number, to: number): Cubic =>
  fallingCurve(
    { x: sideX(plan, depth, depth), y: depth },
    { x: sideX(plan, depth, to), y: to },
    slantAt(plan, depth, depth),
    slantAt(plan, depth, to),
  );

/**
 * A level hem of an A-line from its side to its centre, at a height on the centre: square to both, so it hangs level and
 * runs on round the body. It rises to the side by width · tan(θ/2), as an arc that turns by the slant θ does.
 */
export const levelHem = (plan: RaincoatPlan, depth: number, level: number): Cubic => {
  const risen = (y: number): number => sideX(plan, depth, y) * Math.tan(Math.atan(slantAt(plan, depth, y)) / 2);
  const y = solveBetween((tried) => tried + risen(tried) - level, plan.waistLevel, level, tolerance.same) ?? level;
  const side: Point = { x: sideX(plan, depth, y), y };
  const slant = Math.atan(slantAt(plan, depth, y));
  const handle = side.x / 3;
  return cubic(
    side,
    { x: side.x - handle * Math.cos(slant), y: y + handle * Math.sin(slant) },
    { x: handle, y: level },
    { x: 0, y: level },
  );
};

/**
 * The front neckline leaves the shoulder this much steeper than square and the back as much flatter, radians: the front is
 * round instead of pointed, the back lies shallow across the nape, and the two still run into one another.
 */
const rounder = (13 * Math.PI) / 180;

/** Where the armhole is narrowest, shoulder point to underarm, how far inside the shoulder point, how hollow below, and how far level under the arm. */
const armholes = {
  back: { at: 0.54, inside: 0.05, hollow: 0.42, level: 0.66 },
  front: { at: 0.56, inside: 0.075, hollow: 0.46, level: 0.7 },
} as const;

/**
 * Front and back of the raincoat for one depth of armhole.
 *
 * 1. Back: nape at (0, 0), centre back on the fold along x = 0. Front: the same levels, centre front at x = 0, where the
 *    zip lies edge to edge.
 * 2. Necklines a fifth of the neck's base wide and opened for a jumper; they run on over the shoulder.
 * 3. Shoulders run on past the shoulder point, down the arm. Where the coat is narrow for its shoulders they run on less.
 * 4. Armholes from there to the underarm, hardly hollowed, the front a little more.
 * 5. Both side seams are the one curve, and both hems square to it and to the centre.
 *
 * Children's block with a dropped shoulder, as taught in manuals of metric pattern cutting for children.
 */
export const draftRaincoatBody = (plan: RaincoatPlan, depth: number): RaincoatBody => {
  const underarm: Point = { x: sideX(plan, depth, depth), y: depth };
  const hem = levelHem(plan, depth, plan.hemLevel);
  const half = (which: 'front' | 'back'): RaincoatHalf => {
    const front = which === 'front';
    const slope = front ? plan.shoulder.frontSlope : plan.shoulder.backSlope;
    const neckPoint: Point = { x: front ? plan.neck.frontWidth : plan.neck.backWidth, y: -plan.neck.rise };
    const out = directionAt(slope);
    const point = add(neckPoint, scale(out, shoulderLength(plan, underarm)));
    const { at, inside, hollow, level } = armholes[which];
    const across: Point = {
      x: point.x - inside * (depth - point.y),
      y: point.y + at * (depth - point.y),
    };
    return {
      neck: draftNeckline({
        centre: { x: 0, y: front ? neckPoint.y + plan.neck.frontDepth : 0 },
        neckPoint,
        shoulderDirection: slope,
        fullness: front ? 0.62 : 0.66,
        lean: front ? rounder : -rounder,
      }),
      shoulder: line(neckPoint, point),
      armhole: draftArmhole({
        shoulder: point,
        shoulderDirection: slope,
        across,
        underarm,
        underarmDirection: -Math.atan(slantAt(plan, depth, depth)),
        hollow,
        level,
      }),
      across,
      side: sideSeam(plan, depth, hem.from.y),
      hem,
    };
  };
  return { front: half('front'), back: half('back'), depth };
};

/** The seam's length from neck point to sleeve: as planned, but so that the underarm lies outside it by what an arm needs and no more than a low cap spans. */
const shoulderLength = (plan: RaincoatPlan, underarm: Point): number => {
  const { length, backSlope } = plan.shoulder;
  const [least, most] = plan.hole;
  const upTo = (hole: number): number => (underarm.x - hole - plan.neck.backWidth) / Math.cos(backSlope);
  return settle(length, upTo(most), upTo(least));
};
