import {
  add,
  applyToPath,
  type Cubic,
  type Line,
  lerp,
  line,
  mirrorX,
  normalize,
  type Point,
  rotate,
  rotation,
  segmentPointAt,
  segmentTangentAt,
} from '../geometry/index.ts';
import { fallingCurve } from './side-seam.ts';
import { settle } from './solve.ts';

/** A seam that falls from the shoulder to the hem over bust or shoulder blade. */
export type Fall = readonly (Cubic | Line)[];

/** Levels a princess seam passes, and how far its two edges lie apart there, mm; less than nothing where they flare past one another. */
export interface PrincessLevels {
  readonly waist: number;
  readonly hip: number;
  readonly hem: number;
  readonly openAtWaist: number;
  readonly openAtHip: number;
}

/** The slope between two slopes that never bulges: their harmonic mean, or none where they turn back (Fritsch & Butland, 1984). */
const between = (a: number, b: number): number => (a * b > 0 ? (2 * a * b) / (a + b) : 0);

const slopeOf = (from: Point, to: Point): number => (to.x - from.x) / (to.y - from.y);

/** From a place on the seam to waist, hip and hem, each half of its opening away from the axis: drawn in to the waist, round over the hip to the grain, square to the hem. */
const belowBust = (from: Point, axis: number, slope: number, inward: 1 | -1, levels: PrincessLevels): Fall => {
  const waist: Point = { x: axis - (inward * levels.openAtWaist) / 2, y: levels.waist };
  const hip: Point = { x: axis - (inward * levels.openAtHip) / 2, y: levels.hip };
  const atWaist = between(slopeOf(from, waist), slopeOf(waist, hip));
  return [
    fallingCurve(from, waist, slope, atWaist),
    fallingCurve(waist, hip, atWaist, 0),
    line(hip, { x: hip.x, y: levels.hem }),
  ];
};

/** The back's princess seam: the edges of the centre back panel and of the side back, from the shoulder down. */
export interface BackPrincess {
  readonly back: Fall;
  readonly sideBack: Fall;
  /** Where both edges touch, over the shoulder blade. */
  readonly blade: Point;
}

/**
 * The back's princess seam, over the shoulder blade. What a shoulder dart would take in is taken in by the seam: its
 * edges leave the shoulder as the dart's legs would, come together over the blade, and part again to the waist. Both
 * are one curve and its mirror image, so they walk to the last bit.
 *
 * @param start where the centre back panel's shoulder ends @param intake at the shoulder, mm @param length of the dart's legs, mm
 */
export const backPrincess = (start: Point, intake: number, length: number, levels: PrincessLevels): BackPrincess => {
  const axis = start.x + intake / 2;
  const slope = intake / 2 / length;
  // A straight leg half way, then the parabola that carries its slope to none: no bend turns back.
  const half: Point = { x: start.x + intake / 4, y: start.y + length / 2 };
  const blade: Point = { x: axis, y: start.y + 1.5 * length };
  const back: Fall = [line(start, half), fallingCurve(half, blade, slope, 0), ...belowBust(blade, axis, 0, 1, levels)];
  return { back, sideBack: applyToPath(mirrorX(axis), back) as Fall, blade };
};

/** The front's princess seam: the edges of the centre front panel and of the side front, from the shoulder down. */
export interface FrontPrincess {
  readonly front: Fall;
  readonly sideFront: Fall;
  /** From here down to the bust the side front is rounded; above it both edges are one curve. */
  readonly notch: readonly [front: Point, sideFront: Point];
  /** Where the bust level meets the side front's edge. */
  readonly apexSide: Point;
}

/**
 * How far above the bust the rounding of the side front begins, mm, and at most what share of the way to the shoulder;
 * how far it stands out over the apex, which makes the edge the few mm longer that are eased over the bust.
 */
const rounding = { reach: 105, most: 0.5, out: 3 } as const;

/**
 * The front's princess seam, from the shoulder over the bust to the hem.
 *
 * 1. One line from the shoulder to the apex, which lies a little outside the bust point: straight, then bent over the bust.
 * 2. The part outside it is swung about the apex by the bust dart's angle, which closes the dart at the side and
 *    opens the seam: the centre panel keeps the line, the side front has it swung.
 * 3. Below the apex the edges part to the waist, each taking half, mirror images but for the side front's beginning.
 * 4. The side front's corner at the apex is rounded: over the bust it runs in the direction half way between the one
 *    in which it arrives and the one in which it leaves, and stands out a little. Cloth is eased there by what the round
 *    is longer.
 *
 * As princess seams are made from a darted block in manuals of metric pattern cutting.
 */
export const frontPrincess = (shoulder: Point, apex: Point, swing: number, levels: PrincessLevels): FrontPrincess => {
  const height = apex.y - shoulder.y;
  const reach = Math.min(rounding.reach, rounding.most * height);
  const lower = slopeOf(apex, { x: apex.x - levels.openAtWaist / 2, y: levels.waist });
  const atApex = between(slopeOf(shoulder, apex), lower);
  // A straight to the notch and the parabola from it to the apex, which takes its slope to the one wanted there.
  const slope = (apex.x - shoulder.x - (reach * atApex) / 2) / (height - reach / 2);
  const notch: Point = { x: shoulder.x + slope * (height - reach), y: apex.y - reach };
  const rigid = line(shoulder, notch);
  const near = fallingCurve(notch, apex, slope, atApex);
  const [swung] = applyToPath(rotation(swing, apex), [rigid]) as readonly [Line];
  const arriving = rotate(segmentTangentAt(near, 1), swing);
  const leaving = normalize({ x: -atApex, y: 1 });
  const over = add(arriving, leaving);
  const leavingNotch = segmentTangentAt(swung, 1);
  const apexSide: Point = { x: apex.x - rounding.out, y: apex.y };
  const round = fallingCurve(swung.to, apexSide, leavingNotch.x / leavingNotch.y, over.x / over.y);
  return {
    front: [rigid, near, ...belowBust(apex, apex.x, atApex, 1, levels)],
    sideFront: [swung, round, ...belowBust(apexSide, apex.x, over.x / over.y, -1, levels)],
    notch: [rigid.to, swung.to],
    apexSide,
  };
};

/** The point of a falling seam at a height below its first one. */
export const fallAt = (fall: Fall, y: number): Point => {
  const segment = fall.find(({ to }) => y <= to.y) ?? (fall.at(-1) as Cubic | Line);
  const { from, to } = segment;
  const t = settle((y - from.y) / (to.y - from.y), 0, 1);
  return { ...(segment.kind === 'line' ? lerp(from, to, t) : segmentPointAt(segment, t)), y };
};

/** A falling seam cut off level at a height on its last, straight stretch. */
export const shortened = (fall: Fall, y: number): Fall => {
  const last = fall.at(-1) as Cubic | Line;
  return [...fall.slice(0, -1), line(last.from, { x: last.to.x, y })];
};
