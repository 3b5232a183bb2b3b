import { bad, good, type Problem, type Result } from '../../units/index.ts';
import { chartCells } from './cells.ts';
import type { AskedRow, ChartOptions, ChartRead } from './chart.ts';
import { type ChartRows, chartRows, type PrintedRow } from './chart-rows.ts';
import { chartLines } from './clean.ts';
import { gather, inOrder, type Placed } from './gather.ts';
import { bodyMeasureOf, finishedKindOf } from './labels.ts';
import { crossing, growsWithBody } from './rising.ts';
import { envelopeHolds } from './schema.ts';
import { type SizeHead, sizeHead } from './size-head.ts';
import { descending } from './sizes.ts';
import { turned } from './turned.ts';
import type { BodyRow, ClothRow, EnvelopeView, FinishedRow } from './types.ts';
import type { UnitSystem } from './unit-words.ts';
import { viewCalled } from './views.ts';

type Place =
  | { readonly is: 'body'; readonly measure: BodyRow['measure'] }
  | { readonly is: 'finished'; readonly of: FinishedRow['of']; readonly view: string | null }
  | {
      readonly is: 'cloth';
      readonly view: string | null;
      readonly layer: ClothRow['layer'];
      readonly width: number;
      readonly nap: ClothRow['nap'];
    }
  | { readonly is: 'asked'; readonly view: string | null; readonly cloth?: NonNullable<AskedRow['cloth']> };

const viewsOf = (row: PrintedRow): readonly (string | null)[] =>
  row.views === null || row.views.length === 0 ? [null] : row.views;

const placeOf = (row: PrintedRow, view: string | null, kind: ChartOptions['kind'], system: UnitSystem): Place => {
  if (kind === 'body') {
    const measure = bodyMeasureOf(row.label);
    return measure ? { is: 'body', measure } : { is: 'asked', view };
  }
  if (kind === 'finished') {
    const of = finishedKindOf(row.label);
    return of ? { is: 'finished', of, view } : { is: 'asked', view };
  }
  const width = row.cloth?.widths[system] ?? Object.values(row.cloth?.widths ?? {})[0];
  if (!row.cloth) return { is: 'asked', view };
  const { layer, nap, unknown } = row.cloth;
  if (unknown !== '' || width === undefined) {
    return { is: 'asked', view, cloth: { layer, nap, width: width ?? null } };
  }
  return { is: 'cloth', view, layer, width, nap };
};

/** The same width in inches and centimetres as trade names them (45 in and 115 cm, 60 and 150) differs by less than this share. */
const sameWidth = 0.04;

/** One key for one width however it is said: centimetres go by the chart's own inches where they name the same. */
const widthKey = (width: number, system: UnitSystem, inches: readonly number[]): number =>
  system === 'inches' ? width : (inches.find((other) => Math.abs(other / width - 1) < sameWidth) ?? width);

const keyOf = (place: Place, label: string, system: UnitSystem, inches: readonly number[]): string => {
  switch (place.is) {
    case 'body':
      return place.measure;
    case 'finished':
      return `${place.of} ${place.view ?? ''}`;
    case 'cloth':
      return `${place.view ?? ''} ${place.layer} ${widthKey(place.width, system, inches)} ${place.nap}`;
    case 'asked':
      return `${label.toLowerCase()} ${place.view ?? ''}`;
  }
};

const placedRows = (rows: readonly PrintedRow[], { kind }: ChartOptions): readonly Placed<Place>[] => {
  const placed = rows.flatMap((row) =>
    row.figures.flatMap((printed) =>
      viewsOf(row).map((view) => ({
        label: row.label.slice(0, envelopeHolds.line),
        printed,
        place: placeOf(row, view, kind, printed.system),
      })),
    ),
  );
  const inches = placed.flatMap(({ place, printed }) =>
    place.is === 'cloth' && printed.system === 'inches' ? [place.width] : [],
  );
  return placed.map((row) => ({ ...row, key: keyOf(row.place, row.label, row.printed.system, inches) }));
};

/** The unit most rows are printed in; of a chart wholly in both, centimetres. */
const mostPrinted = (placed: readonly Placed<Place>[]): UnitSystem => {
  const inches = placed.filter(({ printed }) => printed.system === 'inches').length;
  return inches * 2 > placed.length ? 'inches' : 'cm';
};

