import { type Mark, moveMarks, pathMark, rectangle, roomForWords, textMark } from '../draw/index.ts';
import { type Path, type Point, pathBounds } from '../geometry/index.ts';
import { columnName, type Tile } from './tiles.ts';

/** A piece as the map shows it: the number it has in the list, and its cut line on the sheet. */
export interface MapPiece {
  readonly number: number;
  readonly cut: Path;
}

/** From a sheet's border to its firm frame, mm on the map. */
const boldInset = 0.9;

/**
 * A small picture of how the sheets join and what lies on them: the printed tiles only, column letters above them,
 * row numbers beside them, pieces in outline with their numbers. Sheets whose names are in `bold` have a firm frame of their
 * own within their borders: those to be exchanged. Its top left is at 0, 0.
 */
export const sheetMap = (
  tiles: readonly Tile[],
  step: { readonly x: number; readonly y: number },
  pieces: readonly MapPiece[],
  box: { readonly width: number; readonly height: number },
  textSize: number,
  bold: ReadonlySet<string> | null = null,
): { readonly marks: readonly Mark[]; readonly height: number } => {
  const columns = Math.max(...tiles.map((tile) => tile.column)) + 1;
  const rows = Math.max(...tiles.map((tile) => tile.row)) + 1;
  const several = tiles.length > 1;
  const gutter = several ? textSize * 1.6 : 0;
  const scale = Math.min((box.width - gutter) / (columns * step.x), (box.height - gutter) / (rows * step.y));
  const placed = { a: scale, b: 0, c: 0, d: scale, e: gutter, f: gutter };
  const outlines = pieces.map((piece) => pathMark('words', 'mark', piece.cut));
  const frames = tiles.map((tile) =>
    pathMark('words', 'faint', rectangle(tile.column * step.x, tile.row * step.y, step.x, step.y)),
  );
  const within = boldInset / scale;
  const firm = tiles
    .filter(({ name }) => bold?.has(name))
    .map(({ column, row }) =>
      pathMark(
        'words',
        'cut',
        rectangle(column * step.x + within, row * step.y + within, step.x - 2 * within, step.y - 2 * within),
      ),
    );
  const borders = frames.flatMap((mark) => mark.paths);
  const numbers = pieces.map((piece) => {
    const at = numberPlace(piece.cut, borders, (textSize * 1.1) / scale);
    return textMark(
      'words',
      'mark',
      { x: gutter + at.x * scale, y: gutter + at.y * scale + textSize * 0.3 },
      `${piece.number}`,
      textSize,
      { anchor: 'middle', weight: 'bold' },
    );
  });
  const names = several
    ? [
        ...Array.from({ length: columns }, (_, column) =>
          textMark(
            'words',
            'mark',
            { x: gutter + (column + 0.5) * step.x * scale, y: gutter - textSize * 0.4 },
            columnName(column),
            textSize,
            {
              anchor: 'middle',
            },
          ),
        ),
        ...Array.from({ length: rows }, (_, row) =>
          textMark(
            'words',
            'mark',
            { x: 0, y: gutter + (row + 0.5) * step.y * scale + textSize * 0.3 },
            `${row + 1}`,
            textSize,
          ),
        ),
      ]
    : [];
  return {
    marks: [...moveMarks([...frames, ...firm, ...outlines], placed), ...numbers, ...names],
    height: gutter + rows * step.y * scale,
  };
};

/** A place for the number inside a piece, off the borders of sheets where there is one; in the middle of what is too small. */
const numberPlace = (cut: Path, borders: readonly Path[], size: number): Point => {
  const room = roomForWords(cut, [], borders);
  const found = room.find(size, size, undefined, 'everything') ?? room.find(size, size);
  if (found) return found;
  const { minX, minY, maxX, maxY } = pathBounds(cut);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
};
