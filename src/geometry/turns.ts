import { segmentLengths } from './along.ts';
import { isClosed, segmentAt } from './paths.ts';
import { turnBetween } from './points.ts';
import { segmentTangentAt } from './segments.ts';
import type { Path } from './types.ts';

/** The turn at a joint. */
export interface Turn {
  /** Radians, positive clockwise as seen. */
  readonly angle: number;
  /** Length from the path's start to the joint, mm. */
  readonly atLength: number;
}

/** The turn at every joint between neighbours, in order; on a closed path that at its start comes last, at its whole length. */
export const turnsAtJoints = (path: Path): Turn[] => {
  const turns: Turn[] = [];
  let atLength = 0;
  segmentLengths(path).forEach((size, i) => {
    atLength += size;
    const next = i + 1 < path.length ? segmentAt(path, i + 1) : isClosed(path) ? segmentAt(path, 0) : null;
    if (next)
      turns.push({ angle: turnBetween(segmentTangentAt(segmentAt(path, i), 1), segmentTangentAt(next, 0)), atLength });
  });
  return turns;
};

/** The sharpest of them; a turn of 0 at the start when there are no joints. */
export const maximumTurn = (path: Path): Turn =>
  turnsAtJoints(path).reduce((most, turn) => (Math.abs(turn.angle) > Math.abs(most.angle) ? turn : most), {
    angle: 0,
    atLength: 0,
  });
