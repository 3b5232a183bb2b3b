import { endTangent, startTangent } from './along.ts';
import { pathEnd, pathStart } from './paths.ts';
import { add, scale, subtract } from './points.ts';
import type { Path, Point, Segment } from './types.ts';

/** The path made longer by a straight stretch along its tangent at one end. Throws on a length under 0; 0 changes nothing. */
export const extendPath = (path: Path, end: 'start' | 'end', mm: number): Path => {
  if (!(mm >= 0 && mm < Infinity)) throw new RangeError(`Cannot extend a path by ${mm} mm`);
  if (mm === 0) return path;
  if (end === 'end') {
    const from = pathEnd(path);
    return [...path, { kind: 'line', from, to: add(from, scale(endTangent(path), mm)) }];
  }
  const to = pathStart(path);
  return [{ kind: 'line', from: add(to, scale(startTangent(path), -mm)), to }, ...path];
};

/** A segment with its start moved; a curve's handle there moves along, so that its tangent stays. */
export const withStart = (segment: Segment, from: Point): Segment =>
  segment.kind === 'line'
    ? { ...segment, from }
    : { ...segment, from, control1: add(segment.control1, subtract(from, segment.from)) };

/** A segment with its end moved; a curve's handle there moves along, so that its tangent stays. */
export const withEnd = (segment: Segment, to: Point): Segment =>
  segment.kind === 'line'
    ? { ...segment, to }
    : { ...segment, to, control2: add(segment.control2, subtract(to, segment.to)) };

/** A path with its first point moved, as `withStart`. */
export const pathWithStart = (path: Path, from: Point): Path =>
  path.map((segment, i) => (i === 0 ? withStart(segment, from) : segment));

/** A path with its last point moved, as `withEnd`. */
export const pathWithEnd = (path: Path, to: Point): Path =>
  path.map((segment, i) => (i === path.length - 1 ? withEnd(segment, to) : segment));
