import { type Card, type SaidCard, sayCard } from '../alter/index.ts';
import {
  createDrawingCache,
  type DrawingCache,
  drawCard,
  type Mark,
  moveMarks,
  type TextWidth,
  textMark,
} from '../draw/index.ts';
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
/** A column of words is at least this wide. */
const leastColumn = 64;

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
  const [amount, ...others] = said.amounts;
  if (amount) put(amount, amountSize, amountLeading, 'bold');
  for (const other of others) put(other, amountSize, amountLeading, 'regular');
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

/**
 * One card on paper `width` by `height` mm, its top left at 0, 0: as large a drawing as leaves room for every word,
 * above the words or at the head of their first column.
 */
export const cardPage = (card: Card, width: number, height: number, style: CardPageStyle): CardPage => {
  const said = sayCard(card, style.unit, style.locale);
  const laidOut = { card, said, width, height, style, cache: createDrawingCache() };
  let last: CardPage | null = null;
  for (const scale of card.picture ? scales : []) {
    for (const page of drawnAt(laidOut, scale)) {
      if (page.sheets.length === 1) return page;
      last = page;
    }
  }
  return last ?? undrawn(said, width, height, style);
};

const drawingNote = (said: SaidCard, scale: number, { unit, locale }: CardPageStyle): string =>
  [said.drawing, fill(words.scale, { scale: String(scale) }, unit, locale)].join(' ');

interface LaidOut {
  readonly card: Card;
  readonly said: SaidCard;
  readonly width: number;
  readonly height: number;
  readonly style: CardPageStyle;
  readonly cache: DrawingCache;
}

/** Both ways to lay a card out with its drawing at a scale, as far as the paper is wide enough for them. */
const drawnAt = (laidOut: LaidOut, scale: number): readonly CardPage[] => {
  const { card, said, width, height, style } = laidOut;
  const drawing = drawCard(card, {
    unit: style.unit,
    locale: style.locale,
    textSize: textSize * scale,
    textWidth: style.textWidth,
    cache: laidOut.cache,
  });
  if (!drawing) return [];
  const { minX, minY, maxX, maxY } = drawing.bounds;
  const [wide, high] = [(maxX - minX) / scale, (maxY - minY) / scale];
  const head = headMarks(said, width, style.textWidth);
  const top = head.height + 3;
  if (wide > width || top + high > height) return [];
  const placed = moveMarks(
    moveMarks(moveMarks(drawing.marks, translation({ x: -minX, y: -minY })), scaling(1 / scale)),
    translation({ x: 0, y: top }),
  );
  const flowStyle: FlowStyle = { size: textSize, leading, textWidth: style.textWidth };
  const items = itemsOf(said, style);
  const noteUnder = (noteWidth: number) =>
    wrap(drawingNote(said, scale, style), noteWidth, textSize, style.textWidth).map((text, index) =>
      textMark('words', 'mark', { x: 0, y: top + high + 2 + textSize + index * leading }, text, textSize),
    );
  const sheet = (note: readonly Mark[], left: number, rightTop: number): CardPage => {
    const under = top + high + 2 + note.length * leading + 3;
    const columns = {
      left: { left: 0, top: under, width: left },
      right: { left: left + gap, top: Math.max(rightTop, 0) || under, width: width - left - gap },
    };
    const first = [...head.marks, ...placed, ...note];
    return { sheets: withFirst(first, wordColumns(items, columns, width, height, flowStyle)), scale };
  };
  const left = Math.max(wide, leastColumn);
  return [
    sheet(noteUnder(width), (width - gap) / 2, 0),
    ...(width - left - gap >= leastColumn ? [sheet(noteUnder(left), left, top)] : []),
  ];
};

const undrawn = (said: SaidCard, width: number, height: number, style: CardPageStyle): CardPage => {
  const head = headMarks(said, width, style.textWidth);
  const flowStyle: FlowStyle = { size: textSize, leading, textWidth: style.textWidth };
  const wide = (width - gap) / 2;
  const top = head.height + 4;
  const columns = { left: { left: 0, top, width: wide }, right: { left: wide + gap, top, width: wide } };
  const items = [...itemsOf(said, style), ...section(words.headings.drawing, [said.drawing])];
  return { sheets: withFirst(head.marks, wordColumns(items, columns, width, height, flowStyle)), scale: null };
};

const withFirst = (first: readonly Mark[], sheets: readonly (readonly Mark[])[]): readonly (readonly Mark[])[] => [
  [...first, ...(sheets[0] ?? [])],
  ...sheets.slice(1),
];

const itemsOf = (said: SaidCard, style: CardPageStyle): readonly FlowItem[] => [
  ...section(words.headings.where, said.where),
  ...section(words.headings.steps, said.steps, true),
  ...section(words.headings.follows, said.follows),
  ...section(words.headings.holds, said.holds),
  ...section(words.headings.cautions, said.cautions),
  ...section(words.headings.finished, finishedText(said, style)),
  ...section(words.headings.cloth, [...said.cloth, said.clothSaid]),
];

type ColumnHead = Omit<Column, 'bottom'>;

/** The words in two columns that end as high as they can, on to further sheets where one is full. */
const wordColumns = (
  items: readonly FlowItem[],
  { left, right }: { readonly left: ColumnHead; readonly right: ColumnHead },
  width: number,
  height: number,
  style: FlowStyle,
): readonly (readonly Mark[])[] => {
  const half = (width - gap) / 2;
  const columnAt =
    (bottom: number) =>
    (index: number): Column => {
      if (index === 0) return { ...left, bottom };
      if (index === 1) return { ...right, bottom };
      return { left: index % 2 === 0 ? 0 : half + gap, top: 0, width: half, bottom: height };
    };
  const inTwo = (bottom: number) => {
    const columns = flow(items, style, columnAt(bottom));
    return columns.length <= 2 ? [columns.flatMap(({ marks }) => marks)] : null;
  };
  const lines = (from: number, to: number) => Math.floor((to - from) / style.leading);
  const whole = inTwo(height);
  if (whole) {
    // By halves to the highest foot that still holds every word.
    let [short, long, found] = [0, lines(left.top, height), whole];
    while (long - short > 1) {
      const middle = Math.floor((short + long) / 2);
      const tried = inTwo(left.top + middle * style.leading);
      if (tried) [long, found] = [middle, tried];
      else short = middle;
    }
    return found;
  }
  const columns = flow(items, style, columnAt(height));
  return Array.from({ length: Math.ceil(columns.length / 2) }, (_, sheet) =>
    columns.slice(2 * sheet, 2 * sheet + 2).flatMap(({ marks }) => marks),
  );
};
