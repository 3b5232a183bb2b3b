import { distance, nearestPlace, type Point, pathEnd, pathStart, tolerance } from '../../geometry/index.ts';
import { dartsOf, edgeRuns, type Garment, onFold, type Piece, pieceOf, type Seam } from '../../pattern/index.ts';
import { edgeEnds, edgeOrder, isLining, sewnToSleeve } from '../parts.ts';

/** One piece's side: the edges down it that are sewn to the other half of the body, from the top. */
export interface Side {
  readonly piece: Piece;
  /** 1 where the side lies to the right of the centre, −1 to the left. */
  readonly outward: 1 | -1;
  readonly edges: readonly string[];
  /** Heights of its two ends. */
  readonly top: number;
  readonly bottom: number;
  /** Heights of the body's levels on it; a lining that does not carry one takes it from its shell. */
  readonly heights: Readonly<Record<string, number>>;
  /** Whether it ends above in an armhole, whose underarm must stay. */
  readonly underarm: boolean;
  /** The lowest end of a dart that opens in it: above, the side must stay as it is. Null without one. */
  readonly dart: number | null;
}

const before: ReadonlySet<Piece['role']> = new Set(['front', 'side-front', 'tier', 'waistband']);
const behind: ReadonlySet<Piece['role']> = new Set(['back', 'side-back', 'tier', 'waistband']);

/** One half of the body, of which there are two: cut as a pair, or on the fold. */
const isHalf = (piece: Piece): boolean => onFold(piece) || piece.cut.every(({ mirrored }) => mirrored);

/** Runs down the piece more than across it, and on its outer half: where levels end, not where they begin. */
const downTheSide = (piece: Piece, edge: string): boolean => {
  const [from, to] = edgeEnds(piece, edge);
  if (Math.abs(to.y - from.y) < 1.5 * Math.abs(to.x - from.x)) return false;
  const [level] = piece.levels;
  if (!level) return true;
  const middle = (from.x + to.x) / 2;
  return Math.abs(middle - level.to.x) < Math.abs(middle - level.from.x);
};

/** Whether a seam runs down the side of the body: a piece in front to one behind it, or two bands or tiers, each one half. */
const isSideSeam = (garment: Garment, { a, b, how }: Seam): boolean => {
  if (a.piece === b.piece || how !== 'plain') return false;
  const [one, other] = [pieceOf(garment, a.piece), pieceOf(garment, b.piece)];
  const faces = (p: Piece, q: Piece): boolean => before.has(p.role) && behind.has(q.role);
  const pair = faces(one, other) || faces(other, one);
  return (
    pair &&
    isLining(one) === isLining(other) &&
    isHalf(one) &&
    isHalf(other) &&
    downTheSide(one, a.edge) &&
    downTheSide(other, b.edge)
  );
};

export const sideSeams = (garment: Garment): readonly Seam[] =>
  garment.seams.filter((seam) => isSideSeam(garment, seam));

/** The shell piece a lining piece lies under: of its role, and sharing a level with it. */
const shellOf = (garment: Garment, lining: Piece): Piece | null =>
  garment.pieces.find(
    (piece) =>
      piece.role === lining.role &&
      !isLining(piece) &&
      piece.levels.some(({ id }) => lining.levels.some((level) => level.id === id)),
  ) ?? null;

const heightsOf = (garment: Garment, piece: Piece): Readonly<Record<string, number>> => {
  const own = Object.fromEntries(piece.levels.map(({ id, to }) => [id, to.y]));
  const shell = isLining(piece) ? shellOf(garment, piece) : null;
  const shared = shell?.levels.find(({ id }) => own[id] !== undefined);
  if (!shell || !shared) return own;
  const down = (own[shared.id] as number) - shared.to.y;
  return { ...Object.fromEntries(shell.levels.map(({ id, to }) => [id, to.y + down])), ...own };
};

