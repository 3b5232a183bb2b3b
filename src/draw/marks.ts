import {
  add,
  type Bounds,
  boundsOfPoints,
  line,
  normalize,
  type Path,
  type Point,
  pathBounds,
  perpendicular,
  scale,
  subtract,
  unionOfBounds,
} from '../geometry/index.ts';
import type { Drawing, DrawingLayer, GroupMark, Ink, Mark, PathMark, TextMark } from './types.ts';

/** Lines in one ink. */
export const pathMark = (layer: DrawingLayer, ink: Ink, ...paths: readonly Path[]): PathMark => ({
  kind: 'path',
  layer,
  ink,
  paths,
});

/** Closed shapes filled with one ink. */
export const filledMark = (layer: DrawingLayer, ink: Ink, ...paths: readonly Path[]): PathMark => ({
  kind: 'path',
  layer,
  ink,
  paths,
  filled: true,
});

/** Words; left-aligned, regular and level unless told otherwise. */
export const textMark = (
  layer: DrawingLayer,
  ink: Ink,
  at: Point,
  text: string,
  size: number,
  how: { readonly anchor?: TextMark['anchor']; readonly angle?: number; readonly weight?: 'regular' | 'bold' } = {},
): TextMark => ({
  kind: 'text',
  layer,
  ink,
  at,
  text,
  size,
  anchor: how.anchor ?? 'start',
  ...(how.angle ? { angle: how.angle } : {}),
  ...(how.weight ? { weight: how.weight } : {}),
});

export const groupMark = (id: string, label: string, marks: readonly Mark[]): GroupMark => ({
  kind: 'group',
  id,
  label,
  marks,
});

/** A straight line between two points, as a path. */
export const stroke = (from: Point, to: Point): Path => [line(from, to)];

/** Closed rectangle, clockwise as seen. */
export const rectangle = (left: number, top: number, width: number, height: number): Path => {
  const corners: Point[] = [
    { x: left, y: top },
    { x: left + width, y: top },
    { x: left + width, y: top + height },
    { x: left, y: top + height },
  ];
  return corners.map((from, index) => line(from, corners[(index + 1) % 4] as Point));
};

/** How far a cubic's controls stand off for a quarter circle: within 0.03 % of the radius (Riškus 2006 gives the bound). */
const quarter = (4 / 3) * Math.tan(Math.PI / 8);

/** A circle of four cubics. */
export const circle = (centre: Point, radius: number): Path =>
  [0, 1, 2, 3]
    .map((turn) => {
      const [a, b] = [(turn * Math.PI) / 2, ((turn + 1) * Math.PI) / 2];
      const from = { x: centre.x + radius * Math.cos(a), y: centre.y + radius * Math.sin(a) };
      const to = { x: centre.x + radius * Math.cos(b), y: centre.y + radius * Math.sin(b) };
      const reach = quarter * radius;
      return {
        kind: 'cubic',
        from,
        control1: { x: from.x - reach * Math.sin(a), y: from.y + reach * Math.cos(a) },
        control2: { x: to.x + reach * Math.sin(b), y: to.y - reach * Math.cos(b) },
        to: turn === 3 ? { x: centre.x + radius, y: centre.y } : to,
      } as const;
    })
    .map((segment, index, all) => (index === 0 ? segment : { ...segment, from: (all[index - 1] as { to: Point }).to }));

/** A filled arrow head with its tip at `tip`, pointing along `direction`. */
export const arrowHead = (tip: Point, direction: Point, size: number): Path => {
  const along = normalize(direction);
  const back = subtract(tip, scale(along, size));
  const aside = scale(perpendicular(along), size * 0.32);
  const [left, right] = [add(back, aside), subtract(back, aside)];
  return [line(tip, left), line(left, right), line(right, tip)];
};

/** What a text takes up: exact for its place, generous for its width. */
export const textBounds = (mark: TextMark, width: number): Bounds => {
  const back = mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? width / 2 : width;
  const [cos, sin] = [Math.cos(mark.angle ?? 0), Math.sin(mark.angle ?? 0)];
  const corners = [
    [-back, -mark.size * 0.75],
    [width - back, -mark.size * 0.75],
    [width - back, mark.size * 0.25],
    [-back, mark.size * 0.25],
  ].map(([x, y]) => ({
    x: mark.at.x + (x as number) * cos - (y as number) * sin,
    y: mark.at.y + (x as number) * sin + (y as number) * cos,
  }));
  return boundsOfPoints(corners);
};

/** Width of text whose em is `size`. */
export type TextWidth = (text: string, size: number, weight: 'regular' | 'bold') => number;

/** Without the font at hand: a little more than Alegreya Sans takes for ordinary words. */
export const estimatedTextWidth: TextWidth = (text, size, weight) =>
  text.length * size * (weight === 'bold' ? 0.54 : 0.52);

/** Bounds of one mark; null for an empty group or path mark. */
export const markBounds = (mark: Mark, textWidth: TextWidth = estimatedTextWidth): Bounds | null => {
  if (mark.kind === 'text') return textBounds(mark, textWidth(mark.text, mark.size, mark.weight ?? 'regular'));
  if (mark.kind === 'path')
    return mark.paths.map(pathBounds).reduce<Bounds | null>((all, one) => (all ? unionOfBounds(all, one) : one), null);
  return marksBounds(mark.marks, textWidth);
};

export const marksBounds = (marks: readonly Mark[], textWidth: TextWidth = estimatedTextWidth): Bounds | null =>
  marks
    .map((mark) => markBounds(mark, textWidth))
    .reduce<Bounds | null>((all, one) => (all && one ? unionOfBounds(all, one) : (all ?? one)), null);

/** A drawing of these marks with a margin left round them. */
export const drawingOf = (label: string, marks: readonly Mark[], margin: number): Drawing => {
  const bounds = marksBounds(marks) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return {
    label,
    marks,
    bounds: {
      minX: bounds.minX - margin,
      minY: bounds.minY - margin,
      maxX: bounds.maxX + margin,
      maxY: bounds.maxY + margin,
    },
  };
};
