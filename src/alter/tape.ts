import { pathLength } from '../geometry/index.ts';
import type { Piece, Seam } from '../pattern/index.ts';

/** Lengths of a piece's edges, mm, darts closed, by edge. */
type EdgeLengths = Readonly<Record<string, number>>;

const edgeLengthsOf = (piece: Piece): EdgeLengths => {
  const lengths: Record<string, number> = Object.fromEntries(piece.edges.map(({ id }) => [id, 0]));
  for (const run of piece.runs) {
    if (run.kind === 'edge') lengths[run.edge] = (lengths[run.edge] ?? 0) + pathLength(run.path);
  }
  return lengths;
};

/** Measures edges, every piece once: an alteration asks for the same lengths many times over. */
export interface Tape {
  readonly edges: (piece: Piece) => EdgeLengths;
  readonly edge: (piece: Piece, edge: string) => number;
}

export const createTape = (): Tape => {
  const known = new Map<Piece, EdgeLengths>();
  const edges = (piece: Piece): EdgeLengths => {
    const found = known.get(piece) ?? edgeLengthsOf(piece);
    known.set(piece, found);
    return found;
  };
  const edge = (piece: Piece, id: string): number => {
    const length = edges(piece)[id];
    if (length === undefined) throw new Error(`Piece ${piece.id} has no edge ${id}`);
    return length;
  };
  return { edges, edge };
};

/** Length a − length b of a seam, and how far that lies outside its ease, mm. */
export const walked = (
  tape: Tape,
  seam: Seam,
  pieceOf: (id: string) => Piece,
): { readonly difference: number; readonly excess: number } => {
  const difference = tape.edge(pieceOf(seam.a.piece), seam.a.edge) - tape.edge(pieceOf(seam.b.piece), seam.b.edge);
  const { easeMin, easeMax } = seam;
  const excess = difference < easeMin ? difference - easeMin : difference > easeMax ? difference - easeMax : 0;
  return { difference, excess };
};
