/** Reading printed paths (`M L C Z`, absolute) without any of the program's own code. */

export interface Spot {
  readonly x: number;
  readonly y: number;
}

interface Straight {
  readonly points: readonly [Spot, Spot];
}

interface Curve {
  readonly points: readonly [Spot, Spot, Spot, Spot];
}

export type Stroke = Straight | Curve;
export type Strokes = readonly Stroke[];

/** Every run of a printed path; a new `M` begins a new one. */
export const readRuns = (text: string): readonly Strokes[] => {
  const tokens = text.trim().split(/[\s,]+/);
  const runs: Stroke[][] = [];
  let start: Spot = { x: 0, y: 0 };
  let at: Spot = start;
  let place = 0;
  const spot = (): Spot => {
    const x = Number(tokens[place++]);
    const y = Number(tokens[place++]);
    if (!Number.isFinite(x) || !Number.isFinite(y)) throw new Error(`Not a printed path: ${text.slice(0, 60)}`);
    return { x, y };
  };
  const push = (stroke: Stroke) => {
    const run = runs[runs.length - 1];
    if (!run) throw new Error(`A printed path must begin with M: ${text.slice(0, 60)}`);
    run.push(stroke);
  };
  while (place < tokens.length) {
    const command = tokens[place++];
    if (command === 'M') {
      start = at = spot();
      runs.push([]);
    } else if (command === 'L') {
      const to = spot();
      push({ points: [at, to] });
      at = to;
    } else if (command === 'C') {
      const first = spot();
      const second = spot();
      const to = spot();
      push({ points: [at, first, second, to] });
      at = to;
    } else if (command === 'Z') {
      if (at.x !== start.x || at.y !== start.y) push({ points: [at, start] });
      at = start;
    } else throw new Error(`Not a command of a printed path: ${command}`);
  }
  return runs;
};

/** Point of a stroke at t, by de Casteljau's construction. */
export const spotAt = (stroke: Stroke, t: number): Spot => {
  let points: readonly Spot[] = stroke.points;
  while (points.length > 1) {
    points = points.slice(1).map((to, i) => {
      const from = points[i] as Spot;
      return { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
    });
  }
  return points[0] as Spot;
};

const chords = (stroke: Stroke, count: number): number => {
  let sum = 0;
  let last = spotAt(stroke, 0);
  for (let i = 1; i <= count; i += 1) {
    const next = spotAt(stroke, i / count);
    sum += Math.hypot(next.x - last.x, next.y - last.y);
    last = next;
  }
  return sum;
};

/** Length by chords doubled until Richardson's extrapolation settles to a micrometre. */
export const strokeLength = (stroke: Stroke): number => {
  if (stroke.points.length === 2) return chords(stroke, 1);
  let coarse = chords(stroke, 16);
  let guess = coarse;
  for (let count = 32; count <= 8192; count *= 2) {
    const fine = chords(stroke, count);
    const better = fine + (fine - coarse) / 3;
    if (Math.abs(better - guess) < 1e-6) return better;
    coarse = fine;
    guess = better;
  }
  return guess;
};

export const runsLength = (runs: readonly Strokes[]): number =>
  runs.flat().reduce((sum, stroke) => sum + strokeLength(stroke), 0);

/** A run as points close enough together for judging crossings and areas: chords about `step` mm long. */
export const sampled = (run: Strokes, step = 0.5): readonly Spot[] => {
  const first = run[0];
  if (!first) return [];
  const spots: Spot[] = [first.points[0]];
  for (const stroke of run) {
    const count = stroke.points.length === 2 ? 1 : Math.max(4, Math.ceil(chords(stroke, 8) / step));
    for (let i = 1; i <= count; i += 1) spots.push(spotAt(stroke, i / count));
  }
  return spots;
};

/** Twice the signed area, halved: positive clockwise as seen with y down. */
export const polygonArea = (spots: readonly Spot[]): number =>
  spots.reduce((sum, from, i) => {
    const to = spots[(i + 1) % spots.length] as Spot;
    return sum + (from.x * to.y - to.x * from.y) / 2;
  }, 0);
