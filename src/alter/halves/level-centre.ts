import { distance, type Path, pathEnd, pathLength, pathStart, tolerance } from '../../geometry/index.ts';
import type { Garment, Piece, Run } from '../../pattern/index.ts';
import { easedField, inDirection } from '../fields.ts';
import { reshape } from '../reshape.ts';
import { warped } from '../warp.ts';

/** The run on the fold, its place, and its lower end. */
const foldOf = (piece: Piece): { readonly at: number; readonly path: Path } | null => {
  const folds = new Set(piece.edges.filter(({ finish }) => finish === 'fold').map(({ id }) => id));
  const at = piece.runs.findIndex((run) => run.kind === 'edge' && folds.has(run.edge));
  const run = piece.runs[at];
  return run ? { at, path: run.path } : null;
};

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
  const across = { x: Math.sign(far.x - low.x), y: 0 };
  const course = easedField(0, Math.abs(far.x - low.x), { by: { x: 0, y: -by } }, { by: { x: 0, y: 0 } });
  const path = warped(run.path, inDirection(low, across, course));
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
