import type { MeasureId } from '../../src/body/index.ts';
import type { ChartKind, ClothRow, Envelope, Figure, FinishedRow } from '../../src/pattern/index.ts';

/** The list an envelope keeps a chart's rows in. */
const listOf = { body: 'body', finished: 'finished', cloth: 'clothNeeded' } as const satisfies Record<
  ChartKind,
  keyof Envelope
>;

type AnyRow = { readonly figures: readonly Figure[] };

export const rowsIn = (envelope: Envelope, chart: ChartKind): readonly AnyRow[] => envelope[listOf[chart]];

const withRows = (envelope: Envelope, chart: ChartKind, rows: readonly AnyRow[]): Envelope => ({
  ...envelope,
  [listOf[chart]]: rows,
});

const mapRows = (envelope: Envelope, change: (row: AnyRow) => AnyRow): Envelope =>
  (['body', 'finished', 'cloth'] as const).reduce(
    (changed, chart) => withRows(changed, chart, rowsIn(changed, chart).map(change)),
    envelope,
  );

/** An envelope that was only begun has one size with a name that stands for none, and no rows. */
export const sizesKnown = (envelope: Envelope): boolean =>
  envelope.sizes.length !== 1 ||
  envelope.sizes[0] !== '1' ||
  (['body', 'finished', 'cloth'] as const).some((chart) => rowsIn(envelope, chart).length > 0);

const blank = (envelope: Envelope): readonly Figure[] => envelope.sizes.map(() => null);

/** One cell of a chart, by the places of its row and size. */
export const withFigure = (envelope: Envelope, chart: ChartKind, row: number, size: number, figure: Figure): Envelope =>
  withRows(
    envelope,
    chart,
    rowsIn(envelope, chart).map((one, index) =>
      index === row ? { ...one, figures: one.figures.map((old, place) => (place === size ? figure : old)) } : one,
    ),
  );

export const withoutRow = (envelope: Envelope, chart: ChartKind, row: number): Envelope =>
  withRows(
    envelope,
    chart,
    rowsIn(envelope, chart).filter((_, index) => index !== row),
  );

/** A row for a body measure the chart does not have yet. */
export const withBodyRow = (
  envelope: Envelope,
  measure: MeasureId,
  figures: readonly Figure[] = blank(envelope),
): Envelope =>
  envelope.body.some((row) => row.measure === measure)
    ? envelope
    : { ...envelope, body: [...envelope.body, { measure, figures }] };

export const withFinishedRow = (
  envelope: Envelope,
  row: Omit<FinishedRow, 'figures'> & { readonly figures?: readonly Figure[] },
): Envelope => ({ ...envelope, finished: [...envelope.finished, { ...row, figures: row.figures ?? blank(envelope) }] });

export const withClothRow = (
  envelope: Envelope,
  row: Omit<ClothRow, 'figures'> & { readonly figures?: readonly Figure[] },
): Envelope => ({
  ...envelope,
  clothNeeded: [...envelope.clothNeeded, { ...row, figures: row.figures ?? blank(envelope) }],
});

/**
 * Other sizes. The same number of them is the same sizes by new names; otherwise what was known of a size stays
 * with its name, and a new one has nothing printed yet.
 */
export const withSizes = (envelope: Envelope, sizes: readonly string[]): Envelope => {
  const before = envelope.sizes;
  const renamed = sizes.length === before.length;
  const from = sizes.map((size, index) => (renamed ? index : before.indexOf(size)));
  const nameOf = (old: string): string | undefined => {
    const index = from.indexOf(before.indexOf(old));
    return index < 0 ? undefined : sizes[index];
  };
  const kept = (names: readonly string[]) => names.flatMap((name) => nameOf(name) ?? []);
  const moved = mapRows(envelope, (row) => ({
    ...row,
    figures: from.map((index) => (index < 0 ? null : (row.figures[index] ?? null))),
  }));
  return {
    ...moved,
    sizes,
    flat: envelope.flat.flatMap((flat) => {
      const size = nameOf(flat.size);
      return size === undefined ? [] : [{ ...flat, size }];
    }),
    owned: { ...envelope.owned, cut: kept(envelope.owned.cut), traced: kept(envelope.owned.traced) },
  };
};

export const withView = (envelope: Envelope, id: string, name: string): Envelope =>
  envelope.views.some((view) => view.id === id)
    ? envelope
    : { ...envelope, views: [...envelope.views, { id, name, about: '' }] };

/** A view taken away, with every row that is of it alone. */
export const withoutView = (envelope: Envelope, id: string): Envelope => {
  const others = <Row extends { readonly view: string | null }>(rows: readonly Row[]) =>
    rows.filter((row) => row.view !== id);
  return {
    ...envelope,
    views: envelope.views.filter((view) => view.id !== id),
    finished: others(envelope.finished),
    clothNeeded: others(envelope.clothNeeded),
    notions: others(envelope.notions),
    flat: others(envelope.flat),
  };
};
