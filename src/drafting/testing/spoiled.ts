import type { Cubic } from '../../geometry/index.ts';
import type { Garment, Piece } from '../../pattern/index.ts';

/** A garment with one of its pieces changed: what shape checks have to see. */
export const changedPiece = (garment: Garment, id: string, change: (piece: Piece) => Piece): Garment => ({
  ...garment,
  pieces: garment.pieces.map((piece) => (piece.id === id ? change(piece) : piece)),
});

/** Moves one handle of one curve of an edge, mm. */
export const bent =
  (edge: string, which: number, handle: 'control1' | 'control2', x: number, y: number) =>
  (piece: Piece): Piece => ({
    ...piece,
    runs: piece.runs.map((run) =>
      run.kind === 'edge' && run.edge === edge
        ? {
            ...run,
            path: run.path.map((segment, i) => {
              const curve = segment as Cubic;
              return i === which ? { ...curve, [handle]: { x: curve[handle].x + x, y: curve[handle].y + y } } : segment;
            }),
          }
        : run,
    ),
  });
