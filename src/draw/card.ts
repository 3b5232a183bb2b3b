import { type Card, type CardDimension, type CardPicture, sayCard } from '../alter/index.ts';
import {
  add,
  type Bounds,
  lerp,
  type Path,
  type Point,
  pathBounds,
  pathStart,
  polyline,
  subtract,
  translation,
} from '../geometry/index.ts';
import { cutLine, outlineOf, type Piece } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { cardWords, fill } from '../words/index.ts';
import { drawBeforeAfter } from './before-after.ts';
import { createDrawingCache, type DrawingCache } from './drawing-cache.ts';
import {
  drawingOf,
  estimatedTextWidth,
  filledMark,
  groupMark,
  marksBounds,
  pathMark,
  rectangle,
  stroke,
  type TextWidth,
  textMark,
} from './marks.ts';
import { moveMarks } from './move.ts';
import { pieceGroup } from './piece.ts';
import type { Drawing, GroupMark, Mark } from './types.ts';

export interface CardDrawingOptions {
  readonly unit: Unit;
  readonly locale?: string;
  /** Em of the words in mm of the pieces: 3.53 × the scale's denominator is 10 point on paper. */
  readonly textSize?: number;
  readonly textWidth?: TextWidth;
  /** What was drawn last, so that the same card at another size of type is not worked out again. */
  readonly cache?: DrawingCache;
}

const usualSize = 24;

interface Style {
  readonly unit: Unit;
  readonly locale: string;
  readonly size: number;
  readonly textWidth: TextWidth;
  readonly cache: DrawingCache;
}

/** One piece of the picture with its words, its top left at 0, 0. */
interface Panel {
  readonly marks: readonly Mark[];
  readonly width: number;
  readonly height: number;
}

/**
 * An alteration card's picture: the generic pieces before, with the lines to cut in red pencil, beside the same after,
 * with what changed in red over what was; amounts between ticks; and a bar for the scale. In millimetres of the pieces.
 * Null where the card has no picture.
 */
export const drawCard = (card: Card, options: CardDrawingOptions): Drawing | null => {
  const { picture } = card;
  if (!picture) return null;
  const { unit, locale = 'en', textSize: size = usualSize, textWidth = estimatedTextWidth } = options;
  const style: Style = { unit, locale, size, textWidth, cache: options.cache ?? createDrawingCache() };
  const changed = piecesToDraw(picture);
  const caption =
    picture.nested.length > 0
      ? cardWords.nestHere
      : picture.cuts.some(({ id }) => id === 'fold')
        ? cardWords.foldHere
        : picture.cuts.length > 0
          ? cardWords.cutHere
          : cardWords.before;
  const left = row(
    caption,
    changed.map(({ before }) => beforePanel(before, picture, style)),
    style,
  );
  const right = row(
    cardWords.afterwards,
    changed.map(({ before, after }) => afterPanel(before, after, picture, style)),
    style,
  );
  const gap = size * 2.5;
  // Many panels of one garment stand above themselves as altered, few beside them.
  const above = changed.length > mostBeside;
  const height = above ? left.height + gap + right.height : Math.max(left.height, right.height);
  const place = above ? { x: 0, y: left.height + gap } : { x: left.width + gap, y: 0 };
  const marks = [
    ...left.marks,
    ...moveMarks(right.marks, translation(place)),
    ...moveMarks(scaleBar(style), translation({ x: 0, y: height + size * 1.5 })),
  ];
  const label = fill(cardWords.drawingLabel, { title: sayCard(card, unit, locale).title }, unit, locale);
  return drawingOf(label, marks, size * 0.4);
};

/** Before and after stand beside each other while there are no more pieces than this. */
const mostBeside = 3;

/** What is drawn is what is cut apart: facings, bands and stands follow it, as the words say. */
const follows: readonly Piece['role'][] = [
  'front-facing',
  'back-facing',
  'neck-band',
  'cuff',
  'collar',
  'waistband',
  'pocket',
  'placket',
  'other',
];

