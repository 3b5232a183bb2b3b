import { applyToPath, applyToPoint, type Transform } from '../geometry/index.ts';
import type { Mark } from './types.ts';

/**
 * Marks moved, turned, or made larger or smaller as a whole. Type is scaled with them and turned upright again:
 * words are never mirrored, upside down, or slanted. A mark's ink, and with it the weight of its line, stays.
 */
export const moveMarks = (marks: readonly Mark[], transform: Transform): readonly Mark[] => {
  const size = Math.sqrt(Math.abs(transform.a * transform.d - transform.b * transform.c));
  return marks.map((mark): Mark => {
    if (mark.kind === 'group') return { ...mark, marks: moveMarks(mark.marks, transform) };
    if (mark.kind === 'path') return { ...mark, paths: mark.paths.map((path) => applyToPath(transform, path)) };
    const { angle, ...rest } = mark;
    const turned = turnedAngle(angle ?? 0, transform);
    return {
      ...rest,
      at: applyToPoint(transform, mark.at),
      size: mark.size * size,
      ...(turned.angle === 0 ? {} : { angle: turned.angle }),
      anchor: turned.flipped
        ? mark.anchor === 'start'
          ? 'end'
          : mark.anchor === 'end'
            ? 'start'
            : 'middle'
        : mark.anchor,
    };
  });
};

/** The direction words run in after the transform, taken the way round that can be read. */
const turnedAngle = (angle: number, t: Transform): { angle: number; flipped: boolean } => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const turned = Math.atan2(t.b * cos + t.d * sin, t.a * cos + t.c * sin);
  const halfTurn = Math.PI / 2;
  // Upwards and downwards both read, so only what lies beyond them is turned about.
  if (turned > halfTurn + 1e-9) return { angle: turned - Math.PI, flipped: true };
  if (turned < -halfTurn - 1e-9) return { angle: turned + Math.PI, flipped: true };
  return { angle: turned, flipped: false };
};
