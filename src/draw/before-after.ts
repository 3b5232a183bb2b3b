import {
  add,
  type Bounds,
  boundsMeet,
  distance,
  lerp,
  type Path,
  type Point,
  pathBounds,
  scale,
  translation,
} from '../geometry/index.ts';
import { dartsOf, edgeOf, type Garment, notchPlace, outlineOf, type Piece } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import type { CutPlace } from './cut-places.ts';
import { differingStretches } from './differing.ts';
import { createDrawingCache, type DrawingCache } from './drawing-cache.ts';
import { usualAspect } from './garment.ts';
import {
  circle,
  drawingOf,
  estimatedTextWidth,
  groupMark,
  pathMark,
  stroke,
  type TextWidth,
  textBounds,
  textMark,
} from './marks.ts';
import { moveMarks } from './move.ts';
import { originalMarks, pieceGroup } from './piece.ts';
import { type PieceChange, pieceChanges } from './piece-changes.ts';
import { type RoomForWords, roomForWords } from './room-for-words.ts';
import { isWrittenAsNothing, sayId } from './say.ts';
import { sayEdge } from './say-edge.ts';
import { sideBySide } from './side-by-side.ts';
import type { Drawing, GroupMark, Mark, PathMark, TextMark } from './types.ts';

export interface BeforeAfterOptions {
  readonly unit: Unit;
  readonly locale?: string;
  readonly textSize?: number;
  readonly textWidth?: TextWidth;
  /** Draw only pieces that were changed; all when none was. */
  readonly changedOnly?: boolean;
  /**
   * Amounts of what changed: written beside it and told in the label; jotted beside it, where a line may cross them; told
   * only; or none of these. Jotted and none take a fraction of the time and are for while an amount is dragged.
   */
  readonly amounts?: 'written' | 'jotted' | 'told' | 'none';
  /** What was drawn last, so that a piece that did not change since is not drawn again. */
  readonly cache?: DrawingCache;
  readonly aspect?: number;
  /** Where the pieces were cut, drawn on each with a ring round its hinge. None while an amount is dragged. */
  readonly cuts?: readonly CutPlace[];
}

/**
 * The garment as bought in grey under the garment as altered; what changed in red pencil, told by its dash as well;
 * each changed length and width named with its amount. Papers keep their places while an amount is dragged.
 */
export const drawBeforeAfter = (before: Garment, after: Garment, options: BeforeAfterOptions): Drawing => {
  const { cache = createDrawingCache(), amounts = 'written' } = options;
  const { shown, placeOf } = layPairs(before, after, options, cache);
  const groups = shown.map(({ old, piece, red }) => {
    const place = placeOf(piece.id) as Point;
    return cache.group(old, piece, [place, options], () => moved(groupOf(old, piece, red, options, cache), place));
  });
  const label = groups.map((group) => group.label).join(' ');
  const drawing = drawingOf(label, groups, 10);
  const without = amounts === 'told' || amounts === 'none';
  if (
    without ||
    !shown.some(({ old, piece }) => cache.changes(old, piece, () => pieceChanges(old, piece)).length > 0)
  ) {
    return drawing;
  }
  // One word serves the trade for an amount in all and for each piece; which it is here is said.
  const size = options.textSize ?? usualSize;
  const at = { x: drawing.bounds.minX + 10, y: drawing.bounds.maxY + size };
  return drawingOf(label, [...groups, textMark('words', 'mark', at, drawWords.amountsPerPiece, size)], 10);
};

/** A piece and what it was: itself where an alteration made it. */
interface Pair {
  readonly old: Piece;
  readonly piece: Piece;
  readonly red: readonly PathMark[];
}

/** Pieces that were made out of nothing, or that went, are changed all over. */
const pairsOf = (before: Garment, after: Garment, cache: DrawingCache): readonly Pair[] => {
  const kept = after.pieces.map((piece): Pair => {
    const old = before.pieces.find((one) => one.id === piece.id);
    const red = old
      ? cache.lines(old, piece, () => linesChanged(old, piece))
      : [pathMark('seam', 'changed', outlineOf(piece))];
    return { old: old ?? piece, piece, red };
  });
  const gone = before.pieces
    .filter(({ id }) => !after.pieces.some((piece) => piece.id === id))
    .map((old): Pair => {
      const piece = { ...old, name: fill(drawWords.pieceGone, { name: old.name }, 'cm') };
      const { minX, minY, maxX, maxY } = pathBounds(outlineOf(old));
      // Struck through corner to corner, as a piece is that is not cut.
      const strike = stroke({ x: minX, y: maxY }, { x: maxX, y: minY });
      return { old, piece, red: [pathMark('seam', 'changed', strike)] };
    });
  return [...kept, ...gone];
};

