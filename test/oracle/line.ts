import { type Spot, type Stroke, type Strokes, sampled, spotAt } from './path.ts';

/** Points, directions and distances on printed paths. */

export const minus = (a: Spot, b: Spot): Spot => ({ x: a.x - b.x, y: a.y - b.y });
export const along = (from: Spot, way: Spot, by: number): Spot => ({ x: from.x + way.x * by, y: from.y + way.y * by });
export const apart = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);
export const unit = (way: Spot): Spot => {
  const size = Math.hypot(way.x, way.y);
  return size === 0 ? way : { x: way.x / size, y: way.y / size };
};

/** Outward of a clockwise outline is to the left of travel, y down. */
export const outward = (way: Spot): Spot => ({ x: way.y, y: -way.x });

export const startOf = (run: Strokes): Spot => (run[0] as Stroke).points[0];
export const endOf = (run: Strokes): Spot => (run.at(-1) as Stroke).points.at(-1) as Spot;

/** Direction of travel at a stroke's beginning or end; control points that coincide are passed over. */
export const wayAt = (stroke: Stroke, end: 'start' | 'end'): Spot => {
  const points: readonly Spot[] = end === 'start' ? stroke.points : [...stroke.points].reverse();
  const from = points[0] as Spot;
  const other = points.find((point) => apart(point, from) > 1e-6) ?? from;
  return unit(end === 'start' ? minus(other, from) : minus(from, other));
};

/** Angle from one direction to another, radians, unsigned. */
export const turn = (a: Spot, b: Spot): number => Math.abs(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y));

/** Where the line from p along u meets the line from q along v; null where they run alike. */
export const meeting = (p: Spot, u: Spot, q: Spot, v: Spot): Spot | null => {
  const det = u.x * v.y - u.y * v.x;
  if (Math.abs(det) < 0.02) return null;
  const by = ((q.x - p.x) * v.y - (q.y - p.y) * v.x) / det;
  return along(p, u, by);
};

/** Mirror image of a point in the line through `on` along `way`. */
export const reflected = (point: Spot, on: Spot, way: Spot): Spot => {
  const d = minus(point, on);
  const inLine = d.x * way.x + d.y * way.y;
  return { x: on.x + 2 * inLine * way.x - d.x, y: on.y + 2 * inLine * way.y - d.y };
};

const toChord = (p: Spot, a: Spot, b: Spot): number => {
  const d = minus(b, a);
  const size = d.x * d.x + d.y * d.y;
  const t = size === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * d.x + (p.y - a.y) * d.y) / size));
  return apart(p, along(a, d, t));
};

/** A printed line made ready for asking how far points lie from it: chords binned in cells. */
export interface Line {
  readonly spots: readonly Spot[];
  readonly distance: (p: Spot) => number;
  /** Whether a point lies within a closed line. */
  readonly holds: (p: Spot) => boolean;
}

export const lineOf = (runs: readonly Strokes[], step = 1): Line => {
  const chains = runs.map((run) => sampled(run, step));
  const chords = chains.flatMap((spots) => spots.slice(1).map((b, i) => [spots[i] as Spot, b] as const));
  const boxes = chords.map(
    ([a, b]) => [Math.min(a.x, b.x), Math.max(a.x, b.x), Math.min(a.y, b.y), Math.max(a.y, b.y)] as const,
  );
  // A closed line printed to so many places may end a hair from where it began: through that gap no ray may slip.
  const closing = chains.flatMap((spots) => {
    const [first, last] = [spots[0], spots.at(-1)];
    return first && last ? [[last, first] as const] : [];
  });
  return {
    spots: chains.flat(),
    distance: (p) => {
      let best = Number.POSITIVE_INFINITY;
      chords.forEach(([a, b], i) => {
        const [left, right, top, bottom] = boxes[i] as (typeof boxes)[number];
        if (p.x < left - best || p.x > right + best || p.y < top - best || p.y > bottom + best) return;
        best = Math.min(best, toChord(p, a, b));
      });
      return best;
    },
    holds: (p) =>
      [...chords, ...closing].reduce(
        (inside, [a, b]) =>
          a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x ? !inside : inside,
        false,
      ),
  };
};

/** Places along a stroke, with the direction there. */
export const places = (stroke: Stroke, count: number): readonly { readonly at: Spot; readonly way: Spot }[] =>
  Array.from({ length: count }, (_, i) => {
    const t = (i + 0.5) / count;
    return { at: spotAt(stroke, t), way: unit(minus(spotAt(stroke, t + 1e-4), spotAt(stroke, t - 1e-4))) };
  });
