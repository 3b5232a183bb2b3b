import { add, cubic, directionAt, type Path, type Point, scale } from '../geometry/index.ts';
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
  /** How far along the underarm the curve has already turned level; as the hollow where left out. More of it opens the tight place of a narrow armhole. */
  readonly level?: number;
}

/** How much of the way in from shoulder point to across line the first handle may take. */
const mostInward = 0.65;

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
  const { shoulder, across, underarm, hollow, level = hollow } = frame;
  const leaving = directionAt(frame.shoulderDirection + Math.PI / 2);
  const arriving = directionAt(frame.underarmDirection);
  const drop = across.y - shoulder.y;
  const below = underarm.y - across.y;
  const run = underarm.x - across.x;
  const intoCorner = add(underarm, scale(arriving, -level * run));
  const down = hollow * below;
  // The handle never reaches past the across line, or the curve would have to come back to it.
  const inward = Math.max(-leaving.x, 0);
  const reach = inward === 0 ? drop / 3 : Math.min(drop / 3, (mostInward * (shoulder.x - across.x)) / inward);
  const fromShoulder = add(shoulder, scale(leaving, reach));
  const bendBelow = (intoCorner.x - across.x) / (down * down);
  const bendAbove = (fromShoulder.x - across.x) / bendBelow;
  // Where the straight off the shoulder meets the across line: a handle reaching above it would turn the bend back.
  const meeting = inward === 0 ? across.y : shoulder.y + ((shoulder.x - across.x) / inward) * leaving.y;
  const most = Math.max(0.95 * (across.y - meeting), drop / 5);
  const up = Math.min(settle(Math.sqrt(Math.max(bendAbove, 0)), drop / 4, drop / 2), most);
  return [
    cubic(shoulder, fromShoulder, { x: across.x, y: across.y - up }, across),
    cubic(across, { x: across.x, y: across.y + down }, intoCorner, underarm),
  ];
};
