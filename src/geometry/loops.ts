import { splitPathAtLengths } from './along.ts';
import { pathWithStart } from './ends.ts';
import type { PathCrossing } from './intersect.ts';
import { pathEnd, pathLength } from './paths.ts';
import { tolerance } from './tolerance.ts';
import type { Path } from './types.ts';

/**
 * A line that meets itself, made simple. A simple line passes a crossing once, so wherever the line meets itself
 * the way goes straight over to the later passage; what ran between is a loop and is left out.
 */
export const withoutLoops = (line: Path, crossings: readonly PathCrossing[]): Path => {
  if (crossings.length === 0) return line;
  const whole = pathLength(line);
  const inner = (mm: number): boolean => mm > tolerance.same && mm < whole - tolerance.same;
  let kept: Path = [];
  let from = 0;
  while (whole - from > tolerance.same) {
    const next = firstAfter(crossings, from);
    const to = next ? next.lengthA : whole;
    if (to - from > tolerance.same) {
      const pieces = splitPathAtLengths(line, [from, to].filter(inner));
      const piece = pieces[inner(from) ? 1 : 0] as Path;
      kept = kept.length === 0 ? piece : [...kept, ...pathWithStart(piece, pathEnd(kept))];
    }
    if (!next) break;
    from = next.lengthB;
  }
  if (kept.length === 0) throw new RangeError(`Nothing is left of a line of ${whole} mm without its loops`);
  return kept;
};

/** Of several at one place, the one that leaves out most. */
function firstAfter(crossings: readonly PathCrossing[], from: number): PathCrossing | undefined {
  let first: PathCrossing | undefined;
  for (const crossing of crossings) {
    if (crossing.lengthA < from) continue;
    const sooner = !first || crossing.lengthA < first.lengthA - tolerance.same;
    const longer = first && crossing.lengthA <= first.lengthA + tolerance.same && crossing.lengthB > first.lengthB;
    if (sooner || longer) first = crossing;
  }
  return first;
}
