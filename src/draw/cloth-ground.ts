import { type Path, pathBounds } from '../geometry/index.ts';
import { pathMark, stroke } from './marks.ts';
import type { PathMark } from './types.ts';

/** Cloth as light as this, from black 0 to white 1, cannot be told from paper by its colour. */
const asLightAsPaper = 0.85;

/** How light a colour written `#rrggbb` is; what is written otherwise is taken for white. */
const lightness = (colour: string): number => {
  const parts = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour);
  if (!parts) return 1;
  const [red, green, blue] = parts.slice(1).map((part) => Number.parseInt(part, 16) / 255) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

/** Slanting strokes over a rectangle of cloth too light to be told from the paper that lies on it; none on other cloth. */
export const clothGround = (cloth: Path, colour: string, apart: number): readonly PathMark[] => {
  if (lightness(colour) < asLightAsPaper) return [];
  const { minX, maxX, minY, maxY } = pathBounds(cloth);
  const height = maxY - minY;
  const count = Math.floor((maxX - minX + height) / apart);
  const strokes = Array.from({ length: count }, (_, index) => {
    // Rising to the right at 45°: x + y is the same all along a stroke.
    const along = (index + 1) * apart;
    const foot = { x: Math.max(minX, minX + along - height), y: minY + Math.min(height, along) };
    const right = Math.min(maxX, minX + along);
    return stroke(foot, { x: right, y: minY + along - (right - minX) });
  });
  return [pathMark('cloth', 'faint', ...strokes)];
};
