import { tolerance } from '../geometry/index.ts';
import { edgeLength, hasEdge, levelWidth, type Piece } from '../pattern/index.ts';

/** One measure of a piece that an alteration changed, signed, mm. */
export interface PieceChange {
  readonly kind: 'edge' | 'level';
  readonly id: string;
  readonly by: number;
}

/** Lengths of edges and widths at levels that differ by more than what an alteration holds. */
export const pieceChanges = (before: Piece, after: Piece): readonly PieceChange[] => {
  const edges = after.edges
    .filter((edge) => hasEdge(before, edge.id))
    .map(
      (edge): PieceChange => ({
        kind: 'edge',
        id: edge.id,
        by: edgeLength(after, edge.id) - edgeLength(before, edge.id),
      }),
    );
  const levels = after.levels
    .filter((level) => before.levels.some((one) => one.id === level.id))
    .map(
      (level): PieceChange => ({
        kind: 'level',
        id: level.id,
        by: levelWidth(after, level.id) - levelWidth(before, level.id),
      }),
    );
  return [...edges, ...levels].filter((change) => Math.abs(change.by) > tolerance.holds);
};
