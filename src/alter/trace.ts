import {
  add,
  angleOf,
  applyToPath,
  compose,
  distance,
  dot,
  extendPath,
  fitCubics,
  joinPaths,
  mirrorX,
  nearestOnPath,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathTangentAtLength,
  pathWithEnd,
  pathWithStart,
  perpendicular,
  reversePath,
  rotation,
  scale,
  splitPathAtLengths,
  subPath,
  subtract,
  type Transform,
  tolerance,
  translation,
} from '../geometry/index.ts';
import { edgeRuns, type Piece, pieceOf, type SeamSide } from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { easedField, type Shift } from './fields.ts';
import { type Drawn, reshape } from './reshape.ts';
import { runIndices } from './ring.ts';
import { warped } from './warp.ts';
import { pieceNow, redrawEdges, type Work, type Worked, withPiece } from './work.ts';

/** A whole edge as one line, travelled as a seam walks it. */
export const walkedLine = (piece: Piece, side: SeamSide): Path => {
  const path = edgeRuns(piece, side.edge).flat();
  return side.reversed ? reversePath(path) : path;
};

/** The motion (with a turn-over where that fits better) that lays one line on another of the same length, start on start and ends in one direction; and how far the two then lie apart, mm. */
export const layOn = (from: Path, to: Path): { readonly onto: Transform; readonly off: number } => {
  const laid = (over: boolean): Transform => {
    const turned = over ? mirrorX() : null;
    const source = turned ? applyToPath(turned, from) : from;
    const angle = angleOf(subtract(pathEnd(to), pathStart(to))) - angleOf(subtract(pathEnd(source), pathStart(source)));
    const spun = rotation(angle, pathStart(source));
    const moved = translation(subtract(pathStart(to), pathStart(source)));
    return turned ? compose(turned, spun, moved) : compose(spun, moved);
  };
  const off = (motion: Transform): number => {
    const line = applyToPath(motion, from);
    const whole = Math.min(pathLength(line), pathLength(to));
    const apart = (share: number): number =>
      distance(pathPointAtLength(line, whole * share), pathPointAtLength(to, whole * share));
    return Math.max(...[0.25, 0.5, 0.75].map(apart));
  };
  const [plain, over] = [laid(false), laid(true)];
  const [first, second] = [off(plain), off(over)];
  return first <= second + tolerance.walk ? { onto: plain, off: first } : { onto: over, off: second };
};

/** How a line lies along another that is as long or, by a pleat at one of its ends, longer; and a new line with that pleat put to it again. */
interface Copy {
  readonly onto: Transform;
  /** How far the two lie apart, mm. */
  readonly off: number;
  readonly extended: (line: Path) => Path;
}

const copyOf = (old: Path, target: Path): Copy | null => {
  const [length, whole] = [pathLength(old), pathLength(target)];
  if (Math.abs(length - whole) <= tolerance.kink) return { ...layOn(old, target), extended: (line) => line };
  if (length > whole) return null;
  for (const at of ['start', 'end'] as const) {
    const [from, to] = at === 'start' ? [whole - length, whole] : [0, length];
    const copied = subPath(target, from, to);
    const { onto, off } = layOn(old, copied);
    if (off > tolerance.kink) continue;
    const rest = at === 'start' ? subPath(target, 0, from) : subPath(target, to, whole);
    const [joint, meets] = at === 'start' ? [pathEnd(rest), pathStart] : [pathStart(rest), pathEnd];
    return {
      onto,
      off,
      extended: (line) => {
        const moved = applyToPath(translation(subtract(meets(line), joint)), rest);
        return at === 'start' ? joinPaths(moved, line) : joinPaths(line, moved);
      },
    };
  }
  return null;
};

/** How far apart points of the outer line are taken, mm, and how near the new line keeps to them. */
const every = 6;

/** Points taken of one line at most: a long one is not measured closer for it. */
const mostPoints = 60;

/** A line of the outline a piece lies along: as it was, and as it is now. */
interface Beside {
  readonly old: Path;
  readonly now: Path;
}

