import { segmentLength } from './arc-length.ts';
import { boundsMeet, hullBounds } from './bounds.ts';
import { nearestParameter } from './nearest.ts';
import { cross, distance, dot, length, subtract } from './points.ts';
import { bernsteinRoots } from './roots.ts';
import { asCubic, partOfSegment, segmentDerivativeAt, segmentPointAt } from './segments.ts';
import { tolerance } from './tolerance.ts';
import type { Cubic, Line, Point, Segment } from './types.ts';

/** Where two segments meet: the parameter on each. */
export interface Crossing {
  readonly ta: number;
  readonly tb: number;
}

/**
 * All places where two segments meet, touching included, to `tolerance.same`; none twice. Where they run along
 * each other the ends of the shared stretch are given.
 */
export const segmentCrossings = (a: Segment, b: Segment): Crossing[] => {
  if (!boundsMeet(hullBounds(a), hullBounds(b), tolerance.same)) return [];
  const found = [...endsOn(a, b)];
  if (a.kind === 'line' && b.kind === 'line') found.push(...lineLine(a, b));
  else if (a.kind === 'line') found.push(...lineCubic(a, asCubic(b)));
  else if (b.kind === 'line') found.push(...lineCubic(b, a).map(({ ta, tb }) => ({ ta: tb, tb: ta })));
  else found.push(...cubicCubic(a, b));
  const meeting = found.filter(
    ({ ta, tb }) => distance(segmentPointAt(a, ta), segmentPointAt(b, tb)) <= tolerance.same,
  );
  return meeting.filter((one, i) => !meeting.slice(0, i).some((other) => sameCrossing(a, b, one, other)));
};

/** Ends of one that lie on the other: found first, so that a meeting at an end has its parameter exactly 0 or 1. */
function endsOn(a: Segment, b: Segment): Crossing[] {
  const found: Crossing[] = [];
  for (const ta of [0, 1]) {
    for (const tb of [0, 1]) {
      if (distance(segmentPointAt(a, ta), segmentPointAt(b, tb)) <= tolerance.same) found.push({ ta, tb });
    }
  }
  // An end that meets an end need not be sought inside too: where the curve passes it again the crossings below show it.
  const pairs = [...found];
  for (const ta of [0, 1]) {
    const tb = pairs.some((pair) => pair.ta === ta) ? null : parameterOn(b, segmentPointAt(a, ta));
    if (tb !== null) found.push({ ta, tb });
  }
  for (const tb of [0, 1]) {
    const ta = pairs.some((pair) => pair.tb === tb) ? null : parameterOn(a, segmentPointAt(b, tb));
    if (ta !== null) found.push({ ta, tb });
  }
  return found;
}

function parameterOn(segment: Segment, p: Point): number | null {
  const box = { minX: p.x, maxX: p.x, minY: p.y, maxY: p.y };
  if (!boundsMeet(hullBounds(segment), box, tolerance.same)) return null;
  const t = nearestParameter(segment, p);
  return distance(p, segmentPointAt(segment, t)) <= tolerance.same ? t : null;
}

/** Near in place is not enough: a curve may come back to the same place, so what lies between is measured on both. */
function sameCrossing(a: Segment, b: Segment, one: Crossing, other: Crossing): boolean {
  return (
    distance(segmentPointAt(a, one.ta), segmentPointAt(a, other.ta)) <= tolerance.length &&
    segmentLength(a, one.ta, other.ta) <= tolerance.length &&
    segmentLength(b, one.tb, other.tb) <= tolerance.length
  );
}

function lineLine(a: Line, b: Line): Crossing[] {
  const u = subtract(a.to, a.from);
  const v = subtract(b.to, b.from);
  const between = subtract(b.from, a.from);
  const across = cross(u, v);
  // Parallel to within rounding: they meet at ends or not at all.
  if (Math.abs(across) <= 16 * Number.EPSILON * length(u) * length(v)) return [];
  const ta = cross(between, v) / across;
  const tb = cross(between, u) / across;
  return ta >= 0 && ta <= 1 && tb >= 0 && tb <= 1 ? [{ ta, tb }] : [];
}

/** A cubic's distances from a line are a cubic in the Bernstein basis; its roots are the crossings. */
function lineCubic(line: Line, curve: Cubic): Crossing[] {
  const along = subtract(line.to, line.from);
  const square = dot(along, along);
  if (square === 0) return [];
  const away = (p: Point): number => cross(along, subtract(p, line.from));
  const distances = [away(curve.from), away(curve.control1), away(curve.control2), away(curve.to)];
  // A curve that runs along the line all the way shares its ends with it, or the line's.
  if (distances.every((d) => Math.abs(d) <= tolerance.same * Math.sqrt(square))) return [];
  const roots = bernsteinRoots(distances);
  return roots
    .map((tb) => ({ ta: dot(along, subtract(segmentPointAt(curve, tb), line.from)) / square, tb }))
    .filter(({ ta }) => ta >= 0 && ta <= 1);
}