/** Whether what meets the side at its top is an armhole: an edge that a sleeve is sewn to, or none, but no band and no tier. */
const endsInArmhole = (garment: Garment, piece: Piece, top: Point): boolean => {
  const meets = piece.edges.filter(({ id }) => edgeEnds(piece, id).some((end) => near(end, top)));
  return (
    piece.landmarks.some(({ id, at }) => id === 'underarm' && near(at, top)) ||
    meets.some(({ id }) => sewnToSleeve(garment, piece, id))
  );
};

const near = (p: Point, q: Point): boolean => Math.hypot(p.x - q.x, p.y - q.y) <= tolerance.kink;

/** Edges that lie between the first and the last of these along the outline, such as the mouth of a pocket in the side. */
const withBetween = (piece: Piece, edges: readonly string[]): readonly string[] => {
  const ring = edgeOrder(piece);
  if (edges.length < 2) return edges;
  // Walked from each that begins a stretch, the way on that takes in all of them over the fewest others.
  const spans = ring.flatMap((id, i) => {
    if (!edges.includes(id)) return [];
    const span: string[] = [];
    let left = edges.length;
    for (let k = 0; k < ring.length && left > 0; k += 1) {
      const next = ring[(i + k) % ring.length] as string;
      span.push(next);
      if (edges.includes(next)) left -= 1;
    }
    return [span];
  });
  return spans.reduce((a, b) => (b.length < a.length ? b : a));
};

const sideOf = (garment: Garment, piece: Piece, sewn: readonly string[]): Side => {
  const edges = withBetween(piece, sewn);
  const ends = edges.flatMap((edge) => edgeEnds(piece, edge));
  const top = ends.reduce((a, b) => (b.y < a.y ? b : a));
  const bottom = ends.reduce((a, b) => (b.y > a.y ? b : a));
  const others = piece.runs.flatMap(({ path }) => path.map(({ to }) => to.x));
  const outward = (top.x + bottom.x) / 2 > (Math.min(...others) + Math.max(...others)) / 2 ? 1 : -1;
  const paths = edges.flatMap((edge) => edgeRuns(piece, edge));
  const darts = dartsOf(piece)
    .flatMap(({ legs }) => legs)
    .filter((leg) => paths.some((path) => nearestPlace(path, leg).distance <= tolerance.walk));
  return {
    piece,
    outward,
    edges: [...edges].sort((a, b) => heightOf(piece, a) - heightOf(piece, b)),
    top: top.y,
    bottom: bottom.y,
    heights: heightsOf(garment, piece),
    underarm: endsInArmhole(garment, piece, top),
    dart: darts.length > 0 ? Math.max(...darts.map(({ y }) => y)) : null,
  };
};

const heightOf = (piece: Piece, edge: string): number => Math.min(...edgeEnds(piece, edge).map(({ y }) => y));

/** Every piece that has a side of the body, with its edges. */
export const sidesOf = (garment: Garment): readonly Side[] => {
  const edges = new Map<string, string[]>();
  for (const { a, b } of sideSeams(garment)) {
    for (const { piece, edge } of [a, b]) {
      const own = edges.get(piece) ?? [];
      if (!own.includes(edge)) edges.set(piece, [...own, edge]);
    }
  }
  return [...edges].map(([id, own]) => sideOf(garment, pieceOf(garment, id), own));
};

/** The edge that meets the side's upper (or lower) end towards the centre. */
export const edgeBeside = (side: Side, end: 'top' | 'bottom'): string | null => {
  const { piece } = side;
  const corners = side.edges.flatMap((edge) =>
    edgeRuns(piece, edge).flatMap((path) => [pathStart(path), pathEnd(path)]),
  );
  const corner = corners.reduce((a, b) => ((end === 'top' ? b.y < a.y : b.y > a.y) ? b : a));
  const met = piece.edges.find(({ id }) => {
    if (side.edges.includes(id)) return false;
    return edgeRuns(piece, id).some((path) =>
      [pathStart(path), pathEnd(path)].some((point) => distance(point, corner) <= tolerance.walk),
    );
  });
  return met?.id ?? null;
};
