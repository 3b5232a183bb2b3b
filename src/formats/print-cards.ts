import * as fontkit from '@cantoo/fontkit';
import type { Card } from '../alter/index.ts';
import { type Mark, textMark } from '../draw/index.ts';
import { bad, good, type Problem, type Result, type Unit } from '../units/index.ts';
import { cardWords, fill, formatsWords } from '../words/index.ts';
import { cardPage } from './card-page.ts';
import { paperSizes } from './paper.ts';
import { openPdf, type PdfFile } from './pdf-file.ts';
import type { FontFiles } from './pdf-fonts.ts';
import { furnitureOperators } from './pdf-marks.ts';

export interface CardPrintOptions {
  readonly paper: 'a4' | 'letter';
  readonly unit: Unit;
  readonly locale?: string;
  readonly fonts: FontFiles;
  /** What the whole print is called; the first card's pattern when left out. */
  readonly title?: string;
}

export interface PrintedCards {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** The scale each card's drawing is printed at, 1 to this; null where a card has no drawing. */
  readonly scales: readonly (number | null)[];
  readonly warnings: readonly Problem[];
}

/** Left free on every side: room for a hand, a clip and a binder. mm. */
const margin = 14;

const openFile = async (title: string, fonts: FontFiles): Promise<PdfFile | null> => {
  try {
    return await openPdf({ title, subject: cardWords.pdfSubject, fonts, fontkit });
  } catch {
    return null;
  }
};

/**
 * Alteration cards on paper, one sheet a card: the drawing to a round scale, every word and amount in the reader's
 * unit. Problems: `formats.no-cards`, `formats.font-unreadable`.
 */
export const printCardsPdf = async (
  cards: readonly Card[],
  options: CardPrintOptions,
): Promise<Result<PrintedCards>> => {
  const [first] = cards;
  if (!first) return bad('formats.no-cards');
  const { unit, locale = 'en' } = options;
  const title = options.title ?? first.pattern.name;
  const file = await openFile(title, options.fonts);
  if (!file) return bad('formats.font-unreadable');
  const paper = paperSizes[options.paper];
  const [width, height] = [paper.width - 2 * margin, paper.height - 2 * margin];
  const pages = cards.map((card) =>
    cardPage(card, width, height - footHeight, { unit, locale, textWidth: file.fonts.width }),
  );
  const sheets = pages.flatMap((page) => page.sheets);
  sheets.forEach((marks, index) => {
    const foot = footMark(title, index + 1, sheets.length, width, height, options);
    const at = { origin: { x: margin, y: margin }, pageHeight: paper.height };
    file.addPage(paper.width, paper.height, furnitureOperators(at, [...marks, foot], file.fonts));
  });
  return good({
    bytes: await file.bytes(),
    pages: sheets.length,
    scales: pages.map(({ scale }) => scale),
    warnings: file.fonts.warnings(),
  });
};

const footHeight = 7;

const footMark = (
  title: string,
  number: number,
  count: number,
  width: number,
  height: number,
  { unit, locale = 'en' }: CardPrintOptions,
): Mark => {
  const text = fill(formatsWords.cardFoot, { title, number, count }, unit, locale);
  return textMark('words', 'mark', { x: width, y: height }, text, 3.53, { anchor: 'end' });
};
