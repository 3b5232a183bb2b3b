import type { Altered, StepOutcome } from '../alter/index.ts';
import { distance, nearestOnPath, type Point, pathLength, polyline, tolerance } from '../geometry/index.ts';
import { edgeLength, edgeRuns, type Garment, hasEdge, outlineOf, type Piece } from '../pattern/index.ts';
import { cutsOnHalves } from './cut-halves.ts';
import type { CutPlace } from './cut-place.ts';

/** The edges whose line passes through a point. */
const edgesAt = (piece: Piece, point: Point): readonly string[] =>
  piece.edges
    .map(({ id }) => id)
    .filter((id) => edgeRuns(piece, id).some((run) => nearestOnPath(run, point).distance <= tolerance.holds));

/**
 * A wedge is hinged at the end that lies on an edge which keeps its length; where neither or both do, at the end on
 * the outline whose edges keep their length, and otherwise nowhere that can be told.
 */
const hingeOf = (before: Piece, after: Piece, ends: readonly [Point, Point], opening: number): Point | null => {
  const keeps = (end: Point): boolean => {
    const edges = edgesAt(before, end).filter((id) => hasEdge(after, id));
    return (
      edges.length > 0 &&
      edges.every((id) => Math.abs(edgeLength(after, id) - edgeLength(before, id)) < Math.abs(opening) / 2)
    );
  };
  const onOutline = (end: Point): boolean => nearestOnPath(outlineOf(before), end).distance <= tolerance.holds;
  const [first, second] = ends;
  const [keepsFirst, keepsSecond] = [keeps(first), keeps(second)];
  if (keepsFirst !== keepsSecond) return keepsFirst ? first : second;
  // A slash from an edge that opens to a point inside is hinged at that point.
  if (onOutline(first) !== onOutline(second)) return onOutline(first) ? second : first;
  return null;
};

const placesOf = (garment: Garment, { applied }: StepOutcome, step: number): readonly CutPlace[] =>
  applied.cuts.flatMap((cut): CutPlace[] => {
    const [first, last] = [cut.points[0], cut.points[cut.points.length - 1]];
    if (!first || !last || distance(first, last) <= tolerance.same) return [];
    const path = polyline(cut.points, false);
    const put = applied.pieces
      .find(({ piece }) => piece === cut.piece)
      ?.puts.find(({ at, kind }) => at === cut.id && (kind === 'band' || kind === 'wedge'));
    const place = { piece: cut.piece, step, path };
    if (!put) return [{ ...place, amount: null, hinge: null }];
    const along = put.area / pathLength(path);
    if (put.kind === 'band') return [{ ...place, amount: along, hinge: null }];
    const before = garment.pieces.find(({ id }) => id === cut.piece);
    const after = applied.untrued.pieces.find(({ id }) => id === cut.piece);
    const hinge = before && after ? hingeOf(before, after, [first, last], 2 * along) : null;
    return [{ ...place, amount: hinge ? 2 * along : along, hinge }];
  });

/**
 * Every place where a list of alterations cut a piece, step by step; each lies on the piece as the steps before left it.
 * `before` is told in the pieces she has: where right and left differ, the cuts of both are there.
 */
export const cutPlaces = (before: Garment, altered: Pick<Altered, 'outcomes'>): readonly CutPlace[] => {
  let garment = before;
  /** Whether a step before was done on one half only. */
  let apart = false;
  return altered.outcomes.flatMap((outcome, index) => {
    const places = placesOf(garment, outcome, index + 1);
    garment = outcome.applied.garment;
    const told = cutsOnHalves(places, outcome.step, before, garment, apart);
    apart ||= outcome.step.params['side'] === 'right' || outcome.step.params['side'] === 'left';
    return told;
  });
};
