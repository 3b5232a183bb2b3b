import { intersectPaths, line, pathBounds, pathStart, tolerance } from '../geometry/index.ts';
import { dartsOf, type InnerLine, outlineOf, type Piece } from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { torn } from './checks.ts';
import { type CutEnd, cut } from './cut.ts';
import { type Joined, join } from './join.ts';
import { partBeside, slide } from './move.ts';
import { redraw } from './redraw.ts';
import { ringOf } from './ring.ts';

/** A piece cut straight across, its lower part slid down (or, negative, up) and its edges trued. */
export interface CutAcross {
  readonly before: Piece;
  readonly joined: Joined;
  readonly after: Piece;
}

/** Where the level line y meets the outline, from left to right; the edges met, or null where a dart's mouth is. */
export const crossingsAt = (piece: Piece, y: number) => {
  const bounds = pathBounds(outlineOf(piece));
  const level = [line({ x: bounds.minX - 1, y }, { x: bounds.maxX + 1, y })];
  const ring = ringOf(piece);
  return ring.runs
    .flatMap((run) =>
      intersectPaths(level, run.path).map(({ point, lengthB }) => ({
        x: point.x,
        end:
          run.run.kind === 'edge'
            ? { edge: run.run.edge, at: (run.edgeStart + lengthB) / (ring.edgeLengths.get(run.run.edge) as number) }
            : null,
      })),
    )
    .sort((a, b) => a.x - b.x);
};

/** Heights of what must not be folded out: darts, and the levels of the body. */
export const heightsOnPiece = (piece: Piece): readonly number[] => [
  ...dartsOf(piece).flatMap(({ point, legs }) => [point.y, legs[0].y, legs[1].y]),
  ...piece.levels.flatMap(({ from, to }) => [from.y, to.y]),
];

/**
 * Cuts a piece square to its grain at a height and slides the lower part by d along the grain: the trade's
 * lengthening line. Straight edges are drawn anew from corner to corner, curves blended.
 *
 * Problems: `alter.cut-through-dart`, `alter.cut-not-clear` where the line does not go across between two edges,
 * `alter.no-room` where shortening would fold out a corner, a dart or a level of the body, `alter.grain-not-along`,
 * `alter.tears`.
 */
export const slideAcross = (piece: Piece, y: number, d: number): Result<CutAcross> => {
  const grain = { x: piece.grain.to.x - piece.grain.from.x, y: piece.grain.to.y - piece.grain.from.y };
  if (Math.abs(grain.x) > tolerance.same) return bad('alter.grain-not-along', { piece: piece.name });
  const ends = crossingsAt(piece, y);
  const [left, right] = ends;
  if (ends.length !== 2 || !left?.end || !right?.end) return bad('alter.cut-not-clear', { piece: piece.name });
  if (d < 0) {
    const above = crossingsAt(piece, y + d);
    const same = above.length === 2 && above.every(({ end }, i) => end?.edge === ends[i]?.end?.edge);
    const clear = heightsOnPiece(piece).every((at) => at <= y + d + tolerance.walk || at >= y - tolerance.walk);
    if (!same || !clear) return bad('alter.no-room', { piece: piece.name, amount: { mm: -d } });
  }
  const made = cut(piece, { nodes: {}, cuts: [{ id: 'across', from: left.end as CutEnd, to: right.end as CutEnd }] });
  if (!made.ok) return made;
  const lower = partBeside(made.value, 'across', 'right');
  const upper = partBeside(made.value, 'across', 'left');
  const joined = join(slide(made.value, lower, { x: 0, y: d }), marksOnCut(piece, y, lower, upper));
  const trued = joined.formers.reduce((drawn, former) => redraw(drawn, former).piece, joined.piece);
  const after = {
    ...trued,
    lines: trued.lines.map((inner) => (foldedOver(piece, inner.id, y, d) ? drawnAcross(trued, inner, y + d) : inner)),
  };
  const problem = torn(after);
  return problem ? { ok: false, problem } : good({ before: piece, joined, after });
};

const levelOf = (inner: InnerLine): number | null => {
  const start = pathStart(inner.path).y;
  return inner.path.every(({ from, to }) => onLevel(from.y, start) && onLevel(to.y, start)) ? start : null;
};

/**
 * Where something is sewn on, such as a pocket, drawn on both sides of a height: a place is not stretched, for what is
 * sewn there is not, so it goes whole with the part on which more of it lies. An upright line is no place: it runs on.
 */
const placedAcross = (inner: InnerLine, y: number): 'upper' | 'lower' | null => {
  const { minX, maxX, minY, maxY } = pathBounds(inner.path);
  const across = minY < y - tolerance.walk && maxY > y + tolerance.walk;
  if (inner.kind !== 'placement' || !across || maxX - minX <= tolerance.walk) return null;
  return (minY + maxY) / 2 > y ? 'lower' : 'upper';
};

/**
 * Marks drawn on the very line of the cut: a lengthening line goes with the lower part, so that the same amount can be
 * taken out again where it was put in; levels stay with the upper part. And places that lie across it.
 */
const marksOnCut = (piece: Piece, y: number, lower: number, upper: number) => ({
  lines: Object.fromEntries(
    piece.lines.flatMap((inner): readonly (readonly [string, number])[] => {
      if (onLevel(levelOf(inner) ?? Infinity, y)) return [[inner.id, lower]];
      const goesWith = placedAcross(inner, y);
      return goesWith === null ? [] : [[inner.id, goesWith === 'lower' ? lower : upper]];
    }),
  ),
  levels: Object.fromEntries(
    piece.levels
      .filter(({ from, to }) => onLevel(from.y, y) && onLevel(to.y, y))
      .map(({ id }) => [id, { from: upper, to: upper }]),
  ),
});

/** Whether a lengthening line lies in what shortening by −d folds out above the cut. */
const foldedOver = (piece: Piece, id: string, y: number, d: number): boolean => {
  const inner = piece.lines.find((one) => one.id === id && one.kind === 'lengthen-or-shorten');
  const level = inner ? levelOf(inner) : null;
  return level !== null && level > y + d && level < y && !onLevel(level, y);
};

const drawnAcross = (piece: Piece, inner: InnerLine, y: number): InnerLine => {
  const [left, right] = crossingsAt(piece, y);
  return left && right ? { ...inner, path: [line({ x: left.x, y }, { x: right.x, y })] } : inner;
};

const onLevel = (a: number, b: number): boolean => Math.abs(a - b) <= tolerance.walk;
