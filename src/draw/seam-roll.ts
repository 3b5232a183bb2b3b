import {
  add,
  angleOf,
  applyToPath,
  type Bounds,
  compose,
  type Path,
  pathBounds,
  reflection,
  rotation,
  scale,
  subtract,
  type Transform,
  translation,
  unionOfBounds,
} from '../geometry/index.ts';
import {
  edgeRuns,
  type Garment,
  outlineOf,
  type Piece,
  pieceOf,
  pointAlongSide,
  type SeamSide,
  type SeamWalk,
} from '../pattern/index.ts';
import { formatLength, millimetresPer, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { circle, drawingOf, filledMark, groupMark, pathMark, stroke, textMark } from './marks.ts';
import { saySeam } from './say-edge.ts';
import type { Drawing, Mark } from './types.ts';

export interface SeamRollOptions {
  readonly unit: Unit;
  readonly locale?: string;
  /** How far the walk has come along the seam, mm from its start; beyond an edge's end it stays there. */
  readonly at: number;
  /** Seen on a narrow screen, where words are drawn larger. */
  readonly narrow?: boolean;
}

/** Where piece b lies when the walk has come so far. */
const rolledTo = (walk: SeamWalk, pieceA: Piece, pieceB: Piece, at: number): Transform => {
  const { a, b } = walk.seam;
  const touch = heading(pieceA, a, Math.min(at, walk.lengthA));
  const rolled = heading(pieceB, b, Math.min(at, walk.lengthB));
  const onTo = compose(
    rotation(touch.angle - rolled.angle, rolled.point),
    translation(subtract(touch.point, rolled.point)),
  );
  return a.reversed === b.reversed ? compose(reflection(rolled.point, rolled.angle), onTo) : onTo;
};

/** Stops of the walk whose pictures are given room for, so that the view stays while it rolls. */
const stops = 12;

const roomFor = (walk: SeamWalk, pieceA: Piece, pieceB: Piece): Bounds => {
  const outline = outlineOf(pieceB);
  return Array.from({ length: stops + 1 }, (_, i) => (Math.max(walk.lengthA, walk.lengthB) * i) / stops)
    .map((at) => pathBounds(applyToPath(rolledTo(walk, pieceA, pieceB, at), outline)))
    .reduce(unionOfBounds, pathBounds(outlineOf(pieceA)));
};

const heading = (piece: Piece, side: SeamSide, mm: number) => {
  const { point, tangent } = pointAlongSide(piece, side, mm);
  return { point, tangent, angle: angleOf(tangent) };
};

/**
 * A walk stopped on its way: the piece of side a lies as it is, that of side b is rolled along it so that both edges touch at `at`
 * and run the same way there, each on its own side; turned over where it must be for that. Notches are strokes, in red where one misses its mate; a ruler of centimetres, or inches, is to the scale of the pieces.
 */
export const drawSeamRoll = (walk: SeamWalk, garment: Garment, options: SeamRollOptions): Drawing => {
  const { unit, locale = 'en', at } = options;
  const { a, b } = walk.seam;
  const [pieceA, pieceB] = [pieceOf(garment, a.piece), pieceOf(garment, b.piece)];
  const { minX, maxX, minY, maxY } = roomFor(walk, pieceA, pieceB);
  const size = Math.max(maxX - minX, maxY - minY) / (options.narrow ? 16 : 34);
  const touch = heading(pieceA, a, Math.min(at, walk.lengthA));
  const turn = rolledTo(walk, pieceA, pieceB, at);
  const place = (path: Path): Path => applyToPath(turn, path);
  const outlineB = place(outlineOf(pieceB));
  const marks: Mark[] = [
    pathMark('seam', 'seam', outlineOf(pieceA)),
    pathMark('original', 'original', outlineB),
    pathMark('cut', 'cut', ...edgeRuns(pieceA, a.edge)),
    pathMark('cut', 'cut', ...edgeRuns(pieceB, b.edge).map(place)),
    filledMark('marks', 'mark', circle(touch.point, size * 0.25)),
  ];
  for (const notch of walk.notches) {
    const [onA, onB] = [heading(pieceA, a, notch.atA), heading(pieceB, b, notch.atB)];
    const there = place([{ kind: 'line', from: onB.point, to: add(onB.point, onB.tangent) }])[0];
    if (!there) continue;
    const ink = notch.meets ? 'mark' : 'changed';
    const across = (point: typeof onA.point, angle: number) => {
      const half = scale({ x: -Math.sin(angle), y: Math.cos(angle) }, size * 0.5);
      return stroke(subtract(point, half), add(point, half));
    };
    const angleB = angleOf(subtract(there.to, there.from));
    marks.push(pathMark('marks', ink, across(onA.point, onA.angle), across(there.from, angleB)));
  }
  const ruler = rulerMarks({ x: minX, y: maxY + size * 2 }, Math.min(maxX - minX, 300), unit, size);
  const said = formatLength(Math.min(at, Math.max(walk.lengthA, walk.lengthB)), unit, { purpose: 'amount', locale });
  const seam = saySeam(garment, walk.seam);
  const label = fill(drawWords.rolledTo, { seam, at: said }, unit, locale);
  const title = textMark('words', 'mark', { x: minX, y: minY - size }, said, size, { weight: 'bold' });
  const drawing = drawingOf(label, [groupMark(walk.seam.id, label, [...marks, title]), ...ruler], size);
  const room = { minX: minX - size, minY: minY - size * 3, maxX: maxX + size, maxY: maxY + size * 4 };
  return { ...drawing, bounds: unionOfBounds(drawing.bounds, room) };
};

/** A ruler as long as fits: a tick each centimetre or inch, a longer one each five, figures at its ends. */
const rulerMarks = (
  from: { readonly x: number; readonly y: number },
  wide: number,
  unit: Unit,
  size: number,
): readonly Mark[] => {
  const each = millimetresPer[unit];
  const count = Math.max(1, Math.floor(wide / each));
  const ticks = Array.from({ length: count + 1 }, (_, i) => {
    const x = from.x + i * each;
    return stroke({ x, y: from.y }, { x, y: from.y - (i % 5 === 0 ? size * 0.7 : size * 0.35) });
  });
  const end = from.x + count * each;
  return [
    pathMark('marks', 'dimension', stroke(from, { x: end, y: from.y }), ...ticks),
    textMark('words', 'mark', { x: from.x, y: from.y + size * 1.1 }, '0', size),
    textMark('words', 'mark', { x: end, y: from.y + size * 1.1 }, `${count} ${unit}`, size, { anchor: 'end' }),
  ];
};
