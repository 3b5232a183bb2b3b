import type { LengthUnit } from '../../units/index.ts';
import type { ChartKind } from './chart.ts';
import { layerSaid, napSaid, type Stars, starsLegend, usualStars, widthSaid } from './cloth-label.ts';
import type { RowUnit } from './row-figures.ts';
import type { ClothRow, EnvelopeView } from './types.ts';
import { systemOf, type UnitSystem, unitsSaid } from './unit-words.ts';
import { viewsSaid } from './views.ts';

/** What headings above a row have said, until another says otherwise. */
export interface Heard {
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

export const nothingHeard: Heard = {
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

export const hasDigit = (text: string): boolean => /[\d½⅓⅔¼¾⅛⅜⅝⅞]/.test(text);

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
export const ownUnit = (units: readonly LengthUnit[], kind: ChartKind): RowUnit => {
  const own = headingUnit(units, kind);
  return own?.kind === 'one' ? { ...own, own: true } : own;
};

/** A line without figures: what it says holds for the rows below it. Null where it says nothing that is known. */
export const hear = (text: string, heard: Heard, kind: ChartKind, known: readonly EnvelopeView[]): Heard | null => {
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
