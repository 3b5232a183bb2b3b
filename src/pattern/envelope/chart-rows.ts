import { bad, good, type Result } from '../../units/index.ts';
import { brokenRow, namesRow } from './broken-row.ts';
import type { Separator } from './cells.ts';
import type { ChartOptions } from './chart.ts';
import { type Heard, hasDigit, hear, nothingHeard, ownUnit } from './chart-heard.ts';
import { type Parted, part, tooMany } from './chart-part.ts';
import { layerSaid, napSaid, starsLegend, widthSaid } from './cloth-label.ts';
import { isPrice, isTitle } from './labels.ts';
import { oneForAll } from './one-for-all.ts';
import { type RowUnit, rowFigures, type SystemFigures } from './row-figures.ts';
import type { SizeHead } from './size-head.ts';
import type { ClothRow } from './types.ts';
import { onlyUnit, type UnitSystem, unitsSaid } from './unit-words.ts';
import { viewsSaid } from './views.ts';

/** One printed row, sorted into what its label says. Figures in one system or two, mm. */
export interface PrintedRow {
  readonly label: string;
  /** Null where none is named: for all views. */
  readonly views: readonly string[] | null;
  readonly figures: readonly SystemFigures[];
  readonly cloth: {
    readonly layer: ClothRow['layer'];
    readonly widths: { readonly [K in UnitSystem]?: number };
    readonly nap: ClothRow['nap'];
    readonly unknown: string;
  } | null;
}

export interface ChartRows {
  readonly rows: readonly PrintedRow[];
  /** Lines that were neither rows nor headings, as they stand. */
  readonly leftOut: readonly string[];
  /** Rows whose one figure was taken for every size, as they stand. */
  readonly forAll: readonly string[];
  readonly starsUsed: boolean;
  readonly legend: boolean;
}

const soleSystem = (widths: { readonly [K in UnitSystem]?: number }): RowUnit => {
  const [only, other] = Object.keys(widths) as UnitSystem[];
  return only && !other ? { kind: 'system', system: only } : null;
};

interface RowRead {
  readonly row: PrintedRow;
  readonly heard: Heard;
}

/** Lead cells of a row as one label: a first column left empty is the one above. */
const labelOf = (
  lead: readonly string[],
  heard: Heard,
  leads: number,
): { readonly first: string; readonly text: string } => {
  const [first = '', ...others] = lead;
  if (leads < 2) return { first: '', text: lead.filter((one) => one !== '').join(' ') };
  if (lead.length < leads)
    return { first: heard.firstColumn, text: [heard.firstColumn, ...lead].filter(Boolean).join(' ¦ ') };
  const column = first === '' ? heard.firstColumn : first;
  return { first: column, text: [column, ...others].filter((one) => one !== '').join(' ¦ ') };
};

