import { measureIds } from '../../body/index.ts';
import { tolerance } from '../../geometry/index.ts';
import { bad, good, type Problem, type Result } from '../../units/index.ts';
import { figureMm } from './figures.ts';
import { clothLayers, clothNaps, finishedKinds } from './names.ts';
import type { SystemFigures } from './row-figures.ts';
import type { BodyRow, ClothRow, Figure, FinishedRow } from './types.ts';
import type { UnitSystem } from './unit-words.ts';

/** A row that has its place in a chart, in one unit system; another of the same place in the other system says it again. */
export interface Placed<Place> {
  readonly key: string;
  readonly label: string;
  readonly place: Place;
  readonly printed: SystemFigures;
}

/** How far the same figure may differ between inches and centimetres as printed, mm: half a centimetre and half a quarter inch; cloth half a tenth of a metre and half an eighth of a yard. */
const printedApart = { figures: 5 + 25.4 / 8, cloth: 100 + 914.4 / 16 } as const;

const sameFigure = (a: Figure, b: Figure, within: number): boolean => {
  if (a === null || b === null) return a === b;
  const [one, other] = [a, b].map((figure) => (typeof figure === 'number' ? [figure, figure] : figure));
  return [0, 1].every((end) => Math.abs((one?.[end] ?? 0) - (other?.[end] ?? 0)) <= within);
};

const apart = (a: readonly Figure[], b: readonly Figure[], within: number): number =>
  a.findIndex((figure, at) => !sameFigure(figure, b[at] ?? null, within));

export interface Gathered<Place> {
  readonly rows: readonly { readonly place: Place; readonly label: string; readonly figures: readonly Figure[] }[];
  readonly said: readonly Problem[];
}

/**
 * Rows of the same place brought together: of a row printed in both systems the one in `printedIn`, checked by the
 * other. A row given twice in one system must be the same both times.
 */
export const gather = <Place>(
  placed: readonly Placed<Place>[],
  printedIn: UnitSystem,
  kind: 'figures' | 'cloth',
  sizes: readonly string[],
): Result<Gathered<Place>> => {
  const byKey = new Map<string, Map<UnitSystem, Placed<Place>>>();
  for (const row of placed) {
    const rows = byKey.get(row.key) ?? new Map<UnitSystem, Placed<Place>>();
    const before = rows.get(row.printed.system);
    if (before && apart(before.printed.figures, row.printed.figures, tolerance.same) >= 0) {
      return bad('envelope.row-twice', { row: row.label });
    }
    if (!before) rows.set(row.printed.system, row);
    byKey.set(row.key, rows);
  }
  const said: Problem[] = [];
  const rows = [...byKey.values()].flatMap((systems) => {
    const chosen = systems.get(printedIn) ?? [...systems.values()][0];
    if (!chosen) return [];
    const other = [...systems.values()].find((row) => row !== chosen);
    const at = other ? apart(chosen.printed.figures, other.printed.figures, printedApart[kind]) : -1;
    if (other && at >= 0) said.push(disagree(chosen, other, at, sizes));
    return [{ place: chosen.place, label: chosen.label, figures: chosen.printed.figures }];
  });
  return good({ rows, said });
};

const disagree = <Place>(taken: Placed<Place>, other: Placed<Place>, at: number, sizes: readonly string[]): Problem => {
  const [one, two] = [taken, other].map(({ printed }) => figureMm(printed.figures[at] ?? null));
  const values = { row: taken.label, size: sizes[at] ?? '' };
  return one === null || two === null || one === undefined || two === undefined
    ? { code: 'envelope.units-one-empty', values }
    : { code: 'envelope.units-disagree', values: { ...values, taken: { mm: one }, other: { mm: two } } };
};

const place = (list: readonly string[], name: string): number => list.indexOf(name);

/** The order rows are shown in, whatever order they were printed in. */
export const inOrder = {
  body: (rows: readonly BodyRow[]): readonly BodyRow[] =>
    rows.toSorted((a, b) => place(measureIds, a.measure) - place(measureIds, b.measure)),
  finished: (rows: readonly FinishedRow[]): readonly FinishedRow[] =>
    rows.toSorted(
      (a, b) =>
        place(finishedKinds, a.of) - place(finishedKinds, b.of) ||
        byText(a.view ?? '', b.view ?? '') ||
        byText(a.label, b.label),
    ),
  cloth: (rows: readonly ClothRow[]): readonly ClothRow[] =>
    rows.toSorted(
      (a, b) =>
        byText(a.view ?? '', b.view ?? '') ||
        place(clothLayers, a.layer) - place(clothLayers, b.layer) ||
        a.width - b.width ||
        place(clothNaps, a.nap) - place(clothNaps, b.nap),
    ),
} as const;

/** By code points, so that the order is the same everywhere. */
const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
