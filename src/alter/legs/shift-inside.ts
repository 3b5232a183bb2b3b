import { type Path, type Point, pathLength } from '../../geometry/index.ts';
import { easedField } from '../fields.ts';
import { jointed, warped } from '../warp.ts';

/**
 * A curve with one end moved by a vector, the other left alone with its direction: every point goes along by a share of the
 * vector that grows evenly from nothing `reach` mm away from that end to all of it.
 */
export const endMoved = (path: Path, end: 'start' | 'end', by: Point, reach: number): Path => {
  const length = pathLength(path);
  const nothing = { by: { x: 0, y: 0 } };
  const far = Math.min(reach, length);
  const from = end === 'end' ? length - far : far;
  const field = end === 'end' ? easedField(from, length, nothing, { by }) : easedField(0, from, { by }, nothing);
  return warped(jointed(path, [from]), field);
};