const readRow = (parted: Parted, heard: Heard, head: SizeHead, options: ChartOptions): Result<RowRead> => {
  const { kind } = options;
  const { first, text: printed } = labelOf(parted.lead, heard, head.leads);
  const columns = printed.split(' ¦ ');
  const unitColumn = columns.map(onlyUnit).find((unit) => unit !== null) ?? null;
  let text = columns.filter((column) => !onlyUnit(column)).join(' ');
  let views: readonly string[] | null = null;
  const said = columns.map((column) => viewsSaid(column, options.views ?? []));
  if (said.some((one) => one.views !== null)) {
    views = said.find((one) => one.views !== null)?.views ?? null;
    text = said
      .map(({ rest }) => rest)
      .filter((rest) => rest !== '' && !onlyUnit(rest))
      .join(' ');
  }
  const cloth = kind === 'cloth' ? clothOf(text, heard) : null;
  const units = unitsSaid(cloth ? cloth.rest : text);
  const after = parted.ditto ? (heard.after ?? parted.unit) : parted.unit;
  const besides = unitColumn ?? after;
  const own = ownUnit(besides ? [besides] : units.units, kind);
  const label = cloth ? text : units.rest || heard.label;
  if (isPrice(label)) return bad('envelope.price', { row: label, size: head.sizes[0] ?? '', text: label });
  const explicit = own ?? (heard.unit?.kind === 'system' ? null : heard.unit);
  const unit = explicit ?? (cloth ? soleSystem(cloth.widths) : null) ?? heard.unit ?? defaultUnit(options);
  const row = (label === '' ? printed.replaceAll(' ¦ ', ' ') : label).slice(0, 80);
  if (tooMany(parted, head.leads, kind)) {
    const found = parted.lead.length - Math.max(1, head.leads) + parted.cells.length;
    return bad('envelope.too-many-figures', { row: parted.lead[0] ?? row, found, sizes: head.sizes.length });
  }
  if (parted.cells.length !== head.sizes.length) {
    const missing = head.sizes[parted.cells.length];
    return bad('envelope.gap', { row, found: parted.cells.length, sizes: head.sizes.length, size: missing ?? '' });
  }
  if (printed === '' && heard.label === '' && Object.keys(cloth?.widths ?? {}).length === 0) {
    return bad('envelope.row-unnamed', { text: parted.cells.join(' ').slice(0, 80) });
  }
  const figures = rowFigures(parted.cells, unit, kind, row, head.sizes);
  if (!figures.ok) return figures;
  const { layer: named, unknown } = layerSaid(cloth ? units.rest : '');
  const widthOnly = cloth !== null && views === null && named === null && unknown === '';
  const ownRow = widthOnly ? heard.row : { views, layer: named };
  return good({
    row: {
      label,
      views: ownRow.views ?? heard.views,
      figures: figures.value,
      cloth: cloth && {
        layer: ownRow.layer ?? heard.layer ?? 'shell',
        widths: cloth.widths,
        nap: cloth.nap ?? heard.nap ?? 'without',
        unknown,
      },
    },
    heard: { ...heard, firstColumn: first, label, row: ownRow, after },
  });
};

const clothOf = (text: string, heard: Heard) => {
  const nap = napSaid(text, heard.stars);
  const { widths, rest } = widthSaid(nap.rest);
  return { nap: nap.nap, widths: Object.keys(widths).length > 0 ? widths : heard.widths, rest };
};

const defaultUnit = ({ printedIn }: ChartOptions): RowUnit =>
  printedIn ? { kind: 'system', system: printedIn } : null;

/** The rows under the head of sizes, each with what headings above it say. Refused at the first row that cannot be read whole. */
export const chartRows = (
  lines: readonly (readonly string[])[],
  head: SizeHead,
  separator: Separator,
  options: ChartOptions,
): Result<ChartRows> => {
  const { kind, views = [] } = options;
  const rows: PrintedRow[] = [];
  const leftOut: string[] = [];
  const forAll: string[] = [];
  const texts = lines.map((line) => line.filter((cell) => cell !== '').join(' '));
  // A legend holds for the whole chart; most stand at its foot.
  const legend = texts.map(starsLegend).find((stars) => stars !== null) ?? null;
  let starsUsed = false;
  let heard: Heard = legend ? { ...nothingHeard, stars: legend } : nothingHeard;
  for (const [index, line] of lines.entries()) {
    const text = texts[index] ?? '';
    if (index === head.line || head.repeats.includes(index)) {
      const title = index === head.line ? head.title : (line[0] ?? '');
      heard = hear(title, heard, kind, views) ?? heard;
      continue;
    }
    const sole = kind === 'cloth' ? oneForAll(line, head, views) : null;
    const parted = sole ?? part(line, head, separator, views);
    if (!parted.cells.some(hasDigit)) {
      const heading = hear(text, heard, kind, views);
      const broken = heading && !namesRow(text, kind) ? null : brokenRow(text, kind, head);
      if (broken) return { ok: false, problem: broken };
      if (heading) heard = heading;
      else if (!isTitle(text) || hasDigit(text)) leftOut.push(text);
      continue;
    }
    if (/\*/.test(text)) starsUsed = true;
    const read = readRow(parted, heard, head, options);
    if (!read.ok) return read;
    rows.push(read.value.row);
    if (sole) forAll.push(text);
    heard = read.value.heard;
  }
  return good({ rows, leftOut, forAll, starsUsed, legend: legend !== null });
};
