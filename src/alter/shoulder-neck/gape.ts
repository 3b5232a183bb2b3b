import {
  distance,
  nearestOnPath,
  type Path,
  type Point,
  pathLength,
  segmentLengths,
  segmentTangentAt,
  subPath,
  subtract,
  tolerance,
  turnBetween,
} from '../../geometry/index.ts';
import {
  type DartShape,
  dartsOf,
  edgeLength,
  edgeRuns,
  type Piece,
  pointOnEdge,
  tangentOnEdge,
} from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { dartedFront, reached } from '../anatomy.ts';
import { pointBetween } from '../bust-front.ts';
import type { CutPlan, EdgeEnd } from '../cut.ts';
import { partBeside, swing } from '../move.ts';
import { secant } from '../secant.ts';
import { blended } from '../stretch.ts';
import type { Handle } from '../types.ts';
import { cutAndMove, pieceNow, type Truing, trueEdges, type Work } from '../work.ts';

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

/** Whether the part that swings lies on the right of the cut, walked from the edge inward: behind it along the outline. */
const onRight = (piece: Piece, { place, pivot, swinging }: Wedge): boolean => {
  const at = pointOnEdge(piece, place.edge, place.at);
  const [cut, to] = [subtract(pivot.at, at), subtract(swinging, at)];
  return cut.x * to.y - cut.y * to.x > 0;
};

/** Which way the part that swings turns to close the wedge, positive clockwise as seen: what lies on the right closes forward along the outline. */
const turnSign = (piece: Piece, wedge: Wedge): 1 | -1 => {
  const { place, pivot } = wedge;
  const r = subtract(pointOnEdge(piece, place.edge, place.at), pivot.at);
  const along = tangentOnEdge(piece, place.edge, place.at);
  const forward = -r.y * along.x + r.x * along.y > 0;
  return forward === onRight(piece, wedge) ? 1 : -1;
};

