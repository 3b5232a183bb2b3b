import { type Bounds, type Point, pathBounds } from '../../src/geometry/index.ts';
import { cutLine, type Garment, type Piece } from '../../src/pattern/index.ts';

/** Where each piece lies when a garment is spread out: how far it is moved, by piece id. */
export type Spread = ReadonlyMap<string, Point>;

interface Box {
  readonly id: string;
  readonly bounds: Bounds;
  readonly width: number;
  readonly height: number;
}

const boxOf = (piece: Piece): Box => {
  const bounds = pathBounds(cutLine(piece));
  return { id: piece.id, bounds, width: bounds.maxX - bounds.minX, height: bounds.maxY - bounds.minY };
};

interface Rows {
  readonly spread: Spread;
  readonly width: number;
  readonly height: number;
}

/** Pieces in rows no wider than `most`, in their own order, tops level. */
const inRows = (boxes: readonly Box[], most: number, gap: number): Rows => {
  const spread = new Map<string, Point>();
  let [x, y, rowHeight, width] = [0, 0, 0, 0];
  for (const box of boxes) {
    if (x > 0 && x + box.width > most) {
      x = 0;
      y += rowHeight + gap;
      rowHeight = 0;
    }
    spread.set(box.id, { x: x - box.bounds.minX, y: y - box.bounds.minY });
    x += box.width + gap;
    width = Math.max(width, x - gap);
    rowHeight = Math.max(rowHeight, box.height);
  }
  return { spread, width, height: y + rowHeight };
};

/**
 * Spreads a garment's pieces out beside each other, none overlapping, in rows whose whole is as broad to
 * its height as `aspect` as rows can make it. `gap` mm is left between pieces. Tall pieces come first.
 */
export const spreadPieces = (garment: Garment, aspect: number, gap: number): Spread => {
  const boxes = garment.pieces.map(boxOf).toSorted((a, b) => b.height - a.height);
  const whole = boxes.reduce((sum, box) => sum + box.width + gap, 0);
  const widest = Math.max(...boxes.map((box) => box.width), 1);
  /** The side of the screen that would be needed: the smaller, the larger the pieces can be seen. */
  const needed = (rows: Rows) => Math.max(rows.width / aspect, rows.height);
  let best = inRows(boxes, whole, gap);
  for (let share = 0.95; share * whole >= widest; share -= 0.05) {
    const rows = inRows(boxes, share * whole, gap);
    if (needed(rows) < needed(best)) best = rows;
  }
  return best.spread;
};
