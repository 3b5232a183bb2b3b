export { type InkStyle, inkStyles } from './ink-style.ts';
export { measureWords } from './measure-words.ts';
export { drawPageMap, type PageMap } from './page-map.ts';
export { type PaperSize, paperSizes } from './paper.ts';
export type { FontFiles } from './pdf-fonts.ts';
export { type PrintLayer, printLayers } from './pdf-marks.ts';
export { type CardPrintOptions, type PrintedCards, printCardsPdf } from './print-cards.ts';
export { printPdf } from './print-pdf.ts';
export type {
  PrintContext,
  PrintedAlteration,
  PrintedBefore,
  PrintedPattern,
  PrintRequest,
  SheetRequest,
} from './print-request.ts';
export { type PrintedSummary, printSummaryPdf, type SummaryRequest } from './print-summary.ts';
export { type SvgOptions, writeSvg } from './svg.ts';
