import { pathPointAtLength } from '../along.ts';
import type { PathCrossing } from '../intersect.ts';
import { intersectPaths } from '../intersect.ts';
import { pathLength } from '../paths.ts';
import { distance } from '../points.ts';
import { selfIntersections } from '../self-intersect.ts';
import { tolerance } from '../tolerance.ts';
import type { Path, Point } from '../types.ts';
import type { Verdict } from './verdict.ts';
import { Findings, pointsAlong } from './verdict.ts';

/** Chords to a segment when crossings are counted the plain way. */
const chords = 96;

/** A chord pair shows a crossing for sure when both cross well inside, at an angle one could draw. */
const plain = { inside: 0.02, angle: 0.02 };

/** `intersectPaths`: every point reported lies on both, and every plain crossing of the paths' chords is reported. */
export const validateCrossings = (a: Path, b: Path): Verdict => {
  const findings = new Findings();
  const found = intersectPaths(a, b);
  soundness(findings, found, a, b);
  completeness(findings, found, plainCrossings(pointsAlong(a, chords), pointsAlong(b, chords), false), a, b);
  return findings.verdict();
};

/** `selfIntersections`: as for two paths, and that what it reports are two places on the path. */
export const validateSelfCrossings = (path: Path): Verdict => {
  const findings = new Findings();
  const found = selfIntersections(path);
  soundness(findings, found, path, path);
  const whole = pathLength(path);
  for (const { lengthA, lengthB } of found) {
    const apart = lengthB - lengthA;
    findings.require(`a joint reported at ${lengthA}`, apart > tolerance.length && whole - apart > 0);
  }
  const chain = pointsAlong(path, chords);
  completeness(findings, found, plainCrossings(chain, chain, true), path, path);
  return findings.verdict();
};

function soundness(findings: Findings, found: readonly PathCrossing[], a: Path, b: Path): void {
  for (const { point, lengthA, lengthB } of found) {
    // Lengths are good to tolerance.length, and so is a point found by one.
    findings.measure('off the first', distance(point, pathPointAtLength(a, lengthA)), tolerance.length);
    findings.measure('off the second', distance(point, pathPointAtLength(b, lengthB)), tolerance.length);
  }
}

function completeness(
  findings: Findings,
  found: readonly PathCrossing[],
  sure: readonly Point[],
  a: Path,
  b: Path,
): void {
  const reach = (2 * Math.max(pathLength(a), pathLength(b))) / chords;
  for (const p of sure) {
    const near = found.some(({ point }) => distance(point, p) <= reach);
    findings.require(`no crossing reported near (${p.x}, ${p.y})`, near);
  }
}

function plainCrossings(a: readonly Point[], b: readonly Point[], same: boolean): Point[] {
  const crossings: Point[] = [];
  for (let i = 1; i < a.length; i++) {
    const p = a[i - 1] as Point;
    const ux = (a[i] as Point).x - p.x;
    const uy = (a[i] as Point).y - p.y;
    for (let j = same ? i + 2 : 1; j < b.length; j++) {
      const q = b[j - 1] as Point;
      const vx = (b[j] as Point).x - q.x;
      const vy = (b[j] as Point).y - q.y;
      const across = ux * vy - uy * vx;
      // The chords of a segment of no length are rounding, not lines.
      if (Math.min(Math.hypot(ux, uy), Math.hypot(vx, vy)) <= tolerance.same) continue;
      if (Math.abs(across) <= plain.angle * Math.hypot(ux, uy) * Math.hypot(vx, vy)) continue;
      const t = ((q.x - p.x) * vy - (q.y - p.y) * vx) / across;
      const s = ((q.x - p.x) * uy - (q.y - p.y) * ux) / across;
      const wellInside = (x: number): boolean => x > plain.inside && x < 1 - plain.inside;
      if (wellInside(t) && wellInside(s)) crossings.push({ x: p.x + ux * t, y: p.y + uy * t });
    }
  }
  return crossings;
}
