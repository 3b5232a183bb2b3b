import { cubic, type Line, lerp, line, type Path, type Point, pathLength } from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { allowances, closeRuns, edge, edgeRun, shell, straightRun } from './pieces.ts';

/** Where the mouth of a pocket lies on a straight side seam, from its top, mm. */
export interface PocketMouth {
  readonly from: number;
  readonly length: number;
}

/** A straight side seam in three: above the mouth, the mouth, below it. */
export const splitSide = (side: Line, { from, length }: PocketMouth): readonly [Line, Line, Line] => {
  const whole = pathLength([side]);
  const upper = lerp(side.from, side.to, from / whole);
  const lower = lerp(side.from, side.to, (from + length) / whole);
  return [line(side.from, upper), line(upper, lower), line(lower, side.to)];
};

/** How deep a hand goes in from the mouth, and how far down below it, mm. */
const bag = { deep: 135, below: 85 } as const;

/**
 * The bag of a pocket in the side seam of a skirt that is gathered above it: it hangs from its mouth alone, which
 * copies the side seam's, and is round below. Two mirrored pairs: one sewn to the front, one to the back, and both to
 * one another round the bag. As taught in manuals of dressmaking (pocket in a seam).
 */
export const sidePocket = (mouth: Line): Piece => {
  const { from: top, to: low } = mouth;
  const bottom: Point = { x: low.x - 0.5 * bag.deep, y: low.y + bag.below };
  const far: Point = { x: low.x - bag.deep, y: low.y + 0.1 * bag.below };
  const shoulder: Point = { x: top.x - 0.62 * bag.deep, y: top.y - 4 };
  const round: Path = [
    cubic(low, { x: low.x, y: low.y + 0.6 * bag.below }, { x: bottom.x + 0.28 * bag.deep, y: bottom.y }, bottom),
    cubic(bottom, { x: bottom.x - 0.28 * bag.deep, y: bottom.y }, { x: far.x, y: far.y + 0.5 * bag.below }, far),
    cubic(far, { x: far.x, y: far.y - 0.45 * (far.y - top.y) }, { x: shoulder.x - 34, y: shoulder.y }, shoulder),
  ];
  return {
    id: 'pocket',
    name: 'Pocket',
    role: 'pocket',
    cut: [shell(4, true)],
    runs: closeRuns([edgeRun('mouth', [mouth]), edgeRun('bag', round), straightRun('top', shoulder, top)]),
    edges: [
      edge('mouth', 'seam', allowances.seam),
      edge('bag', 'seam', allowances.neck),
      edge('top', 'seam', allowances.neck),
    ],
    darts: [],
    notches: [
      { id: 'mouth-top', edge: 'mouth', at: 0, strokes: 1 },
      { id: 'mouth-end', edge: 'mouth', at: 1, strokes: 1 },
    ],
    grain: {
      from: { x: top.x - 0.4 * bag.deep, y: top.y + 30 },
      to: { x: top.x - 0.4 * bag.deep, y: low.y + 40 },
    },
    levels: [],
    landmarks: [],
    lines: [],
  };
};
