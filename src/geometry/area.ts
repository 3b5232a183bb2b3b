import { pathStart } from './paths.ts';
import type { Outline, Path, Point } from './types.ts';

/**
 * Signed area of an outline, mm²: positive when it runs clockwise as seen (x right, y down). Exact for lines and
 * cubics: Green's theorem, ½∮(x dy − y dx), worked out for the Bernstein basis.
 */
export const outlineArea = (outline: Outline): number =>
  // Measured from a point of the outline, so that a piece far from the origin loses no digits.
  areaSwept(outline, pathStart(outline));

/**
 * Signed area swept by the line from a fixed point to one that travels the path, mm². Two lines between the same ends
 * enclose the difference of theirs, whatever the fixed point; so do any closed round of paths in sum.
 */
export const areaSwept = (path: Path, { x: ox, y: oy }: Point): number => {
  let sum = 0;
  for (const segment of path) {
    const x0 = segment.from.x - ox;
    const y0 = segment.from.y - oy;
    const x3 = segment.to.x - ox;
    const y3 = segment.to.y - oy;
    if (segment.kind === 'line') {
      sum += (x0 * y3 - y0 * x3) / 2;
      continue;
    }
    const x1 = segment.control1.x - ox;
    const y1 = segment.control1.y - oy;
    const x2 = segment.control2.x - ox;
    const y2 = segment.control2.y - oy;
    sum +=
      (6 * (x0 * y1 - y0 * x1) +
        3 * (x0 * y2 - y0 * x2) +
        (x0 * y3 - y0 * x3) +
        3 * (x1 * y2 - y1 * x2) +
        3 * (x1 * y3 - y1 * x3) +
        6 * (x2 * y3 - y2 * x3)) /
      20;
  }
  return sum;
};
