import { type Mark, markBounds, type TextWidth } from '../draw/index.ts';
import { distance, flattenPath, lerp, type Point, tolerance } from '../geometry/index.ts';
import type { IsClear } from './print-tile.ts';

const cell = 4;

/** Remembers where marks are, in cells of 4 mm, and tells where none are. Errs on the side of finding things busy. */
export const clearOf = (marks: readonly Mark[], textWidth: TextWidth): IsClear => {
  const busy = new Set<number>();
  const key = (column: number, row: number) => row * 65_536 + column;
  const take = (p: Point) => busy.add(key(Math.floor(p.x / cell), Math.floor(p.y / cell)));
  const visit = (mark: Mark): void => {
    if (mark.kind === 'group') {
      for (const inner of mark.marks) visit(inner);
    } else if (mark.kind === 'text') {
      const bounds = markBounds(mark, textWidth);
      if (!bounds) return;
      for (let y = bounds.minY; y < bounds.maxY + cell; y += cell) {
        for (let x = bounds.minX; x < bounds.maxX + cell; x += cell) {
          take({ x: Math.min(x, bounds.maxX), y: Math.min(y, bounds.maxY) });
        }
      }
    } else if (mark.ink !== 'paper') {
      for (const path of mark.paths) takeLine(flattenPath(path, tolerance.flatten), take);
    }
  };
  for (const mark of marks) visit(mark);
  return (centre, halfWidth, halfHeight) => {
    const [left, right] = [Math.floor((centre.x - halfWidth) / cell), Math.floor((centre.x + halfWidth) / cell)];
    const [top, bottom] = [Math.floor((centre.y - halfHeight) / cell), Math.floor((centre.y + halfHeight) / cell)];
    for (let row = top; row <= bottom; row += 1) {
      for (let column = left; column <= right; column += 1) if (busy.has(key(column, row))) return false;
    }
    return true;
  };
};

const takeLine = (points: readonly Point[], take: (p: Point) => void): void => {
  points.slice(1).forEach((to, index) => {
    const from = points[index] as Point;
    const steps = Math.max(1, Math.ceil(distance(from, to) / (cell / 2)));
    for (let i = 0; i <= steps; i += 1) take(lerp(from, to, i / steps));
  });
};
