import {
  type Cubic,
  type Line,
  line,
  type Point,
  pathLength,
  pathPointAtLength,
  splitPathAtLength,
  splitSegment,
} from '../geometry/index.ts';
import { fallingCurve, parameterAtHeight, sideAt } from './side-seam.ts';
import { solveBetween } from './solve.ts';

/** A number for the front leg and one for the back. */
export interface FrontBack<Value = number> {
  readonly front: Value;
  readonly back: Value;
}

/**
 * Where a pair of legs passes, mm. Heights from the waist at the side, y down; widths of one leg. Below the hip nothing
 * depends on what is above it, so trousers and dungarees share it.
 */
export interface LegFrame {
  /** From the seat or centre-front seam to the side, at the hip. */
  readonly hip: FrontBack;
  readonly hipLevel: number;
  /** Height of the front crotch point; the back's lies lower by what makes the inside legs walk. */
  readonly crotchLevel: number;
  readonly kneeLevel: number;
  readonly hemLevel: number;
  /** How far each crotch point stands out beyond the seam at the hip. */
  readonly fork: FrontBack;
  /** Half the width at knee and hem: the crease halves them. */
  readonly kneeHalf: FrontBack;
  readonly hemHalf: FrontBack;
  /** How much shorter the back inside leg is above the knee; it is stretched on to the front's. */
  readonly stretch: number;
  /** Below the knee: straight, or a curve that leaves the knee and meets the hem along the grain. */
  readonly lower: 'straight' | 'curved';
}

/** One of a leg's two seams, downward: above the knee and, where it reaches there, below. */
export type LegSeam = readonly [above: Cubic, below?: Cubic | Line];

/** One leg from hip to hem, its seams drawn downward. The hip seam lies at x = 0, the side to the right. */
export interface Leg {
  /** The crease, which is the grain: it halves the leg at knee and hem. */
  readonly crease: number;
  readonly hipLevel: number;
  readonly crotchPoint: Point;
  /** Hip to knee, knee to hem; a leg cut off above the knee has the first alone. */
  readonly side: LegSeam;
  /** Crotch point to knee, knee to hem; likewise. */
  readonly inside: LegSeam;
  /** Across the thigh, from inside to side: as far below the crotch along front and back inside leg. */
  readonly thigh: readonly [Point, Point];
}

/**
 * The back leg stands further from its crease at the side than the front by this share of what its fork is wider: its
 * extra width goes on both sides of the crease. A curved leg keeps to the line of its side.
 */
const backSideShift = { straight: 0.35, curved: 0.1 } as const;

/** The thigh is measured this far below the crotch, mm, where it is fullest and a tape passes. */
export const thighBelow = 30;

/** The lowest the back crotch point may come below the front's, mm. */
const lowestBack = 120;

/** How finely lengths are found, mm. */
const fine = 1e-6;

/** The front's side at hip, knee and hem, mm. */
const frontSide = ({ hip, fork, kneeHalf, hemHalf }: LegFrame) => {
  const crease = (hip.front - fork.front) / 2;
  return { crease, hip: hip.front, knee: crease + kneeHalf.front, hem: crease + hemHalf.front };
};

/** How far the back leg's side at the knee stands in from its hip. */
const backShift = (frame: LegFrame): number => {
  const { hip, knee } = frontSide(frame);
  return hip - knee + backSideShift[frame.lower] * (frame.fork.back - frame.fork.front);
};

/**
 * The slope of the side at the knee; the inside's is its mirror image. A straight lower leg runs on in it. A curved one
 * bends the same way from hip to hem: so much more than the back's mean slope above the knee that nothing bends back
 * there (one and a half times it, for a cubic that leaves the hip along the grain), and less than its slope below.
 */
const kneeSlope = (frame: LegFrame): number => {
  const { knee, hem } = frontSide(frame);
  const below = (hem - knee) / (frame.hemLevel - frame.kneeLevel);
  if (frame.lower === 'straight') return below;
  const above = -backShift(frame) / (frame.kneeLevel - frame.hipLevel);
  return above < 0 && below < 0 ? Math.max(1.5 * above, 0.95 * below) : 0;
};

/** Knee to hem, beginning in a slope; a curved leg bends on evenly to its hem. */
const belowKnee = (frame: LegFrame, knee: number, hem: number, slope: number): Cubic | Line => {
  const from: Point = { x: knee, y: frame.kneeLevel };
  const to: Point = { x: hem, y: frame.hemLevel };
  const mean = (hem - knee) / (to.y - from.y);
  return frame.lower === 'straight'
    ? line(from, to)
    : fallingCurve(from, to, slope, (3 * mean - slope) / 2 + 0.15 * (mean - slope));
};

/**
 * Hip to knee at the side: along the grain over the fullest hip, a little hollow above the knee, running on into the
 * lower leg.
 */
const sideAboveKnee = (frame: LegFrame, hip: Point, knee: number): Cubic =>
  fallingCurve(hip, { x: knee, y: frame.kneeLevel }, 0, kneeSlope(frame));

/** The slope beyond which an inside leg is begun no steeper than it must be. */
const steepestBegin = 0.75;

/**
 * Crotch point to knee: hollowed, without a bend the other way. A cubic of mean slope m that ends in slope b is hollow
 * throughout while it begins between (3m − b) / 2 and 3m − 2b; it is begun a little above the least, so that it is
 * bent evenly down the thigh.
 */
