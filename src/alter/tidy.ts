import {
  type Cubic,
  cross,
  distance,
  dot,
  lerp,
  type Path,
  partOfSegment,
  type Segment,
  samePoint,
  subtract,
  tolerance,
} from '../geometry/index.ts';

/** Two straight stretches that lie on one line: one stretch, or nothing left of a way gone there and back; null otherwise. */
const oneLine = (a: Segment, b: Segment): readonly Segment[] | null => {
  if (a.kind !== 'line' || b.kind !== 'line') return null;
  const u = subtract(a.to, a.from);
  const v = subtract(b.to, b.from);
  const whole = subtract(b.to, a.from);
  const size = Math.max(distance(a.from, a.to), distance(b.from, b.to));
  // The joint strays from the line through both by this much.
  if (Math.abs(cross(u, v)) > tolerance.same * size) return null;
  if (samePoint(a.from, b.to)) return [];
  if (dot(u, v) > 0 && dot(u, whole) <= 0) return null;
  return [{ kind: 'line', from: a.from, to: b.to }];
};

const nearly = (p: Cubic, q: Cubic): boolean =>
  samePoint(p.from, q.from) &&
  samePoint(p.control1, q.control1) &&
  samePoint(p.control2, q.control2) &&
  samePoint(p.to, q.to);

/** Two cubics that are the halves of one, as a cut that was closed again leaves them: that one; null otherwise. */
const oneCubic = (a: Segment, b: Segment): readonly Segment[] | null => {
  if (a.kind !== 'cubic' || b.kind !== 'cubic') return null;
  const before = distance(a.control2, a.to);
  const after = distance(b.from, b.control1);
  const t = before / (before + after);
  if (!(t > 0 && t < 1)) return null;
  const whole: Cubic = {
    kind: 'cubic',
    from: a.from,
    control1: lerp(a.from, a.control1, 1 / t),
    control2: lerp(b.to, b.control2, 1 / (1 - t)),
    to: b.to,
  };
  const [first, second] = [partOfSegment(whole, 0, t), partOfSegment(whole, t, 1)];
  return nearly(first as Cubic, a) && nearly(second as Cubic, b) ? [whole] : null;
};

/**
 * The same line in as few segments as it needs: straight stretches that go on straight become one, a
 * stretch gone there and back falls away, and the two halves of one cubic are put together again.
 * Empty when nothing is left.
 */
export const tidy = (path: Path): readonly Segment[] => {
  const kept: Segment[] = [];
  for (const segment of path) {
    let next: readonly Segment[] = [segment];
    while (next.length > 0) {
      const last = kept.at(-1);
      const one = next[0] as Segment;
      const merged = last ? (oneLine(last, one) ?? oneCubic(last, one)) : null;
      if (!merged) {
        kept.push(last && (last.to.x !== one.from.x || last.to.y !== one.from.y) ? { ...one, from: last.to } : one);
        break;
      }
      kept.pop();
      next = merged;
    }
  }
  return kept;
};
