import {
  add,
  angleOf,
  type Cubic,
  cubic,
  directionAt,
  distance,
  type Line,
  lerp,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  perpendicular,
  scale,
  splitPathAtLength,
  subtract,
} from '../geometry/index.ts';

/** What a raglan line is drawn on: half of a set-in block. Millimetres, radians. */
export interface RaglanFrame {
  /** From the centre to the shoulder. */
  readonly neck: Path;
  readonly shoulder: Line;
  readonly underarm: Point;
  /** Direction in which the line arrives there: square to the side seam. */
  readonly underarmDirection: number;
  /** Share of the neck that goes with the sleeve. */
  readonly neckShare: number;
  /** How much steeper than the straight from neck to underarm the line passes the place where body and sleeve part. */
  readonly tilt: number;
}

export interface RaglanHalf {
  /** The body's part, from the centre to where the raglan starts. */
  readonly neck: Path;
  /** The sleeve's part, from there to the shoulder. */
  readonly sleeveNeck: Path;
  readonly shoulder: Line;
  /** From the neck to where body and sleeve part, and from there to the body's underarm. */
  readonly raglan: readonly [Cubic, Cubic];
  /** Direction of the line where body and sleeve part, and of the body's as it arrives at the underarm. */
  readonly parting: number;
  readonly arriving: number;
}

/** Where body and sleeve part: so far along the straight from neck to underarm, and so far inside it, as shares of it. The place of a set-in sleeve's notch. */
const partsAt = { along: 0.62, inside: 0.04 } as const;

/** The line leaves the neck flatter than the straight by this share of its tilt where it parts, so that above it is one even, slight curve. */
const leaving = 0.55;

/** How far the lower curve is pulled into the corner of its end tangents. */
const hollow = 0.59;

/** A cubic whose handles lie on the way to the crossing of its end tangents; `share` of the way. Null where they do not cross between. */
export const cornered = (
  from: Point,
  leavingAngle: number,
  to: Point,
  arrivingAngle: number,
  share: number,
): Cubic | null => {
  const out = directionAt(leavingAngle);
  const into = directionAt(arrivingAngle);
  const across = subtract(to, from);
  const turn = out.x * into.y - out.y * into.x;
  const a = (across.x * into.y - across.y * into.x) / turn;
  const b = (out.x * across.y - out.y * across.x) / turn;
  if (!(a > 0 && b > 0)) return null;
  return cubic(from, add(from, scale(out, share * a)), add(to, scale(into, -share * b)), to);
};

/**
 * A raglan line over half of a set-in block.
 *
 * 1. Part of the neck next to the shoulder goes with the sleeve; the line starts there.
 * 2. It rises a little above the straight to the place where the notch of a set-in sleeve would be, and passes there
 *    more steeply than the straight by the tilt.
 * 3. Below, the body's line is hollowed out to the underarm, square to the side seam.
 *
 * Raglan from a set-in block as taught in manuals of metric pattern cutting. Null where the lower curve cannot be
 * drawn.
 */
export const draftRaglan = (frame: RaglanFrame): RaglanHalf | null => {
  const { underarm, tilt, underarmDirection: arriving } = frame;
  const whole = pathLength(frame.neck);
  const [neck, sleeveNeck] = splitPathAtLength(frame.neck, whole * (1 - frame.neckShare));
  if (!neck || !sleeveNeck) return null;
  const start = pathEnd(neck);
  const across = subtract(underarm, start);
  const parts = add(lerp(start, underarm, partsAt.along), scale(perpendicular(across), -partsAt.inside));
  const straight = angleOf(subtract(parts, start));
  const third = distance(start, parts) / 3;
  const parting = straight + tilt;
  const upper = cubic(
    start,
    add(start, scale(directionAt(straight - leaving * tilt), third)),
    add(parts, scale(directionAt(parting), -third)),
    parts,
  );
  const lower = cornered(parts, parting, underarm, arriving, hollow);
  return lower && { neck, sleeveNeck, shoulder: frame.shoulder, raglan: [upper, lower], parting, arriving };
};

/**
 * The sleeve's lower curve that goes with a body's, in the body's plane: it leaves the same place in the same direction,
 * bends the other way by `turn` radians in all, is `length` mm long as the body's is, and has its bend as far along.
 */
export const sleeveLower = ({ raglan, parting, arriving }: RaglanHalf, turn: number, length: number): Cubic => {
  const body = raglan[1];
  const from = body.from;
  const chord = angleOf(subtract(body.to, from));
  const aside = ((parting - chord) / (parting - arriving)) * turn;
  const drawn = (straight: number): Cubic => {
    const to = add(from, scale(directionAt(parting + aside), straight));
    return cornered(from, parting, to, parting + turn, hollow) ?? cubic(from, from, to, to);
  };
  // Of one shape whatever its size, so its length is in proportion.
  const straight = distance(from, body.to);
  return drawn((straight * length) / pathLength([drawn(straight)]));
};
