import { distance, type Path, type Point, pathEnd, pathLength, pathStart, tolerance } from '../../geometry/index.ts';
import type { Garment, Piece, Run } from '../../pattern/index.ts';
import { reshape } from '../reshape.ts';

/** The run on the fold, its place, and its lower end. */
const foldOf = (piece: Piece): { readonly at: number; readonly path: Path } | null => {
  const folds = new Set(piece.edges.filter(({ finish }) => finish === 'fold').map(({ id }) => id));
  const at = piece.runs.findIndex((run) => run.kind === 'edge' && folds.has(run.edge));
  const run = piece.runs[at];
  return run ? { at, path: run.path } : null;
};

/** All at the centre, nothing at the other end, level at both. */
const share = (t: number): number => (1 - t) * (1 - t) * (1 + 2 * t);

/** A folded piece's lower edge drawn up (or down) by so much at the centre, to nothing at its other end. */
const trimmed = (piece: Piece, by: number): Piece => {
  const fold = foldOf(piece);
  if (!fold) return piece;
  const count = piece.runs.length;
  const low = pathStart(fold.path).y > pathEnd(fold.path).y ? pathStart(fold.path) : pathEnd(fold.path);
  const next = [(fold.at + 1) % count, (fold.at + count - 1) % count].find((i) => {
    const path = (piece.runs[i] as Run).path;
    return distance(pathStart(path), low) <= tolerance.walk || distance(pathEnd(path), low) <= tolerance.walk;
  });
  const run = next === undefined ? undefined : piece.runs[next];
  if (run?.kind !== 'edge') return piece;
  const far = distance(pathStart(run.path), low) <= tolerance.walk ? pathEnd(run.path) : pathStart(run.path);
  const span = far.x - low.x;
  const up = (p: Point): Point => ({ x: p.x, y: p.y - by * share(Math.min(Math.max((p.x - low.x) / span, 0), 1)) });
  const path = run.path.map((segment): Path[number] => {
    const third = (k: 1 | 2): Point => ({
      x: segment.from.x + ((segment.to.x - segment.from.x) * k) / 3,
      y: segment.from.y + ((segment.to.y - segment.from.y) * k) / 3,
    });
    const [one, two] = segment.kind === 'line' ? [third(1), third(2)] : [segment.control1, segment.control2];
    return { kind: 'cubic', from: up(segment.from), control1: up(one), control2: up(two), to: up(segment.to) };
  });
  return reshape(piece, { [run.edge]: [path] }).piece;
};

/**
 * A piece on the fold of which one half came out longer at the centre is levelled: at the table its lower edge is drawn
 * from where the other half ends to nothing at the side. So a bust that is fuller on one side leaves the hem level at the
 * centre. Halves that are alike, or only otherwise different, stay as they are.
 */
export const levelCentre = (half: Garment, other: Garment): Garment => {
  const others = new Map(other.pieces.map((piece) => [piece.id, piece]));
  let changed = false;
  const pieces = half.pieces.map((piece) => {
    const [own, its] = [foldOf(piece), foldOf(others.get(piece.id) ?? piece)];
    const longer = own && its ? pathLength(own.path) - pathLength(its.path) : 0;
    if (longer <= tolerance.holds) return piece;
    changed = true;
    return trimmed(piece, longer);
  });
  return changed ? { ...half, pieces } : half;
};
