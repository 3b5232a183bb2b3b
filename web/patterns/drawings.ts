import { type Drawing, drawNest, drawPiece, sayCut } from '../../src/draw/index.ts';
import type { Pattern, Piece } from '../../src/pattern/index.ts';
import type { Unit } from '../../src/units/index.ts';
import { locale } from '../app/settings.tsx';
import { narrowAspect, readableSize, tableAspect } from '../parts/draw-garment.ts';

/** One piece as large as the table lets it be. */
export const drawOnePiece = (piece: Piece, size: string, unit: Unit): Drawing => {
  const paper = drawPiece(piece, { unit, locale, layers: ['cut'] });
  return drawPiece(piece, { unit, locale, size, textSize: readableSize(paper) });
};

/** Every size of every piece, the chosen one firm, in words that can be read on a table of this kind. */
export const drawSizesNested = (
  pattern: Pattern,
  chosen: string,
  label: string,
  unit: Unit,
  narrow: boolean,
): Drawing => {
  const options = { unit, locale, size: chosen, aspect: narrow ? narrowAspect : tableAspect };
  // Larger words make the papers lie farther apart, and farther apart they are seen smaller: a second look settles it.
  const papers = drawNest(pattern, { ...options, textSize: 1 });
  const spread = drawNest(pattern, { ...options, textSize: readableSize(papers, narrow) });
  return { ...drawNest(pattern, { ...options, textSize: readableSize(spread, narrow) }), label };
};

export const sayPieceCut = (piece: Piece, unit: Unit): string =>
  sayCut(piece, unit, locale)
    .map((order, index) => (index === 0 ? order : order.charAt(0).toLowerCase() + order.slice(1)))
    .join('; ');
