import { type Drawing, drawPiece, sayCut } from '../../src/draw/index.ts';
import { pathBounds } from '../../src/geometry/index.ts';
import { cutLine, type Pattern, type Piece } from '../../src/pattern/index.ts';
import type { Unit } from '../../src/units/index.ts';
import { locale } from '../app/settings.tsx';
import { drawGarment, readableSize, tableAspect } from '../parts/draw-garment.ts';

/** One piece as large as the table lets it be. */
export const drawOnePiece = (piece: Piece, size: string, unit: Unit): Drawing => {
  const bounds = pathBounds(cutLine(piece));
  const width = Math.max(bounds.maxX - bounds.minX, (bounds.maxY - bounds.minY) * tableAspect);
  return drawPiece(piece, { unit, locale, size, textSize: readableSize(width) });
};

export const sayPieceCut = (piece: Piece, unit: Unit): string => sayCut(piece, unit, locale).join('; ');

/** Every size of every piece, the chosen one firm. */
export const drawSizesNested = (pattern: Pattern, chosen: string, label: string, unit: Unit): Drawing => {
  const size = pattern.sizes.find((one) => one.id === chosen);
  if (!size) throw new Error(`no size ${chosen}`);
  return drawGarment(size.garment, label, { unit, locale, size: chosen });
};
