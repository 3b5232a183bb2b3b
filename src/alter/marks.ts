import {
  applyToPath,
  applyToPoint,
  cross,
  distance,
  intersectPaths,
  joinPaths,
  length,
  lerp,
  line,
  nearestOnPath,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  polyline,
  samePoint,
  splitPathAtLengths,
  subtract,
  tolerance,
} from '../geometry/index.ts';
import type { Dart, Grain, InnerLine, Level, Notch, Piece } from '../pattern/index.ts';
import type { CutPiece } from './cut.ts';
import { motionOf, partAt } from './move.ts';
import { type Ring, type RingRun, ringOf, runIndices } from './ring.ts';
import { tidy } from './tidy.ts';

/** Which part a mark goes with, where the lines of the cut leave it open; and the points of darts whose wedge was cut out. */
export interface MarkOwners {
  readonly landmarks?: Readonly<Record<string, number>>;
  readonly levels?: Readonly<Record<string, { readonly from?: number; readonly to?: number; readonly over?: number }>>;
  readonly lines?: Readonly<Record<string, number>>;
  readonly darts?: Readonly<Record<string, Point>>;
}

/** Where a point of the outline lies along an edge, mm, darts stepped over. */
const alongEdge = (piece: Piece, ring: Ring, edge: string, point: Point): number => {
  let best = { distance: Infinity, along: 0 };
  for (const index of runIndices(piece.runs, edge)) {
    const run = ring.runs[index] as RingRun;
    const near = nearestOnPath(run.path, point);
    if (near.distance < best.distance) best = { distance: near.distance, along: run.edgeStart + near.atLength };
  }
  return best.along;
};

const carryNotch = (pieces: CutPiece, after: Piece, ring: Ring, notch: Notch): Notch => {
  const whole = pieces.ring.edgeLengths.get(notch.edge) ?? 0;
  const along = notch.at * whole;
  const mine = pieces.fragments.filter(({ of }) => of.kind === 'edge' && of.edge === notch.edge);
  const fragment = mine.find(({ from, to }) => along >= from && along <= to) ?? mine.at(-1);
  if (!fragment) return notch;
  if (mine.length === pieces.ring.runs.filter(({ run }) => run.kind === 'edge' && run.edge === notch.edge).length) {
    const still = Math.abs((ring.edgeLengths.get(notch.edge) ?? 0) - whole) <= tolerance.same;
    if (still) return notch;
  }
  const at = pathPointAtLength(
    fragment.path,
    Math.min(Math.max(along - fragment.from, 0), fragment.to - fragment.from),
  );
  const place = alongEdge(after, ring, notch.edge, applyToPoint(motionOf(pieces, fragment.part), at));
  return { ...notch, at: Math.min(place / (ring.edgeLengths.get(notch.edge) ?? 1), 1) };
};

const carryDart = (pieces: CutPiece, dart: Dart, owners: MarkOwners): Dart => {
  const point = owners.darts?.[dart.id];
  if (point) return { ...dart, point };
  const mouth = pieces.fragments.find(({ of }) => of.kind === 'mouth' && of.dart === dart.id);
  if (!mouth) throw new Error(`Dart ${dart.id} of ${pieces.piece.id} has no mouth`);
  if (pieces.parts[mouth.part]?.wedge === dart.id) {
    throw new Error(`The wedge of ${dart.id} was cut out of ${pieces.piece.id} and its point not placed again`);
  }
  return { ...dart, point: applyToPoint(motionOf(pieces, mouth.part), dart.point) };
};

const carryLevel = (pieces: CutPiece, level: Level, owners: MarkOwners): Level => {
  const { over, ...ends } = level;
  const own = owners.levels?.[level.id] ?? {};
  const from = own.from ?? partAt(pieces, level.from);
  const to = own.to ?? partAt(pieces, level.to);
  return {
    ...ends,
    from: applyToPoint(motionOf(pieces, from), level.from),
    to: applyToPoint(motionOf(pieces, to), level.to),
    ...(over ? { over: applyToPoint(motionOf(pieces, own.over ?? partAt(pieces, over)), over) } : {}),
  };
};

/** A line inside the piece, split where cuts cross it; each stretch goes with its part, gaps are bridged straight. */
const carryLine = (pieces: CutPiece, inner: InnerLine, owners: MarkOwners): InnerLine => {
  const owner = owners.lines?.[inner.id];
  if (owner !== undefined) return { ...inner, path: applyToPath(motionOf(pieces, owner), inner.path) };
  const whole = pathLength(inner.path);
  const at = pieces.cuts
    .flatMap((one) => intersectPaths(inner.path, polyline(one.points)).map(({ lengthA }) => lengthA))
    .filter((mm) => mm > tolerance.walk && mm < whole - tolerance.walk)
    .sort((a, b) => a - b)
    .filter((mm, i, all) => i === 0 || mm - (all[i - 1] as number) > tolerance.walk);
  const laid = splitPathAtLengths(inner.path, at).map((stretch) => {
    const middle = pathPointAtLength(stretch, pathLength(stretch) / 2);
    return applyToPath(motionOf(pieces, partAt(pieces, middle)), stretch);
  });
  // Where parts overlap the line would run back over itself: tidied, it goes straight on.
  return { ...inner, path: tidy(laid.reduce(bridged)) };
};

const bridged = (before: Path, after: Path): Path => {
  const [from, to] = [pathEnd(before), pathStart(after)];
  return samePoint(from, to) ? joinPaths(before, after) : joinPaths(before, [line(from, to)], after);
};

/**
 * The grain stays one line in its own direction. Where both ends still lie on one such line they are kept;
 * otherwise it goes along with the part its middle lies in.
 */
const carryGrain = (pieces: CutPiece, grain: Grain): Grain => {
  const from = applyToPoint(motionOf(pieces, partAt(pieces, grain.from)), grain.from);
  const to = applyToPoint(motionOf(pieces, partAt(pieces, grain.to)), grain.to);
  const direction = subtract(grain.to, grain.from);
  const now = subtract(to, from);
  if (Math.abs(cross(direction, now)) <= tolerance.same * length(direction) && distance(from, to) > 0)
    return { from, to };
  const middle = lerp(grain.from, grain.to, 1 / 2);
  const carried = applyToPoint(motionOf(pieces, partAt(pieces, middle)), middle);
  const half = { x: direction.x / 2, y: direction.y / 2 };
  return { from: subtract(carried, half), to: { x: carried.x + half.x, y: carried.y + half.y } };
};

/** Everything drawn on a piece taken along with the parts it lies on. `after` has the joined outline. */
export const carryMarks = (pieces: CutPiece, after: Piece, owners: MarkOwners): Piece => {
  const ring = ringOf(after);
  return {
    ...after,
    darts: after.darts.map((dart) => carryDart(pieces, dart, owners)),
    notches: after.notches.map((notch) => carryNotch(pieces, after, ring, notch)),
    grain: carryGrain(pieces, after.grain),
    levels: after.levels.map((level) => carryLevel(pieces, level, owners)),
    landmarks: after.landmarks.map((mark) => {
      const part = owners.landmarks?.[mark.id] ?? partAt(pieces, mark.at);
      return { ...mark, at: applyToPoint(motionOf(pieces, part), mark.at) };
    }),
    lines: after.lines.map((inner) => carryLine(pieces, inner, owners)),
  };
};
