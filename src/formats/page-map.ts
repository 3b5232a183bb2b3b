import {
  type Drawing,
  drawingOf,
  filledMark,
  type GroupMark,
  groupMark,
  type Mark,
  moveMarks,
  pathMark,
  rectangle,
  roomForWords,
  type TextMark,
  type TextWidth,
  textMark,
} from '../draw/index.ts';
import { type Path, translation } from '../geometry/index.ts';
import { good, type Result } from '../units/index.ts';
import { fill, formatsWords as words } from '../words/index.ts';
import { type PrintPlan, planPrint } from './print-plan.ts';
import type { SheetRequest } from './print-request.ts';
import { type PlacedPiece, pageHeight, tileHeight } from './print-sheet.ts';
import { columnName, type Tile, tilesOf } from './tiles.ts';

/** What a print will be, before it is made. */
export interface PageMap {
  /** The sheets joined, at true scale, and the pieces on them. */
  readonly drawing: Drawing;
  /** Names of the sheets that carry the pattern, in page order. */
  readonly tiles: readonly string[];
  /** Where sheets of an earlier print are exchanged: those of it that stay, those on which nothing is drawn any more. */
  readonly kept: readonly string[];
  readonly gone: readonly string[];
  /** Pieces that have no room where they lay and are printed on sheets of their own. */
  readonly apart: readonly string[];
  /** Each piece, by its number in the printed list, and the sheets it lies on. */
  readonly pieces: readonly { readonly number: number; readonly name: string; readonly sheets: readonly string[] }[];
  /** Every page of the file, those before the pattern too. */
  readonly pages: number;
  /** How much of a roll is used, mm; null for paper in sheets. */
  readonly length: number | null;
}

/** Em of the words, as a share of the longer side of what is drawn: read when all of it is seen. */
const textShare = 1 / 48;

/**
 * The sheets a print will take, joined as they will be, with the pieces on them. `textWidth` is of the fonts it will be
 * printed with: what is told about the print takes room on a large sheet. Problems: those of `planPrint`.
 */
export const drawPageMap = (request: SheetRequest, textWidth: TextWidth): Result<PageMap> => {
  const planned = planPrint(request, textWidth);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const { tiles, pieces, printed } = plan.sheet;
  const frames = tiles.map((tile) => tileFrameOf(tile, plan));
  const { bounds } = drawingOf('', [pathMark('cut', 'paper', ...frames)], 0);
  const size = Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY) * textShare;
  const groups = pieces.map((piece) => pieceMark(piece, plan, frames, size, textWidth, request));
  const label = fill(
    words.mapLabel,
    {
      paper: words.paper[request.paper],
      count: printed.length,
      pieces: groups.map((group) => group.label).join('; '),
    },
    request.unit,
    request.locale,
  );
  const marks = [
    ...frames.map((frame) => filledMark('cut', 'paper', frame)),
    pathMark('marks', 'faint', ...frames),
    ...(plan.exchange ? [pathMark('marks', 'changed', ...printed.map((tile) => insetFrameOf(tile, plan)))] : []),
    ...sheetNames(tiles, plan, size),
    ...coverMarks(plan, size),
    ...groups,
  ];
  return good({
    drawing: drawingOf(label, marks, size),
    tiles: printed.map((tile) => tile.name),
    kept: tiles.filter((tile) => !printed.includes(tile)).map((tile) => tile.name),
    gone: (plan.exchange?.gone ?? []).map((tile) => tile.name),
    apart: (plan.exchange?.apart ?? []).map(({ piece }) => piece.name),
    pieces: pieces.map((piece) => ({
      number: piece.number,
      name: piece.piece.name,
      sheets: tilesOf(piece.footprint, plan.frame).map((tile) => tile.name),
    })),
    pages: printed.length + plan.coverApart.length,
    length: rollLength(plan),
  });
};

const rollLength = ({ frame, sheet }: PrintPlan): number | null =>
  frame.paper.roll
    ? sheet.tiles.reduce((sum, tile) => sum + pageHeight(tileHeight(tile, frame, sheet), frame), 0)
    : null;

const tileFrameOf = (tile: Tile, { frame, sheet }: PrintPlan): Path =>
  rectangle(tile.column * frame.stepX, tile.row * frame.stepY, frame.stepX, tileHeight(tile, frame, sheet));

/** Within a sheet's border, mm, so that it is told whose frame it is. */
const insetFrame = 8;

