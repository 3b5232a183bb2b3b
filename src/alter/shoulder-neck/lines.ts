import {
  add,
  endTangent,
  extendPath,
  joinPaths,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  pathWithEnd,
  pathWithStart,
  reversePath,
  scale,
  startTangent,
  subPath,
  subtract,
  tolerance,
} from '../../geometry/index.ts';
import { edgeRuns, type Piece } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import type { End } from '../parts.ts';
import type { Drawn } from '../reshape.ts';

/** Edges that follow one another as one line, walked from the first to the last. Problem `alter.dart-in-edge` where a dart interrupts one. */
export const lineOf = (piece: Piece, edges: readonly string[], reversed: boolean): Result<Path> => {
  const paths: Path[] = [];
  for (const edge of edges) {
    const [path, more] = edgeRuns(piece, edge);
    if (!path || more) return bad('alter.dart-in-edge', { piece: piece.name });
    paths.push(reversed ? reversePath(path) : path);
  }
  return good(joinPaths(...paths));
};

/** The same line drawn anew, segment for segment, as the new lines of its edges. */
export const drawnAlong = (piece: Piece, edges: readonly string[], reversed: boolean, line: Path): Drawn => {
  let passed = 0;
  const drawn: Record<string, readonly Path[]> = {};
  for (const edge of edges) {
    const count = (edgeRuns(piece, edge)[0] as Path).length;
    const part = line.slice(passed, passed + count);
    drawn[edge] = [reversed ? reversePath(part) : part];
    passed += count;
  }
  return drawn;
};

/** Less than this, mm, of an edge is no edge any more. */
const leastLeft = 5;

/** An edge made longer (or shorter) at one end, along its own line. Problem `alter.edge-used-up`. */
export const slidEnd = (piece: Piece, edge: string, end: End, by: number): Result<readonly Path[]> => {
  const runs = edgeRuns(piece, edge);
  const index = end === 'end' ? runs.length - 1 : 0;
  const path = runs[index] as Path;
  const length = pathLength(path);
  if (length + by < leastLeft) return bad('alter.edge-used-up', { piece: piece.name, by: { mm: Math.abs(by) } });
  const now = runs.map((run, i) => (i === index ? slid(run, end, by) : run));
  return good(now);
};

const slid = (path: Path, end: End, by: number): Path => {
  const length = pathLength(path);
  if (Math.abs(by) <= tolerance.same) return path;
  if (by < 0) return end === 'end' ? subPath(path, 0, length + by) : subPath(path, -by, length);
  const last = end === 'end' ? path.at(-1) : path[0];
  if (last?.kind !== 'line') return extendPath(path, end, by);
  // A straight line is drawn on straight, not pieced on.
  return end === 'end'
    ? pathWithEnd(path, add(pathEnd(path), scale(endTangent(path), by)))
    : pathWithStart(path, subtract(pathStart(path), scale(startTangent(path), by)));
};

/** Where an edge's end lies once drawn so. */
export const endOf = (runs: readonly Path[], end: End): Point =>
  end === 'end' ? pathEnd(runs.at(-1) as Path) : pathStart(runs[0] as Path);
