import { add, type Bounds, boundsMeet, distance, lerp, type Point, scale, segmentPointAt } from '../geometry/index.ts';
import { edgeOf, notchPlace, outlineOf, type Piece } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { estimatedTextWidth, type TextWidth, textBounds, textMark } from './marks.ts';
import { type MovedNotch, sayMoved } from './moved-notches.ts';
import type { PieceChange } from './piece-changes.ts';
import { type RoomForWords, roomForWords } from './room-for-words.ts';
import { isWrittenAsNothing, sayId } from './say.ts';
import { sayEdge } from './say-edge.ts';
import type { Mark, TextMark } from './types.ts';

export interface ChangeLabelOptions {
  readonly unit: Unit;
  readonly locale?: string;
  readonly textSize?: number;
  readonly textWidth?: TextWidth;
  readonly amounts?: string;
}

/** Em of amounts where none was asked for, mm of the drawing. */
export const usualSize = 12;

/** Each amount beside the edge it belongs to, outside the piece; a level's just above its line. None over another. */
export const changeLabels = (
  piece: Piece,
  changes: readonly PieceChange[],
  name: TextMark,
  drawn: readonly Mark[],
  options: ChangeLabelOptions,
): readonly TextMark[] => {
  const { unit, locale = 'en', textSize: size = usualSize, textWidth = estimatedTextWidth } = options;
  const taken: Bounds[] = [textBounds(name, textWidth(name.text, size, 'bold'))];
  const sought = options.amounts !== 'jotted' && changes.some((change) => change.kind === 'level');
  const room = sought ? roomOn(piece, drawn) : null;
  const clearOf = options.amounts === 'jotted' ? [] : placesOnCut(drawn);
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
      change.kind === 'edge'
        ? outsideAt(piece, change.id, 0.5, size, width, clearOf)
        : nearLevel(piece, change.id, size, width, room);
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

/** At how many places each segment of a cut line is looked at, and how often words are moved a step further out. */
const looks = 12;
const steps = 12;

/** Places along the cut line, which words should not cover. */
const placesOnCut = (drawn: readonly Mark[]): readonly Point[] =>
  drawn.flatMap((mark) =>
    mark.kind === 'path' && mark.ink === 'cut'
      ? mark.paths
          .flat()
          .flatMap((segment) => Array.from({ length: looks }, (_, i) => segmentPointAt(segment, i / looks)))
      : [],
  );

/** Outside an edge at a share of its length, so far off that the words clear it whichever way it slopes, and the places given. */
const outsideAt = (
  piece: Piece,
  edge: string,
  share: number,
  size: number,
  width: number,
  clearOf: readonly Point[],
): { at: Point; anchor: TextMark['anchor'] } => {
  const { point, outward } = notchPlace(piece, { id: '', edge, at: share, strokes: 1 });
  const reach = (Math.abs(outward.x) * width + Math.abs(outward.y) * size * 0.8) / 2;
  const near = edgeOf(piece, edge).allowance + size * 0.6 + reach;
  const at = (step: number): Point => add(point, scale(outward, near + step * size * 0.5));
  const covers = (centre: Point): boolean =>
    clearOf.some(({ x, y }) => Math.abs(x - centre.x) < width / 2 && Math.abs(y - centre.y) < size / 2);
  const free = Array.from({ length: steps }, (_, step) => at(step)).find((centre) => !covers(centre));
  const centre = free ?? at(0);
  return { at: { x: centre.x, y: centre.y + size * 0.3 }, anchor: 'middle' };
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

/** How far each notch moved, outside the piece beside it. */
export const notchLabels = (
  piece: Piece,
  notches: readonly MovedNotch[],
  drawn: readonly Mark[],
  options: ChangeLabelOptions,
): readonly TextMark[] => {
  const { unit, locale = 'en', textSize: size = usualSize, textWidth = estimatedTextWidth } = options;
  return notches.map(({ notch, by }) => {
    const text = fill(drawWords.movedNotch, sayMoved(notch, by, unit, locale), unit, locale);
    const width = textWidth(text, size, 'regular');
    const { at, anchor } = outsideAt(piece, notch.edge, notch.at, size, width, placesOnCut(drawn));
    return textMark('words', 'changed', at, text, size, { anchor });
  });
};
