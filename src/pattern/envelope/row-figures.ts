import { bad, good, type LengthUnit, millimetresPer, parseFigure, type Result } from '../../units/index.ts';
import type { ChartKind } from './chart.ts';
import { isPrice } from './labels.ts';
import type { Figure } from './types.ts';
import { systemOf, type UnitSystem } from './unit-words.ts';

/**
 * What a row's bare figures are in: one unit (its `own` where its label says it), whatever a system prints such figures
 * in, or a pair, where every figure is printed twice.
 */
export type RowUnit =
  | { readonly kind: 'one'; readonly unit: LengthUnit; readonly own?: boolean }
  | { readonly kind: 'system'; readonly system: UnitSystem }
  | { readonly kind: 'pair'; readonly units: readonly [LengthUnit, LengthUnit] }
  | null;

/** A row's figures in one system, mm. */
export interface SystemFigures {
  readonly system: UnitSystem;
  readonly figures: readonly Figure[];
}

/** What a chart of a kind can hold, mm: outside it a figure is no figure. Wide enough for inches typed as cm and back, which are asked about. */
const possible: Readonly<Record<ChartKind, readonly [number, number]>> = {
  body: [10, 7000],
  finished: [10, 20_000],
  cloth: [20, 50_000],
};

const printedEmpty = /^(?:-+|n\/?a|\.+|)$/i;

const pairCell = /^(.+?)\s*(?:\(\s*([^()]+?)\s*\)|\/\s*([^/()]+?))$/;