/** Where a point goes that keeps its distance from a line, and the place along it it stands opposite to. */
const keptBeside = (point: Point, { old, now }: Beside): { readonly to: Point; readonly distance: number } => {
  const foot = nearestOnPath(old, point);
  const [was, is] = [pathLength(old), pathLength(now)];
  const away = subtract(point, foot.point);
  const tangent = pathTangentAtLength(old, foot.atLength, 'before');
  const at = (foot.atLength / was) * is;
  const turned = pathTangentAtLength(now, at, 'before');
  const out = dot(away, perpendicular(tangent));
  const along = dot(away, tangent);
  const to = add(pathPointAtLength(now, at), add(scale(perpendicular(turned), out), scale(turned, along)));
  return { to, distance: foot.distance };
};

/** How much nearer lines outweigh those further off: high, so that a facing keeps its width. */
const nearness = 6;

/**
 * A line that runs beside others, carried to lie beside them as they are now: each point keeps its distance from what it
 * lay nearest to, and from one to the next the line passes over evenly (inverse distance weighting, Shepard 1968).
 */
const carriedBeside = (line: Path, lines: readonly Beside[]): Path => {
  const whole = pathLength(line);
  const carried = (along: number): { readonly was: Point; readonly is: Point } => {
    const was = pathPointAtLength(line, Math.min(Math.max(along, 0), whole));
    let sum: Point = { x: 0, y: 0 };
    let weights = 0;
    for (const one of lines) {
      const { to, distance: away } = keptBeside(was, one);
      const weight = 1 / Math.max(away, tolerance.holds) ** nearness;
      sum = add(sum, scale(to, weight));
      weights += weight;
    }
    return { was, is: scale(sum, 1 / weights) };
  };
  const shift = (along: number): Point => {
    const { was, is } = carried(along);
    return subtract(is, was);
  };
  const field = (along: number): Shift => {
    const [from, to] = [Math.max(along - apartBy, 0), Math.min(along + apartBy, whole)];
    return { by: shift(along), rate: scale(subtract(shift(to), shift(from)), 1 / (to - from)) };
  };
  const drawn = warped(line, field);
  const checked = Array.from({ length: checks }, (_, i) => carried((whole * (i + 1)) / (checks + 1)));
  // What lay beside nothing that changed keeps its very line.
  if (
    checked.every(({ was, is }) => distance(was, is) <= tolerance.walk) &&
    distance(pathStart(line), pathStart(drawn)) <= tolerance.walk &&
    distance(pathEnd(line), pathEnd(drawn)) <= tolerance.walk
  )
    return line;
  // A fair line of as few curves matters more than a hair of width; where that strays it gets joints between, or is drawn through points.
  const near = (path: Path): boolean =>
    checked.every(({ is }) => nearestOnPath(path, is).distance <= 2 * tolerance.kink);
  if (near(drawn)) return drawn;
  const thirds = splitPathAtLengths(line, [whole / 3, (2 * whole) / 3]).flat();
  const jointed = warped(thirds, field);
  if (near(jointed)) return jointed;
  const count = Math.min(Math.max(2, Math.ceil(whole / every)), mostPoints);
  const points = Array.from({ length: count + 1 }, (_, i) => carried((whole * i) / count).is);
  return fitCubics(points, tolerance.kink / 2);
};

/** Half of what the change of a shift is measured over, mm. */
const apartBy = 2;

/** Places at which a carried line is looked at between its ends. */
const checks = 7;

/** Facings and bags of pockets are narrow or small and go with the line whole; of a lining only the edge itself is redrawn. */
const goesWhole = ({ role }: Piece): boolean => role === 'front-facing' || role === 'back-facing' || role === 'pocket';

/** One new line of a traced piece: firm where it was copied, soft where it is fitted between its neighbours. */
interface Line {
  readonly path: Path;
  readonly firm: boolean;
}

/** How much of a soft line, mm, follows an end that is drawn to another place. */
const endReach = 150;