/** The altered pieces worth drawing. A lining is altered as the cloth over it is and need not be drawn again. */
const piecesToDraw = ({ before, after }: CardPicture): readonly { readonly before: Piece; readonly after: Piece }[] => {
  const changed = after.pieces.flatMap((piece) => {
    const old = before.pieces.find(({ id }) => id === piece.id);
    return old && old !== piece ? [{ before: old, after: piece }] : [];
  });
  const ofCloth = changed.filter(({ after: piece }) => piece.cut.some(({ layer }) => layer === 'shell'));
  const leading = ofCloth.filter(({ after: piece }) => !follows.includes(piece.role));
  return [leading, ofCloth, changed].find((some) => some.length > 0) ?? [];
};

/** Panels side by side on one top edge, a caption above them. */
const row = (caption: string, panels: readonly Panel[], { size, textWidth }: Style): Panel => {
  const gap = size * 1.5;
  const top = size * 2;
  let x = 0;
  const placed = panels.flatMap((panel) => {
    const marks = moveMarks(panel.marks, translation({ x, y: top }));
    x += panel.width + gap;
    return marks;
  });
  const width = Math.max(x - gap, textWidth(caption, size, 'regular'));
  const height = top + Math.max(0, ...panels.map((panel) => panel.height));
  return { marks: [textMark('words', 'mark', { x: 0, y: size }, caption, size), ...placed], width, height };
};

const panelOf = (groups: readonly Mark[], textWidth: TextWidth): Panel => {
  const bounds = marksBounds(groups, textWidth) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return {
    marks: moveMarks(groups, translation({ x: -bounds.minX, y: -bounds.minY })),
    width: bounds.maxX - bounds.minX,
    height: bounds.maxY - bounds.minY,
  };
};

const layers = ['cut', 'seam', 'marks'] as const;

/** The piece as it is, what will be cut drawn over it; for a blend the sizes it runs to, thin and named. */
const beforePanel = (piece: Piece, picture: CardPicture, style: Style): Panel => {
  const { unit, locale, size } = style;
  const group = pieceGroup(piece, { unit, locale, layers });
  const [paper, ...lines] = group.marks as [Mark, ...Mark[]];
  const cuts = picture.cuts.filter((cut) => cut.piece === piece.id).map((cut) => polyline(cut.points, false));
  const nested = nestedMarks(piece, picture, style);
  const red = cuts.length > 0 ? [pathMark('cut', 'changed', ...cuts)] : [];
  const dimensions = dimensionMarks(piece, 'before', picture.dimensions, style);
  const { minX, maxX, minY } = pathBounds(cutLine(piece));
  const name = textMark('words', 'mark', { x: (minX + maxX) / 2, y: minY - size * 0.7 }, piece.name, size, {
    anchor: 'middle',
    weight: 'bold',
  });
  const marks = [...nested.papers, paper, ...nested.lines, ...lines, ...red, name, ...dimensions];
  return panelOf([groupMark(piece.id, group.label, marks)], style.textWidth);
};

/** Pieces of the other sizes laid to the same centre and the same waist, or the same top where there is none. */
const nestedMarks = (
  piece: Piece,
  { nested }: CardPicture,
  { size }: Style,
): { readonly papers: readonly Mark[]; readonly lines: readonly Mark[] } => {
  const laid = nested.flatMap(({ size: name, pieces }) => {
    const other = pieces.find(({ id }) => id === piece.id);
    if (!other) return [];
    const by = subtract(anchorOf(piece), anchorOf(other));
    const at = translation(by);
    const { maxX, maxY } = pathBounds(outlineOf(other));
    const lines = moveMarks([pathMark('seam', 'faint', outlineOf(other))], at);
    return [{ name, lines, cut: cutLine(other), by, corner: { x: maxX + by.x, y: maxY + by.y } }];
  });
  // Names one below the other beside the widest, each joined to the corner of its own line.
  const x = Math.max(0, ...laid.map(({ corner }) => corner.x)) + size;
  return {
    papers: laid.flatMap(({ cut, by }) => moveMarks([filledMark('cut', 'paper', cut)], translation(by))),
    lines: laid.flatMap(({ name, lines, corner }, index) => {
      const y = corner.y + (index - (laid.length - 1) / 2) * size * 1.3;
      return [
        ...lines,
        pathMark('words', 'faint', stroke(corner, { x, y })),
        textMark('words', 'mark', { x: x + size * 0.2, y: y + size * 0.3 }, name, size),
      ];
    }),
  };
};

