import { type Path, type Point, pathEnd, pathStart } from '../geometry/index.ts';
import {
  edgeRuns,
  type Garment,
  type Piece,
  type PieceRole,
  pieceOf,
  type Seam,
  type SeamSide,
} from '../pattern/index.ts';
import { runIndices } from './ring.ts';

/** How alterations find their way about a garment: what a piece is, where its edges end, what they are sewn to. */

export type End = 'start' | 'end';

/** One end of an edge, in outline order. */
export interface EdgeAt {
  readonly edge: string;
  readonly end: End;
}

export const other = (end: End): End => (end === 'start' ? 'end' : 'start');

const frontRoles: ReadonlySet<PieceRole> = new Set(['front', 'side-front']);
const backRoles: ReadonlySet<PieceRole> = new Set(['back', 'side-back', 'yoke']);
const sleeveRoles: ReadonlySet<PieceRole> = new Set(['sleeve', 'under-sleeve']);

export const isFront = ({ role }: Piece): boolean => frontRoles.has(role);
export const isBack = ({ role }: Piece): boolean => backRoles.has(role);
/** What covers the upper body and has the armholes. */
export const isBody = (piece: Piece): boolean => isFront(piece) || isBack(piece);
export const isSleeve = ({ role }: Piece): boolean => sleeveRoles.has(role);
export const isLining = ({ cut }: Piece): boolean => cut.every(({ layer }) => layer === 'lining');

/** Both ends of an edge, in outline order, darts stepped over. */
export const edgeEnds = (piece: Piece, edge: string): readonly [Point, Point] => {
  const runs = edgeRuns(piece, edge);
  return [pathStart(runs[0] as Path), pathEnd(runs.at(-1) as Path)];
};

export const endPoint = (piece: Piece, { edge, end }: EdgeAt): Point => edgeEnds(piece, edge)[end === 'start' ? 0 : 1];

/** The end of an edge that lies lower on the piece. */
export const lowerEnd = (piece: Piece, edge: string): End => {
  const [start, end] = edgeEnds(piece, edge);
  return start.y > end.y ? 'start' : 'end';
};

/** The edge that meets an edge at one of its ends, told by the end that lies there; null where a dart's mouth does. */
export const neighbourAt = (piece: Piece, { edge, end }: EdgeAt): EdgeAt | null => {
  const indices = runIndices(piece.runs, edge);
  const count = piece.runs.length;
  const index = (end === 'end' ? (indices.at(-1) as number) + 1 : (indices[0] as number) + count - 1) % count;
  const run = piece.runs[index];
  return run?.kind === 'edge' ? { edge: run.edge, end: other(end) } : null;
};

/** Runs across the piece more than down it. */
export const liesAcross = (piece: Piece, edge: string): boolean => {
  const [from, to] = edgeEnds(piece, edge);
  return Math.abs(to.x - from.x) > Math.abs(to.y - from.y);
};

/** Edges of a piece in outline order, each once. */
export const edgeOrder = (piece: Piece): readonly string[] => {
  const ids = piece.runs.flatMap((run) => (run.kind === 'edge' ? [run.edge] : []));
  return ids.filter((id, i) => ids.indexOf(id) === i);
};

export interface Mate {
  readonly seam: Seam;
  readonly piece: Piece;
  readonly edge: string;
  readonly reversed: boolean;
}

/** What an edge is sewn to; `reversed` where the two run against each other in outline order. */
export const matesOf = (garment: Garment, piece: string, edge: string): readonly Mate[] => {
  const is = (side: SeamSide): boolean => side.piece === piece && side.edge === edge;
  return garment.seams
    .filter(({ a, b }) => is(a) || is(b))
    .flatMap((seam): Mate[] => {
      const { a, b } = seam;
      const reversed = a.reversed !== b.reversed;
      const mate = (side: SeamSide): Mate => ({ seam, piece: pieceOf(garment, side.piece), edge: side.edge, reversed });
      return [...(is(a) ? [mate(b)] : []), ...(is(b) ? [mate(a)] : [])];
    });
};

/** Whether an edge is sewn to a sleeve. */
export const sewnToSleeve = (garment: Garment, piece: Piece, edge: string): boolean =>
  matesOf(garment, piece.id, edge).some((mate) => isSleeve(mate.piece));

/** Whether an edge is sewn to the body of the garment, as a cap is. */
export const sewnToBody = (garment: Garment, piece: Piece, edge: string): boolean =>
  matesOf(garment, piece.id, edge).some((mate) => isBody(mate.piece));

/** Where a dart opens: the runs beside its mouth, by their place in the outline, and the edge they both belong to. */
export interface DartMouth {
  readonly edge: string;
  readonly mouth: number;
  readonly before: number;
  readonly after: number;
}

/** Where a dart opens; null where that is at a corner, between two edges. */
export const mouthOf = (piece: Piece, dart: string): DartMouth | null => {
  const count = piece.runs.length;
  const mouth = piece.runs.findIndex((run) => run.kind === 'mouth' && run.dart === dart);
  const [before, after] = [(mouth + count - 1) % count, (mouth + 1) % count];
  const [one, two] = [piece.runs[before], piece.runs[after]];
  if (one?.kind !== 'edge' || two?.kind !== 'edge' || one.edge !== two.edge) return null;
  return { edge: one.edge, mouth, before, after };
};
