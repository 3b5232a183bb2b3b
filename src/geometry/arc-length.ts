import { distance } from './points.ts';
import { tolerance } from './tolerance.ts';
import type { Cubic, Segment } from './types.ts';

/**
 * Length of a segment between two parameters, mm. Adaptive Gauss–Legendre with its 15-point Kronrod
 * extension (Kronrod 1965; nodes as in QUADPACK's QK15): the seven-point rule's difference from the
 * extension is kept under `tolerance.same`, so that a path of a hundred curves stays within
 * `tolerance.length`.
 */
export const segmentLength = (segment: Segment, t0 = 0, t1 = 1): number => {
  if (segment.kind === 'line') return distance(segment.from, segment.to) * Math.abs(t1 - t0);
  return t1 < t0 ? integrate(velocity(segment), t1, t0, 0) : integrate(velocity(segment), t0, t1, 0);
};

/**
 * The parameter at which the length from the start is `mm`, to within `tolerance.same` along the curve.
 * Newton's method on the arc length, kept between bounds by bisection. `whole` is the segment's length.
 */
export const parameterAtLength = (segment: Segment, mm: number, whole = segmentLength(segment)): number => {
  if (!(mm >= -tolerance.length && mm <= whole + tolerance.length)) {
    throw new RangeError(`No point at ${mm} mm of a segment ${whole} mm long`);
  }
  if (mm <= 0) return 0;
  if (mm >= whole) return 1;
  if (segment.kind === 'line') return mm / whole;
  const curve = velocity(segment);
  let low = 0;
  let high = 1;
  let t = 0;
  let reached = 0;
  let next = mm / whole;
  for (let round = 0; round < 60; round++) {
    reached += next > t ? integrate(curve, t, next, 0) : -integrate(curve, next, t, 0);
    t = next;
    const over = reached - mm;
    if (Math.abs(over) <= tolerance.same) return t;
    if (over > 0) high = t;
    else low = t;
    next = t - over / speedAt(curve, t);
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (next === t) return t;
  }
  return t;
};

/** The derivative a·t² + b·t + c, by coordinate: flat numbers, because this is the innermost loop of everything. */
interface Velocity {
  readonly ax: number;
  readonly bx: number;
  readonly cx: number;
  readonly ay: number;
  readonly by: number;
  readonly cy: number;
}

function velocity({ from, control1, control2, to }: Cubic): Velocity {
  return {
    ax: 3 * (to.x - 3 * control2.x + 3 * control1.x - from.x),
    bx: 6 * (control2.x - 2 * control1.x + from.x),
    cx: 3 * (control1.x - from.x),
    ay: 3 * (to.y - 3 * control2.y + 3 * control1.y - from.y),
    by: 6 * (control2.y - 2 * control1.y + from.y),
    cy: 3 * (control1.y - from.y),
  };
}

function speedAt(v: Velocity, t: number): number {
  const x = (v.ax * t + v.bx) * t + v.cx;
  const y = (v.ay * t + v.by) * t + v.cy;
  return Math.sqrt(x * x + y * y);
}

// Positive nodes of the 15-point rule; those at odd places are the seven-point rule's too.
const nodes = [
  0.9914553711208126, 0.9491079123427585, 0.8648644233597691, 0.7415311855993945, 0.5860872354676911,
  0.4058451513773972, 0.20778495500789848,
] as const;
const kronrodWeights = [
  0.022935322010529224, 0.06309209262997856, 0.10479001032225019, 0.14065325971552592, 0.1690047266392679,
  0.19035057806478542, 0.20443294007529889,
] as const;
const kronrodMiddle = 0.20948214108472782;
const gaussWeights = [0, 0.1294849661688697, 0, 0.27970539148927664, 0, 0.3818300505051189, 0] as const;
const gaussMiddle = 0.4179591836734694;

/** Halvings that reach rounding even at a cusp. */
const deepest = 40;

/**
 * Where the slowest node is this much slower than the fastest the curve may stop and turn back between nodes, which
 * can fool the two rules into agreeing: a speed that falls to nothing inside falls at some node to a ninth at most.
 */
const nearlyStops = 1 / 8;

function integrate(v: Velocity, t0: number, t1: number, depth: number): number {
  const middle = (t0 + t1) / 2;
  const half = (t1 - t0) / 2;
  const centre = speedAt(v, middle);
  let kronrod = kronrodMiddle * centre;
  let gauss = gaussMiddle * centre;
  let slowest = centre;
  let fastest = centre;
  for (let i = 0; i < 7; i++) {
    const away = half * (nodes[i] as number);
    const before = speedAt(v, middle - away);
    const after = speedAt(v, middle + away);
    kronrod += (kronrodWeights[i] as number) * (before + after);
    gauss += (gaussWeights[i] as number) * (before + after);
    slowest = Math.min(slowest, before, after);
    fastest = Math.max(fastest, before, after);
  }
  const agreed = Math.abs(kronrod - gauss) * half <= tolerance.same;
  const steady = slowest >= nearlyStops * fastest || fastest * half <= tolerance.same;
  if ((agreed && steady) || depth >= deepest) return kronrod * half;
  return integrate(v, t0, middle, depth + 1) + integrate(v, middle, t1, depth + 1);
}
