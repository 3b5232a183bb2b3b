import { line, type Path, type Point, pathEnd, pathStart, samePoint } from '../geometry/index.ts';
import type { CutOrder, Edge, Finish, InnerLine, Landmark, Level, Run } from '../pattern/index.ts';

/** Seam allowances of the house, mm: plain seams, necklines, hems of bodies and of sleeves. */
export const allowances = { seam: 15, neck: 10, bodyHem: 30, sleeveHem: 25 } as const;

export const edgeRun = (edge: string, path: Path): Run => ({ kind: 'edge', edge, path });

export const straightRun = (edge: string, from: Point, to: Point): Run => edgeRun(edge, [line(from, to)]);

export const mouthRun = (dart: string, from: Point, to: Point): Run => ({
  kind: 'mouth',
  dart,
  path: [line(from, to)],
});

export const edge = (id: string, finish: Finish, allowance: number): Edge => ({ id, finish, allowance });

export const level = (id: string, from: Point, to: Point): Level => ({ id, from, to });

export const landmark = (id: string, at: Point): Landmark => ({ id, at });

/** A line across a piece, square to the grain, where it may be lengthened or shortened. */
export const lengthenLine = (id: string, from: Point, to: Point): InnerLine => ({
  id,
  kind: 'lengthen-or-shorten',
  path: [line(from, to)],
});

export const shell = (count: number, mirrored: boolean): CutOrder => ({ layer: 'shell', count, mirrored });

export const lining = (count: number, mirrored: boolean): CutOrder => ({ layer: 'lining', count, mirrored });

export const interfacing = (count: number, mirrored: boolean): CutOrder => ({ layer: 'interfacing', count, mirrored });

/**
 * Runs made to follow one another exactly: each begins at the very point the last ended at, and the first
 * where the last ends. Throws where two do not meet, for then the draft is at fault.
 */
export const closeRuns = (runs: readonly Run[]): readonly Run[] =>
  runs.map((run, i) => {
    const before = runs[(i + runs.length - 1) % runs.length] as Run;
    const from = pathEnd(before.path);
    if (!samePoint(from, pathStart(run.path))) throw new Error(`Run ${i} does not begin where the last one ended`);
    return { ...run, path: run.path.map((segment, j) => (j === 0 ? { ...segment, from } : segment)) };
  });
