import {
  distance,
  dot,
  endTangent,
  lerp,
  normalize,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  scale,
  startTangent,
  subtract,
  tolerance,
} from '../../geometry/index.ts';
import { dartsOf, edgeRuns, type Piece } from '../../pattern/index.ts';
import { easedField, inDirection, sumOfFields } from '../fields.ts';
import { warped } from '../warp.ts';
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

const nothing: Point = { x: 0, y: 0 };

/**
 * The waist raised (or, negative, lowered) by `amount` at the centre and by nothing at the side, level at both, square to
 * the centre as it was. The ends of a dart's legs go along the dart's own middle line, so that the legs stay alike.
 */
export const tiltWaist = (work: Work, { piece, edge, centre, up }: WaistEdge, amount: number): Work => {
  const runs = edgeRuns(piece, edge);
  const all = runs.flatMap((path) => [pathStart(path), pathEnd(path)]);
  const far = all.reduce((a, b) => (distance(b, centre) > distance(a, centre) ? b : a));
  const across = normalize(subtract(far, centre));
  const course = easedField(0, distance(far, centre), { by: scale(up, amount) }, { by: nothing });
  const raised = (p: Point): Point => course(dot(subtract(p, centre), across)).by;
  const legs = dartsOf(piece).flatMap(({ point, legs }) => {
    const middle = lerp(...legs, 1 / 2);
    const axis = normalize(subtract(middle, point));
    const share = dot(raised(middle), up) * Math.sign(dot(axis, up));
    return legs.map((leg) => ({ leg, aside: subtract(scale(axis, share), raised(leg)) }));
  });
  const asideAt = (p: Point): Point => legs.find(({ leg }) => distance(leg, p) <= tolerance.walk)?.aside ?? nothing;
  const drawn = runs.map((path) => {
    const [start, end] = [{ by: asideAt(pathStart(path)) }, { by: asideAt(pathEnd(path)) }];
    const toLegs = easedField(0, pathLength(path), start, end);
    return warped(path, sumOfFields(inDirection(centre, across, course), toLegs));
  });
  return redrawEdges(work, piece.id, { [edge]: drawn });
};
