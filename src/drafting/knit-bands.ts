import type { Point } from '../geometry/index.ts';
import type { Piece, PieceRole, Run, Seam } from '../pattern/index.ts';
import { closeRuns, edge, landmark, shell, straightRun } from './pieces.ts';
import { longer, plain, side } from './seams.ts';

/** One stretch of a band, by the id of its sewn edge, as long as it is cut, mm. */
export interface KnitBandSection {
  readonly id: string;
  readonly length: number;
}

export interface KnitBandFrame {
  readonly id: string;
  readonly name: string;
  readonly role: PieceRole;
  /** Finished, folded, mm. */
  readonly width: number;
  /** From the fold at the centre front to the seam at the centre back; or once round where it is cut whole. */
  readonly sections: readonly KnitBandSection[];
  readonly count: number;
  /** Half of it on the fold, or whole. */
  readonly onFold: boolean;
  readonly allowance: number;
}

const at = (x: number, y: number): Point => ({ x, y });

/**
 * A band for a knit: a strip folded along its length, its sewn edges (by the sections' ids) along the lower side, and above the fold the
 * same once more (`inner-…`), which is sewn in with them. Grain across it, so that it runs round where a knit stretches
 * most. On the fold at the centre front (`centre-front`) with a seam behind (`centre-back`), or whole, its ends (`end-a`, `end-b`) joined.
 *
 * Bands as taught in manuals of sewing knitted cloth.
 */
export const knitBand = (frame: KnitBandFrame): Piece => {
  const { sections, width, onFold, allowance } = frame;
  const height = 2 * width;
  const ends = sections.map((_, i) => sections.slice(0, i + 1).reduce((sum, { length }) => sum + length, 0));
  const from = (i: number): number => (i === 0 ? 0 : (ends[i - 1] ?? 0));
  const to = (i: number): number => ends[i] ?? 0;
  const total = ends.at(-1) ?? 0;
  const [first, last] = onFold ? ['centre-front', 'centre-back'] : ['end-a', 'end-b'];
  const inner = sections.map(({ id }, i): Run => straightRun(`inner-${id}`, at(from(i), 0), at(to(i), 0)));
  const sewn = sections.map(({ id }, i): Run => straightRun(id, at(to(i), height), at(from(i), height))).toReversed();
  const runs = closeRuns([
    ...inner,
    straightRun(last, at(total, 0), at(total, height)),
    ...sewn,
    straightRun(first, at(0, height), at(0, 0)),
  ]);
  return {
    id: frame.id,
    name: frame.name,
    role: frame.role,
    cut: [shell(frame.count, false)],
    runs,
    edges: runs.flatMap((run) =>
      run.kind === 'edge'
        ? [run.edge === first && onFold ? edge(run.edge, 'fold', 0) : edge(run.edge, 'seam', allowance)]
        : [],
    ),
    darts: [],
    notches: [
      ...sections.map(({ id }) => ({ id, edge: id, at: 0.5, strokes: 1 as const })),
      ...sections.slice(1).map(({ id }) => ({ id: `from-${id}`, edge: id, at: 1, strokes: 1 as const })),
    ],
    grain: { from: at(0.45 * total, 0.12 * height), to: at(0.45 * total, 0.88 * height) },
    levels: [],
    landmarks: sections.slice(1).map(({ id }, i) => landmark(`from-${id}`, at(to(i), height))),
    lines: [{ id: 'fold', kind: 'fold', path: straightRun('fold', at(0, width), at(total, width)).path }],
  };
};

/** How a band is joined: its ends, and its inner edge to its sewn one. */
export const bandJoins = ({ id, sections, onFold }: KnitBandFrame): readonly Seam[] => [
  onFold
    ? plain(`${id}-join`, side(id, 'centre-back'), side(id, 'centre-back'))
    : plain(`${id}-join`, side(id, 'end-a'), side(id, 'end-b', true)),
  ...sections.map((section) =>
    plain(`${id}-fold-${section.id}`, side(id, `inner-${section.id}`), side(id, section.id, true)),
  ),
];

/** A band stretched on to an edge `length` mm long, by any share between two; notches meet by their own shares. */
export const bandOnto = (
  id: string,
  band: Seam['a'],
  garment: Seam['b'],
  length: number,
  { least, most }: { readonly least: number; readonly most: number },
  notches: Seam['notches'] = [],
): Seam => longer('stretched', id, band, garment, [(least - 1) * length, (most - 1) * length], notches);