const insetFrameOf = ({ column, row }: Tile, { frame }: PrintPlan): Path =>
  rectangle(
    column * frame.stepX + insetFrame,
    row * frame.stepY + insetFrame,
    frame.stepX - 2 * insetFrame,
    frame.stepY - 2 * insetFrame,
  );

/** Column letters above the sheets and row numbers beside them, as on the printed map. */
const sheetNames = (tiles: readonly Tile[], { frame, sheet }: PrintPlan, size: number): readonly TextMark[] => {
  if (tiles.length < 2) return [];
  const columns = [...new Set(tiles.map((tile) => tile.column))];
  const rows = [...new Set(tiles.map((tile) => tile.row))];
  const name = (x: number, y: number, text: string) =>
    textMark('words', 'mark', { x, y }, text, size, { anchor: 'middle', weight: 'bold' });
  return [
    ...columns.map((column) => name((column + 0.5) * frame.stepX, -size * 0.5, columnName(column))),
    ...rows.map((row) =>
      name(-size, row * frame.stepY + tileHeight({ row }, frame, sheet) / 2 + size * 0.3, `${row + 1}`),
    ),
  ];
};

/**
 * What is told about the print, its lines only: the words on it are too small to be read here. On sheets of its own to
 * the left, or at the head of the first.
 */
const coverMarks = ({ frame, coverApart, coverHere }: PrintPlan, size: number): readonly Mark[] => {
  const lines = (marks: readonly Mark[]) => marks.filter((mark) => mark.kind === 'path');
  const { width, height } = frame.paper;
  const left = -width - size * 3;
  const apart = coverApart.flatMap((marks, index) => {
    const sheet = rectangle(-frame.margin, -frame.margin, width, height);
    const by = translation({ x: left + frame.margin, y: index * (height + size) + frame.margin });
    return moveMarks([filledMark('cut', 'paper', sheet), pathMark('marks', 'faint', sheet), ...lines(marks)], by);
  });
  const middle = { x: left + width / 2, y: -size * 0.5 };
  const said = textMark('words', 'mark', middle, words.mapCover, size, { anchor: 'middle' });
  return [...lines(coverHere), ...apart, ...(coverApart.length > 0 ? [said] : [])];
};

/** A piece in its place, named; a screen reader is told which sheets it lies on. */
const pieceMark = (
  placed: PlacedPiece,
  plan: PrintPlan,
  borders: readonly Path[],
  size: number,
  textWidth: TextWidth,
  { unit, locale }: SheetRequest,
): GroupMark => {
  const sheets = tilesOf(placed.footprint, plan.frame).map((tile) => tile.name);
  const { number, piece } = placed;
  const label = fill(words.mapPiece, { number, name: piece.name, sheets: sheets.join(', ') }, unit, locale);
  return groupMark(piece.id, label, [pathMark('cut', 'cut', placed.cut), ...nameOn(placed, borders, size, textWidth)]);
};

/**
 * The piece's number in the list and its name, off the borders of sheets if that can be; the number alone where there is
 * room for no more.
 */
const nameOn = (
  { piece, number, cut }: PlacedPiece,
  borders: readonly Path[],
  size: number,
  textWidth: TextWidth,
): readonly TextMark[] => {
  const room = roomForWords(cut, [], borders);
  const numberWidth = textWidth(`${number}`, size, 'bold');
  const between = size * 0.4;
  const nameWidth = textWidth(piece.name, size, 'regular');
  for (const shown of ['number and name', 'number'] as const) {
    const all = numberWidth + (shown === 'number' ? 0 : between + nameWidth);
    const [width, height] = [all + between, size];
    for (const clearOf of ['everything', 'lines'] as const) {
      const level = room.find(width, height, undefined, clearOf);
      const centre = level ?? room.find(height, width, undefined, clearOf);
      if (!centre) continue;
      const angle = level ? 0 : -Math.PI / 2;
      const along = (by: number) =>
        level ? { x: centre.x + by, y: centre.y + size * 0.25 } : { x: centre.x + size * 0.25, y: centre.y - by };
      // Each grows away from the other where words are drawn larger than asked.
      const said = textMark('words', 'mark', along(numberWidth - all / 2), `${number}`, size, {
        angle,
        anchor: 'end',
        weight: 'bold',
      });
      if (shown === 'number') return [said];
      return [said, textMark('words', 'mark', along(all / 2 - nameWidth), piece.name, size, { angle })];
    }
  }
  return [];
};
