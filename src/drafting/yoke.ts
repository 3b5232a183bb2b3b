import {
  add,
  angleOf,
  applyToPath,
  applyToPoint,
  type Cubic,
  compose,
  cubic,
  distance,
  type Line,
  lerp,
  line,
  mirrorX,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  reverseSegment,
  rotation,
  segmentPointAt,
  splitSegment,
  subtract,
  tolerance,
  translation,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { BackDraft, FrontDraft } from './blouse-bodice.ts';
import { solveBetween } from './solve.ts';

/** A parameter or angle found to this is found to well under `tolerance.same`. */
const fine = 1e-12;

/** A front without the strip that the yoke takes over the shoulder. */
export interface FrontBelowYoke {
  readonly neck: Path;
  readonly shoulder: Line;
  readonly armhole: Path;
}

/** A back from the yoke seam down. */
export interface BackBelowYoke {
  /** From the centre to the armhole, without what a pleat adds. */
  readonly top: Path;
  readonly armhole: Path;
}

/** Half a yoke, its centre back on x = 0. */
export interface Yoke {
  /** From the nape round to the front seam: the back's neck, then the front's. */
  readonly neck: Path;
  readonly front: Line;
  /** From the front seam over the shoulder point to the back seam. */
  readonly armhole: Path;
  readonly back: Line;
  readonly neckPoint: Point;
  readonly shoulderPoint: Point;
}

export interface YokeCut {
  readonly yoke: Yoke;
  readonly front: FrontBelowYoke;
  readonly back: BackBelowYoke;
}

/** Cuts a curve where it lies `by` from the straight through `from` along `normal`; null where it never does. */
const splitBeside = (curve: Cubic, from: Point, normal: Point, by: number): readonly [Cubic, Cubic] | null => {
  const beside = (t: number): number => {
    const p = subtract(segmentPointAt(curve, t), from);
    return p.x * normal.x + p.y * normal.y - by;
  };
  const t = solveBetween(beside, 0, 1, fine);
  return t === null ? null : (splitSegment(curve, t) as readonly [Cubic, Cubic]);
};

/** How far along the way to the corner its end tangents make the handles of the back's top edge reach. */
const pull = 0.6;

/**
 * The back's top edge: level at the centre, then falling to the armhole, where it arrives at the angle the closed dart
 * has swung the yoke by. So armhole and seam run on from one piece to the other, and the fall shapes the shoulder blade.
 */
const backTop = (level: number, end: Point, angle: number): Path => {
  const corner: Point = { x: end.x - (end.y - level) / Math.tan(angle), y: level };
  const begin: Point = { x: Math.max(corner.x - 0.7 * (end.x - corner.x), 0.1 * corner.x), y: level };
  return [line({ x: 0, y: level }, begin), cubic(begin, lerp(begin, corner, pull), lerp(end, corner, pull), end)];
};

/** How far from the shoulder dart's point the yoke seam may lie, up and down, mm; a few mm above it in practice. */
const besideDart = 12;

/**
 * A forward yoke, cut from back and front of a bodice.
 *
 * 1. The back is cut through the point of its shoulder dart. The dart is closed on the yoke, which swings the outer
 *    part up; the yoke's seam is straight across, so that a stripe lies along it.
 * 2. What the dart took in at the shoulder the back's top edge now gives at the seam: it falls towards the armhole.
 *    The seam lies the few mm above the dart's point at which both edges are equally long.
 * 3. A strip `forward` wide, parallel to the shoulder, is cut from the front and joined to the yoke at the shoulder.
 *
 * Construction as taught in manuals of metric pattern cutting (shirt yokes; dart turned into the yoke seam). Needs
 * shoulders of front and back equally long once the dart is closed. Problem `drafting.measures-contradict` where the
 * shoulder blade lies below the armhole's narrowest place, or neck or armhole above the strip.
 */
export const cutYoke = (back: BackDraft, front: FrontDraft, forward: number): Result<YokeCut> => {
  const [inner, outer] = back.shoulder as readonly [Line, Line];
  const closed = rotation(
    angleOf(subtract(inner.to, back.dartPoint)) - angleOf(subtract(outer.from, back.dartPoint)),
    back.dartPoint,
  );
  const [upper, lower] = back.armhole as readonly [Cubic, Cubic];
  const swing = -angleOf(subtract(applyToPoint(closed, add(back.dartPoint, { x: 1, y: 0 })), back.dartPoint));
  const cutAt = (level: number) => {
    const t = solveBetween((at) => applyToPoint(closed, segmentPointAt(upper, at)).y - level, 0, 1, fine);
    if (t === null) return null;
    const [above, below] = splitSegment(upper, t) as readonly [Cubic, Cubic];
    const armhole = applyToPath(closed, [above]);
    return { below, armhole, end: pathEnd(armhole), top: backTop(level, below.from, swing) };
  };
  const level = solveBetween(
    (at) => {
      const cut = cutAt(at);
      // A seam below the across-back line is too low.
      return cut ? pathLength(cut.top) - cut.end.x : -1;
    },
    back.dartPoint.y - besideDart,
    back.dartPoint.y + besideDart,
    tolerance.same,
  );
  const found = level === null ? null : cutAt(level);
  if (!found) return bad('drafting.measures-contradict');
  const { below, armhole: yokeArmhole, end, top } = found;
  const neckPoint = pathEnd(back.neck);
  const shoulderPoint = pathStart(yokeArmhole);

  const shoulder = front.shoulder as Line;
  const along = subtract(shoulder.to, shoulder.from);
  const size = distance(shoulder.from, shoulder.to);
  const normal: Point = { x: -along.y / size, y: along.x / size };
  const neckParts = splitBeside(front.neck[0] as Cubic, shoulder.from, normal, forward);
  const armholeParts = splitBeside(front.armhole[0] as Cubic, shoulder.from, normal, forward);
  if (!neckParts || !armholeParts) return bad('drafting.measures-contradict');
  const [neck, neckStrip] = neckParts;
  const [armholeStrip, armholeRest] = armholeParts;
  // Turned over and laid to the back's shoulder, as it lies once the seam is sewn.
  const turned = compose(mirrorX(shoulder.from.x), translation(subtract(neckPoint, shoulder.from)));
  const laid = compose(
    turned,
    rotation(
      angleOf(subtract(shoulderPoint, neckPoint)) - angleOf(subtract(applyToPoint(turned, shoulder.to), neckPoint)),
      neckPoint,
    ),
  );
  const stripNeck = applyToPath(laid, [reverseSegment(neckStrip)]);
  const stripArmhole = reversePath(applyToPath(laid, [armholeStrip]));
  return good({
    yoke: {
      neck: [...back.neck, ...stripNeck],
      front: line(pathEnd(stripNeck), pathStart(stripArmhole)),
      armhole: [...stripArmhole, ...yokeArmhole],
      back: line(end, { x: 0, y: end.y }),
      neckPoint,
      shoulderPoint,
    },
    front: {
      neck: [neck],
      shoulder: line(neck.to, armholeRest.from),
      armhole: [armholeRest, ...front.armhole.slice(1)],
    },
    back: { top, armhole: [below, lower] },
  });
};
