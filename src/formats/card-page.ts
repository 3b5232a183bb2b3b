import { type Card, type SaidCard, sayCard } from '../alter/index.ts';
import { drawCard, type Mark, moveMarks, type TextWidth, textMark } from '../draw/index.ts';
import { scaling, translation } from '../geometry/index.ts';
import type { Unit } from '../units/index.ts';
import { fill, cardWords as words } from '../words/index.ts';
import { type Column, type FlowItem, type FlowStyle, flow, wrap } from './text-flow.ts';

export interface CardPageStyle {
  readonly unit: Unit;
  readonly locale: string;
  readonly textWidth: TextWidth;
}

export interface CardPage {
  /** One list of marks a sheet; a card is made to stand on one. */
  readonly sheets: readonly (readonly Mark[])[];
  /** The drawing is 1 to this; null where there is none. */
  readonly scale: number | null;
}

/** 10 point, and from baseline to baseline; nothing a person reads at the table is smaller. */
const textSize = 3.53;
const leading = 4.3;
const titleSize = 6.4;
/** An amount is read at arm's length. */
const amountSize = 4.6;
const amountLeading = 5.8;
const gap = 7;
/** Words beside a drawing want a column at least this wide. */
const leastBeside = 52;

/** Scales a drawing is made at, the largest first: round ones, which a person can reckon with. */
const scales = [4, 5, 6, 8, 10, 12, 15, 20, 25] as const;

const headMarks = (said: SaidCard, width: number, textWidth: TextWidth) => {
  const marks: Mark[] = [];
  let y = 0;
  const put = (text: string, size: number, line: number, weight: 'regular' | 'bold') => {
    for (const part of wrap(text, width, size, (one, em) => textWidth(one, em, weight))) {
      marks.push(textMark('words', 'mark', { x: 0, y: y + size * 0.8 }, part, size, { weight }));
      y += line;
    }
  };
  put(said.title, titleSize, titleSize * 1.15, 'bold');
  put(said.of, textSize, leading * 1.2, 'regular');
  put(said.purpose, textSize, leading, 'regular');
  y += leading * 0.6;
  for (const amount of said.amounts) put(amount, amountSize, amountLeading, 'bold');
  return { marks, height: y };
};

const finishedText = (said: SaidCard, { unit, locale }: CardPageStyle): readonly string[] =>
  said.finished.map(({ name, before, change, after }) => {
    const template =
      change === words.stays
        ? words.finishedStays
        : before === words.notKnown
          ? words.finishedUnknown
          : words.finishedRow;
    return fill(template, { name, before, change, after }, unit, locale);
  });

const section = (heading: string, texts: readonly string[], numbered = false): readonly FlowItem[] =>
  texts.length === 0
    ? []
    : [
        { kind: 'heading', text: heading },
        ...texts.map(
          (text, index): FlowItem => ({ kind: 'text', text, ...(numbered ? { lead: `${index + 1}` } : {}) }),
        ),
      ];

/** One card on paper `width` by `height` mm, its top left at 0, 0: as large a drawing as leaves room for every word. */
export const cardPage = (card: Card, width: number, height: number, style: CardPageStyle): CardPage => {
  const said = sayCard(card, style.unit, style.locale);
  const layouts = card.picture
    ? scales.flatMap((scale) => layout(card, said, scale, width, height, style) ?? [])
    : [undrawn(said, width, height, style)];
  return layouts.find(({ sheets }) => sheets.length === 1) ?? (layouts.at(-1) as CardPage);
};

const drawingNote = (said: SaidCard, scale: number | null, { unit, locale }: CardPageStyle): string =>
  scale === null ? said.drawing : [said.drawing, fill(words.scale, { scale: String(scale) }, unit, locale)].join(' ');

