import {
  drawOverlay,
  type Mark,
  moveMarks,
  type Overlay,
  pieceGroup,
  rectangle,
  sayCut,
  stroke,
  type TextWidth,
} from '../draw/index.ts';
import {
  applyToPath,
  flattenPath,
  type Path,
  type Point,
  pathBounds,
  tolerance,
  translation,
} from '../geometry/index.ts';
import { cutLine, type Piece } from '../pattern/index.ts';
import { fill, formatsWords as words } from '../words/index.ts';
import { type CellSize, cellShape, cellSizeFor } from './cell-shape.ts';
import { packSheet } from './pack-sheet.ts';
import type { TileFrame } from './paper.ts';
import type { SheetRequest } from './print-request.ts';
import { type Joint, jointsOf, type Tile, tilesOf } from './tiles.ts';

/** A piece to be printed, in its own coordinates. */
export interface PrintPiece {
  readonly piece: Piece;
  readonly number: number;
  readonly cut: Path;
  readonly original: Piece | undefined;
  /** The cut lines of the piece and of the piece as bought, flattened: what the paper must hold. */
  readonly footprint: readonly (readonly Point[])[];
  /** Printed in place of the piece: what changed on it. */
  readonly overlay?: Overlay;
  /** Drawn as it was for an earlier print, because it has not changed since. */
  readonly asPrinted?: SheetRequest;
  /** `Front: cut 1 of cloth, on the fold`. */
  readonly entry: string;
}

/** The same piece where it lies on the virtual sheet; cut and footprint lie there too. */
export interface PlacedPiece extends PrintPiece {
  /** What was added to its own coordinates. */
  readonly by: Point;
}

/** Everything laid on one virtual sheet. */
export interface Sheet {
  readonly pieces: readonly PlacedPiece[];
  readonly tiles: readonly Tile[];
  /** Those of them that are printed: all, or those to be exchanged. */
  readonly printed: readonly Tile[];
  readonly joints: readonly Joint[];
  /** Down to where the sheet is used, mm. */
  readonly length: number;
}

/** How much of a tile's height is pattern, mm: a roll is cut off below the last piece. */
export const tileHeight = ({ row }: Pick<Tile, 'row'>, frame: TileFrame, { length }: Pick<Sheet, 'length'>): number =>
  frame.paper.roll ? Math.min(frame.stepY, length - row * frame.stepY) : frame.stepY;

/** A page with so much pattern on it, and what stands round that, mm. */
export const pageHeight = (height: number, frame: TileFrame): number =>
  height + frame.overlap + frame.header + 2 * frame.margin;

/** Kept free round each piece on the virtual sheet, mm: room for scissors, and lines stay clear of joints. */
const pieceGap = 5;
/** About the size of a cell when pieces are packed, mm. */
const packingCell = 8;
/** No virtual sheet is wider than this many tiles: a wider one cannot be joined on a table. */
const mostColumns = 8;
/** Em of the words on pieces, mm: 12.5 point. */
const labelSize = 4.4;
/** On a narrow piece, so that all that is needed stands on it: 9 point. */
const leastLabelSize = 3.17;

export const printPiece = (piece: Piece, number: number, request: SheetRequest): PrintPiece => {
  const { unit, locale = 'en' } = request;
  const original = request.original?.pieces.find((one) => one.id === piece.id);
  const cut = cutLine(piece);
  return {
    piece,
    number,
    cut,
    original,
    footprint: [cut, ...(original ? [cutLine(original)] : [])].map((path) => flattenPath(path, tolerance.flatten)),
    entry: fill(
      words.pieceEntry,
      { name: piece.name, cut: sayCut(piece, unit, locale).map(lowerFirst).join('; ') },
      unit,
      locale,
    ),
  };
};

/** The same piece as an overlay: its frame is what the paper must hold. */
export const overlayPiece = (piece: PrintPiece, request: SheetRequest, textWidth: TextWidth): PrintPiece => {
  const { unit, locale = 'en' } = request;
  const overlay = drawOverlay(piece.original, piece.piece, {
    unit,
    locale,
    textWidth,
    textSize: overlayTextSize,
    cuts: (request.cuts ?? []).filter((cut) => cut.piece === piece.piece.id),
    notes: [
      `${fill(words.sizeFact, { size: request.size }, unit, locale)} · ${request.title}`,
      ...alterationsOf(request, piece.piece).map(({ text }) => text),
    ],
  });
  const { minX, minY, maxX, maxY } = overlay.box;
  const frame = rectangle(minX, minY, maxX - minX, maxY - minY);
  return { ...piece, overlay, cut: frame, footprint: [flattenPath(frame, tolerance.flatten)] };
};

