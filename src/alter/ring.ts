import { type Path, pathLength, tolerance } from '../geometry/index.ts';
import type { Piece, Run } from '../pattern/index.ts';

/** A run of the outline with its length and where it begins along its edge (or mouth), mm. */
export interface RingRun {
  readonly run: Run;
  readonly path: Path;
  readonly length: number;
  readonly edgeStart: number;
}

/** A piece's outline as a ring of measured runs. */
export interface Ring {
  readonly runs: readonly RingRun[];
  readonly edgeLengths: ReadonlyMap<string, number>;
}

/** A place on the ring: mm along one of its runs. The end of a run is told as the start of the next. */
export interface Place {
  readonly run: number;
  readonly at: number;
}

/** Names what a run belongs to, so that runs of one edge are known to belong together. */
export const runKey = (run: Run): string => (run.kind === 'edge' ? `edge ${run.edge}` : `mouth ${run.dart}`);

const isEdge = (run: Run | undefined, edge: string): boolean => run?.kind === 'edge' && run.edge === edge;

/** Index of the run an edge begins with: one that no run of the same edge precedes, a dart's mouth passed over. */
const firstRunOf = (runs: readonly Run[], edge: string): number => {
  const count = runs.length;
  const first = runs.findIndex((run, index) => {
    if (!isEdge(run, edge)) return false;
    const before = runs[(index + count - 1) % count];
    const beyond = runs[(index + count - 2) % count];
    return !(isEdge(before, edge) || (before?.kind === 'mouth' && isEdge(beyond, edge)));
  });
  return first >= 0 ? first : runs.findIndex((run) => isEdge(run, edge));
};

/** Indices of an edge's runs, in outline order from the edge's start. Throws where there is no such edge. */
export const runIndices = (runs: readonly Run[], edge: string): readonly number[] => {
  const first = firstRunOf(runs, edge);
  if (first < 0) throw new Error(`No edge ${edge} in the outline`);
  return runs.map((_, step) => (first + step) % runs.length).filter((index) => isEdge(runs[index], edge));
};

export const ringOf = (piece: Piece): Ring => {
  const lengths = piece.runs.map((run) => pathLength(run.path));
  const starts = lengths.map(() => 0);
  const edgeLengths = new Map<string, number>();
  for (const { id } of piece.edges) {
    let along = 0;
    for (const index of runIndices(piece.runs, id)) {
      starts[index] = along;
      along += lengths[index] as number;
    }
    edgeLengths.set(id, along);
  }
  const runs = piece.runs.map((run, index) => ({
    run,
    path: run.path,
    length: lengths[index] as number,
    edgeStart: starts[index] as number,
  }));
  return { runs, edgeLengths };
};

/** The place told so that every place has one name: near a run's end it is the start of the next. */
export const settled = (ring: Ring, place: Place): Place => {
  const run = ring.runs[place.run] as RingRun;
  if (place.at >= run.length - tolerance.same) return { run: (place.run + 1) % ring.runs.length, at: 0 };
  return place.at <= tolerance.same ? { run: place.run, at: 0 } : place;
};

/** The place mm along an edge, its runs joined; throws where there is no such edge. */
export const placeAlongEdge = (piece: Piece, ring: Ring, edge: string, mm: number): Place => {
  const indices = runIndices(piece.runs, edge);
  for (const [step, index] of indices.entries()) {
    const run = ring.runs[index] as RingRun;
    if (mm < run.edgeStart + run.length || step === indices.length - 1) {
      return settled(ring, { run: index, at: Math.min(Math.max(mm - run.edgeStart, 0), run.length) });
    }
  }
  throw new Error(`Edge ${edge} of ${piece.id} has no runs`);
};
