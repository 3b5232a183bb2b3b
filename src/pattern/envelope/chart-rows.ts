import { bad, good, type LengthUnit, type Problem, parseFigure, type Result } from '../../units/index.ts';
import { type Separator, splitBySizes } from './cells.ts';
import type { ChartKind, ChartOptions } from './chart.ts';
import { layerSaid, napSaid, type Stars, starsLegend, usualStars, widthSaid } from './cloth-label.ts';
import { bodyMeasureOf, finishedKindOf, isPrice, isTitle } from './labels.ts';
import { type RowUnit, rowFigures, type SystemFigures } from './row-figures.ts';
import type { SizeHead } from './size-head.ts';
import type { ClothRow, EnvelopeView } from './types.ts';
import { onlyUnit, systemOf, type UnitSystem, unitsSaid } from './unit-words.ts';
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

/** What headings above a row have said, until another says otherwise. */
interface Heard {
  readonly unit: RowUnit;
  readonly views: readonly string[] | null;
  readonly layer: ClothRow['layer'] | null;
  readonly widths: { readonly [K in UnitSystem]?: number };
  readonly nap: ClothRow['nap'] | null;
  readonly stars: Stars;
  /** First column and label of the row before, which a row of the same in other words leaves empty. */
  readonly firstColumn: string;
  readonly label: string;
  /** The unit printed after the figures of the row before, for which a mark may stand. */
  readonly after: LengthUnit | null;
  /** What the row before named of its own: a row that names nothing but a width belongs with it. */
  readonly row: { readonly views: readonly string[] | null; readonly layer: ClothRow['layer'] | null };
}

export interface ChartRows {
  readonly rows: readonly PrintedRow[];
  /** Lines that were neither rows nor headings, as they stand. */
  readonly leftOut: readonly string[];
  readonly starsUsed: boolean;
  readonly legend: boolean;
}

const unitFrom = (units: readonly LengthUnit[]): RowUnit => {
  const [first, second] = units;
  if (first === undefined) return null;
  return second !== undefined && systemOf(first) !== systemOf(second)
    ? { kind: 'pair', units: [first, second] }
    : { kind: 'one', unit: first };
};

/** Yards and metres are cloth's; inches and cm of a heading over cloth say only the system. */
const headingUnit = (units: readonly LengthUnit[], kind: ChartKind): RowUnit => {
  const [first, second] = units;
  if (kind === 'cloth' && first !== undefined && second === undefined && first !== 'yd' && first !== 'm') {
    return { kind: 'system', system: systemOf(first) };
  }
  return unitFrom(units);
};

/** A cloth row in inches or cm says the system its cloth is counted in; lengths stand in yards or metres. */
const ownUnit = (units: readonly LengthUnit[], kind: ChartKind): RowUnit => {
  const own = headingUnit(units, kind);
  return own?.kind === 'one' ? { ...own, own: true } : own;
};

/** Cells as lead cells, figures, and a unit printed after them. */
interface Parted {
  readonly lead: readonly string[];
  readonly cells: readonly string[];
  readonly unit: LengthUnit | null;
  /** The unit is a mark that stands for inches, or for the same as above. */
  readonly ditto: boolean;
}

const withoutEmptyEnd = (cells: readonly string[], least: number): readonly string[] => {
  let end = cells.length;
  while (end > least && cells[end - 1] === '') end -= 1;
  return cells.slice(0, end);
};

/** Columns that cells told apart by spaces may leave out: a first column whose entry holds for the rows below it. */
const shorterLead = (cells: readonly string[], leads: number, sizes: number, known: readonly EnvelopeView[]): boolean =>
  leads > 1 && cells.length === leads - 1 + sizes && viewsSaid(cells[0] ?? '', known).views === null;

