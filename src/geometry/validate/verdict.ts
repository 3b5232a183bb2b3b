import { segmentPointAt } from '../segments.ts';
import type { Path, Point } from '../types.ts';

/** What a validator found: everything wrong, in words with figures, and the largest error it measured, mm unless it says otherwise. */
export interface Verdict {
  readonly faults: readonly string[];
  readonly worst: number;
}

/** Gathers the faults and the worst error of one validation. */
export class Findings {
  private readonly faults: string[] = [];
  private worst = 0;

  /** Notes an error; over what is allowed (or not a number) it is a fault. */
  measure(what: string, error: number, allowed: number): void {
    const size = Math.abs(error);
    if (size > this.worst) this.worst = size;
    if (!(size <= allowed)) this.faults.push(`${what}: ${size}, allowed ${allowed}`);
  }

  require(what: string, holds: boolean): void {
    if (!holds) this.faults.push(what);
  }

  verdict(): Verdict {
    return { faults: this.faults, worst: this.worst };
  }
}

/** Points along every segment at even parameters, ends included: how validators look at a path without its algorithms. */
export const pointsAlong = (path: Path, perSegment: number): Point[] =>
  path.flatMap((segment) => Array.from({ length: perSegment + 1 }, (_, i) => segmentPointAt(segment, i / perSegment)));

/** Length of the straight lines through points. */
export const chordSum = (points: readonly Point[]): number =>
  points
    .slice(1)
    .reduce((sum, p, i) => sum + Math.hypot(p.x - (points[i] as Point).x, p.y - (points[i] as Point).y), 0);

/** Whether every segment begins to the last bit where the one before ends. */
export const isJoined = (path: Path): boolean =>
  path.every((segment, i) => i === 0 || (path[i - 1]?.to.x === segment.from.x && path[i - 1]?.to.y === segment.from.y));

/** Distance from a point to straight lines through points, by trying every one. */
export const distanceToChain = (chain: readonly Point[], p: Point): number => {
  let least = Infinity;
  for (let i = 1; i < chain.length; i++) {
    const a = chain[i - 1] as Point;
    const b = chain[i] as Point;
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const square = dx * dx + dy * dy;
    const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
    const x = a.x + dx * t - p.x;
    const y = a.y + dy * t - p.y;
    least = Math.min(least, x * x + y * y);
  }
  return Math.sqrt(least);
};
