import {
  add,
  angleOf,
  applyToPath,
  applyToPoint,
  compose,
  cross,
  distance,
  identity,
  joinPaths,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathTangentAtLength,
  reflection,
  reversePath,
  rotation,
  samePoint,
  scale,
  startTangent,
  subPath,
  subtract,
  type Transform,
  translation,
} from '../geometry/index.ts';
import {
  closing,
  dartsOf,
  edgeRuns,
  type Garment,
  type Piece,
  pieceOf,
  type SeamSide,
  type SeamWalk,
} from '../pattern/index.ts';

/** Between points of the edge drawn just beside the other, mm: a picture only, never a pattern's line. */
const step = 2;

/** An edge in the picture: where its points lie, and which way is away from the other edge. */
export interface Walked {
  readonly length: number;
  readonly at: (mm: number) => Point;
  readonly away: (mm: number) => Point;
  readonly part: (from: number, to: number) => Path;
}

/** One side of a seam as a single line from where the walk begins to where it ends: darts in it stitched shut. */
const walkedEdge = (piece: Piece, side: SeamSide): Path => {
  const darts = dartsOf(piece);
  let moved: Transform = identity;
  let whole: Path = [];
  for (const run of edgeRuns(piece, side.edge)) {
    const before = whole.length === 0 ? null : pathEnd(whole);
    if (before) {
      const dart = darts.find(({ legs }) => samePoint(legs[1], pathStart(run)));
      if (dart) moved = compose(closing(dart, 1), moved);
      // A dart's legs are equal only within a tolerance: what is left of a gap is closed.
      const gap = subtract(before, applyToPoint(moved, pathStart(run)));
      moved = compose(moved, translation(gap));
    }
    const next = applyToPath(moved, run);
    whole = before ? joinPaths(whole, next) : next;
  }
  return side.reversed ? reversePath(whole) : whole;
};

/** The turn that lays a path's two ends level, its start at 0, 0 and its end to the right. */
const levelled = (path: Path): Transform => {
  const along = subtract(pathEnd(path), pathStart(path));
  const start = pathStart(path);
  const turn = distance(pathStart(path), pathEnd(path)) === 0 ? 0 : -angleOf(along);
  return compose(translation({ x: -start.x, y: -start.y }), rotation(turn));
};

/** Places along both edges that are compared to see how they lie. */
const samples = 12;

const between = (a: Path, b: Path): readonly { readonly on: Point; readonly apart: Point; readonly along: Point }[] => {
  const shared = Math.min(pathLength(a), pathLength(b));
  return Array.from({ length: samples }, (_, index) => {
    const at = (shared * (index + 1)) / samples;
    const on = pathPointAtLength(a, at);
    return { on, apart: subtract(pathPointAtLength(b, at), on), along: pathTangentAtLength(a, at) };
  });
};

/**
 * Edge b moved on to edge a: the same start and the same direction there, turned over if the two then lie closer, as
 * pieces do that are laid right sides together.
 */
const laidOn = (a: Path, b: Path): Path => {
  const [start, heading] = [pathStart(a), angleOf(startTangent(a))];
  const turned = applyToPath(
    compose(translation(subtract(start, pathStart(b))), rotation(heading - angleOf(startTangent(b)), start)),
    b,
  );
  const over = applyToPath(reflection(start, heading), turned);
  const off = (path: Path) => between(a, path).reduce((sum, { apart }) => sum + Math.hypot(apart.x, apart.y), 0);
  return off(over) < off(turned) ? over : turned;
};

/** Whether b lies to the right of a's travel on the whole (1), or to its left (−1); `otherwise` where it lies on it. */
const sideOf = (a: Path, b: Path, otherwise: 1 | -1): 1 | -1 => {
  const sum = between(a, b).reduce((total, { along, apart }) => total + cross(along, apart), 0);
  // Less than a thousandth of the length on the average is no side.
  if (Math.abs(sum) < samples * pathLength(a) * 1e-3) return otherwise;
  return sum > 0 ? 1 : -1;
};

/** Edge a with its ends level, and b beside it on the side where it bends away. */
export const besideEachOther = (walk: SeamWalk, garment: Garment, gap: number): readonly [Walked, Walked] => {
  const { a, b } = walk.seam;
  const edgeA = walkedEdge(pieceOf(garment, a.piece), a);
  const level = levelled(edgeA);
  const pathA = applyToPath(level, edgeA);
  const pathB = laidOn(pathA, walkedEdge(pieceOf(garment, b.piece), b));
  // Where they lie on each other, b is drawn outside the piece of a, as its own piece lies when the seam is pressed open.
  const side = sideOf(pathA, pathB, a.reversed ? 1 : -1);
  const normal = (path: Path, mm: number): Point => {
    const { x, y } = pathTangentAtLength(path, Math.min(Math.max(mm, 0), pathLength(path)));
    return { x: -y * side, y: x * side };
  };
  const [lengthA, lengthB] = [pathLength(pathA), pathLength(pathB)];
  const within = (mm: number, length: number) => Math.min(Math.max(mm, 0), length);
  const atB = (mm: number): Point => add(pathPointAtLength(pathB, within(mm, lengthB)), scale(normal(pathB, mm), gap));
  return [
    {
      length: lengthA,
      at: (mm) => pathPointAtLength(pathA, within(mm, lengthA)),
      away: (mm) => scale(normal(pathA, mm), -1),
      part: (from, to) => subPath(pathA, from, to),
    },
    {
      length: lengthB,
      at: atB,
      away: (mm) => normal(pathB, mm),
      part: (from, to) => {
        const count = Math.max(1, Math.ceil((to - from) / step));
        const points = Array.from({ length: count + 1 }, (_, index) => atB(from + ((to - from) * index) / count));
        return points.slice(1).map((point, index) => ({ kind: 'line', from: points[index] as Point, to: point }));
      },
    },
  ];
};
