export { type InkStyle, inkStyles } from './ink-style.ts';
export { measureWords } from './measure-words.ts';
export { drawPageMap, type PageMap } from './page-map.ts';
export { type PaperSize, paperSizes } from './paper.ts';
export type { FontFiles } from './pdf-fonts.ts';
export { type PrintLayer, printLayers } from './pdf-marks.ts';
export { printPdf } from './print-pdf.ts';
export type { PrintContext, PrintedAlteration, PrintedPattern, PrintRequest, SheetRequest } from './print-request.ts';
export { type SvgOptions, writeSvg } from './svg.ts';
