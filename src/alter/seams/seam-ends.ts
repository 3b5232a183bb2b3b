import { edgeRuns, type Garment, pieceOf, type Seam, type SeamSide } from '../../pattern/index.ts';

export const seamNamed = (garment: Garment, id: unknown): Seam | undefined =>
  garment.seams.find((seam) => seam.id === id);

/** The end of a side can be carried on: what meets it there is an edge that is cut, neither a fold nor a dart. */
const isFree = (garment: Garment, side: SeamSide, end: 'start' | 'end'): boolean => {
  const piece = pieceOf(garment, side.piece);
  const runs = edgeRuns(piece, side.edge);
  const atStart = (end === 'start') !== side.reversed;
  const own = piece.runs.findIndex(({ path }) => path === (atStart ? runs[0] : runs.at(-1)));
  const count = piece.runs.length;
  const other = piece.runs[(own + (atStart ? count - 1 : 1)) % count];
  if (other?.kind !== 'edge' || other.edge === side.edge) return false;
  return piece.edges.find(({ id }) => id === other.edge)?.finish !== 'fold';
};

/** A side that is only a part of its edge ends inside it, where there is no corner to true. */
const isWhole = (side: SeamSide): boolean => !('part' in side) || side.part === undefined;

/** Ends at which a seam can be trued, the usual first. */
export const endsToTrue = (garment: Garment, seam: Seam): readonly ('start' | 'end')[] =>
  isWhole(seam.a) && isWhole(seam.b)
    ? (['end', 'start'] as const).filter((end) => isFree(garment, seam.a, end) && isFree(garment, seam.b, end))
    : [];

export const seamsToTrue = (garment: Garment): readonly Seam[] =>
  garment.seams.filter((seam) => endsToTrue(garment, seam).length > 0);
