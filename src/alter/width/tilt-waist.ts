import {
  add,
  distance,
  endTangent,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  scale,
  startTangent,
  subtract,
  tolerance,
} from '../../geometry/index.ts';
import { dartsOf, edgeRuns, type Piece } from '../../pattern/index.ts';
import { redrawEdges, type Work } from '../work.ts';
import { edgeBeside, type Side } from './sides.ts';

/** The edge of a piece at the waist, and which way its centre end goes to be raised: on along the centre seam or fold. */
export interface WaistEdge {
  readonly side: Side;
  readonly piece: Piece;
  readonly edge: string;
  readonly centre: Point;
  readonly up: Point;
}

/** The waist edge of a piece that hangs from it; null where its top is no waist (a shoulder, an armhole). */
export const waistEdgeOf = (side: Side): WaistEdge | null => {
  const { piece } = side;
  if (side.underarm || (piece.role !== 'front' && piece.role !== 'back')) return null;
  const edge = edgeBeside(side, 'top');
  if (edge === null) return null;
  const runs = edgeRuns(piece, edge);
  const ends = [pathStart(runs[0] as Path), pathEnd(runs.at(-1) as Path)] as const;
  const sideTop = side.edges.flatMap((id) => edgeRuns(piece, id).flatMap((path) => [pathStart(path), pathEnd(path)]));
  const atSide = (p: Point): boolean => sideTop.some((q) => distance(p, q) <= tolerance.walk);
  const centre = atSide(ends[0]) ? ends[1] : ends[0];
  for (const { id } of piece.edges) {
    if (id === edge || side.edges.includes(id)) continue;
    const path = edgeRuns(piece, id).flat();
    if (distance(pathEnd(path), centre) <= tolerance.walk) return { side, piece, edge, centre, up: endTangent(path) };
    if (distance(pathStart(path), centre) <= tolerance.walk) {
      return { side, piece, edge, centre, up: scale(startTangent(path), -1) };
    }
  }
  return null;
};

/** How much of the amount a point of the waist gets: all at the centre, nothing at the side, level at both. */
const share = (t: number): number => (1 - t) * (1 - t) * (1 + 2 * t);

const moved = (path: Path, by: (p: Point) => Point): Path =>
  path.map((segment) => {
    const shift = (p: Point): Point => add(p, by(p));
    return segment.kind === 'line'
      ? {
          kind: 'cubic',
          from: shift(segment.from),
          control1: shift(third(segment.from, segment.to, 1)),
          control2: shift(third(segment.from, segment.to, 2)),
          to: shift(segment.to),
        }
      : {
          ...segment,
          from: shift(segment.from),
          control1: shift(segment.control1),
          control2: shift(segment.control2),
          to: shift(segment.to),
        };
  });

const third = (p: Point, q: Point, n: 1 | 2): Point => ({
  x: p.x + ((q.x - p.x) * n) / 3,
  y: p.y + ((q.y - p.y) * n) / 3,
});

/**
 * The waist raised (or, negative, lowered) by `amount` at the centre and by nothing at the side, square to the centre as it
 * was. The ends of a dart's legs go along the dart's own middle line, so that the legs stay alike.
 */
export const tiltWaist = (work: Work, { piece, edge, centre, up }: WaistEdge, amount: number): Work => {
  const runs = edgeRuns(piece, edge);
  const all = runs.flatMap((path) => [pathStart(path), pathEnd(path)]);
  const far = all.reduce((a, b) => (distance(b, centre) > distance(a, centre) ? b : a));
  const along = subtract(far, centre);
  const whole = along.x * along.x + along.y * along.y;
  const placed = (p: Point): number => {
    const t = (subtract(p, centre).x * along.x + subtract(p, centre).y * along.y) / whole;
    return Math.min(Math.max(t, 0), 1);
  };
  const by = (p: Point): Point => scale(up, amount * share(placed(p)));
  const darts = dartsOf(piece).flatMap(({ point, legs }) => {
    const middle = { x: (legs[0].x + legs[1].x) / 2, y: (legs[0].y + legs[1].y) / 2 };
    const axis = subtract(middle, point);
    const size = distance(middle, point);
    const out = scale(axis, (amount * share(placed(middle)) * Math.sign(axis.x * up.x + axis.y * up.y)) / size);
    return legs.map((leg) => ({ leg, to: add(leg, out) }));
  });
  const drawn = runs.map((path) => {
    const line = moved(path, by);
    const first = darts.find(({ leg }) => distance(leg, pathStart(path)) <= tolerance.walk);
    const last = darts.find(({ leg }) => distance(leg, pathEnd(path)) <= tolerance.walk);
    return bent(line, first?.to ?? null, last?.to ?? null);
  });
  return redrawEdges(work, piece.id, { [edge]: drawn });
};

/** A path's ends set elsewhere, everything between shifted in proportion to how near it lies. */
const bent = (path: Path, from: Point | null, to: Point | null): Path => {
  const begin = from ? subtract(from, pathStart(path)) : { x: 0, y: 0 };
  const end = to ? subtract(to, pathEnd(path)) : { x: 0, y: 0 };
  const count = path.length * 3;
  const at = (i: number, p: Point): Point => {
    const t = i / count;
    return { x: p.x + begin.x * (1 - t) + end.x * t, y: p.y + begin.y * (1 - t) + end.y * t };
  };
  return path.map((segment, i) =>
    segment.kind === 'line'
      ? { ...segment, from: at(3 * i, segment.from), to: at(3 * i + 3, segment.to) }
      : {
          ...segment,
          from: at(3 * i, segment.from),
          control1: at(3 * i + 1, segment.control1),
          control2: at(3 * i + 2, segment.control2),
          to: at(3 * i + 3, segment.to),
        },
  );
};
