import {
  add,
  cubic,
  distance,
  intersectPaths,
  line,
  nearestOnPath,
  nearestPlace,
  normalize,
  outlineArea,
  type Path,
  type Point,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathTangentAtLength,
  polyline,
  samePoint,
  scale,
  segmentLengths,
  subPath,
  subtract,
  tolerance,
  turnBetween,
} from '../geometry/index.ts';
import { type InnerLine, outlineOf, type Piece } from '../pattern/index.ts';
import type { FormerCut } from './join.ts';
import { type RingRun, ringOf, runIndices } from './ring.ts';

/** An edge trued near a former cut. */
export interface Redrawn {
  readonly piece: Piece;
  /** Furthest the new line strays from the old one, mm; 0 where nothing had to be redrawn. */
  readonly strayed: number;
  /** Area the redrawing moved, mm², positive where the piece grew. */
  readonly area: number;
}

/** A joint that turns by more than this many radians (about 3°) is a corner a redrawn line runs up to, not over. */
export const cornerTurn = 0.05;

/** A joint that turns by less than this many radians needs no truing: under a hundredth of a millimetre over the reach. */
export const smoothTurn = 1e-4;

/** Part of one run of an edge, mm from the run's start. */
export interface Stretch {
  readonly run: number;
  readonly path: Path;
  readonly from: number;
  readonly to: number;
}

/** Lengths along a path at which one segment follows another, and by how much it turns there. */
export const joints = (path: Path): readonly { readonly at: number; readonly turn: number }[] => {
  const lengths = segmentLengths(path);
  let at = 0;
  return path.slice(1).map((_, i) => {
    at += lengths[i] as number;
    const turn = turnBetween(pathTangentAtLength(path, at, 'before'), pathTangentAtLength(path, at, 'after'));
    return { at, turn: Math.abs(turn) };
  });
};

export const findStretch = (piece: Piece, former: FormerCut): Stretch | null => {
  const ring = ringOf(piece);
  let best: (Stretch & { readonly away: number }) | null = null;
  for (const index of runIndices(piece.runs, former.edge)) {
    const { path } = ring.runs[index] as RingRun;
    const before = nearestOnPath(path, former.before);
    const after = nearestOnPath(path, former.after);
    const away = before.distance + after.distance;
    if (best && best.away <= away) continue;
    const [from, to] = [before.atLength, after.atLength];
    best = { run: index, path, from: Math.min(from, to), to: Math.max(from, to), away };
  }
  return best;
};

/** The piece with part of one run drawn anew. Notches keep their distance from the unchanged end beyond which they lie; those on the old line go to the nearest place of the new. */
export const replaceStretch = (piece: Piece, run: number, from: number, to: number, path: Path): Piece => {
  const ring = ringOf(piece);
  const old = ring.runs[run] as RingRun;
  if (old.run.kind !== 'edge') throw new Error('Only an edge is redrawn');
  const { edge } = old.run;
  const head = from > 0 ? subPath(old.path, 0, from) : [];
  const tail = to < old.length ? subPath(old.path, to, old.length) : [];
  const start = old.edgeStart + from;
  const end = old.edgeStart + to;
  const drawn = pathLength(path);
  const before = ring.edgeLengths.get(edge) as number;
  const after = before + drawn - (to - from);
  const within = (along: number): number =>
    start + nearestOnPath(path, pathPointAtLength(old.path, along - old.edgeStart)).atLength;
  const moved = (along: number): number =>
    along <= start ? along : along >= end ? along + after - before : within(along);
  return {
    ...piece,
    runs: piece.runs.map((one, index) => (index === run ? { ...one, path: [...head, ...path, ...tail] } : one)),
    notches: piece.notches.map((notch) =>
      notch.edge === edge ? { ...notch, at: Math.min(moved(notch.at * before) / after, 1) } : notch,
    ),
  };
};

