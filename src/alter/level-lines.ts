import { line, pathEnd, pathStart, tolerance } from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import { crossingsAt } from './across.ts';

const isLevel = (inner: InnerLine): boolean =>
  Math.abs(pathStart(inner.path).y - pathEnd(inner.path).y) <= tolerance.holds;

/**
 * Lines to lengthen at, which lay level before and were bent by parts that turned, drawn level again from edge to edge at
 * the height of their middle. One that no longer goes clear across stays as it was carried.
 */
export const levelLines = (before: Piece, after: Piece): Piece => ({
  ...after,
  lines: after.lines.map((inner) => {
    const was = before.lines.find(({ id }) => id === inner.id);
    if (inner.kind !== 'lengthen-or-shorten' || !was || !isLevel(was)) return inner;
    const y = (pathStart(inner.path).y + pathEnd(inner.path).y) / 2;
    const [left, right, more] = crossingsAt(after, y);
    return left && right && !more ? { ...inner, path: [line({ x: left.x, y }, { x: right.x, y })] } : inner;
  }),
});