/** Null where the drawing at that scale is wider than the paper. */
const layout = (
  card: Card,
  said: SaidCard,
  scale: number,
  width: number,
  height: number,
  style: CardPageStyle,
): CardPage | null => {
  const drawing = drawCard(card, {
    unit: style.unit,
    locale: style.locale,
    textSize: textSize * scale,
    textWidth: style.textWidth,
  });
  if (!drawing) return null;
  const { minX, minY, maxX, maxY } = drawing.bounds;
  const [wide, high] = [(maxX - minX) / scale, (maxY - minY) / scale];
  if (wide > width) return null;
  const head = headMarks(said, width, style.textWidth);
  const top = head.height + 4;
  const placed = moveMarks(
    moveMarks(moveMarks(drawing.marks, translation({ x: -minX, y: -minY })), scaling(1 / scale)),
    translation({ x: 0, y: top }),
  );
  const flowStyle: FlowStyle = { size: textSize, leading, textWidth: style.textWidth };
  const left = wide + gap;
  const note = drawingNote(said, scale, style);
  const besideItems = [
    ...section(words.headings.finished, finishedText(said, style)),
    ...section(words.headings.cloth, [...said.cloth, said.clothSaid]),
  ];
  const beside =
    width - left < leastBeside
      ? []
      : flow([...besideItems, ...section(words.headings.drawing, [note])], flowStyle, () => ({
          left,
          top,
          width: width - left,
          bottom: top + high,
        }));
  const fits = beside.length === 1;
  const under = top + high + 2;
  const noteLines = fits ? [] : wrap(note, width, textSize, style.textWidth);
  const noteMarks = noteLines.map((text, index) =>
    textMark('words', 'mark', { x: 0, y: under + textSize + index * leading }, text, textSize),
  );
  const from = under + noteLines.length * leading + 3;
  const columns = wordColumns(said, fits ? [] : besideItems, from, width, height, flowStyle);
  if (from > height / 1.4) return null;
  const first = [...head.marks, ...placed, ...noteMarks, ...(fits ? (beside[0]?.marks ?? []) : [])];
  return { sheets: withFirst(first, columns), scale };
};

const undrawn = (said: SaidCard, width: number, height: number, style: CardPageStyle): CardPage => {
  const head = headMarks(said, width, style.textWidth);
  const flowStyle: FlowStyle = { size: textSize, leading, textWidth: style.textWidth };
  const more = [
    ...section(words.headings.finished, finishedText(said, style)),
    ...section(words.headings.cloth, [...said.cloth, said.clothSaid]),
    ...section(words.headings.drawing, [said.drawing]),
  ];
  const columns = wordColumns(said, more, head.height + 4, width, height, flowStyle);
  return { sheets: withFirst(head.marks, columns), scale: null };
};

const withFirst = (first: readonly Mark[], sheets: readonly (readonly Mark[])[]): readonly (readonly Mark[])[] => [
  [...first, ...(sheets[0] ?? [])],
  ...sheets.slice(1),
];

/** The words in two columns, as even as they can be, on to further sheets where one is full. */
const wordColumns = (
  said: SaidCard,
  more: readonly FlowItem[],
  top: number,
  width: number,
  height: number,
  style: FlowStyle,
): readonly (readonly Mark[])[] => {
  const items = [
    ...section(words.headings.where, said.where),
    ...section(words.headings.steps, said.steps, true),
    ...section(words.headings.follows, said.follows),
    ...section(words.headings.holds, said.holds),
    ...section(words.headings.cautions, said.cautions),
    ...more,
  ];
  const wide = (width - gap) / 2;
  const columnAt =
    (bottom: number) =>
    (index: number): Column => ({
      left: index % 2 === 0 ? 0 : wide + gap,
      top: index < 2 ? top : 0,
      width: wide,
      bottom: index < 2 ? bottom : height,
    });
  // The shortest pair of columns that holds every word; both to the foot where none does.
  for (let bottom = top + 20; bottom < height; bottom += style.leading) {
    const columns = flow(items, style, columnAt(bottom));
    if (columns.length <= 2) return [columns.flatMap(({ marks }) => marks)];
  }
  const columns = flow(items, style, columnAt(height));
  return Array.from({ length: Math.ceil(columns.length / 2) }, (_, sheet) =>
    columns.slice(2 * sheet, 2 * sheet + 2).flatMap(({ marks }) => marks),
  );
};