/** One wedge folded out by an angle. */
const folded = (work: Work, wedge: Wedge, angle: number, led: boolean): Result<Work> => {
  const { piece: id, place, pivot, swinging } = wedge;
  const piece = pieceNow(work, id);
  const right = onRight(piece, wedge);
  const turn = turnSign(piece, wedge) * angle;
  const legs = pivot.kind === 'edge' ? null : pivot.dart.legs;
  const moved = (leg: Point): Point => turned(leg, pivot.at, turn);
  const nearer = legs ? legWithin(legs, swinging, pivot.at) : 0;
  const legsNow = legs && ([nearer === 0 ? moved(legs[0]) : legs[0], nearer === 1 ? moved(legs[1]) : legs[1]] as const);
  const point = legsNow ? dartPoint(pivot, legsNow) : null;
  const truing = ({ edge }: { readonly edge: string }): Truing =>
    edge === place.edge && led
      ? 'none'
      : edge === place.edge
        ? 'blend'
        : pivot.kind === 'edge' && edge === pivot.end.edge
          ? hingeTruing(piece, pivot.end)
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

/** A stretch of seam on both sides of a hinge, mm, and the turn in it, radians, from which it counts as a curve. */
const aroundHinge = 50;
const curvedFrom = 0.25;

/** A curve is smoothed over a hinge without changing its length; a seam that is nearly straight there is blended, which hardly does. */
const hingeTruing = (piece: Piece, { edge, at }: EdgeEnd): Truing => {
  const share = aroundHinge / edgeLength(piece, edge);
  const [before, after] = [Math.max(at - share, 0), Math.min(at + share, 1)];
  const turn = turnBetween(tangentOnEdge(piece, edge, before), tangentOnEdge(piece, edge, after));
  return Math.abs(turn) < curvedFrom ? 'blend' : 'hinge';
};

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

/** A wedge folded out, the edge it was cut from drawn fair again and shorter by exactly the amount; and the angle that took. */
export const foldOut = (
  work: Work,
  wedge: Wedge,
  amount: number,
): Result<{ readonly work: Work; readonly angle: number }> => {
  const piece = pieceNow(work, wedge.piece);
  const reach = distance(pointOnEdge(piece, wedge.place.edge, wedge.place.at), wedge.pivot.at);
  const share = amount / 2 / reach;
  if (share >= 1) return bad('alter.wedge-too-short', { piece: piece.name });
  const angle = 2 * Math.asin(share);
  const wanted = work.tape.edge(piece, wedge.place.edge) - amount;
  const made = folded(work, wedge, angle, true);
  if (!made.ok) return made;
  const fair = drawnFair(made.value, wedge, wanted);
  if (fair) return good({ work: fair, angle });
  const turned = turnedFair(work, wedge, wanted, angle);
  return turned ? good(turned) : bad('alter.wedge-too-short', { piece: piece.name });
};

/** How far on both sides of a closed wedge its edge is drawn anew, mm: the furthest that gives a fair curve. */
const reaches = [60, 50, 40, 32, 25, 20, 15] as const;

/** Fullness of a curve that is neither flattened nor bulging. */
const fairFullness = [0.6, 1.7] as const;

interface Closed {
  readonly path: Path;
  readonly bridge: { readonly from: number; readonly to: number };
}

const closedEdge = (work: Work, { piece: id, place }: Wedge): Closed | null => {
  const [path, more] = edgeRuns(pieceNow(work, id), place.edge);
  const bridge = path && !more ? joinedAt(path) : null;
  return path && bridge ? { path, bridge } : null;
};

/** The edge over a closed wedge drawn as one curve over so much on both sides. */
const drawnOver = ({ path, bridge }: Closed, reach: number, fullness: number): Path => {
  const whole = pathLength(path);
  const [from, to] = [Math.max(bridge.from - reach, 0), Math.min(bridge.to + reach, whole)];
  const [head, tail] = [from > 0 ? subPath(path, 0, from) : [], to < whole ? subPath(path, to, whole) : []];
  return [...head, ...blended(path, from, to, fullness), ...tail];
};

/** An edge with the gap or overlap of a closed wedge in it, drawn as one curve over that, of which the whole is so long; null where none is fair. */
const drawnFair = (work: Work, wedge: Wedge, length: number): Work | null => {
  const closed = closedEdge(work, wedge);
  if (!closed) return null;
  for (const reach of reaches) {
    const off = (fullness: number): number => pathLength(drawnOver(closed, reach, fullness)) - length;
    const fullness = secant(off, 1, 1.05, tolerance.walk);
    if (fullness === null || fullness < fairFullness[0] || fullness > fairFullness[1]) continue;
    return trueEdges(work, wedge.piece, { [wedge.place.edge]: [drawnOver(closed, reach, fullness)] });
  }
  return null;
};

/** The same where every one of them takes cutting again. */
const fewReaches = [40, 20] as const;

/** How much more or less than its chord's angle a wedge may be turned for its edge to be so long. */
const fairTurn = [0.6, 1.6] as const;

/** The same for an edge too straight for that: the wedge itself a little wider or narrower, its edge drawn evenly. */
const turnedFair = (
  work: Work,
  wedge: Wedge,
  length: number,
  guess: number,
): { readonly work: Work; readonly angle: number } | null => {
  for (const reach of fewReaches) {
    const made = (angle: number): Work | null => {
      const done = folded(work, wedge, angle, true);
      const closed = done.ok ? closedEdge(done.value, wedge) : null;
      return done.ok && closed
        ? trueEdges(done.value, wedge.piece, { [wedge.place.edge]: [drawnOver(closed, reach, 1)] })
        : null;
    };
    const off = (angle: number): number => {
      const done = made(angle);
      return done ? done.tape.edge(pieceNow(done, wedge.piece), wedge.place.edge) - length : Number.NaN;
    };
    const angle = secant(off, guess, guess * 1.05, tolerance.walk);
    if (angle === null || angle < fairTurn[0] * guess || angle > fairTurn[1] * guess) continue;
    const done = made(angle);
    if (done) return { work: done, angle };
  }
  return null;
};

/**
 * Where an edge is best cut for a wedge to a pivot: of some places, as shares of it, the one at which the wedge comes
 * most nearly square out of the edge, for there its parts close on one another without a jog. Clear of notches.
 */
export const squarePlace = (piece: Piece, edge: string, pivot: Point, shares: readonly number[]): EdgeEnd => {
  const whole = edgeLength(piece, edge);
  const clear = shares.filter((at) =>
    piece.notches.every((one) => one.edge !== edge || Math.abs(one.at - at) * whole >= clearOfNotch),
  );
  const skew = (at: number): number => {
    const to = subtract(pivot, pointOnEdge(piece, edge, at));
    const along = tangentOnEdge(piece, edge, at);
    return Math.abs(to.x * along.x + to.y * along.y) / Math.hypot(to.x, to.y);
  };
  const places = clear.length > 0 ? clear : shares;
  return { edge, at: places.reduce((a, b) => (skew(b) < skew(a) ? b : a)) };
};

/** A cut keeps so far from a notch, mm. */
const clearOfNotch = 8;

/** Where an edge turns the most at once and back: the straight bridge between the two parts of a closed wedge. */
const joinedAt = (path: Path): { readonly from: number; readonly to: number } | null => {
  const lengths = segmentLengths(path);
  let along = 0;
  let best: { readonly from: number; readonly to: number; readonly turn: number } | null = null;
  for (const [i, segment] of path.entries()) {
    const [from, to] = [along, along + (lengths[i] as number)];
    along = to;
    const [before, after] = [path[i - 1], path[i + 1]];
    if (segment.kind !== 'line' || !before || !after) continue;
    const turn = Math.abs(turnBetween(segmentTangentAt(before, 1), segmentTangentAt(segment, 0)));
    if (!best || turn > best.turn) best = { from, to, turn };
  }
  return best;
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

/**
 * Where the point that swings with a wedge lies once so much is folded out, and where it goes for each millimetre more: round
 * the pivot by θ = 2 asin(amount / 2r), so by dθ = 1 / √(r² − amount²/4).
 */
export const gapeHandle = (piece: Piece, wedge: Wedge, amount: number): Handle | null => {
  const { pivot, swinging, place } = wedge;
  const at = pointOnEdge(piece, place.edge, place.at);
  const reach = distance(at, pivot.at);
  if (amount >= 2 * reach) return null;
  const sign = turnSign(piece, wedge);
  const now = turned(swinging, pivot.at, sign * 2 * Math.asin(amount / 2 / reach));
  const rate = sign / Math.sqrt(reach * reach - (amount * amount) / 4);
  const r = subtract(now, pivot.at);
  return { piece: piece.id, at: now, perMillimetre: { x: -r.y * rate, y: r.x * rate } };
};

/** A place on the line of a cut where it meets another piece's outline, seen from its pivot. */
export const metFrom = (piece: Piece, pivot: Point, towards: Point): EdgeEnd | null => {
  const way = subtract(towards, pivot);
  const size = Math.hypot(way.x, way.y);
  const unit: Point = { x: way.x / size, y: way.y / size };
  const inside: Point = { x: pivot.x + unit.x, y: pivot.y + unit.y };
  return reached(piece, inside, unit)?.end ?? null;
};
