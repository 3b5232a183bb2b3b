import type { Problem } from '../../units/index.ts';
import type { ChartKind } from './chart.ts';
import { layerSaid, widthSaid } from './cloth-label.ts';
import { bodyMeasureOf, finishedKindOf } from './labels.ts';
import type { SizeHead } from './size-head.ts';
import { unitsSaid } from './unit-words.ts';

/** Whether a label alone names what such a chart has rows of. */
export const namesRow = (label: string, kind: ChartKind): boolean => {
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
export const brokenRow = (text: string, kind: ChartKind, { sizes }: SizeHead): Problem | null => {
  const figures = text.match(numbers) ?? [];
  const before =
    kind === 'cloth' ? text.slice(0, text.search(/["”]|\bcm\b|\bin\b/i) + 2) : text.replace(/\s*[\d½¼¾⅛⅜⅝⅞$€£].*$/, '');
  const found = kind === 'cloth' ? figures.length - 1 : figures.length;
  if (!namesRow(before, kind) || (kind === 'cloth' && found < 1)) return null;
  const values = { row: before.trim(), found, sizes: sizes.length };
  const size = sizes[found];
  return size === undefined
    ? { code: 'envelope.run-together', values }
    : { code: 'envelope.gap', values: { ...values, size } };
};
