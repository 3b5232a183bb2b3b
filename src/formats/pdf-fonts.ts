import type { PDFDocument, PDFFont } from '@cantoo/pdf-lib';
import type { Problem } from '../units/index.ts';

/** The whole TrueType files to print with; only the letters used are embedded. */
export interface FontFiles {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export type FontWeight = 'regular' | 'bold';

export interface PrintFonts {
  readonly regular: PDFFont;
  readonly bold: PDFFont;
  /** Text with every letter the font lacks replaced by a box; what was replaced is remembered for `warnings`. */
  printable(text: string, weight: FontWeight): string;
  /** Width in millimetres of printable text whose em is `size` mm. */
  width(text: string, size: number, weight: FontWeight): number;
  /** One warning for each letter that had to be replaced, in the order met. */
  warnings(): readonly Problem[];
}

/** What stands for a letter the font lacks: seen at once, and never taken for a letter. */
const boxes = ['□', '?'];

/**
 * Embeds both weights as subsets, with lining tabular figures.
 * `fontkit` is @cantoo/fontkit or its like; throws what it throws when the bytes are not a font.
 */
export const embedFonts = async (document: PDFDocument, fontkit: unknown, files: FontFiles): Promise<PrintFonts> => {
  document.registerFontkit(fontkit as Parameters<PDFDocument['registerFontkit']>[0]);
  const options = { subset: true, features: { lnum: true, tnum: true } };
  // Named here because the name would otherwise carry a random suffix, and the same print should be the same bytes.
  const regular = await document.embedFont(files.regular, { ...options, customName: 'EASEWR+Regular' });
  const bold = await document.embedFont(files.bold, { ...options, customName: 'EASEWB+Bold' });
  const fonts = { regular, bold };
  const letters = { regular: new Set(regular.getCharacterSet()), bold: new Set(bold.getCharacterSet()) };
  const missing = new Set<string>();

  const printable = (text: string, weight: FontWeight): string => {
    const known = letters[weight];
    const box = boxes.find((candidate) => known.has(candidate.codePointAt(0) as number)) ?? '';
    let result = '';
    // Letters are composed first, so that a base with a separate accent finds the font's own accented letter.
    for (const letter of text.normalize('NFC').replace(/\s+/gu, ' ')) {
      if (known.has(letter.codePointAt(0) as number)) result += letter;
      else {
        missing.add(letter);
        result += box;
      }
    }
    return result;
  };

  // Shaping a text is slow and the same words are measured over and over while room is sought for them.
  const emWidths = { regular: new Map<string, number>(), bold: new Map<string, number>() };
  const emWidth = (text: string, weight: FontWeight): number => {
    const known = emWidths[weight].get(text);
    if (known !== undefined) return known;
    const width = fonts[weight].widthOfTextAtSize(printable(text, weight), 1);
    emWidths[weight].set(text, width);
    return width;
  };

  return {
    ...fonts,
    printable,
    width: (text, size, weight) => emWidth(text, weight) * size,
    warnings: () =>
      [...missing].map((letter) => ({ code: 'formats.letter-missing', values: { letter: shown(letter) } })),
  };
};

/** A letter as a warning can name it, even where the reader's own font lacks it too. */
const shown = (letter: string): string =>
  `${/\p{C}/u.test(letter) ? '' : `${letter} `}(U+${(letter.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, '0')})`;
