import type { Drawing, DrawingLayer, Mark, PathMark, TextMark } from '../draw/index.ts';
import type { Path, Point } from '../geometry/index.ts';
import { inkStyles } from './ink-style.ts';
import type { PrintFonts } from './pdf-fonts.ts';
import { pdfNumber, pointsPerMillimetre } from './pdf-numbers.ts';

/** Where a drawing lies on a page: its origin from the page's top left, and the page's height, in millimetres. */
export interface PagePlace {
  readonly origin: Point;
  readonly pageHeight: number;
}

/** The layers of a printed sheet, by the names every reader of the file sees. Words belong to the marks. */
export const printLayers = ['cut', 'seam', 'marks', 'original'] as const;
export type PrintLayer = (typeof printLayers)[number];

const layerOf: Readonly<Record<DrawingLayer, PrintLayer>> = {
  cut: 'cut',
  seam: 'seam',
  marks: 'marks',
  original: 'original',
  cloth: 'marks',
  body: 'marks',
  words: 'marks',
};

const place = (at: PagePlace, p: Point): string =>
  `${pdfNumber((at.origin.x + p.x) * pointsPerMillimetre)} ${pdfNumber((at.pageHeight - at.origin.y - p.y) * pointsPerMillimetre)}`;

const isClosed = (path: Path): boolean => {
  const start = path[0]?.from;
  const end = path[path.length - 1]?.to;
  return start !== undefined && end !== undefined && start.x === end.x && start.y === end.y;
};

/** Lines stay lines and cubics stay cubics: nothing printed is flattened. */
const pathOperators = (at: PagePlace, path: Path): string => {
  const first = path[0];
  if (!first) return '';
  const steps = path.map((segment) =>
    segment.kind === 'line'
      ? `${place(at, segment.to)} l`
      : `${place(at, segment.control1)} ${place(at, segment.control2)} ${place(at, segment.to)} c`,
  );
  return [`${place(at, first.from)} m`, ...steps, ...(isClosed(path) ? ['h'] : [])].join('\n');
};

const colourOperands = (colour: string): string =>
  [1, 3, 5].map((start) => pdfNumber(Number.parseInt(colour.slice(start, start + 2), 16) / 255)).join(' ');

const points = (mm: number): string => pdfNumber(mm * pointsPerMillimetre);

const pathMark = (at: PagePlace, mark: PathMark): string => {
  const style = inkStyles[mark.ink];
  const paths = mark.paths.map((path) => pathOperators(at, path)).filter((text) => text !== '');
  if (paths.length === 0) return '';
  if (mark.filled) return [`${colourOperands(style.colour)} rg`, ...paths, 'f'].join('\n');
  return [
    `${colourOperands(style.colour)} RG`,
    `${points(style.width)} w`,
    `[${style.dash.map(points).join(' ')}] 0 d`,
    ...paths,
    'S',
  ].join('\n');
};

/** The baseline of text is its `at`; angle is clockwise as seen, and PDF's y runs up. */
const textMark = (at: PagePlace, mark: TextMark, fonts: PrintFonts): string => {
  const weight = mark.weight ?? 'regular';
  const text = fonts.printable(mark.text, weight);
  if (text === '') return '';
  const width = fonts.width(text, mark.size, weight);
  const back = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? width / 2 : width;
  const angle = mark.angle ?? 0;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const start = { x: mark.at.x - back * cos, y: mark.at.y - back * sin };
  return [
    `${colourOperands(inkStyles[mark.ink].colour)} rg`,
    'BT',
    `/${weight} ${points(mark.size)} Tf`,
    `${pdfNumber(cos)} ${pdfNumber(-sin)} ${pdfNumber(sin)} ${pdfNumber(cos)} ${place(at, start)} Tm`,
    `${fonts[weight].encodeText(text).toString()} Tj`,
    'ET',
  ].join('\n');
};

const leaves = (marks: readonly Mark[]): (PathMark | TextMark)[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? leaves(mark.marks) : [mark]));

/** The operators of one mark, without its layer. Paper is paper already, but for the ground words stand on over lines. */
const markOperators = (at: PagePlace, mark: PathMark | TextMark, fonts: PrintFonts): string =>
  mark.ink === 'paper' && mark.layer !== 'words'
    ? ''
    : mark.kind === 'path'
      ? pathMark(at, mark)
      : textMark(at, mark, fonts);

/** A sheet's own furniture, in no layer: it is no part of the pattern. */
export const furnitureOperators = (at: PagePlace, marks: readonly Mark[], fonts: PrintFonts): string =>
  leaves(marks)
    .map((mark) => markOperators(at, mark, fonts))
    .filter((text) => text !== '')
    .join('\n');

/** A drawing's marks, each within the optional-content layer it belongs to. */
export const layeredOperators = (at: PagePlace, marks: Drawing['marks'], fonts: PrintFonts): string => {
  const lines: string[] = [];
  let open: PrintLayer | null = null;
  for (const mark of leaves(marks)) {
    const text = markOperators(at, mark, fonts);
    if (text === '') continue;
    const layer = layerOf[mark.layer];
    if (layer !== open) {
      if (open) lines.push('EMC');
      lines.push(`/OC /${layer} BDC`);
      open = layer;
    }
    lines.push(text);
  }
  if (open) lines.push('EMC');
  return lines.join('\n');
};

/** Only what lies in a rectangle (millimetres in the drawing) is printed. */
export const clipped = (
  at: PagePlace,
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  operators: string,
): string =>
  [
    'q',
    `${place(at, { x: box.x, y: box.y + box.height })} ${points(box.width)} ${points(box.height)} re W n`,
    operators,
    'Q',
  ].join('\n');
