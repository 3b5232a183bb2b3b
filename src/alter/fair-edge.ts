import {
  add,
  endTangent,
  fairCurve,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  scale,
  startTangent,
  tolerance,
} from '../geometry/index.ts';

/** Rounds of drawing the ends out by what is missing: each leaves a small share of it. */
const rounds = 8;

/** One fair curve between the ends of a path that leaves both as the path does. */
export const fairPath = (path: Path): Path => [
  fairCurve(pathStart(path), startTangent(path), pathEnd(path), endTangent(path)),
];

/**
 * A line that turned somewhere drawn as one fair curve `wanted` mm long: cutting off the corner makes it shorter by a hair, which
 * its ends are drawn out by in the directions given (unit vectors; null for an end that stays).
 */
export const fairOfLength = (path: Path, wanted: number, out: readonly [Point | null, Point | null]): Path => {
  const [leaving, arriving] = [startTangent(path), endTangent(path)];
  const ends = out.filter((way) => way !== null).length;
  let [from, to] = [pathStart(path), pathEnd(path)];
  let curve: Path = fairPath(path);
  for (let round = 0; round < rounds && Math.abs(pathLength(curve) - wanted) > tolerance.length; round += 1) {
    const missing = (wanted - pathLength(curve)) / ends;
    if (out[0]) from = add(from, scale(out[0], missing));
    if (out[1]) to = add(to, scale(out[1], missing));
    curve = [fairCurve(from, leaving, to, arriving)];
  }
  return curve;
};

/** Out of a piece, square to a direction of travel along its outline, which runs clockwise as seen. */
export const outward = (tangent: Point): Point => ({ x: tangent.y, y: -tangent.x });
