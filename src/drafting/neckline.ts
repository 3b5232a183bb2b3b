import { add, cubic, directionAt, lerp, type Path, type Point, scale } from '../geometry/index.ts';

/** What a round neckline hangs from. */
export interface NecklineFrame {
  /** On the centre line. */
  readonly centre: Point;
  /** Where the neckline meets the shoulder seam. */
  readonly neckPoint: Point;
  /** Direction of the shoulder seam there in radians, travelling outward; less than upright. */
  readonly shoulderDirection: number;
  /** How far the curve is pulled to the crossing of its two end tangents: 0.55 is a quarter ellipse, 1 the corner itself. */
  readonly fullness: number;
}

/**
 * A round neckline from the centre to the shoulder, in one curve: square to the centre line, so that the
 * opened piece has no point there, and square to the shoulder seam, so that front and back run into one
 * another. Both handles lie on the way to the crossing of those two directions, so the bend never turns
 * back. Construction as taught in manuals of metric pattern cutting.
 */
export const draftNeckline = ({ centre, neckPoint, shoulderDirection, fullness }: NecklineFrame): Path => {
  const down = directionAt(shoulderDirection + Math.PI / 2);
  const crossing = add(neckPoint, scale(down, (centre.y - neckPoint.y) / down.y));
  return [cubic(centre, lerp(centre, crossing, fullness), lerp(neckPoint, crossing, fullness), neckPoint)];
};

/**
 * The outer edge of a neck facing, from its end on the shoulder to its end on the centre: square to both, so
 * that the facing lies as a band of even width and opens without a point.
 */
export const draftFacingEdge = (atShoulder: Point, shoulderDirection: Point, atCentre: Point): Path => {
  const down: Point = { x: -shoulderDirection.y, y: shoulderDirection.x };
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
