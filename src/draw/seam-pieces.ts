import {
  applyToPath,
  applyToPoint,
  type Bounds,
  mirrorX,
  type Path,
  type Point,
  pathBounds,
  pathEnd,
  pathStart,
} from '../geometry/index.ts';
import {
  edgeRuns,
  type Garment,
  outlineOf,
  type Piece,
  pieceOf,
  type Seam,
  type SeamSide,
  transformPiece,
} from '../pattern/index.ts';
import { drawWords } from '../words/index.ts';
import { circle, estimatedTextWidth, filledMark, groupMark, pathMark, textMark } from './marks.ts';
import type { Mark } from './types.ts';

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A piece with the edges of it that were walked. */
interface Shown {
  readonly piece: Piece;
  readonly name: string;
  readonly sides: readonly SeamSide[];
}

/**
 * Where a seam is: its pieces small and side by side, both to the same scale, the walked edges in a heavy line, and a dot
 * where the walk began. A piece sewn to its own mirror image is shown with it, one sewn to itself once.
 */
export const seamOnPieces = (seam: Seam, garment: Garment, box: Box, size: number): readonly Mark[] => {
  const shown = piecesOf(seam, garment);
  const bounds = shown.map(({ piece }) => pathBounds(outlineOf(piece)));
  const gap = size * 2;
  const widths = bounds.map(({ minX, maxX }) => maxX - minX);
  const heights = bounds.map(({ minY, maxY }) => maxY - minY);
  const scale = Math.min(
    (box.width - gap * (shown.length - 1)) / widths.reduce((sum, width) => sum + width, 0),
    (box.height - size * 2) / Math.max(...heights),
  );
  let left = box.left;
  return shown.map((one, index) => {
    const at = { left, top: box.top, scale, bounds: bounds[index] as Bounds };
    // A name may be longer than its piece is wide.
    left += Math.max((widths[index] as number) * scale, estimatedTextWidth(one.name, size * 1.3, 'regular')) + gap;
    return smallPiece(one, at, box.top + Math.max(...heights) * scale + size * 1.4, size);
  });
};

const piecesOf = ({ a, b }: Seam, garment: Garment): readonly Shown[] => {
  const [pieceA, pieceB] = [pieceOf(garment, a.piece), pieceOf(garment, b.piece)];
  if (a.piece !== b.piece) {
    return [
      { piece: pieceA, name: pieceA.name, sides: [a] },
      { piece: pieceB, name: pieceB.name, sides: [b] },
    ];
  }
  if (a.edge !== b.edge) return [{ piece: pieceA, name: pieceA.name, sides: [a, b] }];
  // A mirror turns the outline about, and with it the way the edge is walked.
  const mirrored = { piece: transformPiece(pieceA, mirrorX()), name: drawWords.mirrorImage };
  return [
    { ...mirrored, sides: [{ ...b, reversed: !b.reversed }] },
    { piece: pieceA, name: pieceA.name, sides: [a] },
  ];
};

interface Place {
  readonly left: number;
  readonly top: number;
  readonly scale: number;
  readonly bounds: Bounds;
}

const smallPiece = ({ piece, name, sides }: Shown, place: Place, nameAt: number, size: number): Mark => {
  const { left, top, scale, bounds } = place;
  const small = { a: scale, b: 0, c: 0, d: scale, e: left - bounds.minX * scale, f: top - bounds.minY * scale };
  const made = (path: Path): Path => applyToPath(small, path);
  const starts = sides.map((side) => circle(applyToPoint(small, walkStart(piece, side)), size * 0.22));
  return groupMark(`${piece.id}-small`, name, [
    filledMark('cut', 'paper', made(outlineOf(piece))),
    pathMark('seam', 'seam', made(outlineOf(piece))),
    pathMark('cut', 'cut', ...sides.flatMap((side) => edgeRuns(piece, side.edge).map(made))),
    filledMark('marks', 'mark', ...starts),
    textMark('words', 'mark', { x: left, y: nameAt }, name, size),
  ]);
};

/** Where on the piece the walk along an edge begins. */
const walkStart = (piece: Piece, { edge, reversed }: SeamSide): Point => {
  const runs = edgeRuns(piece, edge);
  return reversed ? pathEnd(runs[runs.length - 1] as Path) : pathStart(runs[0] as Path);
};
