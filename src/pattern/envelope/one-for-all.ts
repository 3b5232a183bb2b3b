import { parseFigure } from '../../units/index.ts';
import { chartWords } from '../../words/index.ts';
import type { Parted } from './chart-part.ts';
import { layerSaid, napSaid, usualStars, widthSaid } from './cloth-label.ts';
import type { SizeHead } from './size-head.ts';
import type { EnvelopeView } from './types.ts';
import { onlyUnit, unitsSaid } from './unit-words.ts';
import { viewsSaid } from './views.ts';

const fraction = '[½⅓⅔¼¾⅛⅜⅝⅞]';
const number = String.raw`(?:\d+[ -])?\d+/\d+|\d+(?:[.,]\d+)?\s?${fraction}?|${fraction}`;
const lengthAtEnd = new RegExp(
  String.raw`^(.*\p{L}.*?)[\s,:;]+((?:${number})\s*(?:yds?|yards?|m|met(?:re|er)s?)\b\.?)$`,
  'iu',
);
const everySize = new RegExp(String.raw`[\s,:;(]*\b(?:${chartWords.everySize.join('|')})\b[\s)]*$`, 'i');

/** Whether a label names a layer of cloth in a word: of a width alone a missing figure is likelier than one for all. */
const namesLayer = (label: string, known: readonly EnvelopeView[]): boolean => {
  const { rest } = viewsSaid(label, known);
  return layerSaid(unitsSaid(widthSaid(napSaid(rest, usualStars).rest).rest).rest).layer !== null;
};

/** The lead cells and the one figure of a row with no other; null where it has none or several. */
const soleFigure = (
  line: readonly string[],
  leads: number,
): { readonly lead: string[]; readonly figure: string } | null => {
  const last = line.findLastIndex((cell) => cell !== '');
  const text = line
    .slice(0, last + 1)
    .join(' ')
    .replace(everySize, '');
  const written = lengthAtEnd.exec(text);
  const [, label = '', figure = ''] = written ?? [];
  if (written && !lengthAtEnd.test(label)) return { lead: [label], figure };
  const cell = (line[last] ?? '').replace(everySize, '');
  return last >= 1 && last <= leads && parseFigure(cell, 'm').ok ? { lead: line.slice(0, last), figure: cell } : null;
};

/**
 * A row of cloth with one figure where there are several sizes, such as `Interfacing 20", ¾ yd`: the figure stands for
 * every size. Null for a row of any other form.
 */
export const oneForAll = (line: readonly string[], head: SizeHead, known: readonly EnvelopeView[]): Parted | null => {
  if (head.sizes.length < 2) return null;
  const sole = soleFigure(line, Math.max(1, head.leads));
  if (!sole || !namesLayer(sole.lead.filter((cell) => !onlyUnit(cell)).join(' '), known)) return null;
  return { lead: sole.lead, cells: head.sizes.map(() => sole.figure), unit: null, ditto: false };
};
