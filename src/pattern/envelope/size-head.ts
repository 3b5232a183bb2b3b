import { bad, good, type Result } from '../../units/index.ts';
import { type Separator, splitBySizes } from './cells.ts';
import type { ChartOptions } from './chart.ts';
import { bodyMeasureOf, finishedKindOf, isColumnHead, isTitle } from './labels.ts';
import { isSizeName, sameSize, sizeNameOf } from './sizes.ts';
import { onlyUnit, unitsSaid } from './unit-words.ts';
import { viewsSaid } from './views.ts';

/** The row of sizes over a chart's columns. */
export interface SizeHead {
  readonly sizes: readonly string[];
  /** Columns before the first size; 0 where the head does not show them. */
  readonly leads: number;
  /** Which line it is; −1 where the sizes were known and the chart has none. */
  readonly line: number;
  /** What stands before the sizes: a title, a unit, a view. */
  readonly title: string;
  /** Lines that say the sizes again, or in another country's numbers. */
  readonly repeats: readonly number[];
}

interface Candidate {
  readonly sizes: readonly string[];
  readonly leads: number;
  readonly title: string;
}

const sizeWord = /^(?:your |pattern )?sizes?\b:?/i;
const country = /^(?:us|uk|eu|eur|european|fr|french|de|german|it|italian|au|usa)\b/i;

/** Cells as lead cells and names of sizes, or null where they are something else. */
const asHead = (line: readonly string[], separator: Separator): Candidate | null => {
  let cells = line;
  while (cells.length > 1 && cells.at(-1) === '') cells = cells.slice(0, -1);
  if (separator === 'spaces' || separator === 'space') cells = apart(cells);
  const first = cells.findIndex((cell, at) => cell !== '' && isSizeName(cell) && cells.slice(at).every(isSizeName));
  if (first < 0) return null;
  const title = cells
    .slice(0, first)
    .filter((cell) => cell !== '')
    .join(' ');
  return { sizes: cells.slice(first).map(sizeNameOf), leads: first, title };
};

/** In columns kept apart by spaces, names of sizes with one space between stand in one cell: `Size XS S M`. */
const apart = (cells: readonly string[]): readonly string[] => {
  if (cells.length > 2) return cells;
  const words = cells.join(' ').split(' ');
  const first = words.findIndex((_, at) => words.slice(at).every(isSizeName));
  if (first < 0 || words.length - first < 2) return cells;
  const title = words.slice(0, first).join(' ');
  return title === '' ? words.slice(first) : [title, ...words.slice(first)];
};

/** Whether what stands before the names says that they are sizes, and not figures of a measure. */
const saysSizes = ({ sizes, title, leads }: Candidate): boolean => {
  // A number alone on its line says nothing.
  if (title === '' && leads === 0 && sizes.length === 1) return false;
  if (title === '' || sizeWord.test(title) || country.test(title) || onlyUnit(title)) return true;
  const { rest } = unitsSaid(title);
  if (bodyMeasureOf(rest) !== null || finishedKindOf(rest) !== null) return false;
  if (leads > 1 && title.split(' ').length >= 1 && isColumnHead(title.split(' ')[0] ?? '')) return true;
  return isTitle(title) || rest === '' || viewsSaid(title, []).views !== null;
};

const twice = (sizes: readonly string[]): string | null =>
  sizes.find((size, at) => sizes.findIndex((other) => sameSize(size, other)) !== at) ?? null;

const sameSizes = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((size, at) => sameSize(size, b[at] ?? ''));

/** Where the known sizes stand; else where a row says that it is sizes, if of others. A view over bare figures is no head. */
const knownHead = (heads: readonly (Candidate | null)[], known: readonly string[]): number => {
  const same = heads.findIndex((head) => head !== null && sameSizes(head.sizes, known));
  const said = heads.findIndex((head) => head !== null && sizeWord.test(head.title));
  return same >= 0 ? same : said >= 0 ? said : heads[0] && heads[0].title === '' ? 0 : -1;
};

/**
 * The sizes of a chart: the first row that names them, or those known already where the columns have no head.
 * Refused: no sizes at all, a size twice, other sizes than those known.
 */
export const sizeHead = (
  lines: readonly (readonly string[])[],
  separator: Separator,
  { sizes: known }: ChartOptions,
): Result<SizeHead> => {
  const candidates = lines.map((line) => asHead(line, separator));
  const heads = candidates.map((candidate) => (candidate && saysSizes(candidate) ? candidate : null));
  const line = known && known.length > 0 ? knownHead(heads, known) : heads.findIndex((candidate) => candidate !== null);
  const found = heads[line];
  if (!found) return known && known.length > 0 ? withoutHead(lines, known, separator) : bad('envelope.no-sizes');
  const again = twice(found.sizes);
  if (again !== null) return bad('envelope.size-twice', { size: again });
  if (known && known.length > 0 && !sameSizes(found.sizes, known)) {
    return bad('envelope.sizes-differ', { found: found.sizes.join(', '), sizes: known.join(', ') });
  }
  const repeats = heads.flatMap((candidate, at) => {
    if (at === line || candidate === null || candidate.sizes.length !== found.sizes.length) return [];
    return sameSizes(candidate.sizes, found.sizes) || country.test(candidate.title) || sizeWord.test(candidate.title)
      ? [at]
      : [];
  });
  return good({ ...found, sizes: known && known.length > 0 ? known : found.sizes, line, repeats });
};

/** Columns without a head: as many figures as there are sizes, in some row. */
const withoutHead = (
  lines: readonly (readonly string[])[],
  sizes: readonly string[],
  separator: Separator,
): Result<SizeHead> => {
  const fits = lines.some(
    (line) => line.length > sizes.length || (separator === 'space' && splitBySizes(line.join(' '), sizes.length)),
  );
  return fits ? good({ sizes, leads: 0, line: -1, title: '', repeats: [] }) : bad('envelope.no-chart');
};
