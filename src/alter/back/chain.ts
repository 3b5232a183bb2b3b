import { pathBounds } from '../../geometry/index.ts';
import { type Garment, onFold, outlineOf, type Piece } from '../../pattern/index.ts';
import { crossingsAt } from '../across.ts';
import type { EdgeEnd } from '../cut.ts';
import { isLining } from '../parts.ts';

/** One piece of the back cut by a level line: from which edge to which, and the hinge it turns about, which may lie beyond it. */
export interface Link {
  readonly piece: Piece;
  readonly y: number;
  /** Where the level meets it, towards the centre and towards the side. */
  readonly inner: EdgeEnd;
  readonly outer: EdgeEnd;
  readonly innerX: number;
  readonly outerX: number;
  /** 1 where the side lies to the right of the centre. */
  readonly outward: 1 | -1;
}

/** The pieces of one layer that make half a back at a level, from the centre out. */
export interface BackChain {
  readonly links: readonly Link[];
  /** From the centre back to where it ends, mm. */
  readonly reach: number;
}

const linkAt = (piece: Piece, y: number, outward: 1 | -1): Link | null => {
  const [left, right, more] = crossingsAt(piece, y);
  if (!left?.end || !right?.end || more) return null;
  const [inner, outer] = outward === 1 ? [left, right] : [right, left];
  if (!inner.end || !outer.end) return null;
  return { piece, y, inner: inner.end, outer: outer.end, innerX: inner.x, outerX: outer.x, outward };
};

/** Which way the side lies: where its levels end, or, without any, away from a straight upright edge. */
const outwardOf = (piece: Piece): 1 | -1 => {
  const [level] = piece.levels;
  return level && level.to.x < level.from.x ? -1 : 1;
};

const sewnTogether = (garment: Garment, p: Piece, q: Piece): boolean =>
  garment.seams.some(({ a, b }) => (a.piece === p.id && b.piece === q.id) || (a.piece === q.id && b.piece === p.id));

/** The centre back of a back: an upright edge it shares with its own mirror, on the fold or in a seam. */
export const centreEdge = (garment: Garment, piece: Piece): string | null => {
  const own = garment.seams.find(({ a, b }) => a.piece === piece.id && b.piece === piece.id && a.edge === b.edge);
  return own?.a.edge ?? piece.edges.find(({ finish }) => finish === 'fold')?.id ?? null;
};

/** Backs with a seam down their centre, each with the side back sewn to it where there is one, by layer: shell, lining. */
export const seamedBacks = (garment: Garment): readonly (readonly Piece[])[] =>
  garment.pieces
    .filter((piece) => piece.role === 'back' && !onFold(piece) && centreEdge(garment, piece) !== null)
    .map((piece) => {
      const beside = garment.pieces.find(
        (one) => one.role === 'side-back' && isLining(one) === isLining(piece) && sewnTogether(garment, piece, one),
      );
      return beside ? [piece, beside] : [piece];
    });

/** The level of one name as a chain of cuts from centre back to side; null where a piece does not carry it or it does not go clear across. */
export const chainAt = (pieces: readonly Piece[], heightOf: (piece: Piece) => number | null): BackChain | null => {
  const links = pieces.map((piece) => {
    const y = heightOf(piece);
    return y === null ? null : linkAt(piece, y, outwardOf(piece));
  });
  if (links.some((link) => link === null)) return null;
  const found = links as readonly Link[];
  return { links: found, reach: found.reduce((sum, { innerX, outerX }) => sum + Math.abs(outerX - innerX), 0) };
};

/** Lowest point of a piece. */
export const bottomOf = (piece: Piece): number => pathBounds(outlineOf(piece)).maxY;
