import { pathPointAtLength, segmentLengths, subPath } from './along.ts';
import { hullBounds } from './bounds.ts';
import { withStart } from './ends.ts';
import { withoutLoops } from './loops.ts';
import { nearestPlace } from './nearest.ts';
import { offsetJoint } from './offset-joint.ts';
import type { OffsetStretch } from './offset-segment.ts';
import { fitWithin, offsetSegment } from './offset-segment.ts';
import { isClosed, pathLength, segmentAt } from './paths.ts';
import { distance } from './points.ts';
import { segmentPointAt, splitSegment } from './segments.ts';
import { selfIntersections } from './self-intersect.ts';
import { tolerance } from './tolerance.ts';
import type { Path, Point, Segment } from './types.ts';

/**
 * The line at an even distance to the left of travel as seen (outward of a clockwise outline); a negative
 * distance gives the right. It strays from the true offset by at most `tolerance.offset`; lines come out
 * exact, and tangents at both ends are kept.
 *
 * Meant for one smooth run. Where it has a corner, the outside runs on straight to where both sides meet (cut
 * square beyond a right angle) and the inside is trimmed; where the distance is deeper than a curve's
 * radius, the loop this makes is trimmed away, and so is what else comes too near the path; where that leaves several
 * parts the longest is given. Throws when nothing is left.
 */
export const offsetPath = (path: Path, by: number): Path => {
  if (!Number.isFinite(by)) throw new RangeError(`Cannot offset by ${by} mm`);
  if (by === 0) return path;
  const closed = isClosed(path);
  const raw = withoutCollapsed(joined(path, by, closed), path, by);
  const line = raw.map(({ segment }) => segment);
  const crossings = line.length > 1 || line[0]?.kind === 'cubic' ? selfIntersections(line) : [];
  if (crossings.length === 0 && raw.every(({ inverted }) => !inverted)) return line;
  if (closed) {
    const turned = startingOnAnswer(path, raw, by);
    return withoutLoops(turned, selfIntersections(turned));
  }
  return longestFree(withoutLoops(line, crossings), path, by);
};

/** Offsets of all segments joined end to start. */
function joined(path: Path, by: number, closed: boolean): OffsetStretch[] {
  const result: OffsetStretch[] = [];
  path.forEach((segment, i) => {
    const [first, ...others] = offsetSegment(segment, by);
    if (!first) throw new Error('A segment always has an offset');
    const last = result.at(-1);
    if (!last) {
      result.push(first, ...others);
      return;
    }
    const joint = offsetJoint(last.segment, first.segment, segmentAt(path, i - 1), segment, by);
    result[result.length - 1] = { ...last, segment: joint.end };
    result.push(...joint.between, { ...first, segment: joint.start }, ...others);
  });
  if (closed) {
    const last = result.at(-1) as OffsetStretch;
    const before = result[0] as OffsetStretch;
    const joint = offsetJoint(last.segment, before.segment, segmentAt(path, -1), segmentAt(path, 0), by);
    result[result.length - 1] = { ...last, segment: joint.end };
    result[0] = { ...before, segment: withStart(result[0]?.segment as Segment, joint.start.from) };
    result.push(...joint.between);
  }
  return result;
}

/** Leaves out stretches too small to see, which a curve of just the offset's radius shrinks to. */
function withoutCollapsed(raw: readonly OffsetStretch[], path: Path, by: number): OffsetStretch[] {
  const kept: OffsetStretch[] = [];
  for (const stretch of raw) {
    const last = kept.at(-1);
    if (isSpeck(stretch.segment)) continue;
    const gap = last ? distance(last.segment.to, stretch.segment.from) : 0;
    if (last && gap > 0) {
      if (gap > tolerance.offset)
        kept.push({ ...last, segment: { kind: 'line', from: last.segment.to, to: stretch.segment.from } });
      else {
        kept.push({ ...stretch, segment: withStart(stretch.segment, last.segment.to) });
        continue;
      }
    }
    kept.push(stretch);
  }
  if (kept.length === 0) throw nothingLeft(path, by);
  return kept;
}

function isSpeck(segment: Segment): boolean {
  const box = hullBounds(segment);
  return box.maxX - box.minX + box.maxY - box.minY <= tolerance.offset / 4;
}

/** A closed offset turned to begin in the middle of a stretch that is surely part of the answer. */
function startingOnAnswer(path: Path, raw: readonly OffsetStretch[], by: number): Path {
  let best = -1;
  let most = 0;
  raw.forEach(({ segment, inverted }, i) => {
    const span = distance(segment.from, segment.to);
    if (!inverted && span > most && isFarEnough(path, segmentPointAt(segment, 0.5), by)) {
      best = i;
      most = span;
    }
  });
  const start = raw[best];
  if (!start) throw nothingLeft(path, by);
  const [before, after] = splitSegment(start.segment, 0.5);
  const line = raw.map(({ segment }) => segment);
  return [after, ...line.slice(best + 1), ...line.slice(0, best), before];
}

/** Looks taken along each segment for where a trimmed offset comes too near the path. */
const looks = 16;

/** The longest stretch that nowhere runs backwards or comes too near the path: such places are left where a loop does not close. */
function longestFree(line: Path, path: Path, by: number): Path {
  const farEnough = (mm: number): boolean => isFarEnough(path, pathPointAtLength(line, mm), by);
  /** The border between a near and a far place, on the far side. */
  const border = (near: number, far: number): number => {
    if (Math.abs(far - near) <= tolerance.length) return far;
    const middle = (near + far) / 2;
    return farEnough(middle) ? border(near, middle) : border(middle, far);
  };
  const whole = pathLength(line);
  const places = looksAlong(line).map((mm) => ({ mm, far: farEnough(mm) }));
  let best = { from: 0, to: 0 };
  let from: number | null = null;
  places.forEach(({ mm, far }, i) => {
    const before = places[i - 1];
    if (far) from ??= before ? border(before.mm, mm) : 0;
    const to = far ? (i === places.length - 1 ? whole : null) : before?.far ? border(mm, before.mm) : null;
    if (from === null || to === null) return;
    if (to - from > best.to - best.from) best = { from, to };
    from = null;
  });
  if (best.to - best.from <= tolerance.same) throw nothingLeft(path, by);
  return subPath(line, best.from, best.to);
}

function looksAlong(line: Path): number[] {
  const places = [0];
  let before = 0;
  for (const size of segmentLengths(line)) {
    for (let i = 1; i <= looks; i++) places.push(before + (size * i) / looks);
    before += size;
  }
  return places;
}

/** A trimmed offset may stand as near as the fit errs, and half as much again. */
function isFarEnough(path: Path, p: Point, by: number): boolean {
  return nearestPlace(path, p).distance >= Math.abs(by) - 1.5 * fitWithin;
}

function nothingLeft(path: Path, by: number): RangeError {
  return new RangeError(`Nothing is left of a path of ${path.length} segments offset by ${by} mm`);
}
