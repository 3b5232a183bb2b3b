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

/** How often words are set anew for a drawing that grew with them, and by how much more it may ask for in the end. */
const mostLooks = 5;
const nearEnough = 1.08;

/**
 * A drawing in words that can be read when all of it is seen. Larger words make papers lie farther apart, and farther
 * apart they are seen smaller, so it is drawn until the two agree, beginning from `first`. `settled` is false where they never do: too many
 * words for the table.
 */
export const drawnReadable = (
  draw: (textSize: number) => Drawing,
  narrow: boolean,
  first: Drawing = draw(1),
): { readonly drawing: Drawing; readonly settled: boolean } => {
  let drawing = first;
  for (let look = 0; look < mostLooks; look += 1) {
    const size = readableSize(drawing, narrow);
    drawing = draw(size);
    if (readableSize(drawing, narrow) <= size * nearEnough) return { drawing, settled: true };
  }
  return { drawing, settled: false };
};

/** A garment's pieces laid out like papers, with all their marks, in words that can be read on a table of this kind. */
export const drawGarment = (
  garment: Garment,
  label: string,
  { narrow = false, ...options }: GarmentOptions & { readonly narrow?: boolean },
): Drawing => {
  const aspect = narrow ? narrowAspect : tableAspect;
  const draw = (textSize: number) => drawGarmentPieces(garment, { ...options, aspect, textSize });
  // Words take the longest to place, and the first look is at the papers alone.
  const papers = drawGarmentPieces(garment, { ...options, aspect, textSize: 1, layers: ['cut'] });
  return { ...drawnReadable(draw, narrow, papers).drawing, label };
};
