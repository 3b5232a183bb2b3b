import {
  nearestOnPath,
  type Path,
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
  const differs = (at: number): boolean => nearestOnPath(other, pathPointAtLength(path, at)).distance > tolerance.holds;
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
