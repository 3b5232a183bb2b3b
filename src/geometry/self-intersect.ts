import { segmentLengths } from './along.ts';
import { segmentLength } from './arc-length.ts';
import { boundsMeet, hullBounds } from './bounds.ts';
import { segmentCrossings } from './crossing.ts';
import type { PathCrossing } from './intersect.ts';
import { apart, withoutRepeats } from './intersect.ts';
import { isClosed, segmentAt } from './paths.ts';
import { cross, dot, subtract } from './points.ts';
import { segmentPointAt } from './segments.ts';
import { tolerance } from './tolerance.ts';
import type { Cubic, Path, Point, Segment } from './types.ts';

/**
 * All places where an outline (or open path) crosses or touches itself, lengthA before lengthB. The joints between neighbours
 * are none; a curve's own loop is one.
 */
export const selfIntersections = (outline: Path): PathCrossing[] => {
  const boxes = outline.map(hullBounds);
  const found: PathCrossing[] = [];
  let starts: number[] | undefined;
  const report = (i: number, ta: number, j: number, tb: number): void => {
    starts ??= runningSums(segmentLengths(outline));
    const along = (index: number, t: number): number =>
      (starts?.[index] as number) + segmentLength(segmentAt(outline, index), 0, t);
    const one = along(i, ta);
    const other = along(j, tb);
    const loop = isClosed(outline) ? (starts.at(-1) as number) : Infinity;
    if (apart(one, other, loop) <= tolerance.length) return;
    found.push({
      point: segmentPointAt(segmentAt(outline, i), ta),
      lengthA: Math.min(one, other),
      lengthB: Math.max(one, other),
    });
  };

  outline.forEach((segment, i) => {
    const own = segment.kind === 'cubic' ? ownLoop(segment) : null;
    if (own) report(i, own[0], i, own[1]);
  });
  // Swept from left to right: only boxes that overlap across are compared.
  const order = boxes.map((_, i) => i).sort((i, j) => (boxes[i]?.minX as number) - (boxes[j]?.minX as number));
  order.forEach((i, place) => {
    const box = boxes[i];
    if (!box) return;
    for (let next = place + 1; next < order.length; next++) {
      const j = order[next] as number;
      const other = boxes[j];
      if (!other || other.minX > box.maxX + tolerance.same) break;
      if (!boundsMeet(box, other, tolerance.same)) continue;
      if (goOnTogether(outline, Math.min(i, j), Math.max(i, j))) continue;
      for (const { ta, tb } of segmentCrossings(segmentAt(outline, i), segmentAt(outline, j))) report(i, ta, j, tb);
    }
  });
  if (found.length < 2) return found;
  const whole = isClosed(outline) ? (starts?.at(-1) as number) : Infinity;
  return withoutRepeats(found, whole, whole);
};

/**
 * The two parameters at which a cubic passes its own double point, the smaller first; null when it has no loop.
 * B(t) = B(s) divided by t − s is linear in s + t and in (s + t)² − st.
 */
export const ownLoop = ({ from, control1, control2, to }: Cubic): readonly [number, number] | null => {
  const c = subtract(control1, from);
  const b = { x: control2.x - 2 * control1.x + from.x, y: control2.y - 2 * control1.y + from.y };
  const a = { x: to.x - 3 * control2.x + 3 * control1.x - from.x, y: to.y - 3 * control2.y + 3 * control1.y - from.y };
  const across = 3 * cross(a, b);
  if (across === 0) return null;
  const sum = (-3 * cross(a, c)) / across;
  const product = sum * sum - (9 * cross(b, c)) / across;
  const square = sum * sum - 4 * product;
  if (!(square > 0)) return null;
  const first = (sum - Math.sqrt(square)) / 2;
  const second = (sum + Math.sqrt(square)) / 2;
  return first >= 0 && second <= 1 ? [first, second] : null;
};

/**
 * Whether two neighbours gain ground in one direction all along: then they meet at their joint only. Spares the
 * search between most neighbours of a smooth line.
 */
function goOnTogether(outline: Path, i: number, j: number): boolean {
  const first = j === i + 1 ? i : j;
  const second = j === i + 1 ? j : i;
  if (second !== (first + 1) % outline.length) return false;
  const before = segmentAt(outline, first);
  const after = segmentAt(outline, second);
  if (before.to.x !== after.from.x || before.to.y !== after.from.y) return false;
  const ahead = subtract(after.to, before.from);
  return gains(before, ahead) && gains(after, ahead);
}

function gains(segment: Segment, ahead: Point): boolean {
  const { from, to } = segment;
  if (segment.kind === 'line') return dot(subtract(to, from), ahead) > 0;
  const { control1, control2 } = segment;
  return (
    dot(subtract(control1, from), ahead) > 0 &&
    dot(subtract(control2, control1), ahead) > 0 &&
    dot(subtract(to, control2), ahead) > 0
  );
}

/** Sums before each, and the whole at the end. */
function runningSums(values: readonly number[]): number[] {
  const sums = [0];
  for (const value of values) sums.push((sums.at(-1) as number) + value);
  return sums;
}
