import { type Path, pathLength } from '../../geometry/index.ts';
import { edgeLength } from '../../pattern/index.ts';
import type { Armhole } from './upper.ts';

/** Where an armhole is no longer drawn anew, as a share of it from the shoulder down, where it has no notch. */
const upperShare = 0.6;

/** Notches this near an end of their edge, as shares, are at a seam and no mark of the armhole's own. */
const notAtEnd = [0.3, 0.95] as const;

/** How far down an armhole is drawn anew, mm, when its upper end moves: to its notch. */
export const upperReach = ({ piece, edges, reversed }: Armhole, line: Path): number => {
  let passed = 0;
  for (const edge of edges) {
    const whole = edgeLength(piece, edge);
    const places = piece.notches
      .filter((one) => one.edge === edge)
      .map(({ at }) => (reversed ? 1 - at : at))
      .filter((at) => at > notAtEnd[0] && at < notAtEnd[1]);
    if (places.length > 0) return passed + whole * Math.min(...places);
    passed += whole;
  }
  return upperShare * pathLength(line);
};
