import {
  add,
  nearestOnPath,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  pathTangentAtLength,
  pathWithEnd,
  pathWithStart,
  scale,
  tolerance,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { runIndices } from './ring.ts';

/** Moves the corner at one end of an edge along the edge's own direction by some mm; the neighbour's end goes with it. */
export const moveCorner = (piece: Piece, edge: string, end: 'start' | 'end', by: number): Piece => {
  const indices = runIndices(piece.runs, edge);
  const index = (end === 'end' ? indices.at(-1) : indices[0]) as number;
  const count = piece.runs.length;
  const other = (index + (end === 'end' ? 1 : count - 1)) % count;
  const own = piece.runs[index]?.path as Path;
  const corner = end === 'end' ? pathEnd(own) : pathStart(own);
  const along = end === 'end' ? pathTangentAtLength(own, pathLength(own)) : scale(pathTangentAtLength(own, 0), -1);
  const to = add(corner, scale(along, by));
  const runs = piece.runs.map((run, i) => {
    if (i === index) return { ...run, path: withEnd(run.path, end, to) };
    return i === other ? { ...run, path: withEnd(run.path, end === 'end' ? 'start' : 'end', to) } : run;
  });
  // Landmarks on the two edges stay on them.
  const landmarks = piece.landmarks.map((mark) => {
    const on = [index, other].find((i) => liesOn(piece.runs[i]?.path ?? [], mark.at));
    const path = on === undefined ? undefined : runs[on]?.path;
    return path && !liesOn(path, mark.at) ? { ...mark, at: nearestOnPath(path, mark.at).point } : mark;
  });
  return { ...piece, runs, landmarks };
};

const liesOn = (path: Path, p: Point): boolean => path.length > 0 && nearestOnPath(path, p).distance <= tolerance.same;

const withEnd = (path: Path, end: 'start' | 'end', to: Point): Path =>
  end === 'end' ? pathWithEnd(path, to) : pathWithStart(path, to);
