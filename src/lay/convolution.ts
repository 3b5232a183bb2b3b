/**
 * The convolution of two polygons (Guibas, Ramshaw, Stolfi: A kinetic framework for computational
 * geometry, 1983): closed tracings whose winding number at t is the number of separate regions in
 * which A and −B moved by t meet, so that everything wound about at least once is their Minkowski sum.
 */

/** Corners x, y in turn on a whole-number grid, running with positive shoelace area. */
export type GridPolygon = Float64Array;

interface Turning {
  readonly count: number;
  /** Direction of the edge that leaves each corner, radians. */
  readonly direction: Float64Array;
}

const turningOf = (polygon: GridPolygon): Turning => {
  const count = polygon.length / 2;
  const direction = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    const dx = (polygon[2 * j] as number) - (polygon[2 * i] as number);
    const dy = (polygon[2 * j + 1] as number) - (polygon[2 * i + 1] as number);
    // Adding zero turns −0 into 0: due west must be π for every edge, never −π.
    direction[i] = Math.atan2(dy + 0, dx + 0);
  }
  return { count, direction };
};

const wrap = (angle: number): number => (angle < 0 ? angle + 2 * Math.PI : angle);

/**
 * How a corner sweeps over a direction as the run turns there: +1 on an outward corner, −1 on an inward
 * one, 0 when the direction lies outside the turn. Of the two ends of the sweep one counts, so that
 * parallel edges meet once: the lower one when `closedBelow`.
 */
const sweep = (turning: Turning, corner: number, direction: number, closedBelow: boolean): number => {
  const arriving = turning.direction[(corner + turning.count - 1) % turning.count] as number;
  const leaving = turning.direction[corner] as number;
  const turn = wrap(leaving - arriving);
  const outward = turn < Math.PI;
  const from = outward ? arriving : leaving;
  const to = outward ? leaving : arriving;
  if (from === to) return 0;
  const inside = closedBelow
    ? from < to
      ? direction >= from && direction < to
      : direction >= from || direction < to
    : from < to
      ? direction > from && direction <= to
      : direction > from || direction <= to;
  return inside ? (outward ? 1 : -1) : 0;
};

/** The closed tracings of the convolution of `a` and `b`, as corner runs. */
export const convolve = (a: GridPolygon, b: GridPolygon): { x: number; y: number }[][] => {
  const ta = turningOf(a);
  const tb = turningOf(b);
  const [m, n] = [ta.count, tb.count];
  // A corner of the tracing is a pair (corner of a, corner of b); `leaving[pair]` lists where the tracing goes on to.
  const leaving = new Map<number, number[]>();
  const add = (from: number, to: number): void => {
    const onward = leaving.get(from);
    if (onward) onward.push(to);
    else leaving.set(from, [to]);
  };
  for (let i = 0; i < m; i++) {
    const next = (i + 1) % m;
    for (let j = 0; j < n; j++) {
      const sign = sweep(tb, j, ta.direction[i] as number, true);
      if (sign > 0) add(i * n + j, next * n + j);
      else if (sign < 0) add(next * n + j, i * n + j);
    }
  }
  for (let j = 0; j < n; j++) {
    const next = (j + 1) % n;
    for (let i = 0; i < m; i++) {
      const sign = sweep(ta, i, tb.direction[j] as number, false);
      if (sign > 0) add(i * n + j, i * n + next);
      else if (sign < 0) add(i * n + next, i * n + j);
    }
  }
  const tracings: { x: number; y: number }[][] = [];
  for (const [start, onward] of leaving) {
    while (onward.length > 0) {
      const tracing: { x: number; y: number }[] = [];
      let pair = start;
      do {
        const i = Math.floor(pair / n);
        const j = pair % n;
        tracing.push({
          x: (a[2 * i] as number) + (b[2 * j] as number),
          y: (a[2 * i + 1] as number) + (b[2 * j + 1] as number),
        });
        const next = leaving.get(pair)?.pop();
        if (next === undefined) throw new Error('The convolution of two closed polygons has an open end');
        pair = next;
      } while (pair !== start);
      tracings.push(tracing);
    }
  }
  return tracings;
};
