import { type Bounds, type Path, type Point, pathBounds, translation } from '../geometry/index.ts';
import { dartsOf, type Garment, outlineOf, type Piece } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { changeLabels, notchLabels, usualSize } from './change-labels.ts';
import type { CutPlace } from './cut-place.ts';
import { differingStretches } from './differing.ts';
import { createDrawingCache, type DrawingCache } from './drawing-cache.ts';
import { usualAspect } from './garment.ts';
import { circle, drawingOf, groupMark, pathMark, stroke, type TextWidth, textMark } from './marks.ts';
import { moveMarks } from './move.ts';
import { movedNotches, sayMoved } from './moved-notches.ts';
import { originalMarks, pieceGroup } from './piece.ts';
import { type PieceChange, pieceChanges } from './piece-changes.ts';
import { sayId } from './say.ts';
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
  /** Draw only these pieces, by id: those an alteration is about, where what merely follows would crowd them. */
  readonly only?: readonly string[];
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
  const wanted = pairs.filter(
    ({ piece, red }) => (!options.changedOnly || red.length > 0) && (options.only?.includes(piece.id) ?? true),
  );
  const shown = wanted.length > 0 ? wanted : pairs;
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
  // A notch goes along with its edge; only where it alone moved is that worth a word.
  const notches = changes.length === 0 ? movedNotches(before, after) : [];
  const said = [
    ...changes.map((change) => sayChange(change, unit, locale)),
    ...notches.map(({ notch, by }) => fill(drawWords.notchMoved, sayMoved(notch, by, unit, locale), unit, locale)),
  ].join('; ');
  const label = fill(
    drawWords.beforeAfterLabel,
    { name: after.name, changes: said === '' ? drawWords.nothingChanged : `${said}.` },
    unit,
    locale,
  );
  const written =
    amounts === 'told'
      ? []
      : [...changeLabels(after, changes, name, lines, options), ...notchLabels(after, notches, lines, options)];
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
  const notches = movedNotches(before, after);
  return [
    ...(paths.length === 0 ? [] : [pathMark('seam', 'changed', ...paths)]),
    ...(notches.length === 0
      ? []
      : [
          pathMark('original', 'original', ...notches.flatMap(({ was }) => was)),
          pathMark('marks', 'changed', ...notches.flatMap(({ now }) => now)),
        ]),
  ];
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