/** Furthest a new line lies from the one it replaces, mm, looked for at as many places as make an eighth of its length. */
const strayOf = (path: Path, old: Path): number => {
  const whole = pathLength(path);
  let worst = 0;
  for (let i = 1; i < 12; i += 1)
    worst = Math.max(worst, nearestOnPath(old, pathPointAtLength(path, (whole * i) / 12)).distance);
  return worst;
};

/**
 * One cubic between two places of a path, tangent at both. The handles are those of a circular arc of the
 * same turn, ⅔ / (1 + cos ½φ) of the chord, times `fullness`.
 */
export const blended = (path: Path, from: number, to: number, fullness = 1): Path => {
  const [a, b] = [pathPointAtLength(path, from), pathPointAtLength(path, to)];
  const leaving = pathTangentAtLength(path, from, 'after');
  const arriving = pathTangentAtLength(path, to, 'before');
  const turn = Math.min(Math.abs(turnBetween(leaving, arriving)), Math.PI / 2);
  const handle = (fullness * distance(a, b) * (2 / 3)) / (1 + Math.cos(turn / 2));
  return [cubic(a, add(a, scale(leaving, handle)), add(b, scale(arriving, -handle)), b)];
};

export const trued = (piece: Piece, stretch: Stretch, from: number, to: number, path: Path): Redrawn => {
  const old = subPath(stretch.path, from, to);
  const redrawn = reseat(replaceStretch(piece, stretch.run, from, to, path), old, path);
  return {
    piece: redrawn,
    strayed: strayOf(path, old),
    area: outlineArea(outlineOf(redrawn)) - outlineArea(outlineOf(piece)),
  };
};

/** No line is redrawn further away than this, mm. */
const farSeat = 65;

/** Marks that lay on the old line, laid on the new one: landmarks where it is nearest, the ends of levels along their level. */
export const reseat = (piece: Piece, old: Path, path: Path): Piece => {
  const onOld = (point: Point): boolean => nearestPlace(old, point).distance <= tolerance.walk;
  const seated = (point: Point): Point => (onOld(point) ? nearestPlace(path, point).point : point);
  const along = (point: Point, from: Point): Point => {
    if (samePoint(point, from) || !onOld(point)) return point;
    const out = scale(normalize(subtract(point, from)), farSeat);
    const crossings = intersectPaths([line(subtract(point, out), add(point, out))], path).map((one) => one.point);
    return crossings.reduce(
      (best, one) => (distance(one, point) < distance(best, point) ? one : best),
      crossings[0] ?? seated(point),
    );
  };
  const alongLine = (inner: InnerLine): InnerLine => {
    if (inner.kind !== 'lengthen-or-shorten' || inner.path.some(({ kind }) => kind !== 'line')) return inner;
    const points = [pathStart(inner.path), ...inner.path.map((segment) => segment.to)];
    const first = along(points[0] as Point, points[1] as Point);
    const last = along(points.at(-1) as Point, points.at(-2) as Point);
    return { ...inner, path: polyline([first, ...points.slice(1, -1), last]) };
  };
  return {
    ...piece,
    landmarks: piece.landmarks.map((mark) => ({ ...mark, at: seated(mark.at) })),
    levels: piece.levels.map(({ over, ...level }) => ({
      ...level,
      from: along(level.from, over ?? level.to),
      to: along(level.to, over ?? level.from),
      ...(over ? { over } : {}),
    })),
    lines: piece.lines.map(alongLine),
  };
};

/** The corners (or ends of the run) that a redrawn line may reach up to on either side. */
export const corners = (path: Path, from: number, to: number): readonly [number, number] => {
  const sharp = joints(path).filter(({ turn }) => turn > cornerTurn);
  const low = sharp.filter(({ at }) => at < from - tolerance.walk).at(-1)?.at ?? 0;
  const high = sharp.find(({ at }) => at > to + tolerance.walk)?.at ?? pathLength(path);
  return [low, high];
};
