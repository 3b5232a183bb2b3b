import { type Path, pathLength, tolerance } from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { FormerCut } from './join.ts';

import { blended, corners, findStretch, joints, type Redrawn, smoothTurn, trued } from './stretch.ts';

/** Blends tried about a hinge, mm each side, the widest first; the trade smooths as far as the line allows. */
const hingeReaches = [50, 40, 32, 25, 20, 16, 12, 9, 7, 5] as const;

/** Between a nearly straight handle and one past the point where the tangents meet. */
const fullnesses = [0.7, 1.6] as const;

/**
 * Smooths the kink a hinge leaves in a curve without changing the edge's length: a single cubic, tangent at
 * both ends, its fullness chosen so that it measures what it replaces. The widest that strays by no more
 * than `most` mm; where none can, the edge stays as it is and the kink's own height over the narrowest
 * reach is what strays.
 */
export const smoothHinge = (piece: Piece, former: FormerCut, most: number): Redrawn => {
  const stretch = findStretch(piece, former);
  if (!stretch) return { piece, strayed: 0, area: 0 };
  const { path } = stretch;
  const at = (stretch.from + stretch.to) / 2;
  const kink = joints(path).find((joint) => Math.abs(joint.at - at) < tolerance.walk);
  if (!kink || kink.turn < smoothTurn) return { piece, strayed: 0, area: 0 };
  const [low, high] = corners(path, at, at);
  let narrowest = Infinity;
  for (const out of hingeReaches) {
    const from = Math.max(at - out, low);
    const to = Math.min(at + out, high);
    const fullness = fullnessFor(path, from, to);
    if (fullness === null) continue;
    const made = trued(piece, stretch, from, to, blended(path, from, to, fullness));
    if (made.strayed <= most) return made;
    narrowest = made.strayed;
  }
  return { piece, strayed: narrowest, area: 0 };
};

/** The fullness at which a blend measures what it replaces; null where none between the limits does. Bisection. */
const fullnessFor = (path: Path, from: number, to: number): number | null => {
  const wanted = to - from;
  const over = (fullness: number): number => pathLength(blended(path, from, to, fullness)) - wanted;
  let [low, high] = fullnesses as unknown as [number, number];
  if (over(low) > 0 || over(high) < 0) return null;
  for (let round = 0; round < 40; round += 1) {
    const middle = (low + high) / 2;
    if (over(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
};
