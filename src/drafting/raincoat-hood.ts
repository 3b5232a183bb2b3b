import {
  add,
  angleOf,
  type Cubic,
  cubic,
  directionAt,
  type Line,
  line,
  type Path,
  type Point,
  pathLength,
  scale,
  splitPathAtLength,
  tolerance,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { RaincoatPlan } from './raincoat-plan.ts';
import { settle, solveBetween } from './solve.ts';

/** A hood in three panels: two sides, seen from the wearer's left with the face to the left, and a strip between them. */
export interface RaincoatHood {
  /** From the front neck up to the visor. */
  readonly opening: Cubic;
  /** From the visor over the crown and down to the nape. */
  readonly top: Path;
  readonly crown: Point;
  readonly neckBack: Path;
  readonly neckFront: Path;
  readonly strip: {
    /** From the fold to the seam. */
    readonly opening: Cubic;
    readonly top: Line;
    readonly neck: Line;
  };
}

const degree = Math.PI / 180;

/**
 * Directions at the side panel's corners: how far the opening leans forward at the neck and at the visor, how the crown
 * rises behind the visor, and how the neck edge falls to the front.
 */
const lean = {
  neck: 2 * degree,
  visor: 17 * degree,
  crown: 7 * degree,
  front: 14 * degree,
  /** How the back comes in to the nape: at least and at most. */
  nape: [8 * degree, 20 * degree],
} as const;

/** Of the strip's length, how far its handles reach: the visor's edge is a shallow arc. */
const arc = 0.38;

/** A cubic that leaves and arrives in two directions, its handles shares of the straight between its ends. */
const curve = (from: Point, leaving: number, to: Point, arriving: number, first: number, second: number): Cubic => {
  const mm = Math.hypot(to.x - from.x, to.y - from.y);
  return cubic(
    from,
    add(from, scale(directionAt(leaving), first * mm)),
    add(to, scale(directionAt(arriving), -second * mm)),
    to,
  );
};

/**
 * The hood, drafted to the necklines it is sewn to.
 *
 * 1. The strip's end takes the middle of the back neck; what is left of the back neck and the whole front neck is the
 *    neck edge of the side panel. The nape is placed so that this edge, which arches over the shoulder, measures just that.
 * 2. The opening rises from the centre front, upright at first and leaning forward to a visor, so that rain drips
 *    before the face and not on to it; the hem is turned along it, elastic in its middle part. No cord.
 * 3. From the visor the seam rises a little to the crown, round the back of the head and in to the nape.
 * 4. The strip is as long as that seam, broad at the front and narrower at the nape, its front edge arched, so that at
 *    both ends it runs on from the side panels without a corner.
 *
 * Hood construction as taught in manuals of metric pattern cutting: height over the crown, depth from the head's girth.
 * Three panels, for a head is round two ways and two panels only one. Problem `drafting.hood-cannot-fit` where
 * the neckline is too short or long for any hood.
 */
export const draftHood = (plan: RaincoatPlan, frontNeck: number, backNeck: number): Result<RaincoatHood> => {
  const { height, depth, stripFront, stripNape } = plan.hood;
  const backRest = backNeck - stripNape;
  const neckLength = frontNeck + backRest;
  if (backRest <= 0.2 * backNeck)
    return bad('drafting.hood-cannot-fit', { neck: { mm: Math.round(2 * (frontNeck + backNeck)) } });
  const front: Point = { x: 0, y: 0 };
  const crownY = -(height + 0.1 * neckLength);
  const visorY = crownY + 0.034 * depth;
  const opening = (() => {
    const rising = -visorY;
    // Where a curve leaning from one angle to the other ends: its mean lean, the upper part counting more.
    const visor: Point = { x: -rising * Math.tan(0.42 * lean.neck + 0.5 * lean.visor), y: visorY };
    return curve(front, -Math.PI / 2 - lean.neck, visor, -Math.PI / 2 - lean.visor, 0.36, 0.36);
  })();
  const visor = opening.to;
  const backAt = (x: number): { readonly nape: Point; readonly back: Point; readonly comingIn: number } => {
    const nape: Point = { x, y: -0.04 * neckLength };
    const back: Point = { x: Math.max(visor.x + depth, x + 16), y: nape.y + 0.52 * (crownY - nape.y) };
    // Nearly as steep as the straight from the back of the head to the nape, so that it rounds in without a wave.
    return { nape, back, comingIn: settle(1.1 * Math.atan((back.x - x) / (nape.y - back.y)), ...lean.nape) };
  };
  const topTo = (x: number): Path => {
    const { nape, back, comingIn } = backAt(x);
    const crown: Point = { x: visor.x + 0.46 * (back.x - visor.x), y: crownY };
    return [
      curve(visor, -lean.crown, crown, 0, 0.34, 0.36),
      cubic(
        crown,
        { x: crown.x + 0.56 * (back.x - crown.x), y: crownY },
        { x: back.x, y: back.y + 0.52 * (crownY - back.y) },
        back,
      ),
      curve(back, Math.PI / 2, nape, Math.PI / 2 + comingIn, 0.4, 0.34),
    ];
  };
  const neckTo = (x: number): Cubic => {
    const { nape, comingIn } = backAt(x);
    // The strip's edge slants by this, and its corner at the nape with it.
    const taper = Math.asin((stripFront - stripNape) / pathLength(topTo(x)));
    return curve(nape, Math.PI + comingIn + taper, front, Math.PI - lean.front, 0.29, 0.38);
  };
  const x = solveBetween(
    (tried) => pathLength([neckTo(tried)]) - neckLength,
    0.6 * neckLength,
    1.1 * neckLength,
    tolerance.same,
  );
  if (x === null) return bad('drafting.hood-cannot-fit', { neck: { mm: Math.round(2 * (frontNeck + backNeck)) } });
  const top = topTo(x);
  const [neckBack, neckFront] = splitPathAtLength([neckTo(x)], backRest);
  if (!neckBack || !neckFront) return bad('drafting.hood-cannot-fit', { neck: { mm: Math.round(neckLength) } });
  const crown = (top[0] as Cubic).to;
  return good({ opening, top, crown, neckBack, neckFront, strip: stripFor(top, stripFront, stripNape) });
};

/** The strip's half, its fold along x = 0 and its front upwards. */
const stripFor = (top: Path, front: number, nape: number): RaincoatHood['strip'] => {
  const length = pathLength(top);
  const down = Math.sqrt(length ** 2 - (front - nape) ** 2);
  const corner: Point = { x: front, y: 0 };
  const end: Point = { x: nape, y: down };
  const seam = line(corner, end);
  // The side panel's corner is 90° − visor + crown inside; falling by this, the strip's makes it up to a straight.
  const falling = lean.visor - lean.crown + angleOf({ x: down, y: front - nape });
  const rise = front * Math.tan(falling / 2);
  const peak: Point = { x: 0, y: -rise };
  return {
    opening: curve(peak, 0, corner, falling, arc, arc),
    top: seam,
    neck: line(end, { x: 0, y: down }),
  };
};
