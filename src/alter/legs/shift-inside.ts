import {
  fitCubics,
  type Path,
  type Point,
  pathLength,
  pathPointAtLength,
  pathTangentAtLength,
  smoothThrough,
  tolerance,
} from '../../geometry/index.ts';

/** Level at both ends. */
const smooth = (t: number): number => t * t * (3 - 2 * t);

/** Points a curve is drawn through anew, one about each so many mm. */
const spacing = 25;

/**
 * A curve with one end moved by a vector, the other left alone with its direction: every point goes along by a share of the
 * vector that grows from nothing at the still end, or at `from` (a share of its length from there), to all of it.
 */
export const endMoved = (path: Path, end: 'start' | 'end', by: Point, from = 0): Path => {
  const length = pathLength(path);
  const count = Math.max(3, Math.ceil(length / spacing));
  const shareAt = (mm: number): number => {
    const t = end === 'end' ? mm / length : 1 - mm / length;
    return smooth(Math.min(Math.max((t - from) / (1 - from), 0), 1));
  };
  const points = Array.from({ length: count + 1 }, (_, i): Point => {
    const mm = (length * i) / count;
    const p = pathPointAtLength(path, mm);
    const share = shareAt(mm);
    return { x: p.x + by.x * share, y: p.y + by.y * share };
  });
  const drawn = smoothThrough(points, {
    startTangent: pathTangentAtLength(path, 0),
    endTangent: pathTangentAtLength(path, length, 'before'),
  });
  return fitCubics(drawn, tolerance.holds);
};
