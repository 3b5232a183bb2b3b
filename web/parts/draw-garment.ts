import {
  type Drawing,
  drawingOf,
  type GroupMark,
  type Mark,
  marksBounds,
  moveMarks,
  type PieceOptions,
  pieceGroup,
} from '../../src/draw/index.ts';
import { translation } from '../../src/geometry/index.ts';
import type { Garment } from '../../src/pattern/index.ts';
import { type Spread, spreadPieces } from './spread.ts';

/** Between pieces on the table, mm. */
export const pieceGap = 45;
/** The table is about this much broader than high. */
export const tableAspect = 1.05;

/** An em of words that reads on a table this wide, mm: about 16 px when all of it is seen. */
export const readableSize = (width: number): number => Math.max(5, width / 58);

const placed = (group: GroupMark, spread: Spread): Mark => {
  const by = spread.get(group.id);
  return by ? { ...group, marks: moveMarks(group.marks, translation(by)) } : group;
};

/** How wide a spread garment is, mm. */
export const spreadWidth = (garment: Garment, spread: Spread): number => {
  const bounds = marksBounds(
    garment.pieces.map((piece) => placed(pieceGroup(piece, { unit: 'cm', layers: ['cut'] }), spread)),
  );
  return bounds ? Math.max(bounds.maxX - bounds.minX, (bounds.maxY - bounds.minY) * tableAspect) : 0;
};

/** A garment's pieces spread out, with all their marks. */
export const drawGarment = (garment: Garment, label: string, options: PieceOptions): Drawing => {
  const spread = spreadPieces(garment, tableAspect, pieceGap);
  const textSize = readableSize(spreadWidth(garment, spread));
  const groups = garment.pieces.map((piece) => placed(pieceGroup(piece, { textSize, ...options }), spread));
  return drawingOf(label, groups, 10);
};
