import { pathEnd, pathStart, tolerance } from '../geometry/index.ts';
import { type Garment, type Piece, pieceOf, type SeamSide } from '../pattern/index.ts';
import { moveCorner } from './corner.ts';
import { runIndices } from './ring.ts';
import { type Tape, walked } from './tape.ts';

/** Truing the lower end of a side seam by more than this, mm, is no truing any more. */
const mostTrued = 3;

/**
 * Two edges redrawn alike may differ by a little where one is steeper than the other. As at the table, the longer of
 * the two is walked along its mate and its lower corner marked where the mate ends.
 */
export const trueSeams = (tape: Tape, before: Garment, after: Garment, lengthened: ReadonlySet<string>): Garment => {
  let garment = after;
  for (const seam of garment.seams) {
    if (!lengthened.has(seam.a.piece) || !lengthened.has(seam.b.piece)) continue;
    const was = walked(tape, seam, (id) => pieceOf(before, id)).difference;
    const walk = walked(tape, seam, (id) => pieceOf(garment, id));
    const over = walk.difference - was;
    if (Math.abs(walk.excess) <= tolerance.seam / 2 || Math.abs(over) > mostTrued) continue;
    const longer: SeamSide = over > 0 ? seam.a : seam.b;
    const pieces = garment.pieces.map((piece) =>
      piece.id === longer.piece ? moveCorner(piece, longer.edge, lowerEnd(piece, longer.edge), -Math.abs(over)) : piece,
    );
    garment = { ...garment, pieces };
  }
  return garment;
};

/** The end of an edge that lies lower on the piece. */
export const lowerEnd = (piece: Piece, edge: string): 'start' | 'end' => {
  const indices = runIndices(piece.runs, edge);
  const start = pathStart((piece.runs[indices[0] as number] as Piece['runs'][number]).path);
  const end = pathEnd((piece.runs[indices.at(-1) as number] as Piece['runs'][number]).path);
  return start.y > end.y ? 'start' : 'end';
};
