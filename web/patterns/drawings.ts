import { type Drawing, drawNest, drawPiece, sayCut } from '../../src/draw/index.ts';
import type { Pattern, Piece } from '../../src/pattern/index.ts';
import type { Unit } from '../../src/units/index.ts';
import { locale } from '../app/settings.tsx';
import { drawnReadable, narrowAspect, readableSize, tableAspect } from '../parts/draw-garment.ts';

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
  const named = drawnReadable((textSize) => drawNest(pattern, { ...options, textSize }), narrow);
  if (named.settled) return { ...named.drawing, label };
  // Many pieces on a phone: names of pieces have room, names of sizes beside each have not.
  const draw = (textSize: number) => drawNest(pattern, { ...options, textSize, sizesNamed: false });
  return { ...drawnReadable(draw, narrow).drawing, label };
};

export const sayPieceCut = (piece: Piece, unit: Unit): string =>
  sayCut(piece, unit, locale)
    .map((order, index) => (index === 0 ? order : order.charAt(0).toLowerCase() + order.slice(1)))
    .join('; ');