const sayHow = (rows: ChartRows, sizes: readonly string[], newViews: readonly EnvelopeView[]): readonly Problem[] => [
  ...(sizes.length === 1 ? [{ code: 'envelope.one-size', values: { size: sizes[0] ?? '' } }] : []),
  ...newViews.map(({ name }) => ({ code: 'envelope.view-new', values: { view: name } })),
  ...(rows.starsUsed && !rows.legend ? [{ code: 'envelope.stars-usual' }] : []),
  ...rows.forAll.map((text) => ({ code: 'envelope.one-for-all', values: { text: text.slice(0, 120) } })),
  ...rows.leftOut
    .slice(0, 20)
    .map((text) => ({ code: 'envelope.line-left-out', values: { text: text.slice(0, 120) } })),
];

type Row = { readonly place: Place; readonly label: string; readonly figures: BodyRow['figures'] };

const sorted = (rows: readonly Row[]) => ({
  body: inOrder.body(
    rows.flatMap(({ place, figures }) => (place.is === 'body' ? [{ measure: place.measure, figures }] : [])),
  ),
  finished: inOrder.finished(
    rows.flatMap(({ place, label, figures }) =>
      place.is === 'finished' ? [{ of: place.of, label, view: place.view, figures }] : [],
    ),
  ),
  clothNeeded: inOrder.cloth(
    rows.flatMap(({ place, figures }) =>
      place.is === 'cloth'
        ? [{ view: place.view, layer: place.layer, width: place.width, nap: place.nap, figures }]
        : [],
    ),
  ),
  asked: rows.flatMap(({ place, label, figures }): readonly AskedRow[] =>
    place.is === 'asked' ? [{ label, view: place.view, figures, ...(place.cloth ? { cloth: place.cloth } : {}) }] : [],
  ),
});

const firstCrossing = (rows: readonly Row[], sizes: readonly string[]): Problem | null => {
  for (const { place, label, figures } of rows) {
    const rises = place.is === 'body' || (place.is === 'finished' && growsWithBody(place.of));
    const problem = rises ? crossing(label, figures, sizes) : null;
    if (problem) return problem;
  }
  return null;
};

/** Columns printed largest first, as their names say, are turned round. */
const smallestFirst = (
  head: SizeHead,
  rows: readonly Row[],
  options: ChartOptions,
): { sizes: readonly string[]; rows: readonly Row[] } =>
  !options.sizes && descending(head.sizes)
    ? { sizes: head.sizes.toReversed(), rows: rows.map((row) => ({ ...row, figures: row.figures.toReversed() })) }
    : { sizes: head.sizes, rows };

const assemble = (head: SizeHead, printed: ChartRows, options: ChartOptions): Result<ChartRead> => {
  const placed = placedRows(printed.rows, options);
  if (placed.length === 0) return bad('envelope.no-chart');
  const printedIn = options.printedIn ?? mostPrinted(placed);
  const gathered = gather(placed, printedIn, options.kind === 'cloth' ? 'cloth' : 'figures', head.sizes);
  if (!gathered.ok) return gathered;
  const { sizes, rows } = smallestFirst(head, gathered.value.rows, options);
  const crossed = firstCrossing(rows, sizes);
  if (crossed) return { ok: false, problem: crossed };
  const known = options.views ?? [];
  const named = new Set(placed.flatMap(({ place }) => ('view' in place && place.view !== null ? [place.view] : [])));
  const newViews = [...named]
    .filter((id) => !known.some((view) => view.id === id))
    .toSorted()
    .map(viewCalled);
  return good({
    kind: options.kind,
    printedIn,
    sizes,
    views: [...known, ...newViews],
    ...sorted(rows),
    said: [...sayHow(printed, sizes, known.length > 0 ? newViews : []), ...gathered.value.said],
  });
};

/**
 * Reads a chart as typed or pasted, in the order it is printed: a row of sizes over rows of figures, or sizes down the
 * side under a row of measures. Columns may stand apart by tabs, semicolons, bars, commas or spaces; figures may be
 * whole, decimal, fractions or ranges, in inches, centimetres or both. A label that is none of the trade's words is
 * given back in `asked`. Either the whole chart is read or nothing: what is wrong with it is said with row and size.
 *
 * Refused: `envelope.chart-empty`, `-chart-too-long`, `-chart-too-broad`, `-no-chart`, `-no-sizes`, `-size-twice`,
 * `-sizes-differ`, `-gap`, `-too-many-figures`, `-mixed-units`, `-unit-unknown`, `-price`, `-not-a-figure`,
 * `-nonsense-figure`, `-row-twice`, `-crossing`.
 */
export const readChart = (text: string, options: ChartOptions): Result<ChartRead> => {
  const lines = chartLines(text);
  if (!lines.ok) return lines;
  const { separator, rows } = chartCells(lines.value);
  const cells = turned(rows, options);
  const head = sizeHead(cells, separator, options);
  if (!head.ok) return head;
  const read = chartRows(cells, head.value, separator, options);
  return read.ok ? assemble(head.value, read.value, options) : read;
};
