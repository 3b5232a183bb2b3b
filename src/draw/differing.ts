import {
  type Bounds,
  nearestOnPath,
  type Path,
  type Point,
  pathBounds,
  pathLength,
  pathPointAtLength,
  type Segment,
  samePoint,
  subPath,
  tolerance,
} from '../geometry/index.ts';

/** How far apart a path is looked at, mm; where it begins to differ is then narrowed down. */
const step = 4;

/** Stretches of `path` that lie farther from `other` than an alteration may move what it holds. */
export const differingStretches = (path: Path, other: Path): readonly Path[] => {
  if (path.every((segment) => other.some((twin) => sameSegment(segment, twin)))) return [];
  const length = pathLength(path);
  // Only a segment whose bounds come that near can hold the nearest point: a slider has no time for the others.
  const boxes = other.map((segment) => ({ segment, bounds: pathBounds([segment]) }));
  const differs = (at: number): boolean => {
    const point = pathPointAtLength(path, at);
    return !boxes.some(
      ({ segment, bounds }) => nearBounds(point, bounds) && nearestOnPath([segment], point).distance <= tolerance.holds,
    );
  };
  const count = Math.max(2, Math.ceil(length / step));
  const stretches: Path[] = [];
  let start: number | null = differs(0) ? 0 : null;
  for (let i = 1; i <= count; i += 1) {
    const [before, at] = [((i - 1) / count) * length, (i / count) * length];
    const now = differs(at);
    if (now && start === null) start = edgeBetween(before, at, differs);
    if (!now && start !== null) {
      stretches.push(subPath(path, start, edgeBetween(at, before, differs)));
      start = null;
    }
  }
  if (start !== null) stretches.push(subPath(path, start, length));
  return stretches;
};

const nearBounds = ({ x, y }: Point, { minX, minY, maxX, maxY }: Bounds): boolean =>
  x >= minX - tolerance.holds &&
  x <= maxX + tolerance.holds &&
  y >= minY - tolerance.holds &&
  y <= maxY + tolerance.holds;

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
