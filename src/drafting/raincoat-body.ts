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
} from '../geometry/index.ts';
import { draftArmhole } from './armhole.ts';
import { draftNeckline } from './neckline.ts';
import { bustBelow, type RaincoatPlan } from './raincoat-plan.ts';
import { settle } from './solve.ts';

/** Front or back of the coat: half of it, its centre along x = 0. */
export interface RaincoatHalf {
  /** From the centre to the neck point. */
  readonly neck: Path;
  readonly shoulder: Line;
  readonly armhole: Path;
  /** The narrowest place of the armhole. */
  readonly across: Point;
  readonly side: Line;
  /** From the side to the centre. */
  readonly hem: Cubic;
}

export interface RaincoatBody {
  readonly front: RaincoatHalf;
  readonly back: RaincoatHalf;
  /** Nape to underarm line. */
  readonly depth: number;
}

/** How far the side slants outward for each mm down, for a depth of armhole. */
export const slantOf = (plan: RaincoatPlan, depth: number): number =>
  (plan.hipQuarter - plan.bustQuarter) / (plan.hipLevel - depth - bustBelow);

/** The straight side seam of an A-line, through the widths at bust and hip: where it passes at a height. */
export const sideX = (plan: RaincoatPlan, depth: number, y: number): number =>
  plan.bustQuarter + slantOf(plan, depth) * (y - depth - bustBelow);

/**
 * A level hem of an A-line from its side to its centre, at a height on the centre: square to both, so it hangs level and
 * runs on round the body. It rises to the side by width · tan(θ/2), as an arc that turns by the slant θ does.
 */
export const levelHem = (plan: RaincoatPlan, depth: number, level: number): Cubic => {
  const flare = slantOf(plan, depth);
  const slant = Math.atan(flare);
  const half = Math.tan(slant / 2);
  const y = (level - half * sideX(plan, depth, 0)) / (1 + half * flare);
  const side: Point = { x: sideX(plan, depth, y), y };
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
 * 5. Both side seams are the one straight line, and both hems square to it and to the centre.
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
        underarmDirection: -Math.atan(slantOf(plan, depth)),
        hollow,
        level,
      }),
      across,
      side: line(underarm, hem.from),
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
