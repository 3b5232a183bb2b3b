import {
  type Drawing,
  drawingOf,
  filledMark,
  groupMark,
  type Mark,
  pathMark,
  rectangle,
  stroke,
  textMark,
} from '../../src/draw/index.ts';
import type { ClothRow, Envelope } from '../../src/pattern/index.ts';
import { formatLength, type Unit } from '../../src/units/index.ts';
import { envelopePageWords, fill } from '../../src/words/index.ts';
import { locale } from '../app/settings.tsx';
import { unitOf } from './figures.ts';
import { sayClothRow, viewName, widthAsPrinted } from './row-words.ts';

const words = envelopePageWords.picture;

const lengthOf = (row: ClothRow, size: number): number => {
  const figure = row.figures[size] ?? null;
  return typeof figure === 'number' ? figure : (figure?.[1] ?? 0);
};

/** Cloth as it was reckoned for another width: drawn below the printed, in its own colour. */
export interface ReckonedCloth {
  readonly name: string;
  readonly width: number;
  readonly buy: number;
  readonly colour: string;
  readonly unit: Unit;
}

interface ClothPicture {
  readonly narrow: boolean;
  /** The row worked in; on a phone its view is the one shown. */
  readonly row: number;
  /** Only what is printed for this view, and for all. */
  readonly view?: string | null;
  readonly reckoned?: ReckonedCloth | null;
}

/** Between one cloth and the next, mm; the words under each stand in it. */
const apart = 260;

/** Ems of words, mm, for cloths this long: they must read when all of it is seen. */
const emFor = (width: number, height: number, narrow: boolean): number =>
  Math.max(width, height * 1.2) / (narrow ? 20 : 44);

/** One cloth of the picture, mm. */
interface Sheet {
  readonly id: string;
  readonly label: string;
  readonly width: number;
  readonly length: number;
  readonly said: string;
  readonly wide: string;
  /** Its own colour; paper where it is only printed. */
  readonly colour?: string;
}

const printedSheet = (envelope: Envelope, row: ClothRow, size: number): Sheet => {
  const said = formatLength(lengthOf(row, size), unitOf(envelope), { purpose: 'cloth', locale });
  return {
    id: `cloth-${sayClothRow(envelope, row)}-${row.nap}`,
    label: `${sayClothRow(envelope, row)}: ${said}`,
    width: row.width,
    length: lengthOf(row, size),
    said,
    wide: fill(words.widthSaid, { length: widthAsPrinted(envelope, row.width) }, 'cm'),
  };
};

const reckonedSheet = ({ name, width, buy, colour, unit }: ReckonedCloth, narrow: boolean): Sheet => {
  const said = fill(words.reckoned, { length: formatLength(buy, unit, { purpose: 'cloth', locale }) }, unit, locale);
  const wide = fill(words.widthSaid, { length: formatLength(width, unit, { locale }) }, unit, locale);
  return {
    id: 'cloth-reckoned',
    label: `${name}: ${said}, ${wide}`,
    width,
    length: buy,
    said,
    wide: name === '' || narrow ? wide : `${name}, ${wide}`,
    colour,
  };
};

const drawSheet = (sheet: Sheet, at: number, top: number, em: number): Mark => {
  const { width, length, colour } = sheet;
  const box = rectangle(at, top, width, length);
  const middle = at + width / 2;
  // On cloth of her own, whatever its colour, words would be hard to read: they stand below it.
  const y = colour === undefined ? top + length / 2 : top + length + em * 1.5;
  return groupMark(sheet.id, sheet.label, [
    colour === undefined
      ? filledMark('cloth', 'paper', box)
      : { kind: 'path', layer: 'cloth', ink: 'cloth', paths: [box], filled: true, colour },
    pathMark('cloth', 'cloth', box),
    pathMark('cloth', 'selvage', stroke({ x: at, y: top }, { x: at, y: top + length })),
    pathMark('cloth', 'selvage', stroke({ x: at + width, y: top }, { x: at + width, y: top + length })),
    textMark('words', 'mark', { x: middle, y }, sheet.said, em * 1.2, { anchor: 'middle', weight: 'bold' }),
    textMark('words', 'mark', { x: middle, y: y + em * 1.4 }, sheet.wide, em, { anchor: 'middle' }),
  ]);
};

/**
 * Cloth needed as it would lie: every width printed, to scale, selvages at its sides, a row of them for each view, and
 * last what was reckoned for another width. On a phone one view, of the row worked in. Null where nothing is printed for
 * the size.
 */
export const drawClothNeeded = (
  envelope: Envelope,
  size: string,
  { narrow, row: worked, view, reckoned = null }: ClothPicture,
): Drawing | null => {
  const index = envelope.sizes.indexOf(size);
  const rows = envelope.clothNeeded.filter(
    (row) =>
      row.layer === 'shell' &&
      lengthOf(row, index) > 0 &&
      (view === undefined || row.view === view || row.view === null),
  );
  if (rows.length === 0) return null;
  const all = [...new Set(rows.map((row) => row.view))];
  const own = envelope.clothNeeded[worked]?.view;
  const views = narrow ? [own !== undefined && all.includes(own) ? own : (all[0] ?? null)] : all;
  const lines = views.map((one, place) => ({
    view: one,
    sheets: [
      ...rows.filter((row) => row.view === one).map((row) => printedSheet(envelope, row, index)),
      ...(reckoned && place === views.length - 1 ? [reckonedSheet(reckoned, narrow)] : []),
    ],
  }));
  const tallest = ({ sheets }: (typeof lines)[number]) => Math.max(...sheets.map(({ length }) => length));
  const breadth = Math.max(...lines.map(({ sheets }) => sheets.reduce((sum, { width }) => sum + width + apart, 0)));
  const height = lines.reduce((sum, line) => sum + tallest(line) + apart * 2, 0);
  const em = emFor(breadth, height, narrow);
  let top = 0;
  const marks = lines.flatMap((line): readonly Mark[] => {
    let left = 0;
    const name = viewName(envelope, line.view);
    const head = textMark('words', 'mark', { x: 0, y: top - em * 0.7 }, name, em * 1.1, { weight: 'bold' });
    const drawn = line.sheets.map((sheet) => {
      const mark = drawSheet(sheet, left, top, em);
      left += sheet.width + Math.max(apart, em * 3);
      return mark;
    });
    top += tallest(line) + em * 3.2;
    return [head, ...drawn];
  });
  return drawingOf(fill(words.cloth, { name: envelope.name, size }, 'cm'), marks, em);
};