/**
 * Two cubics: both are halved while their boxes meet until they are nearly straight,
 * and each pair left is the start of a Newton iteration on both parameters. Two crossings within one such
 * pair, a fraction of a millimetre long, come as one.
 */
function cubicCubic(a: Cubic, b: Cubic): Crossing[] {
  const found: Crossing[] = [];
  const straightEnough = tolerance.length * 10;
  const halve = (p: Cubic, p0: number, p1: number, q: Cubic, q0: number, q1: number): void => {
    if (!boundsMeet(hullBounds(p), hullBounds(q), tolerance.same)) return;
    const bendP = bend(p);
    const bendQ = bend(q);
    if (bendP <= straightEnough && bendQ <= straightEnough) {
      const crossing = refine(a, b, p, p0, p1, q, q0, q1);
      if (crossing) found.push(crossing);
      return;
    }
    if (bendP >= bendQ) {
      const middle = (p0 + p1) / 2;
      halve(partOfSegment(p, 0, 0.5) as Cubic, p0, middle, q, q0, q1);
      halve(partOfSegment(p, 0.5, 1) as Cubic, middle, p1, q, q0, q1);
    } else {
      const middle = (q0 + q1) / 2;
      halve(p, p0, p1, partOfSegment(q, 0, 0.5) as Cubic, q0, middle);
      halve(p, p0, p1, partOfSegment(q, 0.5, 1) as Cubic, middle, q1);
    }
  };
  halve(a, 0, 1, b, 0, 1);
  return found;
}

/** Bound on how far a cubic strays from its chord evenly travelled (half its largest second difference is ample). */
function bend({ from, control1, control2, to }: Cubic): number {
  return Math.max(
    Math.abs(control2.x - 2 * control1.x + from.x),
    Math.abs(control2.y - 2 * control1.y + from.y),
    Math.abs(to.x - 2 * control2.x + control1.x),
    Math.abs(to.y - 2 * control2.y + control1.y),
  );
}

/** Newton's method from where the chords of two nearly straight parts meet, or from their middles where they are parallel. */
function refine(
  a: Cubic,
  b: Cubic,
  p: Cubic,
  p0: number,
  p1: number,
  q: Cubic,
  q0: number,
  q1: number,
): Crossing | null {
  const u = subtract(p.to, p.from);
  const v = subtract(q.to, q.from);
  const across = cross(u, v);
  const between = subtract(q.from, p.from);
  const startA = across === 0 ? 0.5 : clamp(cross(between, v) / across);
  const startB = across === 0 ? 0.5 : clamp(cross(between, u) / across);
  let ta = p0 + (p1 - p0) * startA;
  let tb = q0 + (q1 - q0) * startB;
  // A root may lie just over the border of the parts it was sought from.
  const slackA = p1 - p0;
  const slackB = q1 - q0;
  for (let round = 0; round < 20; round++) {
    const gap = subtract(segmentPointAt(b, tb), segmentPointAt(a, ta));
    const da = segmentDerivativeAt(a, ta);
    const db = segmentDerivativeAt(b, tb);
    const size = cross(da, db);
    if (size === 0) break;
    const stepA = cross(gap, db) / size;
    const stepB = cross(gap, da) / size;
    ta = clamp(ta + Math.max(-slackA, Math.min(slackA, stepA)));
    tb = clamp(tb + Math.max(-slackB, Math.min(slackB, stepB)));
    if (Math.abs(stepA) + Math.abs(stepB) < Number.EPSILON) break;
  }
  const near = ta >= p0 - slackA && ta <= p1 + slackA && tb >= q0 - slackB && tb <= q1 + slackB;
  if (!near || distance(segmentPointAt(a, ta), segmentPointAt(b, tb)) > tolerance.same) return null;
  const da = segmentDerivativeAt(a, ta);
  const db = segmentDerivativeAt(b, tb);
  const parallel = Math.abs(cross(da, db)) <= tolerance.length * length(da) * length(db);
  return parallel && runAlong(p, b) ? null : { ta, tb };
}

/** Whether a whole small part lies on the other curve: then they share a stretch there, and its ends have been found. */
function runAlong(part: Cubic, curve: Cubic): boolean {
  return [0, 0.5, 1].every((t) => {
    const p = segmentPointAt(part, t);
    return distance(p, segmentPointAt(curve, nearestParameter(curve, p))) <= tolerance.same;
  });
}

function clamp(t: number): number {
  return Math.min(Math.max(t, 0), 1);
}
