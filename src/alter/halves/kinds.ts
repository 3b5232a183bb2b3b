import { distance, type Point, type Segment, tolerance } from '../../geometry/index.ts';
import { type Garment, onFold, type Piece } from '../../pattern/index.ts';

/**
 * How a piece stands in a garment whose right and left halves differ: alike on both; a pair of which each is cut for
 * itself; on the fold, to be opened into one whole piece; or whole, so that it cannot differ.
 */
export type Standing = 'alike' | 'pair' | 'opened' | 'whole';

/** The body's left half of a name: ids of pieces, edges, notches, darts and lines there end so. */
export const leftId = (id: string): string => `${id}-left`;

const near = (p: Point, q: Point): boolean => distance(p, q) <= tolerance.walk;

const sameSegment = (a: Segment, b: Segment | undefined): boolean =>
  b !== undefined &&
  near(a.to, b.to) &&
  (a.kind === 'line'
    ? b.kind === 'line'
    : b.kind === 'cubic' && near(a.control1, b.control1) && near(a.control2, b.control2));

/** Alike to what can be measured: what was reckoned in another order differs in its last digits. */
const same = (a: Piece, b: Piece): boolean =>
  a === b ||
  (a.runs.length === b.runs.length &&
    a.runs.every((run, i) => {
      const path = b.runs[i]?.path;
      return path?.length === run.path.length && run.path.every((segment, k) => sameSegment(segment, path[k]));
    }) &&
    a.notches.every(({ id, at }) =>
      b.notches.some((one) => one.id === id && Math.abs(one.at - at) <= tolerance.same),
    ) &&
    a.darts.length === b.darts.length);

const standingOf = (right: Piece, left: Piece): Standing => {
  if (same(right, left)) return 'alike';
  if (onFold(right)) return 'opened';
  return right.cut.every(({ mirrored }) => mirrored) ? 'pair' : 'whole';
};

/** How every piece stands, by its id. Null where the halves are not made of the same pieces. */
export const standings = (right: Garment, left: Garment): ReadonlyMap<string, Standing> | null => {
  const others = new Map(left.pieces.map((piece) => [piece.id, piece]));
  if (others.size !== right.pieces.length) return null;
  const found = new Map<string, Standing>();
  for (const piece of right.pieces) {
    const other = others.get(piece.id);
    if (!other) return null;
    found.set(piece.id, standingOf(piece, other));
  }
  return found;
};
