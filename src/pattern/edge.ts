import { type Path, type Point, pathLength, pathPointAtLength, pathTangentAtLength } from '../geometry/index.ts';
import { edgeRuns } from './piece.ts';
import type { Notch, Piece } from './types.ts';

interface Place {
  readonly run: Path;
  readonly at: number;
}

/** Finds the run and the length along it where a fraction of the whole edge (runs joined, darts closed) lies. */
const placeOnEdge = (piece: Piece, edge: string, fraction: number): Place => {
  const runs = edgeRuns(piece, edge);
  const lengths = runs.map((run) => pathLength(run));
  let left = fraction * lengths.reduce((sum, length) => sum + length, 0);
  for (const [index, run] of runs.entries()) {
    const length = lengths[index] ?? 0;
    if (left <= length || index === runs.length - 1) return { run, at: Math.min(Math.max(left, 0), length) };
    left -= length;
  }
  throw new Error(`Edge ${edge} of ${piece.id} has no runs`);
};

/** The point at a fraction (0 at its start in outline order, 1 at its end) of an edge's length. */
export const pointOnEdge = (piece: Piece, edge: string, fraction: number): Point => {
  const { run, at } = placeOnEdge(piece, edge, fraction);
  return pathPointAtLength(run, at);
};

/** Unit direction of travel there, in outline order. */
export const tangentOnEdge = (piece: Piece, edge: string, fraction: number): Point => {
  const { run, at } = placeOnEdge(piece, edge, fraction);
  return pathTangentAtLength(run, at);
};

/** A notch's point on the seam line, and the unit direction out of the piece there (to the left of travel). */
export const notchPlace = (piece: Piece, notch: Notch): { readonly point: Point; readonly outward: Point } => {
  const tangent = tangentOnEdge(piece, notch.edge, notch.at);
  return { point: pointOnEdge(piece, notch.edge, notch.at), outward: { x: tangent.y, y: -tangent.x } };
};
