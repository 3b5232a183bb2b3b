import { applyToPoint, type Path, type Point, pathBounds, scale } from '../geometry/index.ts';
import type { Layout, LayoutItem, LayoutProblem, Placement, Stretch } from '../lay/index.ts';
import type { Garment } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { clothGround } from './cloth-ground.ts';
import { shapeOf, transformOf } from './layout-shape.ts';
import { placeWords } from './layout-words.ts';
import { arrowHead, drawingOf, filledMark, groupMark, pathMark, rectangle, stroke, textMark } from './marks.ts';
import { moveMarks } from './move.ts';
import { type RoomForWords, roomForWords } from './room-for-words.ts';
import type { Drawing, GroupMark, Mark, PathMark, TextMark } from './types.ts';

export interface LayoutOptions {
  readonly unit: Unit;
  readonly locale?: string;
  /** The garment that is laid: pieces are then drawn by their own cut lines and grain; else by the plan's outlines. */
  readonly garment?: Garment;
  /** The cloth's own colour, as CSS writes it. */
  readonly colour?: string;
  readonly textSize?: number;
  /** The smallest em a name may be written in; seven tenths of `textSize` when left out. */
  readonly leastText?: number;
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
  const drawn = layout.placed.map((placement) => placedPiece(placement, problem, layout, size, options));
  const deepest = Math.max(0, ...layout.stretches.map((stretch) => stretch.height));
  const cloth = roomForWords(
    rectangle(0, 0, layout.length, deepest),
    [],
    [],
    drawn.map(({ outline }) => outline),
  );
  const pieces = drawn.map((one, index) => placedGroup(one, index, cloth, size, options.leastText));
  const { length: inHand } = problem.cloth;
  const template = inHand === null ? drawWords.used : inHand < layout.length ? drawWords.shortOf : drawWords.usedOf;
  const values = { used, ...(inHand === null ? {} : { inHand: atHand(inHand) }) };
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
  const ground = colour ?? '#ffffff';
  const edge = (y: number): Path => stroke({ x: from, y }, { x: from + length, y });
  const words = (text: string, y: number): TextMark =>
    textMark('words', 'mark', { x: from + size * 0.5, y }, text, size);
  return [
    { ...filledMark('cloth', 'cloth', cloth), colour: ground },
    ...clothGround(cloth, ground, size * 1.5),
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

/** A piece where it lies, and what is to be written of it. */
interface PlacedPiece {
  readonly item: LayoutItem;
  readonly outline: Path;
  readonly grain: readonly PathMark[];
  readonly notes: readonly string[];
}

const placedPiece = (
  placement: Placement,
  problem: LayoutProblem,
  layout: Layout,
  size: number,
  options: LayoutOptions,
): PlacedPiece => {
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
  return { item, outline, grain: grain ? grainMarksOf(grain, size) : [], notes };
};

const placedGroup = (
  { item, outline, grain, notes }: PlacedPiece,
  index: number,
  cloth: RoomForWords,
  size: number,
  least: number | undefined,
): GroupMark =>
  groupMark(`${item.id}-${index + 1}`, `${item.name}: ${notes.join(', ')}.`, [
    filledMark('cut', 'paper', outline),
    pathMark('cut', 'cut', outline),
    ...grain,
    ...placeWords(
      outline,
      grain.flatMap((mark) => mark.paths),
      [item.name, ...notes],
      size,
      cloth,
      least,
    ),
  ]);

const grainMarksOf = ([from, to]: readonly [Point, Point], size: number): readonly PathMark[] => {
  const along = { x: to.x - from.x, y: to.y - from.y };
  const head = Math.min(size * 0.7, Math.hypot(along.x, along.y) / 6);
  return [
    pathMark('marks', 'grain', stroke(from, to)),
    filledMark('marks', 'grain', arrowHead(to, along, head), arrowHead(from, scale(along, -1), head)),
  ];
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
