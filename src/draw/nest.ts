import {
  type Bounds,
  distance,
  lerp,
  type Path,
  type Point,
  pathBounds,
  pathStart,
  segmentTangentAt,
  translation,
  turnBetween,
  unionOfBounds,
} from '../geometry/index.ts';
import { cutLine, outlineOf, type Pattern, type Piece } from '../pattern/index.ts';
import type { Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import {
  drawingOf,
  estimatedTextWidth,
  filledMark,
  groupMark,
  marksBounds,
  pathMark,
  stroke,
  textMark,
} from './marks.ts';
import { moveMarks } from './move.ts';
import { nameAbove } from './name-above.ts';
import { grainMarks } from './piece-marks.ts';
import { roomForWords } from './room-for-words.ts';
import { sideBySide } from './side-by-side.ts';
import type { Drawing, GroupMark, PathMark, TextMark } from './types.ts';

export interface NestOptions {
  readonly unit: Unit;
  readonly locale?: string;
  /** The size whose line is firm. */
  readonly size?: string;
  readonly textSize?: number;
  readonly aspect?: number;
  /** False where there is no room for the names of sizes; they are named when left out. */
  readonly sizesNamed?: boolean;
}

/** One piece in one size. */
interface Sized {
  readonly size: string;
  readonly piece: Piece;
  readonly cut: Path;
}

/** Every size of every piece, one within the other as they are drafted; the chosen size's line firm, each size named. */
export const drawNest = (pattern: Pattern, options: NestOptions): Drawing => {
  const ids = [...new Set(pattern.sizes.flatMap((size) => size.garment.pieces.map((piece) => piece.id)))];
  const nests = ids.map((id) =>
    pattern.sizes.flatMap((size): Sized[] => {
      const piece = size.garment.pieces.find((one) => one.id === id);
      return piece ? [{ size: size.id, piece, cut: cutLine(piece) }] : [];
    }),
  );
  const groups = nests.map((nest) => nestGroup(nest, options));
  // A nest has the place of its lines, of its name and of the names of its sizes.
  const boxes = groups.map((group) => marksBounds([group]) as Bounds);
  const places = sideBySide(boxes, options.aspect ?? 1.5);
  const marks = groups.flatMap((group, index) => moveMarks([group], translation(places[index] as Point)));
  return drawingOf(fill(drawWords.nestLabel, { name: pattern.name }, options.unit, options.locale), marks, 10);
};

const usualSize = 12;

const nestGroup = (nest: readonly Sized[], options: NestOptions): GroupMark => {
  const chosen = nest.find((one) => one.size === options.size);
  const first = nest[0] as Sized;
  const others = nest.filter((one) => one !== chosen).map((one) => pathMark('cut', 'seam', one.cut));
  const largest = nest.reduce((best, one) => (area(one.cut) > area(best.cut) ? one : best));
  const size = options.textSize ?? usualSize;
  const shown = chosen ?? first;
  const grain = grainMarks(shown.piece);
  return groupMark(first.piece.id, first.piece.name, [
    filledMark('cut', 'paper', largest.cut),
    ...others,
    ...(chosen ? [pathMark('cut', 'cut', chosen.cut)] : []),
    ...grain,
    ...nameOf(nest, shown.piece, grain, size),
    ...(options.sizesNamed === false ? [] : sizeNames(nest, options.size, size)),
  ]);
};

/** The piece's name clear of its grain and of every size's line, or above it where there is no room. */
const nameOf = (
  nest: readonly Sized[],
  piece: Piece,
  grain: readonly PathMark[],
  size: number,
): readonly TextMark[] => {
  const lines = [...nest.flatMap((one) => [one.cut, outlineOf(one.piece)]), ...grain.flatMap((mark) => mark.paths)];
  const middle = lerp(piece.grain.from, piece.grain.to, 0.5);
  const room = roomForWords(outlineOf(piece), lines);
  const centre = room.find(estimatedTextWidth(piece.name, size, 'bold'), size, middle);
  if (!centre) return nameAbove(piece.name, nest.map(({ cut }) => pathBounds(cut)).reduce(unionOfBounds), size);
  const at = { x: centre.x, y: centre.y + size * 0.25 };
  return [textMark('words', 'mark', at, piece.name, size, { anchor: 'middle', weight: 'bold' })];
};

const area = (path: Path): number => {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  return (maxX - minX) * (maxY - minY);
};

/** From the name of one size to the next, in ems. */
const rung = 1.25;

/**
 * The sizes named beside a nest this high: all of them, or where their names would stand higher than the nest, so that
 * its neighbours had no room, the first, the chosen and the last.
 */
const namedSizes = (nest: readonly Sized[], chosen: string | undefined, high: number, textSize: number) => {
  const all = nest.map((_, index) => index);
  if (all.length * rung * textSize <= high) return all;
  return all.filter((index) => index === 0 || index === all.length - 1 || nest[index]?.size === chosen);
};

/** Size names fanned out beside the corner where the sizes lie farthest apart, each joined to its own line. */
const sizeNames = (nest: readonly Sized[], chosen: string | undefined, textSize: number) => {
  const [first, last] = [nest[0] as Sized, nest[nest.length - 1] as Sized];
  const corners = (one: Sized) => one.piece.runs.map((run) => pathStart(run.path));
  const spread = corners(first).map((corner, index) => distance(corner, corners(last)[index] ?? corner));
  const corner = spread.indexOf(Math.max(...spread));
  const box = nest.map(({ cut }) => pathBounds(cut)).reduce(unionOfBounds);
  // The corner of the cut line that belongs to the same corner of the seam line: its nearest.
  const points = nest.map((one) => nearestCorner(one.cut, corners(one)[corner] ?? (corners(one)[0] as Point)));
  const right = (points[0]?.x ?? 0) > (box.minX + box.maxX) / 2;
  const x = right ? box.maxX + textSize * 1.5 : box.minX - textSize * 1.5;
  // In the order of the sizes, upwards or downwards as their corners lie: leaders then cross least.
  const order = namedSizes(nest, chosen, box.maxY - box.minY, textSize);
  if ((points[0]?.y ?? 0) > (points.at(-1)?.y ?? 0)) order.reverse();
  const half = (order.length * rung * textSize) / 2;
  const average = points.reduce((sum, p) => sum + p.y, 0) / points.length;
  // Beside the nest and not beyond it, where its name and its neighbours stand.
  const middle = Math.max(box.minY + half, Math.min(box.maxY - half, average));
  return order.flatMap((index, place) => {
    const y = middle + (place - (order.length - 1) / 2) * textSize * rung;
    const name = (nest[index] as Sized).size;
    const weight = name === chosen ? 'bold' : 'regular';
    return [
      pathMark('words', 'faint', stroke(points[index] as Point, { x, y })),
      textMark('words', 'mark', { x: x + (right ? 1 : -1) * textSize * 0.4, y: y + textSize * 0.3 }, name, textSize, {
        anchor: right ? 'start' : 'end',
        weight,
      }),
    ];
  });
};

/** Where a line turns by more than this it has a corner, not a joint of two curves; radians. */
const cornerTurn = 0.15;

const nearestCorner = (cut: Path, p: Point): Point => {
  const turning = cut.filter((segment, index) => {
    const before = cut[(index + cut.length - 1) % cut.length] as Path[number];
    return Math.abs(turnBetween(segmentTangentAt(before, 1), segmentTangentAt(segment, 0))) > cornerTurn;
  });
  return (turning.length === 0 ? cut : turning)
    .map((segment) => segment.from)
    .reduce((best, one) => (distance(one, p) < distance(best, p) ? one : best));
};
