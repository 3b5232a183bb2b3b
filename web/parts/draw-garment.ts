import { type Drawing, drawGarmentPieces, type GarmentOptions } from '../../src/draw/index.ts';
import type { Garment } from '../../src/pattern/index.ts';

/** The table is about this much broader than high. */
export const tableAspect = 1.05;

/** An em of words that reads when all of a drawing is seen, mm: about 16 px on a screen of usual size. */
export const readableSize = (drawing: Pick<Drawing, 'bounds'>): number => {
  const { minX, minY, maxX, maxY } = drawing.bounds;
  return Math.max(5, Math.max(maxX - minX, (maxY - minY) * tableAspect) / 56);
};

/** A garment's pieces laid out like papers, with all their marks, in words that can be read. */
export const drawGarment = (garment: Garment, label: string, options: GarmentOptions): Drawing => {
  const papers = drawGarmentPieces(garment, { ...options, aspect: tableAspect, layers: ['cut'] });
  const drawing = drawGarmentPieces(garment, { ...options, aspect: tableAspect, textSize: readableSize(papers) });
  return { ...drawing, label };
};
