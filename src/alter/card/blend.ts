import {
  add,
  joinPaths,
  line,
  nearestOnPath,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathTangentAtLength,
  smoothThrough,
  splitPathAtLength,
  tolerance,
} from '../../geometry/index.ts';
import { type Garment, type Level, type Piece, pointOnEdge, type Run } from '../../pattern/index.ts';
import { heldSeams, replacePieces } from '../checks.ts';
import { withEnd } from '../corner.ts';
import { girthChanges } from '../girths.ts';
import { createTape } from '../tape.ts';
import { trueSeams } from '../true-seams.ts';
import type { Change, Held } from '../types.ts';

/** How far the side edge of each front and back moves out at a level, mm; negative moves in. */
export type SideShifts = Readonly<Record<string, number>>;

interface Knot {
  readonly y: number;
  readonly shift: number;
}

/**
 * How fast the shift grows at a knot: not at all at either end or where it turns back, else the harmonic mean of what
 * it does on both sides, which keeps the line from overshooting (Fritsch and Butland 1984).
 */
const slopeAt = (knots: readonly Knot[], i: number): number => {
  const [before, here, after] = [knots[i - 1], knots[i], knots[i + 1]];
  if (!before || !here || !after) return 0;
  const [above, below] = [
    (here.shift - before.shift) / (here.y - before.y),
    (after.shift - here.shift) / (after.y - here.y),
  ];
  return above * below > 0 ? (2 * above * below) / (above + below) : 0;
};

/** The shift at a height: nothing above the first knot, all of the last one below it, a smooth line between. */
const shiftAt = (knots: readonly Knot[], y: number): number => {
  for (const [i, to] of knots.entries()) {
    if (y > to.y) continue;
    const from = knots[i - 1];
    if (!from) return to.shift;
    const span = to.y - from.y;
    const t = (y - from.y) / span;
    const [leaving, arriving] = [slopeAt(knots, i - 1) * span, slopeAt(knots, i) * span];
    const rest = 1 - t;
    return (
      from.shift * (1 + 2 * t) * rest * rest +
      leaving * t * rest * rest +
      to.shift * t * t * (3 - 2 * t) -
      arriving * t * t * rest
    );
  }
  return knots.at(-1)?.shift ?? 0;
};

/** The run of an edge a level ends on, at the side. */
const sideRunAt = (piece: Piece, level: Level): number =>
  piece.runs.findIndex((run) => run.kind === 'edge' && nearestOnPath(run.path, level.to).distance <= tolerance.walk);

/** Points drawn through along the side, one about each so many mm. */
const spacing = 30;

