import { applyToPoint, type Path, type Point, pathBounds, scale } from '../geometry/index.ts';
import type { Layout, LayoutItem, LayoutProblem, Placement, Stretch } from '../lay/index.ts';
import type { Garment } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { shapeOf, transformOf } from './layout-shape.ts';
import {
  arrowHead,
  drawingOf,
  estimatedTextWidth,
  filledMark,
  groupMark,
  pathMark,
  rectangle,
  stroke,
  textMark,
} from './marks.ts';
import { moveMarks } from './move.ts';
import { roomForWords } from './room-for-words.ts';
import type { Drawing, GroupMark, Mark, TextMark } from './types.ts';

export interface LayoutOptions {
  readonly unit: Unit;
  readonly locale?: string;
  /** The garment that is laid: pieces are then drawn by their own cut lines and grain; else by the plan's outlines. */
  readonly garment?: Garment;
  /** The cloth's own colour, as CSS writes it. */
  readonly colour?: string;
  readonly textSize?: number;
}

/**
 * A plan to cut from: the cloth lying along x with its selvages and fold, each piece with its name, its grain, and how far
 * it lies from the selvage and from the end, and the length of cloth it takes.
 */
export const drawLayout = (problem: LayoutProblem, layout: Layout, options: LayoutOptions): Drawing => {
  const { unit, locale = 'en' } = options;
  const say = (mm: number) => formatLength(mm, unit, { locale });
  // A person cuts to what is used: never said as less than it is, nor what is in hand as more.
  const used = formatLength(layout.length, unit, { purpose: 'cloth', round: 'up', locale });
  const atHand = (mm: number) => formatLength(mm, unit, { purpose: 'cloth', round: 'down', locale });
  const size = options.textSize ?? Math.max(8, Math.max(layout.length, problem.cloth.width) / 70);
  const stretches = layout.stretches.flatMap((stretch) => stretchMarks(stretch, size, options.colour));
  const unused = unusedCloth(problem, layout);
  const pieces = layout.placed.map((placement, index) => placedGroup(placement, index, problem, layout, size, options));
  const { length: inHand } = problem.cloth;
  const template = inHand === null ? drawWords.used : inHand < layout.length ? drawWords.shortOf : drawWords.usedOf;
  const values = { used, ...(inHand === null ? {} : { inHand: atHand(inHand) }) };
  const deepest = Math.max(0, ...layout.stretches.map((stretch) => stretch.height));
  const label = fill(
    drawWords.layoutLabel,
    {
      used,
      width: say(problem.cloth.width),
      pieces: problem.items.map((item) => item.name).join(', '),
    },
    unit,
    locale,
  );
  return drawingOf(
    label,
    [
      ...stretches,
      ...unused,
      ...pieces,
      ...dimension(layout.length, deepest + size * 3.6, size, fill(template, values, unit, locale)),
    ],
    size,
  );
};

/** One stretch of cloth: its own colour, the selvages along it, and the fold where it is folded. */
const stretchMarks = (stretch: Stretch, size: number, colour: string | undefined): readonly Mark[] => {
  const { from, length, height, kind } = stretch;
  const cloth = rectangle(from, 0, length, height);
  const edge = (y: number): Path => stroke({ x: from, y }, { x: from + length, y });
  const words = (text: string, y: number): TextMark =>
    textMark('words', 'mark', { x: from + size * 0.5, y }, text, size);
  return [
    { ...filledMark('cloth', 'cloth', cloth), ...(colour ? { colour } : { colour: '#ffffff' }) },
    pathMark(
      'cloth',
      'cloth',
      stroke({ x: from, y: 0 }, { x: from, y: height }),
      stroke({ x: from + length, y: 0 }, { x: from + length, y: height }),
    ),
    pathMark('cloth', kind === 'folded' ? 'fold' : 'selvage', edge(0)),
    pathMark('cloth', 'selvage', edge(height)),
    words(kind === 'folded' ? drawWords.foldOfCloth : drawWords.selvage, -size * 0.6),
    words(kind === 'folded' ? drawWords.selvages : drawWords.selvage, height + size * 1.3),
  ];
};

/** Cloth in hand beyond the plan, in faint outline. */
const unusedCloth = (problem: LayoutProblem, layout: Layout): readonly Mark[] => {
  const { length } = problem.cloth;
  const last = layout.stretches[layout.stretches.length - 1];
  if (length === null || !last || length <= layout.length) return [];
  return [pathMark('cloth', 'faint', rectangle(layout.length, 0, length - layout.length, last.height))];
};

