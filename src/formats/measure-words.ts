import * as fontkit from '@cantoo/fontkit';
import { PDFDocument } from '@cantoo/pdf-lib';
import type { TextWidth } from '../draw/index.ts';
import { embedFonts, type FontFiles } from './pdf-fonts.ts';

/** The widths of words in these fonts, as a print with them will find them; null where they cannot be read. */
export const measureWords = async (files: FontFiles): Promise<TextWidth | null> => {
  try {
    return (await embedFonts(await PDFDocument.create({ updateMetadata: false }), fontkit, files)).width;
  } catch {
    return null;
  }
};
