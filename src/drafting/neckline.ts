import { add, cubic, directionAt, type Path, type Point, scale } from '../geometry/index.ts';

/** What a round neckline hangs from. */
export interface NecklineFrame {
  /** On the centre line. */
  readonly centre: Point;
  /** Where the neckline meets the shoulder seam. */
  readonly neckPoint: Point;
  /** Direction of the shoulder seam there in radians, travelling outward. */
  readonly shoulderDirection: number;
  /** How long the curve stays along the centre's square, as a share of the neck's width. */
  readonly flat: number;
  /** How long it stays square to the shoulder, as a share of the neck's depth. */
  readonly upright: number;
}

/**
 * A round neckline from the centre to the shoulder, in one curve: square to the centre line, so that the
 * opened piece has no point there, and square to the shoulder seam, so that front and back run into one
 * another. Construction as taught in manuals of metric pattern cutting.
 */
export const draftNeckline = ({ centre, neckPoint, shoulderDirection, flat, upright }: NecklineFrame): Path => {
  const width = neckPoint.x - centre.x;
  const depth = centre.y - neckPoint.y;
  const arriving = directionAt(shoulderDirection + Math.PI / 2);
  return [
    cubic(
      centre,
      { x: centre.x + flat * width, y: centre.y },
      add(neckPoint, scale(arriving, upright * depth)),
      neckPoint,
    ),
  ];
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
