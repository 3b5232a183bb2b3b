import { distance, type Path, type Point, pathBounds, pathEnd, pathStart, tolerance } from '../../geometry/index.ts';
import { edgeRuns, type Garment, landmarkOf, outlineOf, type Piece } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';

/** A leg's front or back, told by its crotch point. */
export interface Leg {
  readonly piece: Piece;
  /** 1 where the side lies to the right of the crotch. */
  readonly outward: 1 | -1;
  readonly crotchPoint: Point;
  /** The edge from the waist to the crotch point, and the inside leg from there down. */
  readonly crotch: string;
  readonly inside: string;
  /** Edges of the side, from the waist down. */
  readonly sides: readonly string[];
  readonly hip: number | null;
  readonly knee: number | null;
  /** Lowest of the piece. */
  readonly bottom: number;
}

const touches = (piece: Piece, edge: string, point: Point): boolean => {
  const path = edgeRuns(piece, edge).flat();
  return [pathStart(path), pathEnd(path)].some((end) => distance(end, point) <= tolerance.kink);
};

const height = (path: Path): { readonly top: number; readonly bottom: number } => {
  const { minY, maxY } = pathBounds(path);
  return { top: minY, bottom: maxY };
};

const legOf = (piece: Piece): Leg | null => {
  const crotchPoint = landmarkOf(piece, 'crotch-point');
  if (!crotchPoint || (piece.role !== 'front' && piece.role !== 'back')) return null;
  const met = piece.edges.map(({ id }) => id).filter((id) => touches(piece, id, crotchPoint));
  const up = met.find((id) => height(edgeRuns(piece, id).flat()).bottom <= crotchPoint.y + tolerance.kink);
  const down = met.find((id) => id !== up);
  if (up === undefined || down === undefined) return null;
  const level = (id: string): number | null => piece.levels.find((one) => one.id === id)?.from.y ?? null;
  const hip = piece.levels.find(({ id }) => id === 'hip');
  const outward = (hip ? hip.to.x - hip.from.x : 1) > 0 ? 1 : -1;
  const others = piece.edges.map(({ id }) => id).filter((id) => id !== up && id !== down);
  const sides = others
    .filter((id) => {
      const path = edgeRuns(piece, id).flat();
      const [from, to] = [pathStart(path), pathEnd(path)];
      return Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
    })
    .sort((a, b) => height(edgeRuns(piece, a).flat()).top - height(edgeRuns(piece, b).flat()).top);
  return {
    piece,
    outward,
    crotchPoint,
    crotch: up,
    inside: down,
    sides,
    hip: level('hip'),
    knee: level('knee'),
    bottom: pathBounds(outlineOf(piece)).maxY,
  };
};

export type WhichLegs = 'front' | 'back' | 'both';

/** Fronts, backs or both of the legs; a lining's among them. */
export const legsOf = (garment: Garment, which: WhichLegs = 'both'): readonly Leg[] =>
  garment.pieces.flatMap((piece) => {
    const leg = legOf(piece);
    return leg && (which === 'both' || piece.role === which) ? [leg] : [];
  });

export const needsLegs = (garment: Garment): Problem | null =>
  legsOf(garment, 'front').length > 0 && legsOf(garment, 'back').length > 0 ? null : bad('alter.no-legs', {}).problem;

export const which = { unit: 'choice', choices: ['front', 'back'], usual: 'back' } as const;
