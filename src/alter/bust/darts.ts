import { distance, insideOutline, lerp, type Point } from '../../geometry/index.ts';
import { dartOf, type Garment, landmarkOf, outlineOf, type Piece, pieceOf, pointOnEdge } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';

/** A dart told as a step names it: the piece, and the dart on it. */
export interface NamedDart {
  readonly piece: Piece;
  readonly dart: string;
}

const bodyRoles: ReadonlySet<Piece['role']> = new Set([
  'front',
  'back',
  'side-front',
  'side-back',
  'yoke',
  'tier',
  'bib',
]);

/** Every dart of a garment as `piece/dart`, bust darts first. */
export const dartNames = (garment: Garment): readonly string[] => {
  const all = garment.pieces
    .filter(({ role }) => bodyRoles.has(role))
    .flatMap((piece) =>
      piece.darts.map(({ id, aims }) => ({ name: `${piece.id}/${id}`, bust: aims === 'bust-point' })),
    );
  return [...all.filter(({ bust }) => bust), ...all.filter(({ bust }) => !bust)].map(({ name }) => name);
};

export const needsDart = (garment: Garment): Problem | null =>
  dartNames(garment).length > 0 ? null : bad('alter.no-dart', {}).problem;

/** The dart a step names. Throws where there is none: what may be named has been looked up before. */
export const namedDart = (garment: Garment, name: string): NamedDart => {
  const at = name.indexOf('/');
  return { piece: pieceOf(garment, name.slice(0, at)), dart: name.slice(at + 1) };
};

/** What a dart turns about when it is moved: the point it aims at, or, where it aims at none, its own. */
export const turningPoint = (piece: Piece, dart: string): Point => {
  const own = piece.darts.find(({ id }) => id === dart);
  return (own?.aims === undefined ? undefined : landmarkOf(piece, own.aims)) ?? dartOf(piece, dart).point;
};

/** Whether a straight cut from a point inside to one on the outline stays within the piece. */
const clear = (piece: Piece, from: Point, to: Point): boolean => {
  const outline = outlineOf(piece);
  return [0.1, 0.3, 0.5, 0.7, 0.9, 0.98].every((share) => insideOutline(outline, lerp(from, to, share)));
};

/** Edges a dart can be swung into, as `piece/edge`: those a straight cut from its turning point reaches in the middle. */
export const edgesFor = (garment: Garment, name: string): readonly string[] => {
  const { piece, dart } = namedDart(garment, name);
  const about = turningPoint(piece, dart);
  // A hem first, where fullness may simply hang; the other edges as they follow one another.
  const order = piece.edges.toSorted((a, b) => Number(b.finish === 'hem') - Number(a.finish === 'hem'));
  return order.flatMap(({ id, finish }) => {
    const middle = pointOnEdge(piece, id, 0.5);
    const near = distance(middle, about) < leastCut;
    const closed = finish === 'fold' || near || opensInto(garment, piece, id);
    return closed || !clear(piece, about, middle) ? [] : [`${piece.id}/${id}`];
  });
};

/** An edge that is a pocket's mouth, or holds a zip, is no place for a dart. */
const opensInto = (garment: Garment, piece: Piece, edge: string): boolean =>
  piece.notches.some((notch) => notch.edge === edge && notch.id.startsWith('zip')) ||
  garment.seams.some(({ a, b }) => {
    const mate = a.piece === piece.id && a.edge === edge ? b : b.piece === piece.id && b.edge === edge ? a : null;
    return mate !== null && pieceOf(garment, mate.piece).role === 'pocket';
  });

/** A new dart is at least this long, mm. */
const leastCut = 40;
