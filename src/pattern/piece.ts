import {
  applyToPath,
  applyToPoint,
  type Outline,
  outlineArea,
  type Path,
  pathLength,
  reversePath,
  type Transform,
} from '../geometry/index.ts';
import type { Edge, Garment, Piece, Run } from './types.ts';

/** The seam line: one closed path, clockwise as seen, dart mouths crossed straight. */
export const outlineOf = (piece: Piece): Outline => piece.runs.flatMap((run) => run.path);

/** Area inside the seam line in mm², dart wedges included: they are cloth that gets folded away. */
export const pieceArea = (piece: Piece): number => outlineArea(outlineOf(piece));

/** The runs of a named edge in outline order; two where a dart interrupts it. Throws where there is no such edge. */
export const edgeRuns = (piece: Piece, edge: string): readonly Path[] => {
  const { runs } = piece;
  // The outline may be stored from the middle of an edge: begin at the run that no run of the same edge precedes.
  const start = startOfEdge(runs, edge);
  if (start < 0) throw new Error(`Piece ${piece.id} has no edge ${edge}`);
  // Asked thousands of times while an amount is dragged: no more is copied than is given.
  const paths: Path[] = [];
  for (let i = 0; i < runs.length; i += 1) {
    const run = runs[(start + i) % runs.length];
    if (run?.kind === 'edge' && run.edge === edge) paths.push(run.path);
  }
  return paths;
};

const startOfEdge = (runs: readonly Run[], edge: string): number => {
  const belongs = (run: Run | undefined) => run?.kind === 'edge' && run.edge === edge;
  for (let i = 0; i < runs.length; i += 1) {
    if (!belongs(runs[i])) continue;
    const before = runs[(i + runs.length - 1) % runs.length];
    const beforeMouth = runs[(i + runs.length - 2) % runs.length];
    const continues = belongs(before) || (before?.kind === 'mouth' && belongs(beforeMouth));
    if (!continues) return i;
  }
  return runs.findIndex(belongs);
};

export const edgeLength = (piece: Piece, edge: string): number =>
  edgeRuns(piece, edge).reduce((sum, path) => sum + pathLength(path), 0);

/** Allowance and finish of an edge. Throws where there is no such edge. */
export const edgeOf = (piece: Piece, edge: string): Edge => {
  const found = piece.edges.find((candidate) => candidate.id === edge);
  if (!found) throw new Error(`Piece ${piece.id} has no edge ${edge}`);
  return found;
};

export const hasEdge = (piece: Piece, edge: string): boolean => piece.edges.some((candidate) => candidate.id === edge);

/** Throws where the garment has no such piece: seams and girths of a valid garment name only its own. */
export const pieceOf = (garment: Garment, id: string): Piece => {
  const found = garment.pieces.find((piece) => piece.id === id);
  if (!found) throw new Error(`The garment has no piece ${id}`);
  return found;
};

export const landmarkOf = (piece: Piece, id: string) => piece.landmarks.find((landmark) => landmark.id === id)?.at;

/** True where an edge of the piece is laid to folded cloth, so that the piece opens to double. */
export const onFold = (piece: Piece): boolean => piece.edges.some((edge) => edge.finish === 'fold');

const isMirror = (t: Transform): boolean => t.a * t.d - t.b * t.c < 0;

/**
 * The whole piece moved, turned or mirrored. A mirror turns the outline about, so runs are reversed to stay
 * clockwise, and with them the direction every edge, notch and dart is told in.
 */
export const transformPiece = (piece: Piece, transform: Transform): Piece => {
  const mirror = isMirror(transform);
  const point = (at: { readonly x: number; readonly y: number }) => applyToPoint(transform, at);
  const path = (original: Path): Path => applyToPath(transform, original);
  const moved = piece.runs.map((run): Run => ({ ...run, path: mirror ? reversePath(path(run.path)) : path(run.path) }));
  return {
    ...piece,
    runs: mirror ? moved.toReversed() : moved,
    darts: piece.darts.map((dart) => ({
      ...dart,
      point: point(dart.point),
      pressed: mirror ? (dart.pressed === 'before' ? 'after' : 'before') : dart.pressed,
    })),
    notches: piece.notches.map((notch) => (mirror ? { ...notch, at: 1 - notch.at } : notch)),
    grain: { from: point(piece.grain.from), to: point(piece.grain.to) },
    levels: piece.levels.map(({ over, ...level }) => ({
      ...level,
      from: point(level.from),
      to: point(level.to),
      ...(over ? { over: point(over) } : {}),
    })),
    landmarks: piece.landmarks.map((landmark) => ({ ...landmark, at: point(landmark.at) })),
    lines: piece.lines.map((line) => ({ ...line, path: path(line.path) })),
  };
};
