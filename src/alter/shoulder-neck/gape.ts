import {
  distance,
  nearestOnPath,
  type Path,
  type Point,
  pathLength,
  subtract,
  tolerance,
} from '../../geometry/index.ts';
import { type DartShape, dartsOf, edgeRuns, type Piece, pointOnEdge, tangentOnEdge } from '../../pattern/index.ts';
import { bad, type Result } from '../../units/index.ts';
import { dartedFront, reached } from '../anatomy.ts';
import { pointBetween } from '../bust-front.ts';
import type { CutPlan, EdgeEnd } from '../cut.ts';
import { partBeside, swing } from '../move.ts';
import { secant } from '../warp.ts';
import { cutAndMove, pieceNow, type Truing, type Work } from '../work.ts';

/** Where a wedge that is folded out comes to nothing: at the bust point or the point of a dart, which opens by it, or on the edge across. */
export type Pivot =
  | { readonly kind: 'bust'; readonly at: Point; readonly dart: DartShape }
  | { readonly kind: 'dart'; readonly at: Point; readonly dart: DartShape }
  | { readonly kind: 'edge'; readonly at: Point; readonly end: EdgeEnd };

/** A bust level this near the bust point goes over it, mm. */
const overBust = 25;

/** The place on an edge, as a share of it, nearest to a point; and how far off that is. */
export const placeOn = (piece: Piece, edge: string, point: Point): { readonly end: EdgeEnd; readonly off: number } => {
  const path = edgeRuns(piece, edge).flat() as Path;
  const { atLength, distance: off } = nearestOnPath(path, point);
  return { end: { edge, at: atLength / pathLength(path) }, off };
};

const planOf = (place: EdgeEnd, pivot: Pivot): CutPlan => {
  if (pivot.kind === 'edge') return { nodes: {}, cuts: [{ id: 'gape', from: place, to: pivot.end }] };
  const node = { node: 'pivot' };
  return {
    nodes: { pivot: pivot.at },
    cuts: [
      { id: 'gape', from: place, to: node },
      { id: 'first-leg', from: node, to: { dart: pivot.dart.id, leg: 0 } },
      { id: 'second-leg', from: node, to: { dart: pivot.dart.id, leg: 1 } },
    ],
  };
};

export interface Wedge {
  readonly piece: string;
  readonly place: EdgeEnd;
  readonly pivot: Pivot;
  /** A point of the part that swings: the shoulder, or below the armhole the side. */
  readonly swinging: Point;
}

/** A dart whose one leg swung with a wedge: its point where its legs are equal again. */
const dartPoint = (pivot: Pivot, legs: readonly [Point, Point]): Point | null => {
  if (pivot.kind === 'edge') return null;
  if (pivot.kind === 'dart') return pivot.at;
  return pointBetween(pivot.at, legs, distance(pivot.at, pivot.dart.point));
};

const turned = (point: Point, about: Point, angle: number): Point => {
  const { x, y } = subtract(point, about);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: about.x + c * x - s * y, y: about.y + s * x + c * y };
};

/** One wedge folded out by an angle. */
const folded = (
  work: Work,
  { piece: id, place, pivot, swinging }: Wedge,
  angle: number,
  led: boolean,
): Result<Work> => {
  const piece = pieceNow(work, id);
  const at = pointOnEdge(piece, place.edge, place.at);
  const along = tangentOnEdge(piece, place.edge, place.at);
  // Walked inward, what follows along the outline lies on the left: a part on the right closes the wedge forward along it.
  const cut = subtract(pivot.at, at);
  const to = subtract(swinging, at);
  const right = cut.x * to.y - cut.y * to.x > 0;
  const r = subtract(at, pivot.at);
  const towards = right ? 1 : -1;
  const sign = Math.sign((-r.y * along.x + r.x * along.y) * towards) || 1;
  const turn = sign * angle;
  const legs = pivot.kind === 'edge' ? null : pivot.dart.legs;
  const moved = (leg: Point): Point => turned(leg, pivot.at, turn);
  const nearer = legs ? legWithin(legs, swinging, pivot.at) : 0;
  const legsNow = legs && ([nearer === 0 ? moved(legs[0]) : legs[0], nearer === 1 ? moved(legs[1]) : legs[1]] as const);
  const point = legsNow ? dartPoint(pivot, legsNow) : null;
  const truing = ({ edge }: { readonly edge: string }): Truing =>
    edge === place.edge
      ? 'blend'
      : pivot.kind === 'edge' && edge === pivot.end.edge
        ? hingeTruing(piece, edge)
        : 'blend';
  const made = cutAndMove(work, id, planOf(place, pivot), {
    move: (pieces) => swing(pieces, partBeside(pieces, 'gape', right ? 'right' : 'left'), pivot.at, turn),
    owners: () => (point && pivot.kind !== 'edge' ? { darts: { [pivot.dart.id]: point } } : {}),
    truing,
    led,
  });
  if (!made.ok || pivot.kind !== 'bust') return made;
  return { ok: true, value: overBustPoint(made.value, id, pivot.at) };
};