const insideAboveKnee = (frame: LegFrame, fork: Point, knee: number): Cubic => {
  const mean = (knee - fork.x) / (frame.kneeLevel - fork.y);
  const end = -kneeSlope(frame);
  const least = (3 * mean - end) / 2;
  const begin = Math.max(least, Math.min(least + 0.22 * (mean - end), steepestBegin));
  return fallingCurve(fork, { x: knee, y: frame.kneeLevel }, begin, end);
};

const frontLeg = (frame: LegFrame): Leg => {
  const { hip, fork, kneeHalf, hemHalf, hipLevel } = frame;
  const { crease } = frontSide(frame);
  const slope = kneeSlope(frame);
  const crotchPoint: Point = { x: -fork.front, y: frame.crotchLevel };
  const [kneeIn, kneeOut] = [crease - kneeHalf.front, crease + kneeHalf.front];
  const [hemIn, hemOut] = [crease - hemHalf.front, crease + hemHalf.front];
  const side = [
    sideAboveKnee(frame, { x: hip.front, y: hipLevel }, kneeOut),
    belowKnee(frame, kneeOut, hemOut, slope),
  ] as const;
  const inside = [insideAboveKnee(frame, crotchPoint, kneeIn), belowKnee(frame, kneeIn, hemIn, -slope)] as const;
  const thigh = frame.crotchLevel + thighBelow;
  return { crease, hipLevel, crotchPoint, side, inside, thigh: [sideAt(inside, thigh), sideAt(side, thigh)] };
};

/**
 * The back leg, drawn to the front: its side seam is as long, hip to knee, for its hip line lies lower by what its
 * slant is longer; its crotch point is lowered until its inside leg is as long as the front's less the stretch. Null
 * where neither can be.
 */
const backLeg = (frame: LegFrame, front: Leg): Leg | null => {
  const { hip, fork, kneeHalf, hemHalf } = frame;
  const slope = kneeSlope(frame);
  const crease = hip.back - kneeHalf.back - backShift(frame);
  const [kneeIn, kneeOut] = [crease - kneeHalf.back, crease + kneeHalf.back];
  const [hemIn, hemOut] = [crease - hemHalf.back, crease + hemHalf.back];
  const sideFrom = (drop: number): Cubic => sideAboveKnee(frame, { x: hip.back, y: frame.hipLevel + drop }, kneeOut);
  const sideLength = pathLength([front.side[0]]);
  const drop = solveBetween((tried) => pathLength([sideFrom(tried)]) - sideLength, -30, 30, fine);
  const insideFrom = (low: number): Cubic =>
    insideAboveKnee(frame, { x: -fork.back, y: frame.crotchLevel + low }, kneeIn);
  const insideLength = pathLength([front.inside[0]]) - frame.stretch;
  const low = solveBetween((tried) => pathLength([insideFrom(tried)]) - insideLength, -30, lowestBack, fine);
  if (drop === null || low === null) return null;
  const side = [sideFrom(drop), belowKnee(frame, kneeOut, hemOut, slope)] as const;
  const inside = [insideFrom(low), belowKnee(frame, kneeIn, hemIn, -slope)] as const;
  const along = ([above]: LegSeam, y: number): number =>
    pathLength([splitSegment(above, parameterAtHeight(above, y))[0]]);
  const thigh = frame.crotchLevel + thighBelow;
  return {
    crease,
    hipLevel: frame.hipLevel + drop,
    crotchPoint: inside[0].from,
    side,
    inside,
    thigh: [pathPointAtLength(inside, along(front.inside, thigh)), pathPointAtLength(side, along(front.side, thigh))],
  };
};

/**
 * Front and back leg from hip to hem.
 *
 * 1. The front's crease halves it at the crotch line, and so at knee and hem.
 * 2. The back is wider all the way. Its side seam is the front's length, its inside leg above the knee the front's less
 *    the stretch (stretched there so that cloth is spared under the seat), below the knee both are equal.
 *
 * Trouser construction as taught in manuals of metric pattern cutting. Null where the legs cannot be made to walk.
 */
export const draftLegs = (frame: LegFrame): FrontBack<Leg> | null => {
  const front = frontLeg(frame);
  const back = backLeg(frame, front);
  return back === null ? null : { front, back };
};

const partAbove = (seam: LegSeam, y: number): Cubic => {
  const [part] = splitSegment(seam[0], parameterAtHeight(seam[0], y));
  return part as Cubic;
};

const partOfLength = (seam: LegSeam, mm: number): Cubic => {
  const [part] = splitPathAtLength([seam[0]], mm);
  return part?.[0] as Cubic;
};

/**
 * Legs cut off above the knee: the front square to its crease at a height; the back where its seams have come as far
 * as the front's, its inside leg less its part of the stretch, so that both still walk.
 */
export const cutLegsAt = ({ front, back }: FrontBack<Leg>, y: number): FrontBack<Leg> => {
  const cut = { side: partAbove(front.side, y), inside: partAbove(front.inside, y) };
  const stretched = pathLength([back.inside[0]]) / pathLength([front.inside[0]]);
  return {
    front: { ...front, side: [cut.side], inside: [cut.inside] },
    back: {
      ...back,
      side: [partOfLength(back.side, pathLength([cut.side]))],
      inside: [partOfLength(back.inside, stretched * pathLength([cut.inside]))],
    },
  };
};
