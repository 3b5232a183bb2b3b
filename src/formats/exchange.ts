import {
  inkDiffering,
  lineMarks,
  type Mark,
  markBounds,
  moveMarks,
  pieceDiffers,
  type TextWidth,
} from '../draw/index.ts';
import {
  type Bounds,
  boundsMeet,
  boundsOfPoints,
  flattenPath,
  type Point,
  subtract,
  tolerance,
  translation,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { clearOf } from './busy.ts';
import { crossingsAt } from './cell-shape.ts';
import type { TileFrame } from './paper.ts';
import type { SheetRequest } from './print-request.ts';
import { drawPlaced, layOut, type PlacedPiece, type PrintPiece, placedAt, type Sheet } from './print-sheet.ts';
import type { IsClear } from './print-tile.ts';
import { jointsOf, type Tile, tilesOf } from './tiles.ts';

/** An earlier print and what has to be exchanged on it. */
export interface Exchange {
  readonly sheet: Sheet;
  /** Sheets of the earlier print on which nothing is drawn any more. */
  readonly gone: readonly Tile[];
  /** Pieces that have no room where they lay and are printed on sheets of their own. */
  readonly apart: readonly PrintPiece[];
  /** Where such pieces and those there are no longer lie on the earlier print: not to be cut. */
  readonly stale: readonly PlacedPiece[];
  /** Where the joints of the earlier print had room for their rings. */
  readonly isClear: IsClear;
}

/** Cut lines may come this near when a piece grows where it lies, mm: room for scissors still. */
const leastGap = 4;

type Polygon = readonly Point[];

const cutOf = ({ cut }: PrintPiece): Polygon => flattenPath(cut, tolerance.flatten);

const distanceToStretch = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = dx * dx + dy * dy;
  const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
};

const holds = (polygon: Polygon, p: Point): boolean =>
  crossingsAt(polygon, p.y).filter((x) => x > p.x).length % 2 === 1;

/** Whether two closed polygons overlap or come nearer than the gap. Where borders cross, a corner lies inside or near. */
const tooNear = (a: Polygon, b: Polygon, gap: number): boolean => {
  const [boxA, boxB] = [boundsOfPoints(a), boundsOfPoints(b)];
  if (!boundsMeet(boxA, boxB, gap)) return false;
  const touches = (points: Polygon, other: Polygon, box: Bounds): boolean =>
    dense(points, gap).some(
      (p) =>
        boundsMeet({ minX: p.x, minY: p.y, maxX: p.x, maxY: p.y }, box, gap) &&
        (holds(other, p) ||
          other.some((from, index) => distanceToStretch(p, from, other[(index + 1) % other.length] as Point) < gap)),
    );
  return touches(a, b, boxB) || touches(b, a, boxA);
};

/** A polygon with points no farther apart than the gap, so that no crossing passes between two of them unseen. */
const dense = (polygon: Polygon, gap: number): Polygon =>
  polygon.flatMap((from, index) => {
    const to = polygon[(index + 1) % polygon.length] as Point;
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / gap));
    return Array.from({ length: count }, (_, i) => ({
      x: from.x + ((to.x - from.x) * i) / count,
      y: from.y + ((to.y - from.y) * i) / count,
    }));
  });

/** Ways a piece may be shifted so that some of what it carries lies where it lay: not at all first. */
const shiftsFor = (before: Piece, after: Piece): readonly Point[] => {
  const was = new Map<string, Point>();
  const note = (piece: Piece, put: (key: string, at: Point) => void) => {
    for (const { id, at } of piece.landmarks) put(`landmark ${id}`, at);
    for (const { id, from, to } of piece.levels) {
      put(`from ${id}`, from);
      put(`to ${id}`, to);
    }
  };
  note(before, (key, at) => was.set(key, at));
  const shifts: Point[] = [{ x: 0, y: 0 }];
  note(after, (key, at) => {
    const old = was.get(key);
    if (!old) return;
    const by = subtract(old, at);
    if (!shifts.some((other) => Math.hypot(other.x - by.x, other.y - by.y) < 1)) shifts.push(by);
  });
  return shifts;
};

/** Of more ways than this the rest are not tried. */
const mostShifts = 6;

/** The tiles whose window a bound comes into. */
const tilesAt = (tiles: readonly Tile[], frame: TileFrame, boxes: readonly Bounds[]): readonly Tile[] =>
  tiles.filter(({ column, row }) => {
    const window: Bounds = {
      minX: column * frame.stepX,
      minY: row * frame.stepY,
      maxX: (column + 1) * frame.stepX + frame.overlap,
      maxY: (row + 1) * frame.stepY + frame.overlap,
    };
    return boxes.some((box) => boundsMeet(box, window));
  });

/** Boxes, each no longer than a few millimetres, round everything that is drawn otherwise. */
const changedBoxes = (now: readonly Mark[], was: readonly Mark[], textWidth: TextWidth): readonly Bounds[] => {
  const lines = inkDiffering(now, was);
  const wordsOf = (marks: readonly Mark[]) =>
    new Map(marks.flatMap((m) => (m.kind === 'text' ? [[JSON.stringify(m), m]] : [])));
  const [saysNow, saysWas] = [wordsOf(now), wordsOf(was)];
  const words = [
    ...[...saysNow].filter(([key]) => !saysWas.has(key)),
    ...[...saysWas].filter(([key]) => !saysNow.has(key)),
  ].flatMap(([, mark]) => markBounds(mark, textWidth) ?? []);
  const stretches = [...lines.now, ...lines.was].flatMap((path) => {
    const points = flattenPath(path, tolerance.flatten);
    return points.slice(1).flatMap((to, index) => shortBoxes(points[index] as Point, to));
  });
  return [...words, ...stretches];
};

