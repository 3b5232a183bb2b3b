import { type Ink, type Mark, pathMark, rectangle, stroke, type TextWidth, textMark } from '../draw/index.ts';

/** One thing in a column of words. */
export type FlowItem =
  | { readonly kind: 'heading'; readonly text: string }
  /** Words, wrapped; `lead` is a number or name that stands before them. */
  | { readonly kind: 'text'; readonly text: string; readonly lead?: string }
  /** The same with a box to tick before it. */
  | { readonly kind: 'tick'; readonly text: string }
  /** A stretch of line in an ink, single or double, and what that line means. */
  | { readonly kind: 'sample'; readonly ink: Ink; readonly double?: true; readonly text: string };

export interface Column {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  /** Where the column must end. */
  readonly bottom: number;
}

export interface FlowStyle {
  /** Em of the words and from baseline to baseline, mm. */
  readonly size: number;
  readonly leading: number;
  readonly textWidth: TextWidth;
}

const leadWidth = 6;
const sampleWidth = 16;
/** Half of what parts a double line, mm. */
const doubled = 0.9;
const headingGap = 2.5;

/** Words broken at spaces so that no line is wider than `width`; a single word that is too wide is broken anywhere. */
export const wrap = (text: string, width: number, size: number, textWidth: TextWidth): string[] => {
  const fits = (line: string) => textWidth(line, size, 'regular') <= width;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ').flatMap((whole) => (fits(whole) ? [whole] : broken(whole, fits)))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && !fits(longer)) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
};

const broken = (word: string, fits: (line: string) => boolean): string[] => {
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (part !== '' && !fits(part + letter)) {
      parts.push(part);
      part = letter;
    } else part += letter;
  }
  return [...parts, part];
};

/**
 * Sets items into columns one after another; a heading is not left alone at a column's foot. Gives the marks of each
 * column used and where the last one ended, and asks `nextColumn` for as many columns as it needs.
 */
export const flow = (
  items: readonly FlowItem[],
  style: FlowStyle,
  nextColumn: (index: number) => Column,
): readonly { readonly marks: readonly Mark[]; readonly bottom: number }[] => {
  const columns: { marks: Mark[]; bottom: number }[] = [];
  let column = nextColumn(0);
  let y = column.top;
  const open = () => {
    column = nextColumn(columns.length);
    y = column.top;
    columns.push({ marks: [], bottom: y });
  };
  open();
  items.forEach((item, index) => {
    let block = blockOf(item, column.width, style);
    const first = y === column.top;
    const gap = item.kind === 'heading' && !first ? headingGap : 0;
    const next = items[index + 1];
    const following = () =>
      item.kind === 'heading' && next ? blockOf(next, column.width, style).length * style.leading : 0;
    const followed = following();
    // At the head of a column there is nowhere better to go, but for a heading whose words would leave it behind.
    const movable = !first || followed > 0;
    if (movable && y + gap + block.length * style.leading + followed > column.bottom) {
      open();
      // The next column may be of another width.
      block = blockOf(item, column.width, style);
      // Or too short for a heading and its words; the one after it is then looked at too, and no further.
      if (followed > 0 && y + block.length * style.leading + following() > column.bottom) {
        open();
        block = blockOf(item, column.width, style);
      }
    } else y += gap;
    for (const line of block) {
      if (y + style.leading > column.bottom) open();
      columns[columns.length - 1]?.marks.push(...line(column.left, y + style.size));
      y += style.leading;
      (columns[columns.length - 1] as { bottom: number }).bottom = y;
    }
  });
  return columns;
};

type LineMarks = (left: number, baseline: number) => readonly Mark[];

const blockOf = (item: FlowItem, width: number, style: FlowStyle): readonly LineMarks[] => {
  const { size, textWidth } = style;
  if (item.kind === 'heading') {
    return [(left, y) => [textMark('words', 'mark', { x: left, y }, item.text, size * 1.1, { weight: 'bold' })]];
  }
  const indent =
    item.kind === 'sample'
      ? sampleWidth + 3
      : item.kind === 'tick'
        ? size * 1.35
        : item.lead === undefined
          ? 0
          : leadWidth;
  return wrap(item.text, width - indent, size, textWidth).map((text, index) => (left, y) => {
    const words = textMark('words', 'mark', { x: left + indent, y }, text, size);
    if (index > 0) return [words];
    if (item.kind === 'sample') {
      const middle = y - size * 0.25;
      const strokes = (item.double ? [middle - doubled, middle + doubled] : [middle]).map((at) =>
        stroke({ x: left, y: at }, { x: left + sampleWidth, y: at }),
      );
      return [pathMark('words', item.ink, ...strokes), words];
    }
    if (item.kind === 'tick') {
      const side = size * 0.75;
      return [pathMark('words', 'mark', rectangle(left, y - side * 0.95, side, side)), words];
    }
    if (item.lead === undefined) return [words];
    return [textMark('words', 'mark', { x: left, y }, item.lead, size, { weight: 'bold' }), words];
  });
};