const part = (row: readonly string[], head: SizeHead, separator: Separator, known: readonly EnvelopeView[]): Parted => {
  const sizes = head.sizes.length;
  const leads = Math.max(1, head.leads);
  let cells = withoutEmptyEnd(row, leads + sizes);
  const after = cells.length > leads + sizes ? onlyUnit(cells.at(-1) ?? '') : null;
  const ditto = after !== null && /^(?:"|''|″|”)$/.test(cells.at(-1) ?? '');
  if (after) cells = cells.slice(0, -1);
  const open = separator === 'spaces' || separator === 'space';
  const shorter = open && shorterLead(cells, leads, sizes, known);
  if (open && cells.length < leads + sizes && !shorter) {
    const split = splitBySizes(cells.join(' '), sizes);
    if (split) return { lead: split.slice(0, -sizes), cells: split.slice(-sizes), unit: after, ditto };
  }
  const lead = shorter ? leads - 1 : Math.max(leads, cells.length - sizes);
  return { lead: cells.slice(0, lead), cells: cells.slice(lead), unit: after, ditto };
};

/** Cells before the figures that are figures themselves: the row has more than there are sizes. */
const tooMany = ({ lead }: Parted, leads: number, kind: ChartKind): boolean =>
  lead.slice(Math.max(1, leads)).some((cell) => {
    const read = parseFigure(cell, 'in');
    return read.ok && (kind !== 'cloth' || read.value.unit === null);
  });

const hasDigit = (text: string): boolean => /[\d½⅓⅔¼¾⅛⅜⅝⅞]/.test(text);

/** A line without figures: what it says holds for the rows below it. Null where it says nothing that is known. */
const hear = (text: string, heard: Heard, kind: ChartKind, known: readonly EnvelopeView[]): Heard | null => {
  const legend = starsLegend(text);
  if (legend) return { ...heard, stars: legend };
  const { views, rest: withoutViews } = viewsSaid(text, known);
  const nap = kind === 'cloth' ? napSaid(withoutViews, heard.stars) : { nap: null, rest: withoutViews };
  const found = kind === 'cloth' ? widthSaid(nap.rest) : { widths: {}, rest: nap.rest };
  // Numbers in a title (sizes 8 to 24) are no width: of a heading that says one nothing may be left over.
  const saysWidth = Object.keys(found.widths).length > 0 && layerSaid(unitsSaid(found.rest).rest).unknown === '';
  const { units, rest } = unitsSaid(saysWidth ? found.rest : nap.rest);
  const layer = kind === 'cloth' ? layerSaid(rest).layer : null;
  if (views === null && nap.nap === null && !saysWidth && units.length === 0 && layer === null) return null;
  if (units.length === 0 && hasDigit(rest)) return null;
  const unit = headingUnit(units, kind);
  return {
    ...heard,
    unit: unit ?? heard.unit,
    views: views ?? heard.views,
    layer: layer ?? (views ? null : heard.layer),
    widths: saysWidth ? found.widths : views ? {} : heard.widths,
    nap: nap.nap ?? (views ? null : heard.nap),
    firstColumn: '',
    label: '',
    after: null,
    row: { views: null, layer: null },
  };
};

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

const known = (label: string, kind: ChartKind): boolean => {
  const { rest } = unitsSaid(label);
  if (kind === 'cloth')
    return Object.keys(widthSaid(rest).widths).length > 0 && layerSaid(widthSaid(rest).rest).unknown === '';
  return (kind === 'body' ? bodyMeasureOf(rest) : finishedKindOf(rest)) !== null;
};

const numbers = /\d+(?:[.,]\d+)?(?:[ -]\d+\/\d+| ?[½⅓⅔¼¾⅛⅜⅝⅞])?|[½⅓⅔¼¾⅛⅜⅝⅞]/g;

/**
 * A line that is no row and no heading but begins as a row does: its figures are missing or run together. Left out
 * it would be lost without a word, so the chart is refused.
 */
const brokenRow = (text: string, kind: ChartKind, { sizes }: SizeHead): Problem | null => {
  const figures = text.match(numbers) ?? [];
  const before =
    kind === 'cloth' ? text.slice(0, text.search(/["”]|\bcm\b|\bin\b/i) + 2) : text.replace(/\s*[\d½¼¾⅛⅜⅝⅞$€£].*$/, '');
  const found = kind === 'cloth' ? figures.length - 1 : figures.length;
  if (!known(before, kind) || (kind === 'cloth' && found < 1)) return null;
  const values = { row: before.trim(), found, sizes: sizes.length };
  const size = sizes[found];
  return size === undefined
    ? { code: 'envelope.run-together', values }
    : { code: 'envelope.gap', values: { ...values, size } };
};

const nothingHeard: Heard = {
  unit: null,
  views: null,
  layer: null,
  widths: {},
  nap: null,
  stars: usualStars,
  firstColumn: '',
  label: '',
  after: null,
  row: { views: null, layer: null },
};

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
  let legend = false;
  let starsUsed = false;
  let heard = nothingHeard;
  for (const [index, line] of lines.entries()) {
    const text = line.filter((cell) => cell !== '').join(' ');
    if (starsLegend(text)) legend = true;
    if (index === head.line || head.repeats.includes(index)) {
      const title = index === head.line ? head.title : (line[0] ?? '');
      heard = hear(title, heard, kind, views) ?? heard;
      continue;
    }
    const parted = part(line, head, separator, views);
    if (!parted.cells.some(hasDigit)) {
      const heading = hear(text, heard, kind, views);
      const broken = heading && !known(text, kind) ? null : brokenRow(text, kind, head);
      if (broken) return { ok: false, problem: broken };
      if (heading) heard = heading;
      else if (!isTitle(text) || hasDigit(text)) leftOut.push(text);
      continue;
    }
    if (/\*/.test(text)) starsUsed = true;
    const read = readRow(parted, heard, head, options);
    if (!read.ok) return read;
    rows.push(read.value.row);
    heard = read.value.heard;
  }
  return good({ rows, leftOut, starsUsed, legend });
};
