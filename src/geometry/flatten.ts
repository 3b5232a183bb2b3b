import { pathStart } from './paths.ts';
import { segmentPointAt } from './segments.ts';
import { tolerance } from './tolerance.ts';
import type { Cubic, Path, Point } from './types.ts';

/**
 * Points on the path, first and last included, so that the straight lines between them stray from it by at
 * most `within` mm. The points lie on the curve, so the lines lie on its hollow side. A closed path's last
 * point repeats its first.
 */
export const flattenPath = (path: Path, within: number = tolerance.flatten): Point[] => {
  if (!(within > 0)) throw new RangeError(`Not a tolerance: ${within}`);
  const points = [pathStart(path)];
  for (const segment of path) {
    if (segment.kind === 'cubic') {
      const count = stepsWithin(segment, within);
      for (let i = 1; i < count; i++) points.push(segmentPointAt(segment, i / count));
    }
    points.push(segment.to);
  }
  return points;
};

/** How many equal steps of the parameter keep every chord within a distance of the curve (Wang's formula, 1984). */
export const stepsWithin = ({ from, control1, control2, to }: Cubic, within: number): number => {
  const first = Math.hypot(control2.x - 2 * control1.x + from.x, control2.y - 2 * control1.y + from.y);
  const second = Math.hypot(to.x - 2 * control2.x + control1.x, to.y - 2 * control2.y + control1.y);
  return Math.max(1, Math.ceil(Math.sqrt((0.75 * Math.max(first, second)) / within)));
};