/** The leg that the part which swings owns: of the two the one nearer to it, seen from the pivot. */
const legWithin = (legs: readonly [Point, Point], swinging: Point, at: Point): 0 | 1 => {
  const angle = (p: Point): number => Math.atan2(p.y - at.y, p.x - at.x);
  const apart = (p: Point): number => {
    const by = Math.abs(angle(p) - angle(swinging));
    return Math.min(by, 2 * Math.PI - by);
  };
  return apart(legs[0]) <= apart(legs[1]) ? 0 : 1;
};

/** A curve is smoothed without changing its length; a straight seam is blended, which hardly does. */
const hingeTruing = (piece: Piece, edge: string): Truing =>
  edgeRuns(piece, edge).every((path) => path.every(({ kind }) => kind === 'line')) ? 'blend' : 'hinge';

/** Levels that go over the bust point bend there, and so stay as long as they were. */
const overBustPoint = (work: Work, id: string, bustPoint: Point): Work => ({
  ...work,
  garment: {
    ...work.garment,
    pieces: work.garment.pieces.map((piece) =>
      piece.id === id
        ? {
            ...piece,
            levels: piece.levels.map((level) => {
              const near = level.id === 'bust' && Math.abs(level.from.y - bustPoint.y) <= overBust;
              return near && !level.over ? { ...level, over: { x: bustPoint.x, y: level.from.y } } : level;
            }),
          }
        : piece,
    ),
  },
});

/** A wedge folded out so that the edge, drawn fair again, is shorter by the amount; and the angle that took. */
export const foldOut = (
  work: Work,
  wedge: Wedge,
  amount: number,
): Result<{ readonly work: Work; readonly angle: number }> => {
  const piece = pieceNow(work, wedge.piece);
  const at = pointOnEdge(piece, wedge.place.edge, wedge.place.at);
  const reach = distance(at, wedge.pivot.at);
  if (reach <= Math.abs(amount)) return bad('alter.wedge-too-short', { piece: piece.name });
  const was = work.tape.edge(piece, wedge.place.edge);
  const guess = 2 * Math.asin(amount / 2 / reach);
  let problem: Result<Work> | null = null;
  const off = (angle: number): number => {
    const made = folded(work, wedge, angle, true);
    if (!made.ok) problem = made;
    return made.ok
      ? made.value.tape.edge(pieceNow(made.value, wedge.piece), wedge.place.edge) - was + amount
      : Number.NaN;
  };
  const angle = secant(off, guess, guess * 1.05, tolerance.walk);
  if (problem) return problem;
  if (angle === null) return bad('alter.wedge-too-short', { piece: piece.name });
  const made = folded(work, wedge, angle, true);
  return made.ok ? { ok: true, value: { work: made.value, angle } } : made;
};

/** The same wedge on a lining, by the angle of its shell. */
export const foldAlike = (work: Work, wedge: Wedge, angle: number): Result<Work> => folded(work, wedge, angle, false);

/** The bust dart of a front, or the dart that opens in an edge. */
export const bustPivot = (piece: Piece): Pivot | null => {
  const front = dartedFront(piece);
  return front.ok ? { kind: 'bust', at: front.value.bustPoint, dart: front.value.dart } : null;
};

export const dartIn = (piece: Piece, edge: string): Pivot | null => {
  const found = dartsOf(piece).find(({ id }) => {
    const mouth = piece.runs.findIndex((run) => run.kind === 'mouth' && run.dart === id);
    const beside = piece.runs[(mouth + piece.runs.length - 1) % piece.runs.length];
    return beside?.kind === 'edge' && beside.edge === edge;
  });
  return found ? { kind: 'dart', at: found.point, dart: found } : null;
};

/** A place on the line of a cut where it meets another piece's outline, seen from its pivot. */
export const metFrom = (piece: Piece, pivot: Point, towards: Point): EdgeEnd | null => {
  const way = subtract(towards, pivot);
  const size = Math.hypot(way.x, way.y);
  const unit: Point = { x: way.x / size, y: way.y / size };
  const inside: Point = { x: pivot.x + unit.x, y: pivot.y + unit.y };
  return reached(piece, inside, unit)?.end ?? null;
};