const layPairs = (before: Garment, after: Garment, options: BeforeAfterOptions, cache: DrawingCache) => {
  const pairs = pairsOf(before, after, cache);
  const changed = options.changedOnly ? pairs.filter(({ red }) => red.length > 0) : pairs;
  const shown = changed.length > 0 ? changed : pairs;
  // Room for what an alteration may add is left from the start, so that nothing shifts when it does.
  const boxes = shown.map(({ old }) => grown(cache.paper(old), roomForChange));
  const places = sideBySide(boxes, options.aspect ?? usualAspect);
  const placeOf = (id: string): Point | null => places[shown.findIndex(({ piece }) => piece.id === id)] ?? null;
  return { shown, placeOf };
};

/** By how much a before-and-after moves a piece, for points that are to be shown on it; null where it does not show that piece. */
export const placeInBeforeAfter = (
  before: Garment,
  after: Garment,
  piece: string,
  options: BeforeAfterOptions,
): Point | null => layPairs(before, after, options, options.cache ?? createDrawingCache()).placeOf(piece);

const roomForChange = 60;

const grown = (box: Bounds, by: number): Bounds => ({
  minX: box.minX - by,
  minY: box.minY - by,
  maxX: box.maxX + by,
  maxY: box.maxY + by,
});

const moved = (group: GroupMark, by: Point): GroupMark => ({
  ...group,
  marks: moveMarks(group.marks, translation(by)),
});

/** One piece before and after. */
const groupOf = (
  before: Piece,
  after: Piece,
  red: readonly PathMark[],
  options: BeforeAfterOptions,
  cache: DrawingCache,
): GroupMark => {
  const { unit, locale = 'en', amounts = 'written' } = options;
  const group = pieceGroup(after, { unit, locale, layers: ['cut', 'seam', 'marks'] });
  // The paper, the piece as bought on it, and over that what is cut and stitched now.
  const [paper, ...lines] = group.marks as [Mark, ...Mark[]];
  const name = nameMark(after, options);
  const cuts = cutMarks((options.cuts ?? []).filter((cut) => cut.piece === before.id));
  const drawn = [paper, ...cache.original(before, () => originalMarks(before)), ...lines, ...red, ...cuts, name];
  if (amounts === 'none') return groupMark(after.id, after.name, drawn);
  const changes = cache.changes(before, after, () => pieceChanges(before, after));
  const said = changes.map((change) => sayChange(change, unit, locale)).join('; ');
  const label = fill(
    drawWords.beforeAfterLabel,
    { name: after.name, changes: said === '' ? drawWords.nothingChanged : `${said}.` },
    unit,
    locale,
  );
  const written = amounts === 'told' ? [] : changeLabels(after, changes, name, lines, options);
  return groupMark(after.id, label, [...drawn, ...written]);
};

/** Round a hinge, mm. */
const hingeRadius = 4;

const cutMarks = (cuts: readonly CutPlace[]): readonly PathMark[] => {
  const hinges = cuts.flatMap(({ hinge }) => (hinge ? [circle(hinge, hingeRadius)] : []));
  return [
    ...(cuts.length > 0 ? [pathMark('marks', 'changed', ...cuts.map(({ path }) => path))] : []),
    ...(hinges.length > 0 ? [pathMark('marks', 'mark', ...hinges)] : []),
  ];
};

/** Red pencil over every stretch of seam line and dart that is not where it was. */
const linesChanged = (before: Piece, after: Piece): readonly PathMark[] => {
  const legs = (piece: Piece): Path[] =>
    dartsOf(piece).flatMap((dart) => [stroke(dart.legs[0], dart.point), stroke(dart.point, dart.legs[1])]);
  const oldLegs = legs(before);
  const paths = [
    ...differingStretches(outlineOf(after), outlineOf(before)),
    ...legs(after).flatMap((leg) => (oldLegs.length === 0 ? [leg] : differingStretches(leg, oldLegs.flat()))),
  ];
  return paths.length === 0 ? [] : [pathMark('seam', 'changed', ...paths)];
};

