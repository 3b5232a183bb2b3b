import {
  applyToPath,
  dot,
  endTangent,
  type Path,
  pathEnd,
  pathLength,
  pathStart,
  perpendicular,
  splitPathAtLength,
  subtract,
} from '../geometry/index.ts';

/** An armhole in two edges: what the top sleeve is set in to, and what the under sleeve is. */
export interface SplitArmhole {
  readonly upper: Path;
  readonly under: Path;
}

/** An armhole from the shoulder down, split where the sleeve's seam meets it: so far from the underarm as the under sleeve's cap goes. */
export const splitArmhole = (armhole: Path, underCap: Path): SplitArmhole => {
  const [upper, under] = splitPathAtLength(armhole, pathLength(armhole) - pathLength(underCap));
  if (!upper || !under) throw new Error('An under sleeve goes past the shoulder');
  return { upper, under };
};

/**
 * The armhole's lower part with its underarm raised along the side seam: its upper end stays, and it still arrives in
 * the same direction. Every height over the underarm shrinks in proportion, so the curve keeps its character.
 *
 * @param by mm up the side seam, less than the part is high
 */
export const raisedUnderarm = (under: Path, by: number): Path => {
  const pitch = pathStart(under);
  const along = endTangent(under);
  const up = perpendicular(along);
  const height = -dot(subtract(pathEnd(under), pitch), up);
  const k = (height - by) / height;
  // p ↦ pitch + along·(v·along) + k·up·(v·up), v = p − pitch
  const a = along.x * along.x + k * up.x * up.x;
  const b = along.x * along.y + k * up.x * up.y;
  const d = along.y * along.y + k * up.y * up.y;
  return applyToPath(
    { a, b, c: b, d, e: pitch.x - a * pitch.x - b * pitch.y, f: pitch.y - b * pitch.x - d * pitch.y },
    under,
  );
};

/** How high the pitch lies over the underarm, square to the underarm's direction, mm. */
export const heightOverUnderarm = (under: Path): number =>
  -dot(subtract(pathEnd(under), pathStart(under)), perpendicular(endTangent(under)));
