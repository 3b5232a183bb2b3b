import type { Paper } from '../make/index.ts';

/** One kind of paper, in millimetres. Every sheet of a print is the same paper, held upright. */
export interface PaperSize {
  readonly paper: Paper;
  readonly width: number;
  /** For a roll, the longest sheet that is cut from it. */
  readonly height: number;
  /** A roll's sheet is only as long as what is on it. */
  readonly roll: boolean;
  /** What is told about the whole print stands on a sheet of its own, or at the head of the first large sheet. */
  readonly coverApart: boolean;
}

/**
 * ISO 216 for A sizes, ANSI/ASME Y14.1 for letter; a plotter's 36-inch roll. A PDF page may be 14,400 points (5,080 mm)
 * long (ISO 32000-1, annex C), which bounds the roll.
 */
export const paperSizes: Readonly<Record<Paper, PaperSize>> = {
  a4: { paper: 'a4', width: 210, height: 297, roll: false, coverApart: true },
  letter: { paper: 'letter', width: 215.9, height: 279.4, roll: false, coverApart: true },
  a0: { paper: 'a0', width: 841, height: 1189, roll: false, coverApart: false },
  roll36: { paper: 'roll36', width: 914.4, height: 5000, roll: true, coverApart: false },
};

/** How a sheet of paper is used for a tile of the pattern. All millimetres. */
export interface TileFrame {
  readonly paper: PaperSize;
  /** Left free on every side: home printers cannot reach it. */
  readonly margin: number;
  /** The line of words above the tile, cut off with the top margin when sheets are joined. */
  readonly header: number;
  /** How much of the next tile to the right and below is printed again, to lie under it. */
  readonly overlap: number;
  /** From one tile to the next. */
  readonly stepX: number;
  readonly stepY: number;
}

const margin = 8;
const header = 6;
const overlap = 10;

export const tileFrame = (paper: PaperSize): TileFrame => ({
  paper,
  margin,
  header,
  overlap,
  stepX: paper.width - 2 * margin - overlap,
  stepY: paper.height - 2 * margin - header - overlap,
});
