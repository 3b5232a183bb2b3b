import {
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  splitPathAtLength,
} from '../geometry/index.ts';
import type { Edge, Notch, Piece, Run } from '../pattern/index.ts';
import { allowances, closeRuns, edge, edgeRun, landmark, lengthenLine, level, shell, straightRun } from './pieces.ts';
import { sideAt } from './side-seam.ts';
import type { Leg } from './trouser-leg.ts';
import type { LegTop } from './trouser-top.ts';

export interface LegPieceFrame {
  readonly which: 'front' | 'back';
  readonly name: string;
  readonly leg: Leg;
  readonly crotch: Path;
  readonly top: LegTop;
  readonly kneeLevel: number;
  /** From the waist down the side to where its opening ends: the zip's, the placket's, the pocket's. */
  readonly opening: number;
  readonly hemAllowance: number;
  /** Notches of the upper side beside the hip's, at a distance from the waist, mm. */
  readonly upperNotches?: readonly { readonly id: string; readonly at: number }[];
}

/** The side seam in its two edges: down to where the opening ends, and below. */
export const sideEdges = (top: LegTop, leg: Leg, opening: number): readonly [Path, Path] => {
  const [upper, lower] = splitPathAtLength([top.sideAbove, ...leg.side], opening);
  if (!upper || !lower) throw new Error('The opening is longer than the side');
  return [upper, lower];
};

/** The crotch curve's notch, from the crotch point along the seam, mm: one stroke in front, two behind, so that legs are not mistaken. */
const crotchNotch = 80;

const seamEdges: readonly Edge[] = ['waist', 'side-upper', 'side', 'inside-leg', 'crotch'].map((id) =>
  edge(id, 'seam', allowances.seam),
);

/** The height on the crotch seam's straight at which a line across the piece begins. */
const onSeam = (crotch: Path, y: number): Point => {
  const straight = crotch.at(-1);
  if (!straight) throw new Error('A crotch seam needs a straight at its top');
  const { from, to } = straight;
  return { x: from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y), y };
};

/**
 * One leg as a piece, a mirrored pair: face up, its centre or seat seam to the left. Edges in outline order: `waist`,
 * `side-upper` down to the opening's end, `side`, `hem`, `inside-leg`, `crotch` from the crotch point to the waist.
 */
export const legPiece = (frame: LegPieceFrame): Piece => {
  const { which, leg, crotch, top, kneeLevel, opening } = frame;
  const [upper, lower] = sideEdges(top, leg, opening);
  const inside = reversePath(leg.inside);
  const side = [top.sideAbove, ...leg.side];
  const insideLength = pathLength(inside);
  const belowKnee = pathLength([leg.inside[1]]);
  const sideLower = pathLength(lower);
  const strokes = which === 'front' ? 1 : 2;
  const hip = leg.side[0].from;
  const topSide = pathStart([top.sideAbove]);
  const rise = leg.hipLevel - 0.5 * (leg.hipLevel - topSide.y);
  const kneeSide = leg.side[0].to;
  const kneeInside = leg.inside[0].to;
  const thighY = (leg.thigh[0].y + leg.thigh[1].y) / 2;
  const hemLevel = pathEnd(leg.side).y;
  const across = (y: number): readonly [Point, Point] => [sideAt(leg.inside, y), sideAt(side, y)];
  const aboveKnee = thighY + 0.55 * (kneeLevel - thighY);
  const belowKneeAt = kneeLevel + 0.45 * (hemLevel - kneeLevel);
  const runs: readonly Run[] = [
    edgeRun('waist', top.waist),
    edgeRun('side-upper', upper),
    edgeRun('side', lower),
    straightRun('hem', pathEnd(lower), pathStart(inside)),
    edgeRun('inside-leg', inside),
    edgeRun('crotch', crotch),
  ];
  const notches: readonly Notch[] = [
    { id: 'waist-middle', edge: 'waist', at: 0.5, strokes: 1 },
    ...(frame.upperNotches ?? []).map(
      ({ id, at }): Notch => ({ id, edge: 'side-upper', at: at / opening, strokes: 1 }),
    ),
    { id: 'hip', edge: 'side-upper', at: pathLength([top.sideAbove]) / opening, strokes: 1 },
    { id: 'knee-side', edge: 'side', at: (sideLower - pathLength([leg.side[1]])) / sideLower, strokes: 1 },
    { id: 'knee-inside', edge: 'inside-leg', at: belowKnee / insideLength, strokes: 1 },
    { id: `crotch-${which}`, edge: 'crotch', at: crotchNotch / pathLength(crotch), strokes },
  ];
  return {
    id: which,
    name: frame.name,
    role: which,
    cut: [shell(2, true)],
    runs: closeRuns(runs),
    edges: [...seamEdges, edge('hem', 'hem', frame.hemAllowance)],
    darts: [],
    notches,
    grain: { from: { x: leg.crease, y: leg.thigh[1].y + 30 }, to: { x: leg.crease, y: hemLevel - 40 } },
    levels: [
      level('hip', onSeam(crotch, leg.hipLevel), hip),
      level('thigh', leg.thigh[0], leg.thigh[1]),
      level('knee', kneeInside, kneeSide),
    ],
    landmarks: [
      landmark('crotch-point', leg.crotchPoint),
      landmark('centre-waist', pathEnd(crotch)),
      landmark('waist-side', topSide),
      landmark('hip-centre', onSeam(crotch, leg.hipLevel)),
      landmark('hip-side', hip),
      landmark('knee-side', kneeSide),
      landmark('knee-inside', kneeInside),
      landmark('hem-centre', { x: leg.crease, y: hemLevel }),
    ],
    lines: [
      lengthenLine('rise', onSeam(crotch, rise), sideAt(side, rise)),
      lengthenLine('above-knee', ...across(aboveKnee)),
      lengthenLine('below-knee', ...across(belowKneeAt)),
    ],
  };
};
