import { tolerance } from '../../geometry/index.ts';
import type { Problem } from '../../units/index.ts';
import { sizeRuns } from './sizes.ts';
import type { Figure, FinishedOf } from './types.ts';

const ends = (figure: Figure): readonly [number, number] | null =>
  figure === null ? null : typeof figure === 'number' ? [figure, figure] : figure;

/** A size whose figure is under that of the size before it in its run (null where figures never fall). */
export const fallsAt = (
  figures: readonly Figure[],
  sizes: readonly string[],
): { readonly before: number; readonly at: number } | null => {
  for (const run of sizeRuns(sizes)) {
    let before: number | null = null;
    for (const at of run) {
      const figure = ends(figures[at] ?? null);
      if (!figure) continue;
      const last = before === null ? null : ends(figures[before] ?? null);
      if (before !== null && last && [0, 1].some((end) => (figure[end] ?? 0) < (last[end] ?? 0) - tolerance.same)) {
        return { before, at };
      }
      before = at;
    }
  }
  return null;
};

/** Finished measurements that grow with the body: girths. A length may be cut as the design wants. */
export const growsWithBody = (of: FinishedOf): boolean =>
  of === 'bust' || of === 'waist' || of === 'hip' || of === 'upper-arm' || of === 'thigh';

/** Refuses figures that cross the columns: a row that falls from a size to the next. */
export const crossing = (label: string, figures: readonly Figure[], sizes: readonly string[]): Problem | null => {
  const falls = fallsAt(figures, sizes);
  return falls
    ? {
        code: 'envelope.crossing',
        values: { row: label, size: sizes[falls.at] ?? '', before: sizes[falls.before] ?? '' },
      }
    : null;
};
