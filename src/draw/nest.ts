import {
  distance,
  type Path,
  type Point,
  pathBounds,
  pathStart,
  translation,
  unionOfBounds,
} from '../geometry/index.ts';
import { cutLine, outlineOf, type Pattern, type Piece } from '../pattern/index.ts';
import type { Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { drawingOf, filledMark, groupMark, pathMark, stroke, textMark } from './marks.ts';
import { moveMarks } from './move.ts';
import { grainMarks } from './piece-marks.ts';
import { sideBySide } from './side-by-side.ts';
import type { Drawing, GroupMark } from './types.ts';

export interface NestOptions {
  readonly unit: Unit;
  readonly locale?: string;
  /** The size whose line is firm. */
  readonly size?: string;
  readonly textSize?: number;
  readonly aspect?: number;
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
  const boxes = nests.map((nest) => nest.map(({ cut }) => pathBounds(cut)).reduce(unionOfBounds));
  const size = options.textSize ?? usualSize;
  // Room for the names of sizes beside each nest.
  const roomy = boxes.map((box) => ({ ...box, minX: box.minX - size * 4, maxX: box.maxX + size * 4 }));
  const places = sideBySide(roomy, options.aspect ?? 1.5);
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
  const { minX, maxX, minY, maxY } = pathBounds(outlineOf((chosen ?? first).piece));
  return groupMark(first.piece.id, first.piece.name, [
    filledMark('cut', 'paper', largest.cut),
    ...others,
    ...(chosen ? [pathMark('cut', 'cut', chosen.cut)] : []),
    ...grainMarks((chosen ?? first).piece),
    textMark('words', 'mark', { x: (minX + maxX) / 2, y: (minY + maxY) / 2 }, first.piece.name, size, {
      anchor: 'middle',
      weight: 'bold',
    }),
    ...sizeNames(nest, options.size, size),
  ]);
};

const area = (path: Path): number => {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  return (maxX - minX) * (maxY - minY);
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
  const order = nest.map((_, index) => index).sort((a, b) => (points[a] as Point).y - (points[b] as Point).y);
  const middle = points.reduce((sum, p) => sum + p.y, 0) / points.length;
  return order.flatMap((index, place) => {
    const y = middle + (place - (order.length - 1) / 2) * textSize * 1.25;
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

const nearestCorner = (cut: Path, p: Point): Point =>
  cut.map((segment) => segment.from).reduce((best, one) => (distance(one, p) < distance(best, p) ? one : best));
