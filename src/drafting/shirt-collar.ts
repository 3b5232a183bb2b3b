import {
  add,
  type Cubic,
  cubic,
  directionAt,
  distance,
  type Line,
  lerp,
  line,
  type Path,
  type Point,
  pathLength,
  perpendicular,
  placeAtLength,
  reversePath,
  scale,
  segmentPointAt,
  segmentTangentAt,
  splitSegment,
  tolerance,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { solveBetween } from './solve.ts';

/** Lengths a stand is sewn to, centre back to its front end, mm. */
export interface NeckLengths {
  /** Centre back to the seam of yoke (or back) and front. */
  readonly back: number;
  /** From there to the button stand's seam. */
  readonly front: number;
  /** Along the top of the button stand; its middle is the centre front. */
  readonly stand: number;
}

/** Half a collar stand, its centre back on x = 0, the neck edge below. */
export interface StandDraft {
  /** Centre back to front end, in three. */
  readonly neckBack: Line;
  readonly neckFront: Cubic;
  readonly neckStand: Cubic;
  /** From the neck edge up over the rounded corner on to the top edge. */
  readonly end: Path;
  /** From there to the centre front. */
  readonly topFront: Cubic;
  /** From the centre front to the centre back: a fall is sewn to it. */
  readonly top: Path;
}

export interface StandShape {
  /** Height at the centre back, mm. */
  readonly height: number;
  /** How far the front end is raised: more, and the stand leans closer to the neck. */
  readonly rise: number;
  /** Radius, about, of the front's upper corner. */
  readonly corner: number;
}

export const standShape: StandShape = { height: 32, rise: 12, corner: 13 };

/** The curve that leaves level at `from` and arrives at `to` along a direction; both handles a third of the way. */
const risingCurve = (from: Point, to: Point, arriving: Point): Cubic => {
  const third = distance(from, to) / 3;
  return cubic(from, { x: from.x + third, y: from.y }, add(to, scale(arriving, -third)), to);
};

/**
 * A collar stand: straight round the back of the neck, then curved up to the front, so that its upper edge is the
 * shorter and it leans to the neck. Its neck edge is as long as the neck and the button stand it is sewn to; the
 * upper edge runs parallel. Construction as taught in manuals of metric pattern cutting (shirt collar, stand).
 * Problem `drafting.measures-contradict` where the neck is shorter than the stand is raised.
 */
export const draftStand = (
  neck: NeckLengths,
  { height, rise, corner }: StandShape = standShape,
): Result<StandDraft> => {
  const turn: Point = { x: neck.back, y: 0 };
  const curved = neck.front + neck.stand;
  // An even bend arrives at twice the slope of its chord.
  const lower = (reach: number): Cubic => {
    const arriving = directionAt(-2 * Math.atan(rise / reach));
    return risingCurve(turn, { x: turn.x + reach, y: -rise }, arriving);
  };
  const reach = solveBetween((at) => pathLength([lower(at)]) - curved, curved / 2, curved, tolerance.same);
  if (reach === null) return bad('drafting.measures-contradict');
  const edge = lower(reach);
  const placed = (mm: number): number => placeAtLength([edge], mm).t;
  const [neckFront, neckStand] = splitSegment(edge, placed(neck.front)) as readonly [Cubic, Cubic];
  const arriving = segmentTangentAt(edge, 1);
  const up = perpendicular(arriving);
  const upperEnd = add(edge.to, scale(up, height));
  const upperTurn: Point = { x: turn.x, y: -height };
  const upper = risingCurve(upperTurn, upperEnd, arriving);
  const centre = placed(neck.front + neck.stand / 2);
  // Same parameter, same place along: both edges are drawn by one rule.
  const [toCentre, beyond] = splitSegment(upper, centre) as readonly [Cubic, Cubic];
  const beyondLength = pathLength([beyond]);
  const turnIn = Math.min(corner, 0.8 * beyondLength);
  const { t } = placeAtLength([beyond], beyondLength - turnIn);
  const [straight] = splitSegment(beyond, t) as readonly [Cubic, Cubic];
  const low = add(edge.to, scale(up, height - turnIn));
  const round = cubic(low, lerp(low, upperEnd, 0.55), lerp(straight.to, upperEnd, 0.55), straight.to);
  return good({
    neckBack: line({ x: 0, y: 0 }, turn),
    neckFront,
    neckStand,
    end: [line(edge.to, low), round],
    topFront: cubic(straight.to, straight.control2, straight.control1, straight.from),
    top: [...reversePath([toCentre]), line(upperTurn, { x: 0, y: -height })],
  });
};

/** Half a fall, its centre back on x = 0, the neck edge below. */
export interface FallDraft {
  /** From the centre back to the front. */
  readonly neck: Cubic;
  /** From the neck to the point. */
  readonly front: Line;
  /** From the point to the centre back. */
  readonly outer: Cubic;
}

export interface FallShape {
  /** Depth at the centre back: it covers the stand and its seam. */
  readonly depth: number;
  /** Length of the front edge, neck to point. */
  readonly point: number;
  /** How far the neck edge falls from centre back to front: it lets the outer edge be longer and so lie over the stand. */
  readonly fall: number;
  /** How far the front edge leans outward from square to the neck edge, radians. */
  readonly lean: number;
}

export const fallShape: FallShape = { depth: 44, point: 68, fall: 10, lean: 0.12 };

/**
 * The fall of a shirt collar for a stand's upper edge of a length, mm: curved the other way, so that turned over the
 * stand its outer edge has the room it needs. Construction as taught in manuals of metric pattern cutting.
 */
export const draftFall = (length: number, { depth, point, fall, lean }: FallShape = fallShape): Result<FallDraft> => {
  const centre: Point = { x: 0, y: -fall };
  const neckFor = (reach: number): Cubic =>
    risingCurve(centre, { x: reach, y: 0 }, directionAt(2 * Math.atan(fall / reach)));
  const reach = solveBetween((at) => pathLength([neckFor(at)]) - length, length / 2, length, tolerance.same);
  if (reach === null) return bad('drafting.measures-contradict');
  const neck = neckFor(reach);
  const out = directionAt(Math.atan2(-Math.cos(lean), Math.sin(lean)));
  const tip = add(neck.to, scale(out, point));
  const top: Point = { x: 0, y: -fall - depth };
  const width = tip.x;
  return good({
    neck,
    front: line(neck.to, tip),
    outer: cubic(tip, { x: 0.66 * width, y: lerp(tip, top, 0.25).y }, { x: 0.4 * width, y: top.y }, top),
  });
};

/** Where a stand's button sits: on the centre front, halfway up. */
export const standButton = ({ neckStand, top }: StandDraft): Point => {
  const low = segmentPointAt(neckStand, 0.5);
  const high = (top[0] as Cubic).from;
  return lerp(low, high, 0.5);
};
