import type { Point } from '../geometry/index.ts';
import type { Piece, Run } from '../pattern/index.ts';
import { closeRuns, edge, interfacing, shell, straightRun } from './pieces.ts';

/** One stretch of a waistband between two places where something meets it: a seam, a centre. */
export interface BandSection {
  readonly id: string;
  readonly length: number;
}

export interface WaistbandFrame {
  readonly name: string;
  /** Finished, folded, mm. */
  readonly width: number;
  /** From left to right as the band lies face up, its outer half below. */
  readonly sections: readonly BandSection[];
  /** How far it runs on beyond its left end, under the other, mm; none where left out. */
  readonly underlap: number;
  readonly allowances: { readonly seam: number; readonly long: number };
}

/**
 * A straight waistband cut in one with its facing, folded along its length: the outer half below the fold, sewn to the
 * garment section by section (edges by the sections' ids), the inner half above it (`inner-…`). The underlap's own
 * long edges (`underlap`, `inner-underlap`) are sewn to one another, and so is each end, outer half to inner. Grain
 * along its length, where cloth gives least; interfaced whole. Its level `waist` goes from end to end without the underlap, lying on the stitching
 * of its outer half, as a tape is laid round a closed band.
 *
 * Straight waistband as taught in manuals of dressmaking.
 */
export const straightWaistband = ({ name, width, sections, underlap, allowances }: WaistbandFrame): Piece => {
  const total = sections.reduce((sum, { length }) => sum + length, 0);
  const at = (x: number, y: number): Point => ({ x, y });
  const starts = sections.map((_, i) => sections.slice(0, i).reduce((sum, { length }) => sum + length, 0));
  const inner = sections.map(({ id, length }, i): Run => {
    const from = starts[i] ?? 0;
    return straightRun(`inner-${id}`, at(from, 0), at(i === sections.length - 1 ? total : from + length, 0));
  });
  const outer = sections
    .map(({ id, length }, i): Run => {
      const from = starts[i] ?? 0;
      return straightRun(id, at(i === sections.length - 1 ? total : from + length, 2 * width), at(from, 2 * width));
    })
    .toReversed();
  const runs = closeRuns([
    ...(underlap > 0 ? [straightRun('inner-underlap', at(-underlap, 0), at(0, 0))] : []),
    ...inner,
    straightRun('end-inner', at(total, 0), at(total, width)),
    straightRun('end-outer', at(total, width), at(total, 2 * width)),
    ...outer,
    ...(underlap > 0 ? [straightRun('underlap', at(0, 2 * width), at(-underlap, 2 * width))] : []),
    straightRun('start-outer', at(-underlap, 2 * width), at(-underlap, width)),
    straightRun('start-inner', at(-underlap, width), at(-underlap, 0)),
  ]);
  const short = new Set(['end-inner', 'end-outer', 'start-inner', 'start-outer']);
  const edges = runs.flatMap((run) => (run.kind === 'edge' ? [run.edge] : []));
  return {
    id: 'waistband',
    name,
    role: 'waistband',
    cut: [shell(1, false), interfacing(1, false)],
    runs,
    edges: edges.map((id) => edge(id, 'seam', short.has(id) ? allowances.seam : allowances.long)),
    darts: [],
    notches: [
      ...(underlap > 0 ? [{ id: 'inner-opening', edge: 'inner-underlap', at: 1, strokes: 1 as const }] : []),
      ...sections
        .slice(0, -1)
        .map(({ id }) => ({ id: `inner-${id}`, edge: `inner-${id}`, at: 1, strokes: 1 as const })),
      ...sections.slice(1).map(({ id }) => ({ id, edge: id, at: 1, strokes: 1 as const })),
      ...(underlap > 0 ? [{ id: 'opening', edge: 'underlap', at: 0, strokes: 1 as const }] : []),
    ],
    grain: { from: at(0.3 * total, 1.5 * width), to: at(0.7 * total, 1.5 * width) },
    levels: [{ id: 'waist', from: at(0, 1.25 * width), to: at(total, 1.25 * width), stops: 'both' }],
    landmarks: [],
    lines: [{ id: 'fold', kind: 'fold', path: straightRun('fold', at(-underlap, width), at(total, width)).path }],
  };
};
