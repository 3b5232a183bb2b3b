import { type Mark, moveMarks, pathMark, rectangle, stroke, type TextWidth, textMark } from '../draw/index.ts';
import { translation } from '../geometry/index.ts';
import { formatsWords as words } from '../words/index.ts';
import { type Column, type FlowItem, type FlowStyle, flow, wrap } from './text-flow.ts';

export interface CoverContent {
  readonly title: string;
  /** Size, make, wearer if she is to be named, how many sheets of what. */
  readonly facts: readonly string[];
  readonly pieces: readonly { readonly number: number; readonly text: string }[];
  readonly alterations: readonly string[];
  /** What is told of pieces and sheets that are not printed. */
  readonly notes: readonly string[];
  /** Overlays for the tissue are printed, not pieces. */
  readonly overlays: boolean;
  /** Several sheets have to be joined. */
  readonly joins: boolean;
  /** The pattern as bought is printed too. */
  readonly originals: boolean;
  /** Draws the map within a box of this size, its top left at 0, 0. */
  readonly map: (
    box: { readonly width: number; readonly height: number },
    textSize: number,
  ) => { readonly marks: readonly Mark[]; readonly height: number };
}

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** 10.5 point; nothing a person reads at the table is smaller than 10. */
const textSize = 3.7;
const leading = 4.8;
const titleSize = 8;
const gap = 8;
const mapHeight = 92;
/** The larger of the two test squares: four inches. */
const inchSquare = 101.6;
/** Both squares and what is between and above them. */
const squaresHeight = 100 + gap + inchSquare;

/**
 * What is told about the whole print: what it is, the two test squares, how the sheets join, the pieces, and what was
 * altered. One list of marks a page; a long list of pieces runs on to further pages where `height` bounds them,
 * else down the first. Top left at 0, 0.
 */
export const coverPages = (
  content: CoverContent,
  width: number,
  height: number | null,
  textWidth: TextWidth,
): readonly { readonly marks: readonly Mark[]; readonly height: number }[] => {
  const style: FlowStyle = { size: textSize, leading, textWidth };
  const head = headMarks(content, width, style);
  const top = head.height;
  const bottom = height ?? Number.POSITIVE_INFINITY;
  const rightLeft = inchSquare + gap;
  const columnWidth = width - rightLeft;
  const picture = content.map({ width: columnWidth, height: mapHeight - leading * 1.5 }, textSize);
  // On a large sheet the words must stand where they stood before anything was laid: what is reserved hangs on it.
  const mapBottom = top + (height === null ? mapHeight : picture.height + leading * 1.5) + 5;
  const map = [
    textMark('words', 'mark', { x: 0, y: textSize }, content.joins ? words.map : words.mapOne, textSize * 1.1, {
      weight: 'bold',
    }),
    ...moveMarks(picture.marks, translation({ x: 0, y: leading * 1.5 })),
  ];
  const halfWidth = (width - gap) / 2;
  const columnAt = (index: number): Column => {
    if (index === 0) return { left: rightLeft, top: mapBottom, width: columnWidth, bottom };
    if (index === 1) return { left: 0, top: top + squaresHeight + 6, width: inchSquare, bottom };
    return { left: index % 2 === 0 ? 0 : halfWidth + gap, top: 0, width: halfWidth, bottom };
  };
  const columns = flow(itemsOf(content), style, columnAt);
  const first = [
    ...head.marks,
    ...moveMarks(squareMarks(style), translation({ x: 0, y: top })),
    ...moveMarks(map, translation({ x: rightLeft, y: top })),
  ];
  const pages = [{ marks: [...first], height: top + squaresHeight }];
  columns.forEach((column, index) => {
    const page = index < 2 ? 0 : Math.floor(index / 2);
    const on = pages[page] ?? { marks: [], height: 0 };
    pages[page] = { marks: [...on.marks, ...column.marks], height: Math.max(on.height, column.bottom) };
  });
  return pages;
};

