import {
  distance,
  mirrorX,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  tolerance,
  translation,
} from '../../geometry/index.ts';
import { type Level, type Piece, type Run, transformPiece } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { leftId } from './kinds.ts';

/** The one run laid to the fold, and what follows and precedes it, in outline order from its end. */
const aroundFold = (piece: Piece): { readonly fold: Path; readonly rest: readonly Run[] } | null => {
  const folds = new Set(piece.edges.filter(({ finish }) => finish === 'fold').map(({ id }) => id));
  const at = piece.runs.findIndex((run) => run.kind === 'edge' && folds.has(run.edge));
  const run = piece.runs[at];
  if (!run || piece.runs.filter((one) => one.kind === 'edge' && folds.has(one.edge)).length !== 1) return null;
  return { fold: run.path, rest: [...piece.runs.slice(at + 1), ...piece.runs.slice(0, at)] };
};

/** Levels begin at the centre: each half is measured to there, since the two may differ. */
const stopped = (level: Level): Level => ({
  ...level,
  stops: level.stops === 'to' || level.stops === 'both' ? 'both' : 'from',
});

const named = (run: Run): Run =>
  run.kind === 'edge' ? { ...run, edge: leftId(run.edge) } : { ...run, dart: leftId(run.dart) };

/** A piece's left half as it lies beside the right one: turned over at the fold, everything on it named as the left's. */
const turnedOver = (left: Piece, foldX: number, by: Point): Piece => {
  const over = transformPiece(transformPiece(left, mirrorX(foldX)), translation(by));
  return {
    ...over,
    runs: over.runs.map(named),
    edges: over.edges.map((edge) => ({ ...edge, id: leftId(edge.id) })),
    darts: over.darts.map((dart) => ({
      ...dart,
      id: leftId(dart.id),
      ...(dart.aims === undefined ? {} : { aims: leftId(dart.aims) }),
    })),
    notches: over.notches.map((notch) => ({ ...notch, id: leftId(notch.id), edge: leftId(notch.edge) })),
    levels: over.levels.map((level) => ({ ...stopped(level), id: leftId(level.id) })),
    landmarks: over.landmarks.map((mark) => ({ ...mark, id: leftId(mark.id) })),
    lines: over.lines.map((inner) => ({ ...inner, id: leftId(inner.id) })),
  };
};

/**
 * A piece cut on the fold, its halves no longer alike, opened into one whole piece: the right half as it is and the left
 * turned over beside it. Problem `alter.halves-do-not-meet` where the two folds are not of one length.
 */
export const openFold = (right: Piece, left: Piece): Result<Piece> => {
  const own = aroundFold(right);
  const other = aroundFold(left);
  if (!own || !other) return bad('alter.whole-piece-one-side', { piece: right.name });
  const by = pathLength(own.fold) - pathLength(other.fold);
  if (Math.abs(by) > tolerance.holds)
    return bad('alter.halves-do-not-meet', { piece: right.name, by: { mm: Math.abs(by) } });
  // Turned over at its own fold, and laid with it on the right half's.
  const [from, to] = [pathStart(other.fold), pathStart(own.fold)];
  const over = turnedOver(left, from.x, { x: to.x - from.x, y: to.y - from.y });
  const mirrored = aroundFold(over)?.rest ?? null;
  if (!mirrored) return bad('alter.whole-piece-one-side', { piece: right.name });
  const folds = new Set(right.edges.filter(({ finish }) => finish === 'fold').map(({ id }) => id));
  const runs = closed([...own.rest, ...mirrored]);
  return good({
    ...right,
    name: right.name,
    cut: right.cut.map((order) => ({ ...order, mirrored: false })),
    runs,
    edges: [...right.edges.filter(({ id }) => !folds.has(id)), ...over.edges.filter(({ finish }) => finish !== 'fold')],
    darts: [...right.darts, ...over.darts],
    notches: [
      ...right.notches.filter(({ edge }) => !folds.has(edge)),
      ...over.notches.filter(({ edge }) => over.edges.some(({ id, finish }) => id === edge && finish !== 'fold')),
    ],
    levels: [...right.levels.map(stopped), ...over.levels],
    landmarks: [...right.landmarks, ...over.landmarks],
    lines: [...right.lines, ...over.lines],
  });
};

/** Runs made to begin exactly where the one before ends: a hair of rounding lies between the halves. */
const closed = (runs: readonly Run[]): readonly Run[] =>
  runs.map((run, i) => {
    const before = runs[(i + runs.length - 1) % runs.length] as Run;
    const to = pathEnd(before.path);
    const [first, ...rest] = run.path;
    return first && near(first.from, to) ? { ...run, path: [{ ...first, from: to }, ...rest] } : run;
  });

const near = (p: Point, q: Point): boolean => distance(p, q) > 0 && distance(p, q) <= 2 * tolerance.holds;
