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
import { formatLength } from '../../src/units/index.ts';
import { envelopePageWords, fill } from '../../src/words/index.ts';
import { locale } from '../app/settings.tsx';
import { unitOf } from './figures.ts';
import { sayClothRow, viewName, widthAsPrinted } from './row-words.ts';

const words = envelopePageWords.picture;

const lengthOf = (row: ClothRow, size: number): number => {
  const figure = row.figures[size] ?? null;
  return typeof figure === 'number' ? figure : (figure?.[1] ?? 0);
};

/** Between one cloth and the next, mm; the words under each stand in it. */
const apart = 260;

/** Ems of words, mm, for cloths this long: they must read when all of it is seen. */
const emFor = (width: number, height: number, narrow: boolean): number =>
  Math.max(width, height * 1.2) / (narrow ? 20 : 44);

/**
 * Cloth needed as it would lie: every width printed, to scale, selvages at its sides, a row of them for each view.
 * On a phone one view, of the row worked in. Null where nothing is printed for the size.
 */
export const drawClothNeeded = (
  envelope: Envelope,
  size: string,
  { narrow, row: worked, view }: { readonly narrow: boolean; readonly row: number; readonly view?: string | null },
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
  const lines = views.map((view) => rows.filter((row) => row.view === view));
  const breadth = Math.max(...lines.map((line) => line.reduce((sum, row) => sum + row.width + apart, 0)));
  const height = lines.reduce((sum, line) => sum + Math.max(...line.map((row) => lengthOf(row, index))) + apart * 2, 0);
  const em = emFor(breadth, height, narrow);
  let top = 0;
  const marks = lines.flatMap((line): readonly Mark[] => {
    const tallest = Math.max(...line.map((row) => lengthOf(row, index)));
    let left = 0;
    const head = textMark(
      'words',
      'mark',
      { x: 0, y: top - em * 0.7 },
      viewName(envelope, line[0]?.view ?? null),
      em * 1.1,
      {
        weight: 'bold',
      },
    );
    const drawn = line.map((row) => {
      const length = lengthOf(row, index);
      const at = left;
      left += row.width + Math.max(apart, em * 3);
      const box = rectangle(at, top, row.width, length);
      const said = formatLength(length, unitOf(envelope), { purpose: 'cloth', locale });
      const wide = fill(words.widthSaid, { length: widthAsPrinted(envelope, row.width) }, 'cm');
      return groupMark(`cloth-${sayClothRow(envelope, row)}-${row.nap}`, `${sayClothRow(envelope, row)}: ${said}`, [
        filledMark('cloth', 'paper', box),
        pathMark('cloth', 'cloth', box),
        pathMark('cloth', 'selvage', stroke({ x: at, y: top }, { x: at, y: top + length })),
        pathMark('cloth', 'selvage', stroke({ x: at + row.width, y: top }, { x: at + row.width, y: top + length })),
        textMark('words', 'mark', { x: at + row.width / 2, y: top + length / 2 }, said, em * 1.2, {
          anchor: 'middle',
          weight: 'bold',
        }),
        textMark('words', 'mark', { x: at + row.width / 2, y: top + length / 2 + em * 1.4 }, wide, em, {
          anchor: 'middle',
        }),
      ]);
    });
    top += tallest + em * 3.2;
    return [head, ...drawn];
  });
  return drawingOf(fill(words.cloth, { name: envelope.name, size }, 'cm'), marks, em);
};