/** A line whose one end is led to a point, the rest following evenly less. */
const ledTo = (path: Path, to: Point, end: 'start' | 'end'): Path => {
  const by = subtract(to, end === 'start' ? pathStart(path) : pathEnd(path));
  if (Math.hypot(by.x, by.y) <= tolerance.same) return path;
  const length = pathLength(path);
  const reach = Math.min(endReach, length);
  const still = { by: { x: 0, y: 0 } };
  const field =
    end === 'start' ? easedField(0, reach, { by }, still) : easedField(length - reach, length, still, { by });
  const led = warped(path, field);
  return end === 'start' ? pathWithStart(led, to) : pathWithEnd(led, to);
};

/** Soft lines drawn to where their neighbours now end; firm ones meet by themselves. */
const fittedBetween = (piece: Piece, lines: ReadonlyMap<string, Line>): Readonly<Record<string, readonly Path[]>> => {
  const ring = piece.runs.map((run) => (run.kind === 'edge' ? run.edge : null));
  const lineAt = (index: number): Line | undefined => {
    const id = ring[(index + ring.length) % ring.length];
    return id === null || id === undefined ? undefined : lines.get(id);
  };
  const fitted = ring.flatMap((id, index): (readonly [string, readonly Path[]])[] => {
    const own = id === null ? undefined : lines.get(id);
    if (id === null || !own) return [];
    if (own.firm) return [[id, [own.path]]];
    const [before, after] = [lineAt(index - 1), lineAt(index + 1)];
    const begun = before ? ledTo(own.path, pathEnd(before.path), 'start') : own.path;
    return [[id, [after?.firm ? ledTo(begun, pathStart(after.path), 'end') : begun]]];
  });
  return Object.fromEntries(fitted);
};

/**
 * Traces a facing, a lining or the bag of a pocket again from the line it is sewn to: laid on the piece as it was before,
 * its edge takes the new line; of a facing or bag the edges that lay along the piece's own outline take that outline's new
 * line, and the edges beside keep their distance. Left alone
 * where it is of another shape. Problem `alter.not-traced` where the two lines were not even as long.
 *
 * Source: facings are traced from the altered piece, as pattern-cutting manuals have it.
 */
export const traceEdge = (work: Work, own: SeamSide, mate: SeamSide): Result<Work> => {
  const before = pieceOf(work.before, own.piece);
  const after = pieceNow(work, own.piece);
  // A facing is traced from the pattern as it was, however often the piece it lies on changes meanwhile.
  const whole = goesWhole(pieceOf(work.before, mate.piece));
  if (whole && work.worked.get(mate.piece)?.tracedFrom === after) return good(work);
  const piece = whole ? pieceOf(work.before, mate.piece) : pieceNow(work, mate.piece);
  const [old, target] = [walkedLine(before, own), walkedLine(pieceOf(work.before, mate.piece), mate)];
  const single = runIndices(piece.runs, mate.edge).length === 1;
  const found = single ? copyOf(old, target) : null;
  if (!found) {
    return bad('alter.not-traced', { piece: piece.name, by: { mm: Math.abs(pathLength(old) - pathLength(target)) } });
  }
  const { onto, off } = found;
  // As long, but of another shape: what it is a copy of is the other piece it is sewn to, as a pocket's bag is of the front.
  if (off > tolerance.kink) return good(work);
  const turned = (path: Path): Path => (mate.reversed ? reversePath(path) : path);
  const edge = turned(found.extended(applyToPath(onto, walkedLine(after, own))));
  const lines = new Map<string, Line>([[mate.edge, { path: edge, firm: true }]]);
  if (whole) {
    const soft: { readonly edge: string; readonly path: Path }[] = [];
    const beside: (Beside & { readonly edge: string })[] = [{ edge: mate.edge, old: turned(target), now: edge }];
    for (const run of piece.runs) {
      if (run.kind !== 'edge' || run.edge === mate.edge || runIndices(piece.runs, run.edge).length !== 1) continue;
      const along = alongOutline(run.path, before, after, onto);
      if (along) beside.push({ edge: run.edge, old: run.path, now: along });
      if (along) lines.set(run.edge, { path: along, firm: true });
      else soft.push({ edge: run.edge, path: run.path });
    }
    for (const one of soft) {
      // What a line ends on says only where it ends: how it runs is said by what it runs along.
      const along = beside.filter((other) => !meet(piece, one.edge, other.edge));
      lines.set(one.edge, { path: carriedBeside(one.path, along.length > 0 ? along : beside), firm: false });
    }
  }
  const drawn = fittedBetween(piece, lines);
  if (!whole) return good(redrawEdges(work, mate.piece, drawn, false));
  return good(redrawnAnew(work, mate.piece, drawn, after));
};

