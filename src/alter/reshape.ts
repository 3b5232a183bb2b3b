import {
  areaSwept,
  distance,
  line,
  nearestOnPath,
  type Path,
  type Point,
  pathEnd,
  pathPointAtLength,
  pathStart,
  pathWithEnd,
  pathWithStart,
  samePoint,
  tolerance,
} from '../geometry/index.ts';
import type { Piece, Run } from '../pattern/index.ts';
import type { Put } from './put.ts';
import { ringOf, runIndices } from './ring.ts';
import { reseat } from './stretch.ts';

/** New lines for edges, by edge: one path a run, in outline order (an edge that a dart interrupts has two). */
export type Drawn = Readonly<Record<string, readonly Path[]>>;

export interface Reshaped {
  readonly piece: Piece;
  /** The strips between old lines and new, edge by edge: together exactly what the area changed by. */
  readonly puts: readonly Put[];
}

const exactly = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;

/** Every run's new path: those given, and their neighbours with the corner they share moved along. */
const newPaths = (piece: Piece, drawn: Drawn): readonly Path[] => {
  const given = new Map<number, Path>();
  for (const [edge, paths] of Object.entries(drawn)) {
    const indices = runIndices(piece.runs, edge);
    if (indices.length !== paths.length) throw new Error(`Edge ${edge} of ${piece.id} has ${indices.length} runs`);
    indices.forEach((index, i) => {
      given.set(index, paths[i] as Path);
    });
  }
  const count = piece.runs.length;
  const cornerBefore = piece.runs.map((run, i): Point => {
    const before = given.get((i + count - 1) % count);
    const own = given.get(i);
    if (before && own && distance(pathEnd(before), pathStart(own)) > tolerance.walk) {
      throw new Error(`The new lines of ${piece.id} do not meet`);
    }
    return before ? pathEnd(before) : own ? pathStart(own) : pathStart(run.path);
  });
  return piece.runs.map((run, i): Path => {
    const from = cornerBefore[i] as Point;
    const to = cornerBefore[(i + 1) % count] as Point;
    if (run.kind === 'mouth') return [line(from, to)];
    const path = given.get(i) ?? run.path;
    const begun = exactly(pathStart(path), from) ? path : pathWithStart(path, from);
    return exactly(pathEnd(begun), to) ? begun : pathWithEnd(begun, to);
  });
};

/**
 * A piece with some of its edges drawn anew, whole. Neighbouring edges follow the corner they share, keeping their
 * direction there. Notches stay where the new line is nearest to them; landmarks at a corner go with the corner,
 * others and the ends of levels are seated on the new line. Throws where new lines that should meet do not.
 */
export const reshape = (piece: Piece, drawn: Drawn): Reshaped => {
  const paths = newPaths(piece, drawn);
  const changed = piece.runs.flatMap((run, i) => (paths[i] === run.path ? [] : [i]));
  if (changed.length === 0) return { piece, puts: [] };
  const runs = piece.runs.map((run, i): Run => ({ ...run, path: paths[i] as Path }));
  const origin = pathStart((piece.runs[0] as Run).path);
  const puts = changed.map((i): Put => {
    const run = piece.runs[i] as Run;
    const area = areaSwept(paths[i] as Path, origin) - areaSwept(run.path, origin);
    return { kind: 'strip', at: run.kind === 'edge' ? run.edge : run.dart, area };
  });
  const bare: Piece = { ...piece, runs };
  const corners = changed.map((i) => ({ old: (piece.runs[i] as Run).path, now: paths[i] as Path }));
  const atCorner = (point: Point): Point => {
    const found = corners.find(({ old }) => samePoint(pathStart(old), point));
    if (found) return pathStart(found.now);
    const last = corners.find(({ old }) => samePoint(pathEnd(old), point));
    return last ? pathEnd(last.now) : point;
  };
  const carried: Piece = {
    ...bare,
    notches: carriedNotches(piece, bare, changed),
    landmarks: piece.landmarks.map((mark) => ({ ...mark, at: atCorner(mark.at) })),
  };
  return { piece: changed.reduce((seated, i) => reseated(seated, piece, paths, i), carried), puts };
};

const reseated = (seated: Piece, before: Piece, paths: readonly Path[], i: number): Piece => {
  const run = before.runs[i] as Run;
  return run.kind === 'edge' ? reseat(seated, run.path, paths[i] as Path) : seated;
};

/** Notches of edges that changed: each where the new line of its own run is nearest to it. */
const carriedNotches = (before: Piece, after: Piece, changed: readonly number[]): Piece['notches'] => {
  const edges = new Set(
    changed.flatMap((i) => {
      const run = before.runs[i] as Run;
      return run.kind === 'edge' ? [run.edge] : [];
    }),
  );
  if (!before.notches.some(({ edge }) => edges.has(edge))) return before.notches;
  const old = ringOf(before);
  const ring = ringOf(after);
  return before.notches.map((notch) => {
    if (!edges.has(notch.edge)) return notch;
    const along = notch.at * (old.edgeLengths.get(notch.edge) ?? 0);
    const indices = runIndices(before.runs, notch.edge);
    const index =
      indices.find((i) => {
        const run = old.runs[i];
        return run !== undefined && along <= run.edgeStart + run.length + tolerance.same;
      }) ?? (indices.at(-1) as number);
    const was = old.runs[index] as (typeof old.runs)[number];
    const is = ring.runs[index] as (typeof ring.runs)[number];
    const within = Math.min(Math.max(along - was.edgeStart, 0), was.length);
    const at = within <= tolerance.same ? 0 : within >= was.length - tolerance.same ? is.length : null;
    const place =
      at ?? (was.path === is.path ? within : nearestOnPath(is.path, pathPointAtLength(was.path, within)).atLength);
    const whole = ring.edgeLengths.get(notch.edge) ?? 1;
    return { ...notch, at: Math.min(Math.max((is.edgeStart + place) / whole, 0), 1) };
  });
};
