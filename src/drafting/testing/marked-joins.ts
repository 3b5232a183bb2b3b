import { distance, endTangent, pathEnd, startTangent, tolerance, turnBetween } from '../../geometry/index.ts';
import type { Garment, Piece } from '../../pattern/index.ts';

/** An edge that turns by less than this into the next cannot be told from it on the cloth, radians. */
const runsOn = Math.PI / 18;

const sewnTo = (garment: Garment, piece: string, edge: string): string =>
  garment.seams
    .filter(({ a, b }) => [a, b].some((side) => side.piece === piece && side.edge === edge))
    .map(({ id }) => id)
    .join();

const isMarked = (piece: Piece, before: string, after: string, at: { readonly x: number; readonly y: number }) =>
  piece.notches.some(
    ({ edge, at: share }) =>
      (edge === before && share > 1 - tolerance.same) || (edge === after && share < tolerance.same),
  ) || piece.lines.some(({ path }) => path.some(({ from, to }) => [from, to].some((p) => distance(p, at) < 0.5)));

/**
 * Places where one seam ends and another begins on an edge that runs on without a corner, and nothing on the paper
 * shows it: the other piece's seam has nowhere to be set. As `piece: edge|edge`.
 */
export const unmarkedJoins = (garment: Garment): readonly string[] =>
  garment.pieces.flatMap((piece) =>
    piece.runs.flatMap((run, i) => {
      const next = piece.runs[(i + 1) % piece.runs.length];
      if (!next || run.kind !== 'edge' || next.kind !== 'edge' || run.edge === next.edge) return [];
      const [before, after] = [sewnTo(garment, piece.id, run.edge), sewnTo(garment, piece.id, next.edge)];
      if (before === '' || after === '') return [];
      if (Math.abs(turnBetween(endTangent(run.path), startTangent(next.path))) > runsOn) return [];
      return isMarked(piece, run.edge, next.edge, pathEnd(run.path)) ? [] : [`${piece.id}: ${run.edge}|${next.edge}`];
    }),
  );