/** Whether two edges follow one another in the outline. */
const meet = (piece: Piece, one: string, other: string): boolean =>
  piece.runs.some((run, i) => {
    const next = piece.runs[(i + 1) % piece.runs.length];
    if (run.kind !== 'edge' || next?.kind !== 'edge') return false;
    return (run.edge === one && next.edge === other) || (run.edge === other && next.edge === one);
  });

/** As `redrawEdges`, but from the piece as it was before the alteration, in place of what was done to it since. */
const redrawnAnew = (work: Work, id: string, drawn: Drawn, tracedFrom: Piece): Work => {
  const { piece, puts } = reshape(pieceOf(work.before, id), drawn);
  const now = pieceNow(work, id);
  if (sameRuns(piece, now)) return work;
  const worked = new Map(work.worked);
  worked.delete(id);
  const done = withPiece({ ...work, worked }, { piece, untrued: piece, puts, cuts: [] }, false);
  // By whichever of its seams a facing was traced from a piece, once is enough.
  return { ...done, worked: new Map(done.worked).set(id, { ...(done.worked.get(id) as Worked), tracedFrom }) };
};

const sameRuns = (a: Piece, b: Piece): boolean =>
  a.runs.length === b.runs.length &&
  a.runs.every((run, i) => {
    const other = b.runs[i]?.path;
    return (
      other?.length === run.path.length &&
      run.path.every((segment, k) => distance(segment.to, (other[k] as Path[number]).to) <= tolerance.walk)
    );
  });

/**
 * An edge of the facing that lay along an edge of the piece (its shoulder, its centre): cut anew from that edge's new line, as
 * long as it was, from the end it shared; straight on where that line is now shorter. Of an edge with a dart in it, along
 * the stretch between dart and corner.
 */
const alongOutline = (path: Path, before: Piece, after: Piece, onto: Transform): Path | null => {
  for (const { id } of before.edges) {
    const runs = edgeRuns(after, id);
    for (const [i, run] of edgeRuns(before, id).entries()) {
      const now = runs[i];
      const found = now ? alongRun(path, applyToPath(onto, run), applyToPath(onto, now)) : null;
      if (found) return found;
    }
  }
  return null;
};

const alongRun = (path: Path, old: Path, now: Path): Path | null => {
  const [start, end] = [nearestOnPath(old, pathStart(path)), nearestOnPath(old, pathEnd(path))];
  const middle = nearestOnPath(old, pathPointAtLength(path, pathLength(path) / 2));
  if (Math.max(start.distance, end.distance, middle.distance) > tolerance.holds) return null;
  const [whole, length] = [pathLength(old), pathLength(now)];
  const [low, high] = [Math.min(start.atLength, end.atLength), Math.max(start.atLength, end.atLength)];
  const forward = start.atLength < end.atLength;
  // An edge that lay along the whole of the other still does, however long that is now.
  if (low <= tolerance.kink && high >= whole - tolerance.kink) return forward ? now : reversePath(now);
  const fromStart = low <= whole - high;
  const [a, b] = fromStart ? [low, high] : [low + length - whole, high + length - whole];
  if (b - a <= tolerance.walk) return null;
  const longer = fromStart
    ? extendPath(now, 'end', Math.max(b - length, 0))
    : extendPath(now, 'start', Math.max(-a, 0));
  const shift = fromStart ? 0 : Math.max(-a, 0);
  const part = subPath(longer, a + shift, b + shift);
  return forward ? part : reversePath(part);
};
