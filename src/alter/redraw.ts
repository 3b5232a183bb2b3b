import {
  add,
  cubic,
  distance,
  dot,
  intersectPaths,
  line,
  nearestOnPath,
  nearestPlace,
  normalize,
  outlineArea,
  type Path,
  type Point,
  pathEnd,
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

/** How far on each side of a former cut a curve is blended, mm (trade: 50 to 80). */
const reach = 65;

/** A blend may end this near, mm, where a notch marks a level of the body there: its width then stays. */
const leastReach = 50;

/** A joint that turns by more than this many radians (about 3°) is a corner a redrawn line runs up to, not over. */
const cornerTurn = 0.05;

/** A joint that turns by less than this many radians needs no truing: under a hundredth of a millimetre over the reach. */
const smoothTurn = 1e-4;

interface Stretch {
  readonly run: number;
  readonly path: Path;
  readonly from: number;
  readonly to: number;
}

/** Lengths along a path at which one segment follows another, and by how much it turns there. */
const joints = (path: Path): readonly { readonly at: number; readonly turn: number }[] => {
  const lengths = segmentLengths(path);
  let at = 0;
  return path.slice(1).map((_, i) => {
    at += lengths[i] as number;
    const turn = turnBetween(pathTangentAtLength(path, at, 'before'), pathTangentAtLength(path, at, 'after'));
    return { at, turn: Math.abs(turn) };
  });
};

const findStretch = (piece: Piece, former: FormerCut): Stretch | null => {
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
const replaceStretch = (piece: Piece, run: number, from: number, to: number, path: Path): Piece => {
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
const blended = (path: Path, from: number, to: number, fullness = 1): Path => {
  const [a, b] = [pathPointAtLength(path, from), pathPointAtLength(path, to)];
  const leaving = pathTangentAtLength(path, from, 'after');
  const arriving = pathTangentAtLength(path, to, 'before');
  const turn = Math.min(Math.abs(turnBetween(leaving, arriving)), Math.PI / 2);
  const handle = (fullness * distance(a, b) * (2 / 3)) / (1 + Math.cos(turn / 2));
  return [cubic(a, add(a, scale(leaving, handle)), add(b, scale(arriving, -handle)), b)];
};

const trued = (piece: Piece, stretch: Stretch, from: number, to: number, path: Path): Redrawn => {
  const old = subPath(stretch.path, from, to);
  const redrawn = reseat(replaceStretch(piece, stretch.run, from, to, path), old, path);
  return {
    piece: redrawn,
    strayed: strayOf(path, old),
    area: outlineArea(outlineOf(redrawn)) - outlineArea(outlineOf(piece)),
  };
};

/** Marks that lay on the old line, laid on the new one: landmarks where it is nearest, the ends of levels along their level. */
const reseat = (piece: Piece, old: Path, path: Path): Piece => {
  const onOld = (point: Point): boolean => nearestPlace(old, point).distance <= tolerance.walk;
  const seated = (point: Point): Point => (onOld(point) ? nearestPlace(path, point).point : point);
  const along = (point: Point, from: Point): Point => {
    if (samePoint(point, from) || !onOld(point)) return point;
    const out = scale(normalize(subtract(point, from)), reach);
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
const corners = (path: Path, from: number, to: number): readonly [number, number] => {
  const sharp = joints(path).filter(({ turn }) => turn > cornerTurn);
  const low = sharp.filter(({ at }) => at < from - smallStep).at(-1)?.at ?? 0;
  const high = sharp.find(({ at }) => at > to + smallStep)?.at ?? pathLength(path);
  return [low, high];
};

/** Joints nearer than this to a former cut, mm, are the cut itself. */
const smallStep = 0.01;

const straightBetween = (path: Path, from: number, to: number): boolean => {
  const ends = segmentLengths(path);
  let at = 0;
  return path.every((segment, i) => {
    const begins = at;
    at += ends[i] as number;
    const outside = at <= from + smallStep || begins >= to - smallStep;
    return outside || segment.kind === 'line';
  });
};

/** Places of notches along one run, mm from its start, in order. */
const notchesAlong = (piece: Piece, run: number): readonly number[] => {
  const ring = ringOf(piece);
  const own = ring.runs[run] as RingRun;
  const edge = own.run.kind === 'edge' ? own.run.edge : '';
  return piece.notches
    .filter((notch) => notch.edge === edge)
    .map((notch) => notch.at * (ring.edgeLengths.get(edge) ?? 0) - own.edgeStart)
    .sort((a, b) => a - b);
};

/**
 * Trues an edge where it was cut: what was straight between two corners is drawn straight again from
 * corner to corner; a curve is blended over 65 mm on each side of the cut, or up to the corner where that
 * is nearer, or to a notch at least 50 mm off; its tangents are kept. Where parts overlap the blend reaches further by half the overlap.
 */
export const redraw = (piece: Piece, former: FormerCut): Redrawn => {
  const nothing: Redrawn = { piece, strayed: 0, area: 0 };
  const stretch = findStretch(piece, former);
  if (!stretch) return nothing;
  const { path, from, to } = stretch;
  const kinked = joints(path).some(({ at, turn }) => at > from - smallStep && at < to + smallStep && turn > smoothTurn);
  if (!kinked) return nothing;
  const [low, high] = corners(path, from, to);
  if (straightBetween(path, low, high)) {
    return trued(piece, stretch, low, high, [line(pathPointAtLength(path, low), pathPointAtLength(path, high))]);
  }
  const overlap = Math.max(-dot(subtract(former.after, former.before), pathTangentAtLength(path, from, 'before')), 0);
  const out = reach + overlap / 2;
  const marks = notchesAlong(piece, stretch.run);
  const before = marks.find((at) => at > from - out && at <= from - leastReach);
  const after = marks.findLast((at) => at < to + out && at >= to + leastReach);
  const start = Math.max(before ?? from - out, low);
  const end = Math.min(after ?? to + out, high);
  return trued(piece, stretch, start, end, blended(path, start, end));
};

/** Blends tried about a hinge, mm each side, the widest first; the trade smooths as far as the line allows. */
const hingeReaches = [50, 40, 32, 25, 20, 16, 12, 9, 7, 5] as const;

/** Between a nearly straight handle and one past the point where the tangents meet. */
const fullnesses = [0.7, 1.6] as const;

/**
 * Smooths the kink a hinge leaves in a curve without changing the edge's length: a single cubic, tangent at
 * both ends, its fullness chosen so that it measures what it replaces. The widest that strays by no more
 * than `most` mm; where none can, the edge stays as it is and the kink's own height over the narrowest
 * reach is what strays.
 */
export const smoothHinge = (piece: Piece, former: FormerCut, most: number): Redrawn => {
  const stretch = findStretch(piece, former);
  if (!stretch) return { piece, strayed: 0, area: 0 };
  const { path } = stretch;
  const at = (stretch.from + stretch.to) / 2;
  const kink = joints(path).find((joint) => Math.abs(joint.at - at) < smallStep);
  if (!kink || kink.turn < smoothTurn) return { piece, strayed: 0, area: 0 };
  const [low, high] = corners(path, at, at);
  let narrowest = Infinity;
  for (const out of hingeReaches) {
    const from = Math.max(at - out, low);
    const to = Math.min(at + out, high);
    const fullness = fullnessFor(path, from, to);
    if (fullness === null) continue;
    const made = trued(piece, stretch, from, to, blended(path, from, to, fullness));
    if (made.strayed <= most) return made;
    narrowest = made.strayed;
  }
  return { piece, strayed: narrowest, area: 0 };
};

/** The fullness at which a blend measures what it replaces; null where none between the limits does. Bisection. */
const fullnessFor = (path: Path, from: number, to: number): number | null => {
  const wanted = to - from;
  const over = (fullness: number): number => pathLength(blended(path, from, to, fullness)) - wanted;
  let [low, high] = fullnesses as unknown as [number, number];
  if (over(low) > 0 || over(high) < 0) return null;
  for (let round = 0; round < 40; round += 1) {
    const middle = (low + high) / 2;
    if (over(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
};

/** Moves the corner at one end of an edge along the edge's own direction by some mm; the neighbour's end goes with it. */
export const moveCorner = (piece: Piece, edge: string, end: 'start' | 'end', by: number): Piece => {
  const indices = runIndices(piece.runs, edge);
  const index = (end === 'end' ? indices.at(-1) : indices[0]) as number;
  const count = piece.runs.length;
  const other = (index + (end === 'end' ? 1 : count - 1)) % count;
  const own = piece.runs[index]?.path as Path;
  const corner = end === 'end' ? pathEnd(own) : pathStart(own);
  const along = end === 'end' ? pathTangentAtLength(own, pathLength(own)) : scale(pathTangentAtLength(own, 0), -1);
  const to = add(corner, scale(along, by));
  return {
    ...piece,
    runs: piece.runs.map((run, i) => {
      if (i === index) return { ...run, path: withEnd(run.path, end, to) };
      return i === other ? { ...run, path: withEnd(run.path, end === 'end' ? 'start' : 'end', to) } : run;
    }),
  };
};

/** The last (or first) segment drawn to another end, its handle there moved along. */
const withEnd = (path: Path, end: 'start' | 'end', to: Point): Path => {
  const index = end === 'end' ? path.length - 1 : 0;
  return path.map((segment, i) => {
    if (i !== index) return segment;
    if (end === 'end') {
      const by = subtract(to, segment.to);
      return segment.kind === 'line' ? { ...segment, to } : { ...segment, control2: add(segment.control2, by), to };
    }
    const by = subtract(to, segment.from);
    return segment.kind === 'line'
      ? { ...segment, from: to }
      : { ...segment, control1: add(segment.control1, by), from: to };
  });
};
