import {
  distance,
  line,
  nearestPlace,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  subtract,
  tolerance,
} from '../../geometry/index.ts';
import type { Piece, Run } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';

/** Which half of the body an edge of a whole piece lies on, where its name says so. */
const halfOf = (run: Run): 'right' | 'left' | null => {
  const id = run.kind === 'edge' ? run.edge : run.dart;
  if (/(^|-)left(-|$)/.test(id)) return 'left';
  return /(^|-)right(-|$)/.test(id) ? 'right' : null;
};

const movedBy = (path: Path, by: Point): Path =>
  path.map((segment) => {
    const to = (p: Point): Point => ({ x: p.x + by.x, y: p.y + by.y });
    return segment.kind === 'line'
      ? { ...segment, from: to(segment.from), to: to(segment.to) }
      : {
          ...segment,
          from: to(segment.from),
          control1: to(segment.control1),
          control2: to(segment.control2),
          to: to(segment.to),
        };
  });

/**
 * A piece cut whole across the body, such as a waistband, of two versions that were altered for both halves alike: its right
 * edges as the right half wants them and its left edges as the left half does, laid end to end. Marks go with the place of the
 * outline they lie nearest to. Problem `alter.whole-piece-one-side` where the edges do not say which half they lie on, or do
 * not meet again.
 */
export const splice = (before: Piece, right: Piece, left: Piece): Result<Piece> => {
  const refuse = bad('alter.whole-piece-one-side', { piece: before.name });
  const count = before.runs.length;
  if (right.runs.length !== count || left.runs.length !== count || !before.runs.some((run) => halfOf(run) !== null))
    return refuse;
  const chosen = before.runs.map((run, i): Run => {
    const half = halfOf(run);
    const [r, l] = [right.runs[i] as Run, left.runs[i] as Run];
    if (half !== null) return half === 'right' ? r : l;
    return Math.abs(pathLength(r.path) - pathLength(run.path)) > tolerance.walk ? r : l;
  });
  const runs: Run[] = [];
  let at = pathStart((chosen[0] as Run).path);
  for (const run of chosen) {
    const path = movedBy(run.path, subtract(at, pathStart(run.path)));
    runs.push({ ...run, path });
    at = pathEnd(path);
  }
  const start = pathStart((runs[0] as Run).path);
  if (distance(at, start) > tolerance.holds) return refuse;
  const last = runs.at(-1) as Run;
  runs[count - 1] = { ...last, path: [...last.path.slice(0, -1), withEnd(last.path.at(-1) as Path[number], start)] };
  const carried = carrier(before, runs);
  const notches = before.notches.map((notch) => {
    const half = halfOf({ kind: 'edge', edge: notch.edge, path: [] });
    const source = half === 'left' ? left : right;
    return source.notches.find(({ id, edge }) => id === notch.id && edge === notch.edge) ?? notch;
  });
  return good({
    ...before,
    runs,
    notches,
    grain: { from: carried(before.grain.from), to: carried(before.grain.to) },
    darts: before.darts.map((dart) => ({ ...dart, point: carried(dart.point) })),
    levels: before.levels.map((level) => ({ ...level, from: carried(level.from), to: carried(level.to) })),
    landmarks: before.landmarks.map((mark) => ({ ...mark, at: carried(mark.at) })),
    lines: before.lines.map((inner) => ({
      ...inner,
      path: inner.path.map((segment) => line(carried(segment.from), carried(segment.to))),
    })),
  });
};

const withEnd = (segment: Path[number], to: Point): Path[number] => ({ ...segment, to });

/** Takes a point of the piece along with what lies nearest to it: the run's own end, or as far between both as it stands. */
const carrier = (before: Piece, runs: readonly Run[]) => {
  const whole = before.runs.map(({ path }) => pathLength(path));
  return (p: Point): Point => {
    let best = { away: Infinity, by: { x: 0, y: 0 } };
    before.runs.forEach((run, i) => {
      const near = nearestPlace(run.path, p);
      if (near.distance >= best.away) return;
      const now = (runs[i] as Run).path;
      const share = distance(pathStart(run.path), near.point) / Math.max(whole[i] as number, tolerance.same);
      const [a, b] = [subtract(pathStart(now), pathStart(run.path)), subtract(pathEnd(now), pathEnd(run.path))];
      const t = Math.min(Math.max(share, 0), 1);
      best = { away: near.distance, by: { x: a.x * (1 - t) + b.x * t, y: a.y * (1 - t) + b.y * t } };
    });
    return { x: p.x + best.by.x, y: p.y + best.by.y };
  };
};