/** 10 point. */
const overlayTextSize = 3.53;

/** The alterations that touched a piece, each with its place in the list. */
const alterationsOf = (request: SheetRequest, piece: Piece): readonly { readonly text: string }[] =>
  (request.alterations ?? []).flatMap(({ text, pieces }, index) =>
    (pieces?.includes(piece.id) ?? true) ? [{ text: `${index + 1}: ${text}` }] : [],
  );

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Lays the pieces on the sheet, leaving its top left free for what is told about the print. */
export const layOut = (
  pieces: readonly PrintPiece[],
  frame: TileFrame,
  reserved: { readonly width: number; readonly height: number },
): Sheet => {
  const cell: CellSize = cellSizeFor(frame.stepX, frame.stepY, packingCell);
  const shapes = pieces.map((piece) => cellShape(piece.footprint, cell, pieceGap));
  const columns = frame.paper.roll ? 1 : mostColumns;
  const packed = packSheet(shapes, cell, { x: frame.stepX, y: frame.stepY }, columns, reserved);
  const placed = pieces.map((piece, index) => placedAt(piece, packed.places[index] as Point));
  const box = [
    { x: 0, y: 0 },
    { x: reserved.width, y: 0 },
    { x: reserved.width, y: reserved.height },
    { x: 0, y: reserved.height },
  ];
  const shapesOnSheet = [...placed.flatMap((piece) => piece.footprint), ...(reserved.height > 0 ? [box] : [])];
  const tiles = tilesOf(shapesOnSheet, frame);
  return { pieces: placed, tiles, printed: tiles, joints: jointsOf(tiles), length: Math.ceil(packed.length) };
};

export const placedAt = (piece: PrintPiece, by: Point): PlacedPiece => ({
  ...piece,
  by,
  cut: applyToPath(translation(by), piece.cut),
  footprint: piece.footprint.map((polygon) => polygon.map((p) => ({ x: p.x + by.x, y: p.y + by.y }))),
});

/** A piece with its marks and its label, which keeps off the borders of sheets where it can, drawn in its place. */
export const drawPlaced = (
  placed: PlacedPiece,
  frame: TileFrame,
  asked: SheetRequest,
  textWidth: TextWidth,
): { readonly marks: readonly Mark[]; readonly labelled: boolean } => {
  const request = placed.asPrinted ?? asked;
  const { unit, locale = 'en' } = request;
  if (placed.overlay) return { marks: moveMarks(placed.overlay.marks, translation(placed.by)), labelled: true };
  const altered = (request.alterations ?? []).filter((one) => one.pieces?.includes(placed.piece.id) ?? true);
  const group = pieceGroup(placed.piece, {
    unit,
    locale,
    ...(placed.original ? { original: placed.original } : {}),
    size: `${request.size} · ${request.title}`,
    notes: [
      words.grainNote,
      ...altered.map(({ text }) => fill(words.altered, { what: text }, unit, locale)),
      ...(request.make === undefined ? [] : [fill(words.made, { make: request.make }, unit, locale)]),
    ],
    textSize: labelSize,
    leastTextSize: leastLabelSize,
    textWidth,
    avoid: bordersOver(placed, frame),
    namedOutside: false,
  });
  return {
    marks: moveMarks(group.marks, translation(placed.by)),
    labelled: group.marks.some((mark) => mark.kind === 'text' && mark.weight === 'bold'),
  };
};

/** Where the borders of tiles cross a piece, in its own coordinates. */
const bordersOver = ({ cut, by }: PlacedPiece, frame: TileFrame): Path[] => {
  const { minX, minY, maxX, maxY } = pathBounds(applyToPath(translation({ x: -by.x, y: -by.y }), cut));
  const multiples = (low: number, high: number, step: number): number[] => {
    const first = Math.ceil(low / step);
    return Array.from(
      { length: Math.max(0, Math.floor(high / step) - first + 1) },
      (_, index) => (first + index) * step,
    );
  };
  const downs = multiples(minX + by.x, maxX + by.x, frame.stepX).map((x) => x - by.x);
  const acrosses = multiples(minY + by.y, maxY + by.y, frame.stepY).map((y) => y - by.y);
  return [
    ...downs.map((x) => stroke({ x, y: minY }, { x, y: maxY })),
    ...acrosses.map((y) => stroke({ x: minX, y }, { x: maxX, y })),
  ];
};
