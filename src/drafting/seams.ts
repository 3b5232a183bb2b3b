import type { Girth, Seam, SeamSide } from '../pattern/index.ts';

/** One side of a seam: an edge in outline order, or from its end when `reversed`. */
export const side = (piece: string, edge: string, reversed = false): SeamSide => ({ piece, edge, reversed });

/** Two edges of one length. */
export const plain = (id: string, a: SeamSide, b: SeamSide, notches: Seam['notches'] = []): Seam => ({
  id,
  a,
  b,
  easeMin: 0,
  easeMax: 0,
  how: 'plain',
  notches,
});

/** Side a longer than b by between two lengths, mm, and what is done with it. Side a is stretched where both are negative. */
export const longer = (
  how: 'eased' | 'gathered' | 'stretched' | 'pleated',
  id: string,
  a: SeamSide,
  b: SeamSide,
  [least, most]: readonly [number, number],
  notches: Seam['notches'] = [],
): Seam => ({ ...plain(id, a, b, notches), easeMin: least, easeMax: most, how });

/** A girth round the whole body over pieces that are each met twice: on the fold, or a mirrored pair. */
export const roundBody = (level: string, measure: Girth['measure'], pieces: readonly string[]): Girth => ({
  level,
  measure,
  around: 'body',
  pieces: pieces.map((piece) => ({ piece, factor: 2 })),
});

/** A girth round one arm or leg. */
export const roundLimb = (level: string, measure: Girth['measure'], pieces: readonly string[]): Girth => ({
  level,
  measure,
  around: 'limb',
  pieces: pieces.map((piece) => ({ piece, factor: 1 })),
});