const placedGroup = (
  placement: Placement,
  index: number,
  problem: LayoutProblem,
  layout: Layout,
  size: number,
  options: LayoutOptions,
): GroupMark => {
  const { unit, locale = 'en' } = options;
  const item = problem.items.find(({ id }) => id === placement.id) as LayoutItem;
  const piece = options.garment?.pieces.find(({ id }) => id === placement.id);
  const stretch = layout.stretches[placement.stretch] as Stretch;
  const turn = transformOf(placement);
  const outline = shapeOf(problem, placement, item, piece, turn);
  const bounds = pathBounds(outline);
  const grain = piece ? ([applyToPoint(turn, piece.grain.from), applyToPoint(turn, piece.grain.to)] as const) : null;
  const folded = stretch.kind === 'folded';
  // From the selvage on single cloth, which lies at the top; on folded cloth the selvages lie together at the bottom.
  const toSelvage = folded ? (y: number) => stretch.height - y : (y: number) => y;
  const fromSelvage =
    grain && !placement.opened ? toSelvage(grain[0].y) : Math.min(toSelvage(bounds.minY), toSelvage(bounds.maxY));
  const say = (mm: number) => formatLength(Math.max(0, mm), unit, { locale });
  const onFold = folded && item.fold !== null;
  const values = {
    name: item.name,
    fromSelvage: say(fromSelvage),
    fromEnd: say(bounds.minX - stretch.from),
  };
  const notes = [
    ...(onFold ? [drawWords.onFold] : folded ? [drawWords.twice] : []),
    ...(placement.opened ? [drawWords.opened] : []),
    ...(!folded && placement.mirrored ? [drawWords.turnedOver] : []),
    fill(drawWords.fromEnd, values, unit, locale),
    ...(onFold
      ? []
      : [fill(placement.opened || !grain ? drawWords.fromSelvage : drawWords.grainFromSelvage, values, unit, locale)]),
  ];
  const label = `${item.name}: ${notes.join(', ')}.`;
  const grainPaths = grain ? [stroke(grain[0], grain[1])] : [];
  const words = placeWords(outline, grainPaths, [item.name, ...notes], size);
  return groupMark(`${item.id}-${index + 1}`, label, [
    filledMark('cut', 'paper', outline),
    pathMark('cut', 'cut', outline),
    ...(grain ? grainMarksOf(grain, size) : []),
    ...words,
  ]);
};

const grainMarksOf = ([from, to]: readonly [Point, Point], size: number): readonly Mark[] => {
  const along = { x: to.x - from.x, y: to.y - from.y };
  const head = Math.min(size, Math.hypot(along.x, along.y) / 4);
  return [
    pathMark('marks', 'grain', stroke(from, to)),
    filledMark('marks', 'grain', arrowHead(to, along, head), arrowHead(from, scale(along, -1), head)),
  ];
};

/** As many lines of words as find room on the paper, the name first; on small paper the name alone, broken and smaller. */
const placeWords = (
  outline: Path,
  lines: readonly Path[],
  texts: readonly string[],
  size: number,
): readonly TextMark[] => {
  const room = roomForWords(outline, lines);
  const [name = ''] = texts;
  const tries: { readonly shown: readonly string[]; readonly em: number }[] = [
    ...texts.map((_, index) => ({ shown: texts.slice(0, texts.length - index), em: size })),
    { shown: name.split(' '), em: size },
    { shown: [name], em: size * 0.7 },
    { shown: name.split(' '), em: size * 0.7 },
  ];
  for (const { shown, em } of tries) {
    const width = Math.max(...shown.map((text) => estimatedTextWidth(text, em, 'bold')));
    const height = em * (1 + 1.3 * (shown.length - 1));
    const level = room.find(width, height);
    const centre = level ?? room.find(height, width);
    if (!centre) continue;
    return shown.map((text, index) => {
      const down = -height / 2 + em * (0.75 + 1.3 * index);
      const at = level ? { x: centre.x, y: centre.y + down } : { x: centre.x + down, y: centre.y };
      const weight = index === 0 || name.includes(text) ? 'bold' : 'regular';
      return textMark('words', 'mark', at, text, em, { anchor: 'middle', angle: level ? 0 : -Math.PI / 2, weight });
    });
  }
  return [];
};

/** The length of cloth used, between two ticks. */
const dimension = (length: number, y: number, size: number, text: string): readonly Mark[] =>
  moveMarks(
    [
      pathMark(
        'marks',
        'dimension',
        stroke({ x: 0, y: 0 }, { x: length, y: 0 }),
        stroke({ x: 0, y: -size * 0.7 }, { x: 0, y: size * 0.7 }),
        stroke({ x: length, y: -size * 0.7 }, { x: length, y: size * 0.7 }),
      ),
      textMark('words', 'dimension', { x: length / 2, y: -size * 0.5 }, text, size, {
        anchor: 'middle',
        weight: 'bold',
      }),
    ],
    { a: 1, b: 0, c: 0, d: 1, e: 0, f: y },
  );
