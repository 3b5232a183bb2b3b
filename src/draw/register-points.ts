import {
  add,
  type Bounds,
  cross,
  distance,
  nearestOnPath,
  normalize,
  type Path,
  type Point,
  pathLength,
  pathPointAtLength,
  scale,
  segmentTangentAt,
  subtract,
  tolerance,
} from '../geometry/index.ts';
import { cutLine, notchPlace, outlineOf, type Piece } from '../pattern/index.ts';

/** A turn of the cut line smaller than this (radians) is no corner that an eye finds. */
const leastTurn = 0.3;
/** Where nothing else is to be found, points along an unchanged line this far apart, mm. */
const along = 45;
/** A triangle of register marks smaller than this, mm², lets the overlay turn on the tissue. */
const leastTriangle = 1500;
/** How many are weighed against one another. */
const mostWeighed = 40;

const cornersOf = (path: Path): readonly Point[] =>
  path.flatMap((segment, index) => {
    const previous = path[(index + path.length - 1) % path.length];
    if (!previous) return [];
    const [arriving, leaving] = [normalize(segmentTangentAt(previous, 1)), normalize(segmentTangentAt(segment, 0))];
    return Math.abs(cross(arriving, leaving)) > Math.sin(leastTurn) ? [segment.from] : [];
  });

const notchesOf = (piece: Piece): readonly Point[] =>
  piece.notches.map((notch) => {
    const { point, outward } = notchPlace(piece, notch);
    const allowance = piece.edges.find(({ id }) => id === notch.edge)?.allowance ?? 0;
    return add(point, scale(outward, allowance));
  });

const endsOf = (piece: Piece): readonly Point[] => [
  piece.grain.from,
  piece.grain.to,
  ...piece.levels.flatMap(({ from, to }) => [from, to]),
];

const same = (a: Point, b: Point): boolean => distance(a, b) <= tolerance.holds;
const shared = (before: readonly Point[], after: readonly Point[]): readonly Point[] =>
  before.filter((p) => after.some((q) => same(p, q)));

/**
 * Places that lie on the altered piece where they lay before and that an eye finds on the tissue, the best kind first:
 * corners of the cut line, notches, ends of the grain and of levels; then places along an unchanged line.
 */
const placesToRegister = (
  before: Piece,
  after: Piece,
): { readonly marked: readonly Point[]; readonly onLine: readonly Point[] } => {
  const [cutBefore, cutAfter] = [cutLine(before), cutLine(after)];
  const marked = [
    ...shared(cornersOf(cutBefore), cornersOf(cutAfter)),
    ...shared(notchesOf(before), notchesOf(after)),
    ...shared(endsOf(before), endsOf(after)),
  ];
  const places = marked.filter((p, index) => marked.findIndex((q) => same(p, q)) === index);
  const length = pathLength(cutBefore);
  const [seamAfter, count] = [outlineOf(after), Math.floor(length / along)];
  const onLine = Array.from({ length: count }, (_, index) =>
    pathPointAtLength(cutBefore, (index + 0.5) * along),
  ).filter(
    (p) =>
      nearestOnPath(cutAfter, p).distance <= tolerance.holds && nearestOnPath(seamAfter, p).distance > tolerance.holds,
  );
  return { marked: places, onLine };
};

const inside = (box: Bounds, p: Point): boolean =>
  p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY;

/** The three that make the largest triangle, at least one of them marked. */
const widest = (
  places: readonly Point[],
  marked: readonly Point[],
): { readonly points: readonly Point[]; readonly area: number } => {
  let best: { points: readonly Point[]; area: number } = { points: [], area: 0 };
  const weighed = places.slice(0, mostWeighed);
  const known = new Set(marked);
  for (let i = 0; i < weighed.length; i += 1) {
    for (let j = i + 1; j < weighed.length; j += 1) {
      for (let k = j + 1; k < weighed.length; k += 1) {
        const [a, b, c] = [weighed[i], weighed[j], weighed[k]] as [Point, Point, Point];
        const area = Math.abs(cross(subtract(b, a), subtract(c, a))) / 2;
        if (area > best.area && [a, b, c].some((p) => known.has(p))) best = { points: [a, b, c], area };
      }
    }
  }
  return best;
};

/**
 * Three places or more to lay an overlay by, as near to what changed as they hold it still; none where too little of the piece
 * stayed where it was. A fourth is given where one lies at hand: it shows when one of the three was laid wrong.
 */
export const registerPoints = (before: Piece, after: Piece, changed: Bounds): readonly Point[] => {
  const reach = (by: number): Bounds => ({
    minX: changed.minX - by,
    minY: changed.minY - by,
    maxX: changed.maxX + by,
    maxY: changed.maxY + by,
  });
  const { marked, onLine } = placesToRegister(before, after);
  // Along a bare line an overlay can slide: such places only help where there are too few others, and never stand alone.
  const both = [...marked, ...onLine];
  const tries = [
    ...[15, 40, 80, 130, 200].map((by) => ({ box: reach(by), places: marked })),
    ...[40, 130].map((by) => ({ box: reach(by), places: both })),
    { box: reach(Number.POSITIVE_INFINITY), places: marked },
    { box: reach(Number.POSITIVE_INFINITY), places: both },
  ];
  for (const { box, places } of tries) {
    const near = places.filter((p) => inside(box, p));
    const { points, area } = widest(near, marked);
    if (area < leastTriangle) continue;
    const rest = near.filter((p) => !points.includes(p));
    const apart = (p: Point) => Math.min(...points.map((q) => distance(p, q)));
    const fourth = rest.toSorted((a, b) => apart(b) - apart(a))[0];
    return fourth && apart(fourth) > along ? [...points, fourth] : points;
  }
  return [];
};
