import { pathPointAtLength, splitPathAtLength } from './along.ts';
import { segmentLength } from './arc-length.ts';
import { hullBounds } from './bounds.ts';
import { withStart } from './ends.ts';
import { withoutLoops } from './loops.ts';
import { nearestPlace } from './nearest.ts';
import { offsetJoint } from './offset-joint.ts';
import type { OffsetStretch } from './offset-segment.ts';
import { fitWithin, offsetSegment } from './offset-segment.ts';
import { isClosed, pathLength, reversePath, segmentAt } from './paths.ts';
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
 * radius, the loop this makes is trimmed away, and at the path's ends what comes too near the path is cut off.
 * Where that leaves several parts the one that goes on is given. Throws when nothing is left.
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
  return withoutFalseEnds(withoutLoops(line, crossings), path, by);
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

/** What runs backwards at the ends, or comes too near another part of the path there, is cut off. */
function withoutFalseEnds(line: Path, path: Path, by: number): Path {
  const head = falseHead(line, path, by);
  const kept = head === null ? null : splitPathAtLength(line, head)[1];
  const tail = kept && falseHead(reversePath(kept), path, by);
  if (!kept || tail === null) throw nothingLeft(path, by);
  return tail === 0 ? kept : (splitPathAtLength(kept, pathLength(kept) - tail)[0] as Path);
}

const looks = 16;

/** Length from the start of a line to where it first stands far enough from the path; null when it nowhere does. */
function falseHead(line: Path, path: Path, by: number): number | null {
  const whole = pathLength(line);
  const farEnough = (mm: number): boolean => isFarEnough(path, pathPointAtLength(line, mm), by);
  let before = 0;
  let near = 0;
  for (const segment of line) {
    const size = segmentLength(segment);
    for (let i = 0; i <= looks; i++) {
      const mm = Math.min(whole, before + (size * i) / looks);
      if (!farEnough(mm)) {
        near = mm;
        continue;
      }
      if (mm === 0) return 0;
      let far = mm;
      while (far - near > tolerance.length) {
        const middle = (near + far) / 2;
        if (farEnough(middle)) far = middle;
        else near = middle;
      }
      return far;
    }
    before += size;
  }
  return null;
}

function isFarEnough(path: Path, p: Point, by: number): boolean {
  return nearestPlace(path, p).distance >= Math.abs(by) - fitWithin;
}

function nothingLeft(path: Path, by: number): RangeError {
  return new RangeError(`Nothing is left of a path of ${path.length} segments offset by ${by} mm`);
}
