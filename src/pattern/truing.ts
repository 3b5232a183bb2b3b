import {
  add,
  cubic,
  distance,
  joinPaths,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathTangentAtLength,
  reversePath,
  rotate,
  scale,
  subPath,
  subtract,
} from '../geometry/index.ts';
import { edgeLength, edgeRuns, pieceArea, pieceOf } from './piece.ts';
import type { Garment, Piece, Run, Seam, SeamSide } from './types.ts';
import { walkSeam } from './walk.ts';

/** How far back an edge is redrawn when its end is trued, mm, or half the edge where it is shorter. */
const usualReach = 50;

/** A garment with a seam trued, and what the truing did to each piece it redrew. */
export interface Trued {
  readonly garment: Garment;
  /** Area each redrawn piece gained, mm². */
  readonly area: Readonly<Record<string, number>>;
}

const withRun = (piece: Piece, index: number, path: Path): Piece => ({
  ...piece,
  runs: piece.runs.map((run, at): Run => (at === index ? { ...run, path } : run)),
});

const withPieces = (garment: Garment, before: readonly Piece[], after: readonly Piece[]): Trued => ({
  garment: { ...garment, pieces: garment.pieces.map((piece) => after.find((one) => one.id === piece.id) ?? piece) },
  area: Object.fromEntries(
    after.map((piece) => [piece.id, pieceArea(piece) - pieceArea(before.find((one) => one.id === piece.id) ?? piece)]),
  ),
});

/** The last `reach` of a path drawn anew as one fair curve, arriving at `to` in the direction `arriving`. */
const redrawnEnd = (path: Path, to: Point, arriving: Point, reach: number): Path => {
  const length = pathLength(path);
  const from = length - Math.min(reach, length / 2);
  const start = pathPointAtLength(path, from);
  // Handles of a third keep both directions even where the line was straight and only its end is turned.
  const handle = distance(start, to) / 3;
  const leaving = pathTangentAtLength(path, from, 'before');
  const curve = cubic(start, add(start, scale(leaving, handle)), subtract(to, scale(arriving, handle)), to);
  return joinPaths(subPath(path, 0, from), [curve]);
};

/** Place in the outline of the run that meets a seam side's edge at one end of the walk, and at which of its own ends it does. */
const neighbour = (
  piece: Piece,
  side: SeamSide,
  end: 'start' | 'end',
): { readonly index: number; readonly meetsAt: 'start' | 'end' } => {
  const runs = edgeRuns(piece, side.edge);
  const atStart = (end === 'start') !== side.reversed;
  const run = atStart ? runs[0] : runs[runs.length - 1];
  const own = piece.runs.findIndex((candidate) => candidate.path === run);
  const count = piece.runs.length;
  return { index: (own + (atStart ? count - 1 : 1)) % count, meetsAt: atStart ? 'end' : 'start' };
};

/** One piece's neighbouring edge turned by an angle at the seam, its far part untouched. */
const turnedNeighbour = (piece: Piece, side: SeamSide, end: 'start' | 'end', opening: number, reach: number): Piece => {
  const { index, meetsAt } = neighbour(piece, side, end);
  const run = piece.runs[index];
  if (run?.kind !== 'edge') return piece;
  // Drawn towards the corner; travelling the outline clockwise, opening the inside angle turns the arriving edge to the right.
  const towards = meetsAt === 'end' ? run.path : reversePath(run.path);
  const arriving = pathTangentAtLength(towards, pathLength(towards));
  const turned = rotate(arriving, meetsAt === 'end' ? opening : -opening);
  const drawn = redrawnEnd(towards, pathEnd(towards), turned, reach);
  return withRun(piece, index, meetsAt === 'end' ? drawn : reversePath(drawn));
};

/**
 * Trues the line that crosses a seam's end — hem over side seam, neckline over shoulder — so that it runs on
 * smoothly: each of the two edges that meet there is redrawn over `reach` mm, sharing the turn. The seam's own
 * edges and every corner stay where they are. Source: how joined pattern pieces are trued on paper.
 */
export const trueAcross = (garment: Garment, seam: Seam, end: 'start' | 'end', reach = usualReach): Trued => {
  const walk = walkSeam(garment, seam);
  const turn = walk.ends[end === 'start' ? 0 : 1].turn;
  const a = pieceOf(garment, seam.a.piece);
  const b = pieceOf(garment, seam.b.piece);
  if (a.id === b.id) {
    const first = turnedNeighbour(a, seam.a, end, turn / 2, reach);
    return withPieces(garment, [a], [turnedNeighbour(first, seam.b, end, turn / 2, reach)]);
  }
  return withPieces(
    garment,
    [a, b],
    [turnedNeighbour(a, seam.a, end, turn / 2, reach), turnedNeighbour(b, seam.b, end, turn / 2, reach)],
  );
};

/**
 * Trues the length of one side of a seam at one end of the walk: its edge is carried on straight, or cut back,
 * until the difference is `wanted`, and the edge that meets it there is redrawn over `reach` mm to the new
 * corner, arriving in the direction it had. Throws where the edge would be used up.
 */
export const trueLength = (
  garment: Garment,
  seam: Seam,
  which: 'a' | 'b',
  end: 'start' | 'end',
  wanted = Math.min(Math.max(0, seam.easeMin), seam.easeMax),
  reach = usualReach,
): Trued => {
  const { difference } = walkSeam(garment, seam);
  const grow = which === 'a' ? wanted - difference : difference - wanted;
  const side = seam[which];
  const piece = pieceOf(garment, side.piece);
  if (edgeLength(piece, side.edge) + grow <= 0)
    throw new Error(`Edge ${side.edge} of ${piece.id} cannot be shortened by ${-grow} mm`);
  const runs = edgeRuns(piece, side.edge);
  const atStart = (end === 'start') !== side.reversed;
  const run = (atStart ? runs[0] : runs[runs.length - 1]) as Path;
  const own = piece.runs.findIndex((candidate) => candidate.path === run);
  const outward = atStart ? reversePath(run) : run;
  const length = pathLength(outward);
  const corner =
    grow <= 0
      ? pathPointAtLength(outward, length + grow)
      : add(pathEnd(outward), scale(pathTangentAtLength(outward, length), grow));
  const longer: Path =
    grow <= 0
      ? subPath(outward, 0, length + grow)
      : joinPaths(outward, [{ kind: 'line', from: pathEnd(outward), to: corner }]);
  const { index, meetsAt } = neighbour(piece, side, end);
  const other = piece.runs[index] as Run;
  const towards = meetsAt === 'end' ? other.path : reversePath(other.path);
  const arriving = pathTangentAtLength(towards, pathLength(towards));
  const drawn = redrawnEnd(towards, corner, arriving, reach);
  const stretched = withRun(piece, own, atStart ? reversePath(longer) : longer);
  return withPieces(garment, [piece], [withRun(stretched, index, meetsAt === 'end' ? drawn : reversePath(drawn))]);
};
