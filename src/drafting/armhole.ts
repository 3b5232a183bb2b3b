import { add, cubic, directionAt, distance, type Path, type Point, scale, subtract } from '../geometry/index.ts';
import { settle } from './solve.ts';

/** What an armhole hangs from. Millimetres; directions in radians, as `angleOf` measures them. */
export interface ArmholeFrame {
  readonly shoulder: Point;
  /** Direction of the shoulder seam there, travelling outward. */
  readonly shoulderDirection: number;
  /** The narrowest place, on the across-back or across-front line; the armhole runs along the grain there. */
  readonly across: Point;
  readonly underarm: Point;
  /** Direction in which the armhole arrives at the underarm: square to the side seam. */
  readonly underarmDirection: number;
  /** How far the lower curve is pulled into its corner: 0.55 is a quarter ellipse, 0.65 a well hollowed front. */
  readonly hollow: number;
}

/**
 * An armhole from shoulder point to underarm, in two curves.
 *
 * 1. Leave the shoulder square to the shoulder seam, so that front and back join without a point.
 * 2. Come upright at the across line, which is where the arm creases.
 * 3. Below it turn out into the corner of across line and underarm line, and arrive square to the side
 *    seam, so that front and back run into one another under the arm.
 * The handles at the across line are chosen so that the bend there is the same above and below, as far
 * as the room allows.
 *
 * Construction as taught in manuals of metric pattern cutting (shoulder, across line, hollow in the
 * corner, underarm). Equal bend: curvature of a cubic at its end is ⅔ · offset of the far handle / handle².
 */
export const draftArmhole = (frame: ArmholeFrame): Path => {
  const { shoulder, across, underarm, hollow } = frame;
  const leaving = directionAt(frame.shoulderDirection + Math.PI / 2);
  const arriving = directionAt(frame.underarmDirection);
  const drop = across.y - shoulder.y;
  const below = underarm.y - across.y;
  const run = underarm.x - across.x;
  const intoCorner = add(underarm, scale(arriving, -hollow * run));
  const down = hollow * below;
  const fromShoulder = add(shoulder, scale(leaving, drop / 3));
  const bendBelow = (intoCorner.x - across.x) / (down * down);
  const bendAbove = (fromShoulder.x - across.x) / bendBelow;
  const up = settle(Math.sqrt(Math.max(bendAbove, 0)), drop / 4, drop / 2);
  return [
    cubic(shoulder, fromShoulder, { x: across.x, y: across.y - up }, across),
    cubic(across, { x: across.x, y: across.y + down }, intoCorner, underarm),
  ];
};

/**
 * Distance from the corner of across line and underarm level to the armhole, along the bisector at 45°:
 * the guide the manuals draw the hollow by (about 20–25 mm front, 25–35 back).
 */
export const cornerOf = (across: Point, underarm: Point): Point => ({ x: across.x, y: underarm.y });

/** Straight distance from underarm to shoulder point, down the grain only: the armhole's depth on one piece. */
export const armholeDepthOf = (armhole: { readonly shoulder: Point; readonly underarm: Point }): number =>
  armhole.underarm.y - armhole.shoulder.y;

/** How far it is across the opening of the armhole at its narrowest, straight, for judging proportions. */
export const throughArmhole = (armhole: { readonly shoulder: Point; readonly underarm: Point }): number =>
  distance(subtract(armhole.shoulder, armhole.underarm), { x: 0, y: 0 });
