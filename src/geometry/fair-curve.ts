import { add, distance, normalize, scale, subtract, turnBetween } from './points.ts';
import type { Cubic, Point } from './types.ts';

/**
 * One fair curve between two points with given directions of travel, of any length but zero. Handles by Hobby's
 * velocity function (J. D. Hobby, Smooth, easy to compute interpolating splines, 1986), which keeps curvature
 * even and draws circles as circles. Where both ends bend the same way no inflection comes in, unless the angle to
 * the chord at one end is under about a fifth of that at the other. Fullness lengthens (over 1) or shortens (under 1)
 * both handles.
 */
export const fairCurve = (
  from: Point,
  tangentFrom: Point,
  to: Point,
  tangentTo: Point,
  { fullness = 1 }: { readonly fullness?: number } = {},
): Cubic => {
  if (!(fullness > 0 && fullness < Infinity)) throw new RangeError(`Not a fullness: ${fullness}`);
  const chord = subtract(to, from);
  const size = distance(from, to);
  if (!(size > 0)) throw new RangeError(`A curve needs two different points: (${from.x}, ${from.y})`);
  const setOut = normalize(tangentFrom);
  const comeIn = normalize(tangentTo);
  const leaving = turnBetween(chord, setOut);
  const arriving = turnBetween(comeIn, chord);
  const [out, back] = handleLengths(leaving, arriving, fullness);
  return {
    kind: 'cubic',
    from,
    control1: add(from, scale(setOut, out * size)),
    control2: subtract(to, scale(comeIn, back * size)),
    to,
  };
};

/**
 * Lengths of both handles as shares of the chord, from the angles at which the curve leaves and joins it. Each is
 * held to its side of the triangle that both tangents make with the chord (METAFONT's "tension at least"), but not
 * below a share of Hobby's own: a handle of next to nothing would be a corner. Angles of opposite sign are held alike,
 * so that the curve changes evenly as an angle passes through nothing.
 */
function handleLengths(leaving: number, arriving: number, fullness: number): [number, number] {
  const out = (velocity(leaving, arriving) * fullness) / 3;
  const back = (velocity(arriving, leaving) * fullness) / 3;
  const both = Math.abs(leaving) + Math.abs(arriving);
  // Straight on, or tangents that never meet: there is no triangle.
  if (!(both > 0 && both < Math.PI)) return [out, back];
  const hold = (handle: number, opposite: number): number =>
    Math.min(handle, Math.max(Math.abs(Math.sin(opposite)) / Math.sin(both), handle * shortest));
  return [hold(out, arriving), hold(back, leaving)];
}

const shortest = 1 / 2;

function velocity(theta: number, phi: number): number {
  const root5 = Math.sqrt(5);
  const above =
    2 +
    Math.SQRT2 *
      (Math.sin(theta) - Math.sin(phi) / 16) *
      (Math.sin(phi) - Math.sin(theta) / 16) *
      (Math.cos(theta) - Math.cos(phi));
  const below = 1 + ((root5 - 1) / 2) * Math.cos(theta) + ((3 - root5) / 2) * Math.cos(phi);
  // METAFONT's own cap, for curves that set out backwards.
  return below <= above / 4 ? 4 : above / below;
}
