import { type Path, pathBounds, pathEnd, pathPointAtLength, pathStart, tolerance } from '../../geometry/index.ts';
import { edgeRuns, type Piece } from '../../pattern/index.ts';
import { type Knot, lastAlong, throughKnots } from '../course.ts';
import { type Course, inDirection } from '../fields.ts';
import type { Drawn } from '../reshape.ts';
import type { Handle } from '../types.ts';
import { jointed, warped } from '../warp.ts';

/** Where along a path that runs up or down throughout it passes a height, mm from its start; at an end where it does not. */
export const alongToHeight = (path: Path, y: number): number => {
  const down = pathEnd(path).y > pathStart(path).y;
  return lastAlong(path, (mm) => pathPointAtLength(path, mm).y < y === down);
};

/**
 * Lines down a piece, a side or an armhole, with every point moved by the shift of its height, ready to be drawn. They
 * get a joint at each of these heights that they pass, where they have none near. Moved back by as much they are the
 * lines they were.
 */
export const shiftedEdges = (
  piece: Piece,
  edges: readonly string[],
  heights: readonly number[],
  course: Course,
): Drawn => {
  const field = inDirection({ x: 0, y: 0 }, { x: 0, y: 1 }, course);
  const shifted = (path: Path): Path => {
    const places = heights.map((y) => alongToHeight(path, y));
    return warped(jointed(path, places), field);
  };
  return Object.fromEntries(edges.map((edge) => [edge, edgeRuns(piece, edge).map(shifted)]));
};

/** Lines moved out at knots of height: above the first and below the last, where all moves alike, they stay the very lines they were. */
export const sidesMoved = (piece: Piece, edges: readonly string[], knots: readonly Knot[], outward: number): Drawn =>
  shiftedEdges(
    piece,
    edges,
    knots.map(({ at }) => at),
    throughKnots(knots, { x: outward, y: 0 }),
  );

/** Where such an alteration is taken hold of: on the edge that passes a height, moving across; null where none does. */
export const heldAtHeight = (piece: Piece, edges: readonly string[], y: number, across: number): Handle | null => {
  const path = edges
    .flatMap((edge) => edgeRuns(piece, edge))
    .find((one) => {
      const { minY, maxY } = pathBounds(one);
      return y >= minY - tolerance.kink && y <= maxY + tolerance.kink;
    });
  if (!path) return null;
  return { piece: piece.id, at: pathPointAtLength(path, alongToHeight(path, y)), perMillimetre: { x: across, y: 0 } };
};