/** Where along a side, which runs down or up throughout, it passes a height, mm from its start; its nearer end where it does not. */
const heightAlong = (path: Path, y: number): number => {
  const down = pathEnd(path).y > pathStart(path).y;
  let [low, high] = [0, pathLength(path)];
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if (pathPointAtLength(path, middle).y < y === down) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** A side run with every point of it moved out by its height's shift; what is not moved stays as it was drawn. */
const shifted = (path: Path, knots: readonly Knot[], outward: number): Path => {
  const whole = pathLength(path);
  const down = pathEnd(path).y > pathStart(path).y;
  const top = (knots[0] as Knot).y;
  const clear = nearestOnPath(path, { x: (down ? pathStart(path) : pathEnd(path)).x, y: top });
  const at = Math.min(Math.max(clear.atLength, 0), whole);
  const keep = at > spacing && at < whole - spacing ? splitPathAtLength(path, at) : null;
  const [kept, moved] = keep ? (down ? keep : [keep[1], keep[0]]) : [null, path];
  if (!moved) return path;
  const length = pathLength(moved);
  const count = Math.max(2, Math.round(length / spacing));
  const even = Array.from({ length: count + 1 }, (_, i) => (length * i) / count);
  // Through every level itself, and between them no nearer to it than half a step.
  const atLevels = knots
    .map(({ y }) => heightAlong(moved, y))
    .filter((mm) => mm > spacing / 2 && mm < length - spacing / 2);
  const lengths = [...even.filter((mm) => !atLevels.some((at) => Math.abs(at - mm) < spacing / 2)), ...atLevels];
  const points = lengths
    .toSorted((a, b) => a - b)
    .map((mm): Point => {
      const p = pathPointAtLength(moved, mm);
      return add(p, { x: outward * shiftAt(knots, p.y), y: 0 });
    });
  const join = kept ? pathTangentAtLength(path, at) : undefined;
  const drawn = smoothThrough(points, join ? { [down ? 'startTangent' : 'endTangent']: join } : {});
  if (!kept) return drawn;
  return down ? joinPaths(kept, drawn) : joinPaths(drawn, kept);
};

/** Marks that lie on the side go with it. */
const carried = (before: Piece, after: Piece, run: Run & { kind: 'edge' }, moveOf: (p: Point) => Point): Piece => {
  const own = after.runs.filter((one) => one.kind === 'edge' && one.edge === run.edge);
  const whole = own.reduce((sum, one) => sum + pathLength(one.path), 0);
  const placeOf = (p: Point): number => {
    let before = 0;
    let best = { distance: Infinity, at: 0 };
    for (const { path } of own) {
      const near = nearestOnPath(path, p);
      if (near.distance < best.distance) best = { distance: near.distance, at: before + near.atLength };
      before += pathLength(path);
    }
    return best.at / whole;
  };
  return {
    ...after,
    notches: after.notches.map((notch) =>
      notch.edge === run.edge ? { ...notch, at: placeOf(moveOf(pointOnEdge(before, notch.edge, notch.at))) } : notch,
    ),
    levels: after.levels.map((level) => ({ ...level, to: moveOf(level.to) })),
    landmarks: after.landmarks.map((mark) => ({ ...mark, at: moveOf(mark.at) })),
    lines: after.lines.map((inner) => {
      const [only, ...rest] = inner.path;
      if (only?.kind !== 'line' || rest.length > 0) return inner;
      return { ...inner, path: [line(moveOf(only.from), moveOf(only.to))] };
    }),
  };
};

/** A front or back whose side can be run out or in below the first of these levels. */
interface SideToBlend {
  readonly piece: Piece;
  readonly index: number;
  readonly run: Run & { kind: 'edge' };
  /** Levels from the first that changes, downward. */
  readonly levels: readonly Level[];
  /** How far above the first level its line can begin to run out, mm. */
  readonly reach: number;
}

/** A line that begins less than this above the first level, mm, begins at it. */
const leastReach = 1;

/** Where no level lies between, a side runs out over this share of what is above it: clear of the bust and its dart. */
const reachShare = 0.9;

/** Levels a side is drawn through. What hangs from a waistband has its waist at the top of the side. */
const levelsDown = (piece: Piece, shifts: SideShifts): readonly Level[] => {
  const own = piece.levels.filter(({ id }) => id === 'waist' || id === 'hip' || id in shifts);
  const hip = own.find(({ id }) => id === 'hip');
  const run = hip ? piece.runs[sideRunAt(piece, hip)] : undefined;
  const hangs = hip && run && !own.some(({ id }) => id === 'waist');
  const top = hangs ? [pathStart(run.path), pathEnd(run.path)].reduce((a, b) => (a.y < b.y ? a : b)) : null;
  const waist = top && hip ? [{ id: 'waist', from: { x: hip.from.x, y: top.y }, to: top }] : [];
  return [...waist, ...own].toSorted((a, b) => a.to.y - b.to.y);
};

/** The edge run at the lower end of a run; a side that is to be blended ends at a hem. */
const endsAtHem = (piece: Piece, index: number): boolean => {
  const { path } = piece.runs[index] as Run;
  const down = pathEnd(path).y > pathStart(path).y;
  const below = piece.runs[(index + (down ? 1 : piece.runs.length - 1)) % piece.runs.length];
  return below?.kind === 'edge' && piece.edges.find(({ id }) => id === below.edge)?.finish === 'hem';
};

const sideToBlend = (piece: Piece, shifts: SideShifts): readonly SideToBlend[] => {
  const levels = levelsDown(piece, shifts);
  const first = levels.find(({ id }) => shifts[id]);
  // All on one run: the lowest level tells which, for the highest may lie on a corner that two runs share.
  const lowest = levels.at(-1);
  const index = lowest ? sideRunAt(piece, lowest) : -1;
  const run = piece.runs[index];
  if (!first || run?.kind !== 'edge' || !endsAtHem(piece, index)) return [];
  if (nearestOnPath(run.path, first.to).distance > tolerance.walk) return [];
  const top = Math.min(pathStart(run.path).y, pathEnd(run.path).y);
  const above = levels[levels.indexOf(first) - 1];
  const reach = above && above.to.y >= top ? first.to.y - above.to.y : reachShare * (first.to.y - top);
  return [{ piece, index, run, levels: levels.slice(levels.indexOf(first)), reach }];
};

/** One front or back with its side run out or in, beginning `reach` mm above the first level that changes. */
const blendedPiece = ({ piece, index, run, levels }: SideToBlend, shifts: SideShifts, reach: number): Piece => {
  const first = levels[0] as Level;
  const outward = Math.sign(first.to.x - first.from.x) || 1;
  const knots: Knot[] = [
    // A waist at the very top of the side moves as a whole, its edge with it.
    ...(reach > leastReach ? [{ y: first.to.y - reach, shift: 0 }] : []),
    ...levels.map(({ id, to }) => ({ y: to.y, shift: shifts[id] ?? 0 })),
  ];
  const path = shifted(run.path, knots, outward);
  const moveOf = (p: Point): Point => {
    const onSide = nearestOnPath(run.path, p).distance <= tolerance.walk;
    return onSide ? nearestOnPath(path, add(p, { x: outward * shiftAt(knots, p.y), y: 0 })).point : p;
  };
  const count = piece.runs.length;
  const [next, last] = [(index + 1) % count, (index + count - 1) % count];
  const after = {
    ...piece,
    runs: piece.runs.map((one, i) => {
      if (i === index) return { ...one, path };
      if (i === next) return { ...one, path: withEnd(one.path, 'start', pathEnd(path)) };
      return i === last ? { ...one, path: withEnd(one.path, 'end', pathStart(path)) } : one;
    }),
  };
  return carried(piece, after, run, moveOf);
};

/** The garment with its side seams run out (or in) by these amounts a side edge, front and back alike, and trued. */
export const blendSides = (
  garment: Garment,
  shifts: SideShifts,
): { readonly after: Garment; readonly held: readonly Held[]; readonly changes: readonly Change[] } | null => {
  const toBlend = garment.pieces.flatMap((piece) =>
    piece.role === 'front' || piece.role === 'back' ? sideToBlend(piece, shifts) : [],
  );
  if (toBlend.length === 0) return null;
  // Front and back begin at the same height, so that the same line is drawn on both.
  const reach = Math.min(...toBlend.map((side) => side.reach));
  const changed = toBlend.map((side) => blendedPiece(side, shifts, reach));
  const tape = createTape();
  const drawn = replacePieces(garment, changed);
  const after = trueSeams(tape, garment, drawn, new Set(changed.map(({ id }) => id)));
  // Edges that a waistband or a facing is sewn to grow on purpose; what is sewn side to side must still meet.
  const own = new Set(changed.map(({ id }) => id));
  const sides = new Set(after.seams.filter(({ a, b }) => own.has(a.piece) && own.has(b.piece)).map(({ id }) => id));
  const held = heldSeams(tape, garment, after).filter(({ seam }) => seam !== undefined && sides.has(seam));
  return { after, held, changes: girthChanges(garment, after) };
};