const anchorOf = (piece: Piece): Point => {
  const waist = piece.levels.find(({ id }) => id === 'waist');
  const { minX, minY } = pathBounds(outlineOf(piece));
  return waist?.from ?? { x: minX, y: minY };
};

/** The piece as altered over the piece as it was, as the make's page draws it, with the amounts between ticks. */
const afterPanel = (before: Piece, after: Piece, picture: CardPicture, style: Style): Panel => {
  const { unit, locale, size, cache } = style;
  const alone = (piece: Piece) => ({ pieces: [piece], seams: [], girths: [] });
  const drawing = drawBeforeAfter(alone(before), alone(after), {
    unit,
    locale,
    amounts: 'told',
    textSize: size,
    cache,
  });
  const group = drawing.marks.find((mark): mark is GroupMark => mark.kind === 'group');
  if (!group) return panelOf(drawing.marks, style.textWidth);
  const by = subtract(startOf(group), pathStart(cutLine(after)));
  const dimensions = moveMarks(dimensionMarks(after, 'after', picture.dimensions, style), translation(by));
  return panelOf([{ ...group, marks: [...group.marks, ...dimensions] }], style.textWidth);
};

/** Where the paper of a piece that has been laid somewhere begins. */
const startOf = (group: GroupMark): Point => {
  const [paper] = group.marks;
  if (paper?.kind !== 'path' || !paper.paths[0]) throw new Error(`Group ${group.id} begins with no paper`);
  return pathStart(paper.paths[0]);
};

/** Amounts between two ticks, the figure beside them. */
const dimensionMarks = (
  piece: Piece,
  on: CardDimension['on'],
  dimensions: readonly CardDimension[],
  style: Style,
): readonly Mark[] => {
  const box = pathBounds(outlineOf(piece));
  return dimensions
    .filter((dimension) => dimension.piece === piece.id && dimension.on === on)
    .flatMap((dimension) => oneDimension(dimension, box, style));
};

const oneDimension = ({ from, to, mm }: CardDimension, box: Bounds, style: Style): readonly Mark[] => {
  const { unit, locale, size, textWidth } = style;
  const text = formatLength(mm, unit, { purpose: 'amount', locale });
  const across = Math.abs(to.x - from.x) > Math.abs(to.y - from.y);
  const tick = size * 0.45;
  const offset = across ? { x: 0, y: tick } : { x: tick, y: 0 };
  const ticks = [from, to].map((end) => stroke(subtract(end, offset), add(end, offset)));
  const width = textWidth(text, size, 'bold');
  const middle = (box.minX + box.maxX) / 2;
  // At the side of the piece the figure stands before the line, towards its middle; in the middle, above what goes across.
  const left = Math.min(from.x, to.x);
  const above = across && left < middle;
  const x = above ? (from.x + to.x) / 2 - width / 2 : left - (across ? size * 0.4 : tick + size * 0.2) - width;
  const y = above ? from.y - tick - size * 0.35 : lerp(from, to, 0.5).y + size * 0.3;
  // Where there is no room before the line, the figure stands after it.
  const at = { x: x < box.minX ? Math.max(from.x, to.x) + tick + size * 0.2 : x, y };
  return [
    pathMark('marks', 'dimension', stroke(from, to), ...ticks),
    filledMark('words', 'paper', rectangle(at.x, y - size * 0.78, width, size)),
    textMark('words', 'mark', at, text, size, { weight: 'bold' }),
  ];
};

/** A bar of whole decimetres, or of inches, at the scale of the pieces. */
const scaleBar = ({ unit, locale, size }: Style): readonly Mark[] => {
  const [step, count] = unit === 'cm' ? [100, 2] : [4 * 25.4, 2];
  const places = Array.from({ length: count + 1 }, (_, index) => index * step);
  const bar: Path[] = [
    stroke({ x: 0, y: 0 }, { x: step * count, y: 0 }),
    ...places.map((x) => stroke({ x, y: -size * 0.4 }, { x, y: size * 0.4 })),
  ];
  const text = formatLength(step * count, unit, { purpose: 'measure', locale });
  return [
    pathMark('marks', 'dimension', ...bar),
    textMark('words', 'mark', { x: step * count + size * 0.6, y: size * 0.3 }, text, size),
  ];
};
