import {
  dot,
  line,
  type Path,
  pathPointAtLength,
  pathTangentAtLength,
  segmentLengths,
  subtract,
  tolerance,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { FormerCut } from './join.ts';
import { type RingRun, ringOf } from './ring.ts';

import { blended, corners, findStretch, joints, type Redrawn, smoothTurn, trued } from './stretch.ts';

/** How far on each side of a former cut a curve is blended, mm (trade: 50 to 80). */
const reach = 65;

/** A blend may end this near, mm, where a notch marks a level of the body there: its width then stays. */
const leastReach = 50;

const straightBetween = (path: Path, from: number, to: number): boolean => {
  const ends = segmentLengths(path);
  let at = 0;
  return path.every((segment, i) => {
    const begins = at;
    at += ends[i] as number;
    const outside = at <= from + tolerance.walk || begins >= to - tolerance.walk;
    return outside || segment.kind === 'line';
  });
};

/** Places of notches along one run, mm from its start, in order. */
const notchesAlong = (piece: Piece, run: number): readonly number[] => {
  const ring = ringOf(piece);
  const own = ring.runs[run] as RingRun;
  const edge = own.run.kind === 'edge' ? own.run.edge : '';
  return piece.notches
    .filter((notch) => notch.edge === edge)
    .map((notch) => notch.at * (ring.edgeLengths.get(edge) ?? 0) - own.edgeStart)
    .sort((a, b) => a - b);
};

/**
 * Trues an edge where it was cut: what was straight between two corners is drawn straight again from
 * corner to corner; a curve is blended over 65 mm on each side of the cut, or up to the corner where that
 * is nearer, or to a notch at least 50 mm off; its tangents are kept. Where parts overlap the blend reaches further by half the overlap.
 * An edge that is to keep the turn its parts were given is only blended, never drawn straight.
 */
export const redraw = (piece: Piece, former: FormerCut, straighten = true): Redrawn => {
  const nothing: Redrawn = { piece, strayed: 0, area: 0 };
  const stretch = findStretch(piece, former);
  if (!stretch) return nothing;
  const { path, from, to } = stretch;
  const kinked = joints(path).some(
    ({ at, turn }) => at > from - tolerance.walk && at < to + tolerance.walk && turn > smoothTurn,
  );
  if (!kinked) return nothing;
  const [low, high] = corners(path, from, to);
  if (straighten && straightBetween(path, low, high)) {
    return trued(piece, stretch, low, high, [line(pathPointAtLength(path, low), pathPointAtLength(path, high))]);
  }
  const overlap = Math.max(-dot(subtract(former.after, former.before), pathTangentAtLength(path, from, 'before')), 0);
  const out = reach + overlap / 2;
  const marks = notchesAlong(piece, stretch.run);
  const before = marks.find((at) => at > from - out && at <= from - leastReach);
  const after = marks.findLast((at) => at < to + out && at >= to + leastReach);
  const start = Math.max(before ?? from - out, low);
  const end = Math.min(after ?? to + out, high);
  return trued(piece, stretch, start, end, blended(path, start, end));
};
