import { add, cubic, directionAt, lerp, type Path, type Point, scale } from '../geometry/index.ts';

/** What a round neckline hangs from. */
export interface NecklineFrame {
  /** On the centre line. */
  readonly centre: Point;
  /** Where the neckline meets the shoulder seam. */
  readonly neckPoint: Point;
  /** Direction of the shoulder seam there in radians, travelling outward; less than upright. */
  readonly shoulderDirection: number;
  /**
   * How far from square to the shoulder seam the neckline leaves it, radians, towards the seam; square when
   * left out. Front and back lean by as much to either side of the seam, and so still run into one another.
   */
  readonly lean?: number;
  /** How far the curve is pulled to the crossing of its two end tangents: 0.55 is a quarter ellipse, 1 the corner itself. */
  readonly fullness: number;
}

/**
 * A round neckline from the centre to the shoulder, in one curve: square to the centre line, so that the
 * opened piece has no point there, and square to the shoulder seam or leaning from it as its mate leans, so
 * that front and back run into one another. Both handles lie on the way to the crossing of those two directions, so the bend never turns
 * back. Construction as taught in manuals of metric pattern cutting.
 */
export const draftNeckline = ({ centre, neckPoint, shoulderDirection, fullness, lean = 0 }: NecklineFrame): Path => {
  const down = directionAt(shoulderDirection + Math.PI / 2 - lean);
  const crossing = add(neckPoint, scale(down, (centre.y - neckPoint.y) / down.y));
  return [cubic(centre, lerp(centre, crossing, fullness), lerp(neckPoint, crossing, fullness), neckPoint)];
};

/**
 * The outer edge of a neck facing, from its end on the shoulder to its end on the centre. It leaves the shoulder
 * in the direction in which the neckline does (a unit vector, pointing down) and meets the centre square, so that
 * the facing lies as a band of even width, runs on across the shoulder and opens without a point.
 */
export const draftFacingEdge = (atShoulder: Point, down: Point, atCentre: Point): Path => {
  const width = atShoulder.x - atCentre.x;
  const depth = atCentre.y - atShoulder.y;
  return [
    cubic(
      atShoulder,
      add(atShoulder, scale(down, 0.5 * depth)),
      { x: atCentre.x + 0.5 * width, y: atCentre.y },
      atCentre,
    ),
  ];
};