/** The stroke of a fraction, halves to thirty-seconds. */
const endsInFraction = /(?:^|\D)\d{1,2}\/(?:2|3|4|5|6|8|10|16|32)(?!\d)\s*(?:"|[a-z]+\.?)?$/i;

/** `32/81` is no fraction anybody measures in. */
const oddFraction = /^\d+\/(?!(?:2|3|4|5|6|8|10|16|32)$)\d+$/;

/** The two figures of `32" (81 cm)`, `32/81`; null where the cell is one figure. A fraction's stroke parts no pair. */
const pairOf = (cell: string): readonly [string, string] | null => {
  const found = pairCell.exec(cell);
  if (!found) return null;
  const [, first = '', inBrackets, afterStroke = ''] = found;
  if (inBrackets !== undefined) return [first, inBrackets];
  const oneFigure = parseFigure(cell, 'in').ok && !oddFraction.test(cell);
  return oneFigure || endsInFraction.test(cell) ? null : [first, afterStroke];
};

interface Place {
  readonly row: string;
  readonly size: string;
}

/** Bare cloth lengths in a metric chart are metres; figures no cutter could mean in metres are centimetres. */
const fewMetres = 15;

const bareUnit = (unit: RowUnit, kind: ChartKind, cells: readonly string[]): LengthUnit | null => {
  if (unit === null || unit.kind === 'pair') return null;
  if (unit.kind === 'one') return unit.unit;
  if (kind !== 'cloth') return unit.system === 'inches' ? 'in' : 'cm';
  if (unit.system === 'inches') return 'yd';
  const figures = cells.map((cell) => Number.parseFloat(cell.replace(',', '.'))).filter((value) => value > 0);
  return figures.length > 0 && figures.every((value) => value > fewMetres) ? 'cm' : 'm';
};

const readOne = (cell: string, unit: LengthUnit, kind: ChartKind, { row, size }: Place): Result<Figure> => {
  if (isPrice(cell)) return bad('envelope.price', { row, size, text: cell });
  const read = parseFigure(cell, unit);
  if (!read.ok) return bad('envelope.not-a-figure', { row, size, text: cell.slice(0, 40) });
  const { low, high } = read.value;
  const [least, most] = possible[kind];
  if (low < least || high > most) return bad('envelope.nonsense-figure', { row, size, text: cell.slice(0, 40) });
  return good(low === high ? low : [low, high]);
};

const unitIn = (cell: string): LengthUnit | null => {
  const read = parseFigure(cell, 'in');
  return read.ok ? read.value.unit : null;
};

/** A cell in inches or cm beside bare lengths is the width of the cloth: a length of the row is missing. */
const widthAmongLengths = (cells: readonly string[]): string | null => {
  const [first = '', ...others] = cells;
  const unit = unitIn(first);
  const bare = others.some((cell) => !printedEmpty.test(cell) && unitIn(cell) === null);
  return (unit === 'in' || unit === 'cm') && bare ? first : null;
};

/** The figures of one system of a row. Null where the row says nothing of the unit. */
const readSystem = (
  cells: readonly string[],
  unit: RowUnit,
  kind: ChartKind,
  row: string,
  sizes: readonly string[],
): Result<SystemFigures> => {
  const written = cells.flatMap((cell) => unitIn(cell) ?? []);
  const systems = new Set(written.map(systemOf));
  // A label's own unit must agree with its figures'; a heading's or the chart's is only for figures with none.
  if (unit?.kind === 'one' && unit.own && written.length > 0) systems.add(systemOf(unit.unit));
  if (systems.size > 1) return bad('envelope.mixed-units', { row });
  const [first] = written;
  const bare = first ?? bareUnit(unit, kind, cells);
  const price = cells.findIndex(isPrice);
  if (price >= 0) return bad('envelope.price', { row, size: sizes[price] ?? '', text: cells[price] ?? '' });
  if (bare === null) return bad('envelope.unit-unknown', { row });
  const width = kind === 'cloth' ? widthAmongLengths(cells) : null;
  if (width !== null) return bad('envelope.width-among-lengths', { row, text: width });
  const figures: Figure[] = [];
  for (const [index, cell] of cells.entries()) {
    const read: Result<Figure> = printedEmpty.test(cell)
      ? good(null)
      : readOne(cell, bare, kind, { row, size: sizes[index] ?? '' });
    if (!read.ok) return read;
    figures.push(read.value);
  }
  return good({ system: systemOf(bare), figures });
};

/** Two figures of which one is the other in inches, to the rounding charts are printed with. */
const bothSystems = (first: string, second: string): boolean => {
  const [a, b] = [parseFigure(first, 'cm'), parseFigure(second, 'cm')];
  if (!a.ok || !b.ok || a.value.unit || b.value.unit) return false;
  const ratio = b.value.low / a.value.low;
  const inch = millimetresPer.in / millimetresPer.cm;
  return Math.abs(ratio / inch - 1) < printedRatio || Math.abs(ratio * inch - 1) < printedRatio;
};
const printedRatio = 0.03;

/**
 * A row's figures, mm, in one system or (a chart printed in both) in two. The unit beside a figure outranks the one
 * its label names; figures in two systems in one row are refused, unless every cell prints the pair.
 */
export const rowFigures = (
  printed: readonly string[],
  unit: RowUnit,
  kind: ChartKind,
  row: string,
  sizes: readonly string[],
): Result<readonly SystemFigures[]> => {
  // Stars beside a length of cloth may mean its nap; beside other figures they only lead to a note.
  const cells = kind === 'cloth' ? printed : printed.map((cell) => cell.replace(/[\s*†‡§]+$/, ''));
  const pairs = cells.map(pairOf);
  const paired =
    pairs.some((pair) => pair !== null) &&
    pairs.every((pair, at) => pair !== null || printedEmpty.test(cells[at] ?? ''));
  if (!paired) {
    const one = readSystem(cells, unit, kind, row, sizes);
    return one.ok ? good([one.value]) : one;
  }
  const columns = [0, 1].map((side) => pairs.map((pair) => pair?.[side] ?? ''));
  const units = columns.map((column, side) => pairUnit(column, columns[1 - side] ?? [], unit, side));
  const read = columns.map((column, side) => readSystem(column, units[side] ?? null, kind, row, sizes));
  const [first, second] = read;
  if (!first?.ok) return first ?? good([]);
  if (!second?.ok) return second ?? good([]);
  return first.value.system === second.value.system
    ? bad('envelope.mixed-units', { row })
    : good([first.value, second.value]);
};

/** What one side of pairs is in: the larger figures centimetres where they are the same in both, else as the heading says. */
const pairUnit = (column: readonly string[], other: readonly string[], unit: RowUnit, side: number): RowUnit => {
  const pair = column.every((cell, at) => cell === '' || bothSystems(cell, other[at] ?? ''));
  if (pair) {
    const larger = column.some((cell, at) => Number.parseFloat(cell) > Number.parseFloat(other[at] ?? ''));
    return { kind: 'one', unit: larger ? 'cm' : 'in' };
  }
  if (unit?.kind === 'pair') return { kind: 'one', unit: unit.units[side === 0 ? 0 : 1] };
  return unit?.kind === 'system' && side === 0 ? unit : null;
};
