import { angleOf, type Cubic, type Path, type Point, perpendicular, segmentTangentAt } from '../geometry/index.ts';
import { draftArmhole } from './armhole.ts';
import { settle } from './solve.ts';

/**
 * How far the shoulder point may stand outside an across line that lies `drop` below it, least and most, mm. The
 * armhole leaves the shoulder square, so at the slope given, and comes upright at the line: one even bend takes it
 * in by drop · tan(slope / 2), a straight by drop · tan(slope). Much less than the first makes a hook at the
 * shoulder, as much as the second a corner at the line. Readings of the across lines give way to that.
 */
export const standsOutside = (drop: number, slope: number): readonly [number, number] => [
  Math.max(0.7 * drop * Math.tan(slope / 2), 9),
  Math.min(0.75 * drop * Math.tan(slope), 32),
];

/** How far down an armhole its across line lies, and how far its lower curve is pulled into the corner. */
export interface ArmholeLook {
  readonly at: number;
  readonly hollow: number;
}

export const armholeLooks: { readonly front: ArmholeLook; readonly back: ArmholeLook } = {
  front: { at: 0.54, hollow: 0.66 },
  back: { at: 0.5, hollow: 0.58 },
};

/** The armhole from a shoulder point to the top of a side seam, square to both, and its place on the across line. */
export const armholeBetween = (
  shoulder: { readonly point: Point; readonly directions: readonly [number, number] },
  side: Cubic,
  acrossAsked: number,
  { at, hollow }: ArmholeLook,
): { readonly path: Path; readonly narrowest: Point } => {
  const underarm = side.from;
  const drop = at * (underarm.y - shoulder.point.y);
  const [least, most] = standsOutside(drop, shoulder.directions[1]);
  const narrowest: Point = {
    x: settle(acrossAsked, shoulder.point.x - most, shoulder.point.x - least),
    y: shoulder.point.y + drop,
  };
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
