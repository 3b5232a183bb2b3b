import {
  type Bounds,
  boundsMeet,
  distance,
  hullBounds,
  nearestPlace,
  type Path,
  partOfSegment,
  type Segment,
  samePoint,
  segmentPointAt,
  tolerance,
} from '../geometry/index.ts';

/** How far apart a path is looked at, mm; where it begins to differ is then narrowed down. */
const step = 4;

/** Stretches of `path` that lie farther from `other` than an alteration may move what it holds. */
export const differingStretches = (path: Path, other: Path): readonly Path[] => {
  const twins = other.map((segment) => ({ segment, bounds: hullBounds(segment) }));
  const stretches: Segment[][] = [];
  let current: Segment[] | null = null;
  for (const segment of path) {
    const parts = differingParts(segment, twins);
    for (const [from, to] of parts) {
      if (from > 0 || !current) {
        current = [];
        stretches.push(current);
      }
      current.push(partOfSegment(segment, from, to));
    }
    // A stretch goes on into the next segment only from the very end of this one.
    if (parts[parts.length - 1]?.[1] !== 1) current = null;
  }
  return stretches;
};

interface Twin {
  readonly segment: Segment;
  readonly bounds: Bounds;
}

/** From and to which parameters a segment differs. */
const differingParts = (segment: Segment, twins: readonly Twin[]): readonly (readonly [number, number])[] => {
  if (twins.some((twin) => sameSegment(segment, twin.segment))) return [];
  // Only a line whose bounds come near can hold the nearest point: a slider has no time for the others.
  const own = hullBounds(segment);
  const near = twins.filter(({ bounds }) => boundsMeet(own, bounds, tolerance.holds));
  if (near.length === 0) return [[0, 1]];
  const differs = (t: number): boolean => {
    const point = segmentPointAt(segment, t);
    const here = { minX: point.x, minY: point.y, maxX: point.x, maxY: point.y };
    return !near.some(
      (twin) =>
        boundsMeet(here, twin.bounds, tolerance.holds) &&
        nearestPlace([twin.segment], point).distance <= tolerance.holds,
    );
  };
  const count = Math.max(2, Math.ceil(handleLength(segment) / step));
  const parts: [number, number][] = [];
  let start: number | null = differs(0) ? 0 : null;
  for (let i = 1; i <= count; i += 1) {
    const [before, at] = [(i - 1) / count, i / count];
    const now = differs(at);
    if (now && start === null) start = edgeBetween(before, at, differs);
    if (!now && start !== null) {
      const end = edgeBetween(at, before, differs);
      // What differs at its very beginning only is no stretch to draw.
      if (end > start) parts.push([start, end]);
      start = null;
    }
  }
  // At its very end a segment may only have begun to differ: that is no stretch to draw.
  if (start !== null && start < 1) parts.push([start, 1]);
  return parts;
};

/** At least the segment's length: by way of its handles. */
const handleLength = (segment: Segment): number =>
  segment.kind === 'line'
    ? distance(segment.from, segment.to)
    : distance(segment.from, segment.control1) +
      distance(segment.control1, segment.control2) +
      distance(segment.control2, segment.to);

/** Between a place that is the same and one that differs, where the difference begins. */
const edgeBetween = (same: number, different: number, differs: (at: number) => boolean): number => {
  let [a, b] = [same, different];
  for (let i = 0; i < 6; i += 1) {
    const middle = (a + b) / 2;
    if (differs(middle)) b = middle;
    else a = middle;
  }
  return b;
};

const sameSegment = (a: Segment, b: Segment): boolean =>
  a.kind === b.kind &&
  samePoint(a.from, b.from) &&
  samePoint(a.to, b.to) &&
  (a.kind === 'line' || (b.kind === 'cubic' && samePoint(a.control1, b.control1) && samePoint(a.control2, b.control2)));
