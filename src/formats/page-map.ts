import {
  type Drawing,
  drawingOf,
  filledMark,
  type GroupMark,
  groupMark,
  type Mark,
  pathMark,
  rectangle,
  roomForWords,
  type TextMark,
  type TextWidth,
  textMark,
} from '../draw/index.ts';
import type { Path } from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
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
  /** Every page of the file, those before the pattern too. */
  readonly pages: number;
  /** How much of a roll is used, mm; null for paper in sheets. */
  readonly length: number | null;
}

/** Em of the words, as a share of the longer side of what is drawn: read when all of it is seen. */
const textShare = 1 / 48;

/**
 * The sheets a print will take, joined as they will be, with the pieces on them. `textWidth` is of the fonts it will be
 * printed with: what is told about the print takes room on a large sheet. Problem: `formats.nothing-to-print`.
 */
export const drawPageMap = (request: SheetRequest, textWidth: TextWidth): Result<PageMap> => {
  if (request.garment.pieces.length === 0) return bad('formats.nothing-to-print');
  const plan = planPrint(request, textWidth);
  const { tiles, pieces } = plan.sheet;
  const frames = tiles.map((tile) => tileFrameOf(tile, plan));
  const { bounds } = drawingOf('', [pathMark('cut', 'paper', ...frames)], 0);
  const size = Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY) * textShare;
  const groups = pieces.map((piece) => pieceMark(piece, plan, frames, size, textWidth, request));
  const label = fill(
    words.mapLabel,
    {
      paper: words.paper[request.paper],
      count: tiles.length,
      pieces: groups.map((group) => group.label).join('; '),
    },
    request.unit,
    request.locale,
  );
  const marks = [
    ...frames.map((frame) => filledMark('cut', 'paper', frame)),
    pathMark('marks', 'faint', ...frames),
    ...sheetNames(tiles, plan, size),
    ...coverMarks(plan, size),
    ...groups,
  ];
  return good({
    drawing: drawingOf(label, marks, size),
    tiles: tiles.map((tile) => tile.name),
    pages: tiles.length + plan.coverApart.length,
    length: rollLength(plan),
  });
};

const rollLength = ({ frame, sheet }: PrintPlan): number | null =>
  frame.paper.roll
    ? sheet.tiles.reduce((sum, tile) => sum + pageHeight(tileHeight(tile, frame, sheet), frame), 0)
    : null;

const tileFrameOf = (tile: Tile, { frame, sheet }: PrintPlan): Path =>
  rectangle(tile.column * frame.stepX, tile.row * frame.stepY, frame.stepX, tileHeight(tile, frame, sheet));

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

/** Where what is told about the print stands: sheets of its own to the left, or the head of the first. */
const coverMarks = ({ frame, coverApart, reserved }: PrintPlan, size: number): readonly Mark[] => {
  const said = (lines: readonly string[], left: number, top: number) =>
    lines.map((text, index) =>
      textMark('words', 'mark', { x: left + size * 0.6, y: top + size * (1.4 + index * 1.3) }, text, size),
    );
  if (reserved.height > 0) {
    const box = rectangle(0, 0, reserved.width, reserved.height);
    return [pathMark('marks', 'faint', box), ...said(words.mapCoverHere, 0, 0)];
  }
  const left = -frame.stepX - size * 3;
  return coverApart.flatMap((_, index) => {
    const top = index * (frame.stepY + size);
    const sheet = rectangle(left, top, frame.stepX, frame.stepY);
    return [
      filledMark('cut', 'paper', sheet),
      pathMark('marks', 'faint', sheet),
      ...(index === 0 ? said(words.mapCover, left, top) : []),
    ];
  });
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
  const label = fill(words.mapPiece, { name: placed.piece.name, sheets: sheets.join(', ') }, unit, locale);
  return groupMark(placed.piece.id, label, [
    pathMark('cut', 'cut', placed.cut),
    ...nameOn(placed, borders, size, textWidth),
  ]);
};

/** The piece's name where it lies on the paper, off the borders of sheets if it can be; broken between words in a narrow one. */
const nameOn = (
  { piece, cut }: PlacedPiece,
  borders: readonly Path[],
  size: number,
  textWidth: TextWidth,
): readonly TextMark[] => {
  const room = roomForWords(cut, [], borders);
  const broken = piece.name.split(' ');
  for (const clearOf of ['everything', 'lines'] as const) {
    for (const lines of [[piece.name], broken]) {
      const width = Math.max(...lines.map((text) => textWidth(text, size, 'bold')));
      const height = size * (1 + 1.2 * (lines.length - 1));
      const level = room.find(width, height, undefined, clearOf);
      const centre = level ?? room.find(height, width, undefined, clearOf);
      if (!centre) continue;
      return lines.map((text, index) => {
        const down = -height / 2 + size * (0.75 + 1.2 * index);
        const at = level ? { x: centre.x, y: centre.y + down } : { x: centre.x + down, y: centre.y };
        const angle = level ? 0 : -Math.PI / 2;
        return textMark('words', 'mark', at, text, size, { anchor: 'middle', angle, weight: 'bold' });
      });
    }
  }
  return [];
};
