import { type Drawing, drawGarmentPieces, type GarmentOptions } from '../../src/draw/index.ts';
import type { Garment } from '../../src/pattern/index.ts';

/** The table is about this much broader than high; on a phone it is flatter. */
export const tableAspect = 1.05;
export const narrowAspect = 1.25;

/** Ems of readable words across the table: on a broad one, and on a phone's. */
const emsAcross = { wide: 56, narrow: 21 } as const;

/** An em of words that reads when all of a drawing is seen, mm: about 16 px on a screen of usual size. */
export const readableSize = (drawing: Pick<Drawing, 'bounds'>, narrow = false): number => {
  const { minX, minY, maxX, maxY } = drawing.bounds;
  const across = Math.max(maxX - minX, (maxY - minY) * (narrow ? narrowAspect : tableAspect));
  return Math.max(5, across / (narrow ? emsAcross.narrow : emsAcross.wide));
};

/** A garment's pieces laid out like papers, with all their marks, in words that can be read on a table of this kind. */
export const drawGarment = (
  garment: Garment,
  label: string,
  { narrow = false, ...options }: GarmentOptions & { readonly narrow?: boolean },
): Drawing => {
  const aspect = narrow ? narrowAspect : tableAspect;
  const papers = drawGarmentPieces(garment, { ...options, aspect, layers: ['cut'] });
  // Names over the papers make them lie farther apart, and farther apart they are seen smaller: a second look settles it.
  const spread = drawGarmentPieces(garment, { ...options, aspect, textSize: readableSize(papers, narrow) });
  const drawing = drawGarmentPieces(garment, { ...options, aspect, textSize: readableSize(spread, narrow) });
  return { ...drawing, label };
};
