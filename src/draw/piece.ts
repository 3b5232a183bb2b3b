import type { Path } from '../geometry/index.ts';
import { cutLine, dartsOf, outlineOf, type Piece } from '../pattern/index.ts';
import type { Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { drawingOf, estimatedTextWidth, filledMark, groupMark, pathMark, stroke, type TextWidth } from './marks.ts';
import {
  bustPointMarks,
  dartMarks,
  foldMarks,
  grainMarks,
  innerMarks,
  levelMarks,
  notchMark,
  snipMarks,
} from './piece-marks.ts';
import { type LabelLine, pieceWords } from './piece-words.ts';
import { sayAllowance, sayCut } from './say.ts';
import type { Drawing, DrawingLayer, GroupMark, Mark, PathMark } from './types.ts';

export interface PieceOptions {
  /** The unit of the reader. */
  readonly unit: Unit;
  readonly locale?: string;
  /** What to draw; everything when left out. */
  readonly layers?: readonly DrawingLayer[];
  /** The piece before its alterations, drawn under it in grey. */
  readonly original?: Piece;
  /** The size's name, for the label. */
  readonly size?: string;
  /** Further lines for the label: what was altered, whose make it is. */
  readonly notes?: readonly string[];
  /** Em of the words in mm of the drawing: a page that shows the piece small asks for larger words. */
  readonly textSize?: number;
  /** Where a piece has no room for what has to be on it, its words may be this small; not under `textSize` when left out. */
  readonly leastTextSize?: number;
  /** The true widths of the font it will be drawn with, where they are known. */
  readonly textWidth?: TextWidth;
  /** Lines the label should not cross where that can be had, such as the borders of sheets; in the piece's coordinates. */
  readonly avoid?: readonly Path[];
  /** A piece too small for its name has it above it, unless this says no. */
  readonly namedOutside?: boolean;
}

/** 14 point at full scale; on a piece with no room for that, no less than 10 point. */
const usualTextSize = 5;
const leastTextSize = 3.53;

/** What the middle of a piece says of it, most needed first, and how much of that has to be there. */
const labelOf = (
  piece: Piece,
  options: PieceOptions,
): { readonly label: readonly LabelLine[]; readonly needed: number } => {
  const { unit, locale = 'en' } = options;
  const size = options.size === undefined ? [] : [fill(drawWords.size, { size: options.size }, unit, locale)];
  const needed = [...size, ...sayCut(piece, unit, locale), sayAllowance(piece, unit, locale)];
  const lines = [...needed, ...(options.notes ?? [])];
  return {
    label: [{ text: piece.name, weight: 'bold' }, ...lines.map((text): LabelLine => ({ text, weight: 'regular' }))],
    needed: 1 + needed.length,
  };
};

/** The lines of the pattern as bought: stitching and cutting line and darts, in grey. */
export const originalMarks = (piece: Piece): readonly PathMark[] => [
  pathMark('original', 'original', cutLine(piece)),
  pathMark('original', 'original', outlineOf(piece)),
  ...dartsOf(piece).map((dart) =>
    pathMark('original', 'original', stroke(dart.legs[0], dart.point), stroke(dart.point, dart.legs[1])),
  ),
];

/** One piece as the trade draws it, as a group that can be pointed at. */
export const pieceGroup = (piece: Piece, options: PieceOptions): GroupMark => {
  const { unit, locale = 'en' } = options;
  const cut = cutLine(piece);
  const marks: readonly PathMark[] = [
    ...levelMarks(piece),
    ...innerMarks(piece),
    ...grainMarks(piece),
    ...dartMarks(piece),
    ...snipMarks(piece, cut),
    ...foldMarks(piece),
    ...bustPointMarks(piece),
    ...piece.notches.map((notch) => notchMark(piece, notch)),
  ];
  const wanted = (layer: DrawingLayer) => options.layers?.includes(layer) ?? true;
  const words = wanted('words')
    ? pieceWords(piece, marks, {
        size: options.textSize ?? usualTextSize,
        // A size that was asked for is the least that can be read where the drawing is shown.
        leastSize: options.leastTextSize ?? options.textSize ?? leastTextSize,
        textWidth: options.textWidth ?? estimatedTextWidth,
        ...labelOf(piece, options),
        avoid: options.avoid ?? [],
        outside: options.namedOutside ?? true,
      })
    : [];
  const all: readonly Mark[] = [
    filledMark('cut', 'paper', cut),
    ...(options.original ? originalMarks(options.original) : []),
    ...marks,
    pathMark('seam', 'seam', outlineOf(piece)),
    pathMark('cut', 'cut', cut),
    ...words,
  ];
  const label = fill(
    drawWords.pieceLabel,
    { name: piece.name, cut: sayCut(piece, unit, locale).join('; ') },
    unit,
    locale,
  );
  return groupMark(
    piece.id,
    label,
    all.filter((mark) => mark.kind === 'group' || wanted(mark.layer)),
  );
};

/** A drawing of one piece with all its marks. */
export const drawPiece = (piece: Piece, options: PieceOptions): Drawing => {
  const group = pieceGroup(piece, options);
  return drawingOf(group.label, [group], 10);
};
