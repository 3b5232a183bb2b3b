import { pathPointAtLength, pathTangentAtLength, splitPathAtLengths } from './along.ts';
import { fitCubic } from './fit-cubic.ts';
import { pathLength } from './paths.ts';
import { tolerance } from './tolerance.ts';
import type { Path } from './types.ts';

/** Points along the replaced stretch that the new curve keeps near to. */
const samples = 24;

/**
 * Smooth redraw: the stretch from `reachBefore` to `reachAfter` mm round a length is replaced by one curve that takes
 * up the directions at both its ends and otherwise keeps as near to the old line as it can. For a kink reach from
 * the kink; for a straight bridge from its middle. A reach that passes an end of the path stops there, and keeps the
 * direction there. Throws when the length is not on the path or a reach is under 0, or both are 0.
 */
export const blendCorner = (path: Path, atLength: number, reachBefore: number, reachAfter: number): Path => {
  if (!(reachBefore >= 0 && reachAfter >= 0 && reachBefore + reachAfter > 0)) {
    throw new RangeError(`Cannot blend over ${reachBefore} mm before and ${reachAfter} mm after`);
  }
  const whole = pathLength(path);
  if (!(atLength >= 0 && atLength <= whole))
    throw new RangeError(`No point at ${atLength} mm of a path ${whole} mm long`);
  const from = atLength - reachBefore <= tolerance.same ? 0 : atLength - reachBefore;
  const to = atLength + reachAfter >= whole - tolerance.same ? whole : atLength + reachAfter;
  const leaving = pathTangentAtLength(path, from, 'before');
  const arriving = pathTangentAtLength(path, to, 'after');
  const shares = Array.from({ length: samples + 1 }, (_, i) => i / samples);
  const points = shares.map((share) => pathPointAtLength(path, share === 1 ? to : from + (to - from) * share));
  const parts = splitPathAtLengths(
    path,
    [from, to].filter((mm) => mm > 0 && mm < whole),
  );
  const before = from > 0 ? (parts[0] as Path) : [];
  const after = to < whole ? (parts.at(-1) as Path) : [];
  return [...before, fitCubic(points, shares, leaving, arriving), ...after];
};