const shortBoxes = (from: Point, to: Point): readonly Bounds[] => {
  const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / leastGap));
  const at = (i: number): Point => ({
    x: from.x + ((to.x - from.x) * i) / count,
    y: from.y + ((to.y - from.y) * i) / count,
  });
  return Array.from({ length: count }, (_, i) => boundsOfPoints([at(i), at(i + 1)]));
};

interface Lying {
  readonly was: PlacedPiece;
  readonly now: PrintPiece;
}

/**
 * What has to be exchanged on an earlier print: pieces keep their places where they can, moved a little where less is then
 * to be exchanged; a piece that would come too near another is printed on sheets of its own, below those of that print.
 */
export const exchangeOf = (
  request: SheetRequest,
  pieces: readonly PrintPiece[],
  earlier: { readonly sheet: Sheet; readonly request: SheetRequest },
  frame: TileFrame,
  textWidth: TextWidth,
): Exchange => {
  const first = earlier.sheet;
  const drawnBefore = new Map(
    first.pieces.map((piece) => [piece.piece.id, drawPlaced(piece, frame, earlier.request, textWidth).marks] as const),
  );
  const pairs = pieces.flatMap((now): Lying[] => {
    const was = first.pieces.find(({ piece }) => piece.id === now.piece.id);
    return was ? [{ was, now }] : [];
  });
  const same = pairs.filter(({ was, now }) => !pieceDiffers(was.piece, now.piece));
  const settled: PlacedPiece[] = same.map(({ was, now }) => ({
    ...was,
    number: now.number,
    asPrinted: earlier.request,
  }));
  const apart: PrintPiece[] = pieces.filter((now) => !first.pieces.some(({ piece }) => piece.id === now.piece.id));
  // The largest first: it has the least choice.
  const waiting = pairs.filter((pair) => !same.includes(pair)).toSorted((a, b) => areaOf(b.now) - areaOf(a.now));
  for (const { was, now } of waiting) {
    const others = settled.map((piece) => cutOf(piece));
    const fits = shiftsFor(was.piece, now.piece)
      .slice(0, mostShifts)
      .map((by) => placedAt(now, { x: was.by.x + by.x, y: was.by.y + by.y }))
      .filter((placed) => {
        const { minX, minY } = boundsOfPoints(cutOf(placed));
        return minX >= 0 && minY >= 0 && !others.some((other) => tooNear(cutOf(placed), other, leastGap));
      });
    const cost = (placed: PlacedPiece): number => {
      const tiles = tilesOf(placed.footprint, frame);
      const now = moveMarks(lineMarks(placed.piece), translation(placed.by));
      const before = moveMarks(lineMarks(was.piece), translation(was.by));
      return tilesAt([...first.tiles, ...tiles], frame, changedBoxes(now, before, textWidth)).length;
    };
    const best = fits.map((placed) => ({ placed, cost: cost(placed) })).toSorted((a, b) => a.cost - b.cost)[0];
    if (best) settled.push(best.placed);
    else apart.push(now);
  }
  const lowest = Math.max(
    ...first.tiles.map(({ row }) => row),
    ...tilesOf(
      settled.flatMap((p) => p.footprint),
      frame,
    ).map(({ row }) => row),
  );
  const below = (lowest + 1) * frame.stepY;
  const own = apart.length === 0 ? [] : layOut(apart, frame, { width: 0, height: 0 }).pieces;
  const lower = own.map((piece) => placedAt(unplaced(piece), { x: piece.by.x, y: piece.by.y + below }));
  const order = new Map(pieces.map((piece, index) => [piece.piece.id, index]));
  const lying = [...settled, ...lower].toSorted((a, b) => (order.get(a.piece.id) ?? 0) - (order.get(b.piece.id) ?? 0));
  const stale = first.pieces.filter(({ piece }) => !settled.some((other) => other.piece.id === piece.id));
  const tiles = tilesOf(
    lying.flatMap(({ footprint }) => footprint),
    frame,
  );
  const changed = settled.flatMap((placed) => {
    const now = drawPlaced(placed, frame, request, textWidth).marks;
    return changedBoxes(now, drawnBefore.get(placed.piece.id) ?? [], textWidth);
  });
  const differing = new Set(tilesAt(tiles, frame, changed).map(({ name }) => name));
  const before = new Set(first.tiles.map(({ name }) => name));
  const printed = tiles.filter(({ name }) => differing.has(name) || !before.has(name));
  const left = new Set(tiles.map(({ name }) => name));
  return {
    sheet: {
      pieces: lying,
      tiles,
      printed,
      joints: jointsOf(tiles, first.joints),
      length: (Math.max(...tiles.map(({ row }) => row)) + 1) * frame.stepY,
    },
    gone: first.tiles.filter(({ name }) => !left.has(name)),
    apart,
    stale: stale.filter((piece) =>
      tilesOf(piece.footprint, frame).some(({ name }) => left.has(name) && !printed.some((tile) => tile.name === name)),
    ),
    isClear: clearOf([...drawnBefore.values()].flat(), textWidth),
  };
};

/** A piece that was placed, in its own coordinates again. */
const unplaced = (piece: PlacedPiece): PrintPiece => placedAt(piece, { x: -piece.by.x, y: -piece.by.y });

const areaOf = ({ cut }: PrintPiece): number => {
  const { minX, minY, maxX, maxY } = boundsOfPoints(flattenPath(cut, tolerance.flatten));
  return (maxX - minX) * (maxY - minY);
};