const nameMark = (piece: Piece, options: BeforeAfterOptions): TextMark => {
  const size = options.textSize ?? usualSize;
  const { minX, maxX, minY } = pathBounds(outlineOf(piece));
  const above = Math.max(...piece.edges.map((edge) => edge.allowance)) + size;
  return textMark('words', 'mark', { x: (minX + maxX) / 2, y: minY - above }, piece.name, size, {
    anchor: 'middle',
    weight: 'bold',
  });
};

const usualSize = 12;

const sayChange = (change: PieceChange, unit: Unit, locale: string): string => {
  const amount = formatLength(Math.abs(change.by), unit, { purpose: 'amount', locale });
  const template =
    change.kind === 'edge'
      ? change.by > 0
        ? drawWords.longer
        : drawWords.shorter
      : change.by > 0
        ? drawWords.wider
        : drawWords.narrower;
  return fill(template, { edge: sayEdge(change.id), level: sayId(change.id), amount }, unit, locale);
};

/** Each amount beside the edge it belongs to, outside the piece; a level's just above its line. None over another. */
const changeLabels = (
  piece: Piece,
  changes: readonly PieceChange[],
  name: TextMark,
  drawn: readonly Mark[],
  options: BeforeAfterOptions,
): readonly TextMark[] => {
  const { unit, locale = 'en', textSize: size = usualSize, textWidth = estimatedTextWidth } = options;
  const taken: Bounds[] = [textBounds(name, textWidth(name.text, size, 'bold'))];
  const sought = options.amounts !== 'jotted' && changes.some((change) => change.kind === 'level');
  const room = sought ? roomOn(piece, drawn) : null;
  return changes.flatMap((change) => {
    const amount = formatLength(change.by, unit, { purpose: 'amount', locale, signed: true });
    // What is too small to be written is not worth a word.
    if (isWrittenAsNothing(amount)) return [];
    const text = fill(
      change.kind === 'edge' ? drawWords.changedEdge : drawWords.changedLevel,
      { edge: sayEdge(change.id), level: sayId(change.id), amount },
      unit,
      locale,
    );
    const width = textWidth(text, size, 'regular');
    const place =
      change.kind === 'edge' ? besideEdge(piece, change.id, size) : nearLevel(piece, change.id, size, width, room);
    for (const off of [0, 1, -1, 2, -2, 3, -3, 4]) {
      const at = { x: place.at.x, y: place.at.y + off * size * 1.3 };
      const mark = textMark('words', 'changed', at, text, size, { anchor: place.anchor });
      const bounds = textBounds(mark, width);
      if (taken.some((other) => boundsMeet(bounds, other))) continue;
      taken.push(bounds);
      return [mark];
    }
    return [];
  });
};

/** Where on the altered piece words cross no line of it; the pattern as bought may lie under them. */
const roomOn = (piece: Piece, drawn: readonly Mark[]): RoomForWords =>
  roomForWords(
    outlineOf(piece),
    drawn.flatMap((mark) => (mark.kind === 'path' && mark.layer === 'marks' ? mark.paths : [])),
  );

const besideEdge = (piece: Piece, edge: string, size: number): { at: Point; anchor: TextMark['anchor'] } => {
  const { point, outward } = notchPlace(piece, { id: '', edge, at: 0.5, strokes: 1 });
  const away = edgeOf(piece, edge).allowance + size * 0.6;
  const at = add(point, scale(outward, away));
  const aside = Math.abs(outward.x) > 0.5;
  return {
    at: { x: at.x, y: at.y + (outward.y > 0.5 ? size * 0.8 : aside ? size * 0.3 : 0) },
    anchor: aside ? (outward.x > 0 ? 'start' : 'end') : 'middle',
  };
};

/** Just above a level's line at its middle, moved aside to where no line is crossed if that is near. */
const nearLevel = (
  piece: Piece,
  id: string,
  size: number,
  width: number,
  room: RoomForWords | null,
): { at: Point; anchor: TextMark['anchor'] } => {
  const level = piece.levels.find((one) => one.id === id);
  if (!level) throw new Error(`Piece ${piece.id} has no level ${id}`);
  const middle = lerp(level.from, level.to, 0.5);
  const wished = { x: middle.x, y: middle.y - size };
  const free = room?.find(width, size, wished) ?? null;
  const centre = free && distance(free, wished) < 8 * size ? free : wished;
  if (centre === free) room?.take(centre, width, size);
  return { at: { x: centre.x, y: centre.y + size * 0.25 }, anchor: 'middle' };
};