const headMarks = (content: CoverContent, width: number, style: FlowStyle) => {
  const title = wrap(content.title, width, titleSize, (text, size) => style.textWidth(text, size, 'bold'));
  const facts = content.facts.flatMap((fact) => wrap(fact, width, textSize * 1.1, style.textWidth));
  const marks: Mark[] = [
    ...title.map((text, index) =>
      textMark('words', 'mark', { x: 0, y: titleSize * (0.8 + index * 1.1) }, text, titleSize, { weight: 'bold' }),
    ),
    ...facts.map((text, index) =>
      textMark(
        'words',
        'mark',
        { x: 0, y: titleSize * 1.1 * title.length + leading * 1.1 * (index + 0.9) },
        text,
        textSize * 1.1,
      ),
    ),
  ];
  return { marks, height: titleSize * 1.1 * title.length + leading * 1.1 * facts.length + 5 };
};

/** The two test squares, one under the other, with a tick at each centimetre and each inch. */
const squareMarks = (style: FlowStyle): readonly Mark[] => [
  ...testSquare(100, 10, words.squareMetric, words.squareMetricHow, style),
  ...moveMarks(
    testSquare(inchSquare, 25.4, words.squareInch, words.squareInchHow, style),
    translation({ x: 0, y: 100 + gap }),
  ),
];

const testSquare = (side: number, tick: number, name: string, how: string, style: FlowStyle): readonly Mark[] => {
  const places = Array.from({ length: Math.round(side / tick) - 1 }, (_, index) => (index + 1) * tick);
  const ticks = places.flatMap((at) => [
    stroke({ x: at, y: 0 }, { x: at, y: 3 }),
    stroke({ x: 0, y: at }, { x: 3, y: at }),
  ]);
  const middle = side / 2;
  const lines = wrap(how, side - 24, textSize, style.textWidth);
  return [
    pathMark('words', 'mark', rectangle(0, 0, side, side)),
    pathMark('words', 'mark', ...ticks),
    textMark('words', 'mark', { x: middle, y: middle - 6 }, name, 9, { anchor: 'middle', weight: 'bold' }),
    ...lines.map((text, index) =>
      textMark('words', 'mark', { x: middle, y: middle + 2 + index * leading }, text, textSize, { anchor: 'middle' }),
    ),
  ];
};

const itemsOf = (content: CoverContent): readonly FlowItem[] => [
  ...(content.notes.length > 0
    ? [
        { kind: 'heading', text: words.notPrinted } as const,
        ...content.notes.map((text): FlowItem => ({ kind: 'text', text })),
      ]
    : []),
  { kind: 'heading', text: words.pieces },
  ...content.pieces.map(({ number, text }): FlowItem => ({ kind: 'text', lead: `${number}`, text })),
  { kind: 'heading', text: words.alterations },
  // Numbered as on the overlays, where every cut says of which step it is.
  ...(content.alterations.length === 0
    ? [{ kind: 'text', text: words.noAlterations } as const]
    : content.alterations.map(
        (text, index): FlowItem => ({ kind: 'text', lead: `${index + 1}`, text: upperFirst(text) }),
      )),
  { kind: 'heading', text: words.lines },
  { kind: 'sample', ink: 'cut', text: words.lineCut },
  { kind: 'sample', ink: 'seam', text: words.lineSeam },
  { kind: 'sample', ink: 'fold', text: words.lineFold },
  { kind: 'sample', ink: 'level', text: words.lineLevel },
  { kind: 'sample', ink: 'mark', double: true, text: words.lineLengthen },
  ...(content.originals ? [{ kind: 'sample', ink: 'original', text: words.lineOriginal } as const] : []),
  ...(content.overlays
    ? [
        { kind: 'sample', ink: 'changed', text: words.lineCutApart } as const,
        { kind: 'heading', text: words.overlays } as const,
        ...[words.overlayLay, words.overlayTape].map((text): FlowItem => ({ kind: 'text', text })),
      ]
    : []),
  ...(content.joins
    ? [
        { kind: 'heading', text: words.joining } as const,
        ...[words.joinTrim, words.joinLay, words.joinSigns, words.joinName].map(
          (text): FlowItem => ({ kind: 'text', text }),
        ),
      ]
    : []),
];
