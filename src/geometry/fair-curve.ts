import { add, distance, normalize, scale, subtract, turnBetween } from './points.ts';
import type { Cubic, Point } from './types.ts';

/**
 * One fair curve between two points with given directions of travel, of any length but zero. Handles by Hobby's
 * velocity function (J. D. Hobby, Smooth, easy to compute interpolating splines, 1986), which keeps curvature
 * even and draws circles as circles. Where both ends bend the same way the handles stay inside the triangle of
 * the tangents, so no inflection comes in. Fullness lengthens (over 1) or shortens (under 1) both handles.
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

/** Lengths of both handles as shares of the chord, from the angles at which the curve leaves and joins it. */
function handleLengths(leaving: number, arriving: number, fullness: number): [number, number] {
  const out = (velocity(leaving, arriving) * fullness) / 3;
  const back = (velocity(arriving, leaving) * fullness) / 3;
  // Sides of the triangle that both tangents make with the chord (METAFONT's "tension at least").
  const apex = Math.sin(leaving + arriving);
  const sameSide = leaving * arriving > 0 && Math.abs(leaving + arriving) < Math.PI;
  if (!sameSide) return [out, back];
  return [Math.min(out, Math.sin(arriving) / apex), Math.min(back, Math.sin(leaving) / apex)];
}

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
