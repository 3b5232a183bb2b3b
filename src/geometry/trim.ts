import { splitPathAtLength } from './along.ts';
import { pathWithEnd, pathWithStart } from './ends.ts';
import type { PathCrossing } from './intersect.ts';
import { intersectPaths } from './intersect.ts';
import { pathLength } from './paths.ts';
import type { Path } from './types.ts';

/**
 * Two paths cut off where the first crosses the second, so that the first ends exactly where the second begins:
 * what is left is the first up to the crossing and the second from it on. Of several crossings the one
 * that cuts off least. Null when they do not meet, or when nothing would be left of one of them.
 */
export const trimToMeet = (a: Path, b: Path): readonly [Path, Path] | null => {
  const whole = pathLength(a);
  let best: PathCrossing | null = null;
  let least = Infinity;
  for (const crossing of intersectPaths(a, b)) {
    const lost = whole - crossing.lengthA + crossing.lengthB;
    if (lost >= least) continue;
    best = crossing;
    least = lost;
  }
  if (!best) return null;
  const before = splitPathAtLength(a, best.lengthA)[0];
  const after = splitPathAtLength(b, best.lengthB)[1];
  return before && after ? [pathWithEnd(before, best.point), pathWithStart(after, best.point)] : null;
};
