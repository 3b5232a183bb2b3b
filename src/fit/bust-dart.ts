import { type Path, type Point, pathEnd, pathStart, subtract, turnBetween } from '../geometry/index.ts';
import { dartOf, type Garment, type Piece, pointOnEdge } from '../pattern/index.ts';

/** What a side dart leaves a bust alteration to work with, on one front half: measured on the piece, plain to keep. */
export interface BustDart {
  /** How far the hinge, the armhole's lower third, lies outside the bust point (negative: inside), and above it, mm. */
  readonly outside: number;
  readonly above: number;
  /** The dart's angle seen from the bust point, radians. */
  readonly angle: number;
  /** From the bust point to the end of the upper and of the lower leg, mm. */
  readonly legs: readonly [upper: number, lower: number];
}

/** A side dart wider than this, mm, makes a point no pressing takes out: the trade splits it in two. */
export const widestDart = 65;

const landmark = (piece: Piece, id: string): Point | undefined => piece.landmarks.find((one) => one.id === id)?.at;

/** The edge next to the dart's own edge at its upper end, and which end of it the two share. */
const armholeBeside = (piece: Piece, side: string): { readonly edge: string; readonly underarmAt: 0 | 1 } | null => {
  const count = piece.runs.length;
  const own = piece.runs.flatMap((run, index) => (run.kind === 'edge' && run.edge === side ? [{ run, index }] : []));
  const first = own[0];
  const last = own.at(-1);
  if (!first || !last) return null;
  const top = (path: Path, end: 'start' | 'end'): number => (end === 'start' ? pathStart(path) : pathEnd(path)).y;
  const startsAbove = top(first.run.path, 'start') < top(last.run.path, 'end');
  const beside = piece.runs[startsAbove ? (first.index + count - 1) % count : (last.index + 1) % count];
  return beside?.kind === 'edge' ? { edge: beside.edge, underarmAt: startsAbove ? 1 : 0 } : null;
};

/**
 * The side dart a bust alteration would open or close, or null where the front has none or its hinge does
 * not lie above the bust point.
 */
export const bustDart = (piece: Piece): BustDart | null => {
  const bustPoint = landmark(piece, 'bust-point');
  const mouth = piece.runs.find(
    (run) =>
      run.kind === 'mouth' &&
      piece.darts.some((dart) => dart.id === run.dart && (dart.aims === undefined || dart.aims === 'bust-point')),
  );
  if (!bustPoint || mouth?.kind !== 'mouth') return null;
  const before = piece.runs[(piece.runs.indexOf(mouth) + piece.runs.length - 1) % piece.runs.length];
  const armhole = before?.kind === 'edge' ? armholeBeside(piece, before.edge) : null;
  if (!armhole) return null;
  const hinge = pointOnEdge(piece, armhole.edge, armhole.underarmAt === 1 ? 2 / 3 : 1 / 3);
  const { legs } = dartOf(piece, mouth.dart);
  const dh = Math.abs(hinge.x - bustPoint.x);
  const above = bustPoint.y - hinge.y;
  if (above <= 0) return null;
  const [a, b] = [subtract(legs[0], bustPoint), subtract(legs[1], bustPoint)];
  const outward = Math.sign((legs[0].x + legs[1].x) / 2 - bustPoint.x);
  return {
    outside: outward * (hinge.x - bustPoint.x) < 0 ? -dh : dh,
    above,
    angle: Math.abs(turnBetween(a, b)),
    // The upper leg turns with the bust point and the lower one slides with it: both keep their length to it.
    legs: [Math.hypot(a.x, a.y), Math.hypot(b.x, b.y)],
  };
};

/** The side dart of a garment's front; null where it has none. */
export const bustDartOf = ({ pieces }: Garment): BustDart | null => {
  for (const piece of pieces) {
    const dart = piece.role === 'front' ? bustDart(piece) : null;
    if (dart) return dart;
  }
  return null;
};

const phiOf = ({ outside, above }: BustDart): number => Math.atan2(outside, above);

/**
 * Most that can be taken out on the half before the dart is used up, mm.
 *
 * Taking out a turns the part above the dart by θ about H, the armhole's lower third, dh outside and dv above the bust
 * point: a = dh + R sin(θ − φ), R = √(dh² + dv²), φ = atan2(dh, dv) (the trade's formula for the full bust, solved
 * for a). The dart is used up at θ = −(its angle seen from the bust point).
 */
export const mostOut = (dart: BustDart): number => {
  const reach = Math.hypot(dart.outside, dart.above);
  return Math.max(0, reach * Math.sin(Math.min(Math.PI / 2, dart.angle + phiOf(dart))) - dart.outside);
};

/** How wide the dart is at the side, leg to leg, once `more` mm are put in on the half, mm. */
export const intakeWith = (dart: BustDart, more: number): number => {
  const reach = Math.hypot(dart.outside, dart.above);
  const turn = phiOf(dart) + Math.asin(Math.max(-1, Math.min(1, (more - dart.outside) / reach)));
  const opened = Math.max(0, dart.angle + turn);
  const [upper, lower] = dart.legs;
  return Math.sqrt(Math.max(0, upper ** 2 + lower ** 2 - 2 * upper * lower * Math.cos(opened)));
};
