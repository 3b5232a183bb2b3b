import { add, type Bounds, scale, tolerance, unionOfBounds } from '../geometry/index.ts';
import { type Garment, pieceOf, type SeamSide, type SeamWalk } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { circle, drawingOf, filledMark, groupMark, marksBounds, pathMark, stroke, textMark } from './marks.ts';
import { sayEdgeOf, saySeam } from './say-edge.ts';
import { besideEachOther, type Walked } from './seam-edges.ts';
import { seamOnPieces } from './seam-pieces.ts';
import { placeWords, sayWalk, thingsToSay } from './seam-words.ts';
import type { Drawing, Mark, PathMark } from './types.ts';

export interface SeamWalkOptions {
  readonly unit: Unit;
  readonly locale?: string;
  readonly textSize?: number;
  /** Width over height of where it will be seen: the pieces stand under the walk, or beside it, whichever is seen larger. */
  readonly aspect?: number;
}

const usualAspect = 1.05;

/**
 * A seam walked: edge a as it is, and edge b laid along it from the same end and in the same direction, just beside it.
 * Ends and notches that should meet are joined by thin lines; what one edge has more than the other is told in words, and is
 * in red pencil where the seam does not meet. Under them the pieces, small, with the edges that were walked in a heavy line.
 */
export const drawSeamWalk = (walk: SeamWalk, garment: Garment, options: SeamWalkOptions): Drawing => {
  const { unit, locale = 'en' } = options;
  const size = options.textSize ?? Math.max(5, walk.lengthA / 36);
  const [a, b] = besideEachOther(walk, garment, size * 0.7);
  const verdict = sayWalk(walk, unit, locale);
  const lines = [...edgeMarks(walk, a, b), ...joinMarks(a, b, size), ...notchMarks(walk, a, b, size)];
  const marks = [...lines, ...placeWords(thingsToSay(walk, a, b, unit, locale), lines, size)];
  const { minX, minY, maxY } = marksBounds(marks) as Bounds;
  const said = (
    [
      [walk.seam.a, walk.lengthA],
      [walk.seam.b, walk.lengthB],
    ] as const
  ).map(([side, mm]) => `${sayEdge(garment, side)} · ${formatLength(mm, unit, { purpose: 'amount', locale })}`);
  // The name of each edge stands on its own side, whichever way up the walk came to lie.
  const [upper, lower] = a.away(a.length / 2).y <= 0 ? said : said.toReversed();
  const words = [
    textMark('words', 'mark', { x: minX, y: minY - size * 2.4 }, capital(verdict), size * 1.15, { weight: 'bold' }),
    textMark('words', 'mark', { x: minX, y: minY - size * 0.8 }, upper ?? '', size),
    textMark('words', 'mark', { x: minX, y: maxY + size * 1.4 }, lower ?? '', size),
  ];
  const block = marksBounds([...marks, ...words]) as Bounds;
  const pieces = withPieces(walk, garment, block, size, options.aspect ?? usualAspect);
  const missed = walk.notches.filter((notch) => !notch.meets).length;
  const notches =
    walk.notches.length === 0
      ? drawWords.noNotches
      : missed === 0
        ? drawWords.notchesMeet
        : fill(drawWords.notchesMiss, { count: missed }, unit, locale);
  const label = fill(drawWords.walkLabel, { seam: saySeam(garment, walk.seam), verdict, notches }, unit, locale);
  return drawingOf(label, [groupMark(walk.seam.id, label, [...marks, ...words]), ...pieces], size);
};

/** The pieces under the walk or beside it. */
const withPieces = (
  { seam }: SeamWalk,
  garment: Garment,
  block: Bounds,
  size: number,
  aspect: number,
): readonly Mark[] => {
  const [wide, high] = [block.maxX - block.minX, block.maxY - block.minY];
  const width = Math.max(wide, size * 22);
  const under = { left: block.minX, top: block.maxY + size * 1.6, width, height: Math.max(width * 0.4, width - high) };
  const beside = { left: block.maxX + size * 2, top: block.minY, width: wide, height: Math.max(high, wide * 0.4) };
  const [first, second] = [under, beside].map((box) => {
    const marks = seamOnPieces(seam, garment, box, size);
    const all = unionOfBounds(block, marksBounds(marks) as Bounds);
    return { marks, takes: Math.max((all.maxX - all.minX) / aspect, all.maxY - all.minY) };
  }) as [Arranged, Arranged];
  return second.takes < first.takes ? second.marks : first.marks;
};

/** `takes`: the height of a table of the wanted aspect that shows all of it, mm. */
interface Arranged {
  readonly marks: readonly Mark[];
  readonly takes: number;
}

const sayEdge = (garment: Garment, side: SeamSide): string => sayEdgeOf(pieceOf(garment, side.piece), side.edge);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What both have in thin lines, and what one has more: in red pencil where it should not. */
const edgeMarks = (walk: SeamWalk, a: Walked, b: Walked): readonly PathMark[] => {
  const shared = Math.min(a.length, b.length);
  const ink = walk.meets ? 'dimension' : 'changed';
  return [a, b].flatMap((edge) => [
    pathMark('seam', 'seam', edge.part(0, shared)),
    ...(edge.length - shared > tolerance.length ? [pathMark('marks', ink, edge.part(shared, edge.length))] : []),
  ]);
};

/** The start of the walk, ringed; where it ends for both; and a tick where the longer edge ends. */
const joinMarks = (a: Walked, b: Walked, size: number): readonly PathMark[] => {
  const shared = Math.min(a.length, b.length);
  const tick = (edge: Walked, mm: number) => {
    const half = scale(edge.away(mm), size * 0.35);
    return stroke(add(edge.at(mm), half), add(edge.at(mm), scale(half, -1)));
  };
  return [
    filledMark('marks', 'mark', circle(a.at(0), size * 0.18), circle(b.at(0), size * 0.18)),
    pathMark('marks', 'dimension', stroke(a.at(0), b.at(0)), stroke(a.at(shared), b.at(shared))),
    pathMark('marks', 'dimension', tick(a, a.length), tick(b, b.length)),
  ];
};

/** Each notch as a stroke away from the other edge, joined to its mate. */
const notchMarks = ({ notches }: SeamWalk, a: Walked, b: Walked, size: number): readonly PathMark[] =>
  notches.flatMap(({ atA, atB, meets }) => {
    const out = (edge: Walked, mm: number) => stroke(edge.at(mm), add(edge.at(mm), scale(edge.away(mm), size * 0.7)));
    return [
      pathMark('marks', 'mark', out(a, atA), out(b, atB)),
      pathMark('marks', meets ? 'dimension' : 'changed', stroke(a.at(atA), b.at(atB))),
    ];
  });
