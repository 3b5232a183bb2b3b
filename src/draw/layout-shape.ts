import { applyToPath, line, type Path, type Point, reverseSegment, type Transform } from '../geometry/index.ts';
import { type LayoutItem, type LayoutProblem, type Placement, placedOutline } from '../lay/index.ts';
import { cutLine, type Piece } from '../pattern/index.ts';

/** A placement as a transform of the piece's own coordinates; quarter turns are exact. */
export const transformOf = (placement: Placement): Transform => {
  const turns = ((placement.rotation % 360) + 360) % 360;
  const angle = (placement.rotation * Math.PI) / 180;
  const [cos, sin] =
    turns === 0
      ? [1, 0]
      : turns === 90
        ? [0, 1]
        : turns === 180
          ? [-1, 0]
          : turns === 270
            ? [0, -1]
            : [Math.cos(angle), Math.sin(angle)];
  const hand = placement.mirrored ? -1 : 1;
  return { a: cos * hand, b: sin * hand, c: -sin, d: cos, e: placement.x, f: placement.y };
};

/** The cut line where it lies; a piece opened out, or one known only by its outline, as the plan has it. */
export const shapeOf = (
  problem: LayoutProblem,
  placement: Placement,
  item: LayoutItem,
  piece: Piece | undefined,
  turn: Transform,
): Path => {
  if (piece && !placement.opened) return applyToPath(turn, cutLine(piece));
  if (piece && item.fold) {
    const half = withoutFold(cutLine(piece), item.fold);
    if (half) return applyToPath(turn, openedOut(half, item.fold));
  }
  const corners = placedOutline(problem, placement);
  return corners.map((from, index) => line(from, corners[(index + 1) % corners.length] as Point));
};

/** Both ends lie on the fold, to well within a hair of drawing. */
const liesOn = (p: Point, q: Point, [a, b]: readonly [Point, Point]): boolean => {
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  const off = (r: Point) => Math.abs((r.x - a.x) * (b.y - a.y) - (r.y - a.y) * (b.x - a.x)) / size;
  return off(p) < 0.01 && off(q) < 0.01;
};

/** The outline without its stretch on the fold, begun where that ends; null where it has none. */
const withoutFold = (path: Path, fold: readonly [Point, Point]): Path | null => {
  const on = path.map((segment) => liesOn(segment.from, segment.to, fold));
  const start = on.findIndex((lies, index) => !lies && on[(index + on.length - 1) % on.length]);
  if (start < 0) return null;
  return [...path.slice(start), ...path.slice(0, start)].filter((segment) => !liesOn(segment.from, segment.to, fold));
};

/** The half and its mirror image across the fold, as one outline. */
const openedOut = (half: Path, [a, b]: readonly [Point, Point]): Path => {
  const angle = 2 * Math.atan2(b.y - a.y, b.x - a.x);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const mirror: Transform = {
    a: cos,
    b: sin,
    c: sin,
    d: -cos,
    e: a.x - cos * a.x - sin * a.y,
    f: a.y - sin * a.x + cos * a.y,
  };
  return [...half, ...applyToPath(mirror, half).toReversed().map(reverseSegment)];
};
