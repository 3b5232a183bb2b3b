import {
  type Cubic,
  type Line,
  midpoint,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  splitPathAtLength,
} from '../geometry/index.ts';
import type { Edge, InnerLine, Notch, Piece, Run } from '../pattern/index.ts';
import { allowances, closeRuns, edge, edgeRun, landmark, lengthenLine, level, shell, straightRun } from './pieces.ts';
import { sideAt } from './side-seam.ts';
import type { Leg, LegSeam } from './trouser-leg.ts';
import type { LegTop } from './trouser-top.ts';

export interface LegPieceFrame {
  readonly which: 'front' | 'back';
  readonly name: string;
  readonly leg: Leg;
  readonly crotch: Path;
  readonly top: LegTop;
  /** From the waist down the side to where its opening ends: the zip's, the placket's, the pocket's. */
  readonly opening: number;
  readonly hemAllowance: number;
  /** Notches of the upper side beside the hip's, at a distance from the waist, mm. */
  /** Where between waist and hip it may be lengthened, as a share: clear of pockets. Half way when left out. */
  readonly riseAt?: number;
  /** Inner lines of its own: where pockets lie. */
  readonly lines?: readonly InnerLine[];
  readonly upperNotches?: readonly { readonly id: string; readonly at: number }[];
}

/** The side seam in its two edges: down to where the opening ends, and below. */
export const sideEdges = (top: LegTop, leg: Leg, opening: number): readonly [Path, Path] => {
  const [upper, lower] = splitPathAtLength([top.sideAbove, ...seamOf(leg.side)], opening);
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

const seamOf = (seam: LegSeam): readonly (Cubic | Line)[] => (seam[1] ? [seam[0], seam[1]] : [seam[0]]);

/** Where the knee lies, on a leg that reaches it. */
const kneeOf = (leg: Leg): { readonly side: Point; readonly inside: Point } | null =>
  leg.side[1] && leg.inside[1] ? { side: leg.side[0].to, inside: leg.inside[0].to } : null;

const kneeNotches = ({ side, inside }: Leg, sideLength: number, insideLength: number): readonly Notch[] => {
  const below = (seam: LegSeam): number => (seam[1] ? pathLength([seam[1]]) : 0);
  return [
    { id: 'knee-side', edge: 'side', at: 1 - below(side) / sideLength, strokes: 1 },
    { id: 'knee-inside', edge: 'inside-leg', at: below(inside) / insideLength, strokes: 1 },
  ];
};

/**
 * One leg as a piece, a mirrored pair: face up, its centre or seat seam to the left. Edges in outline order: `waist`,
 * `side-upper` down to the opening's end, `side`, `hem`, `inside-leg`, `crotch` from the crotch point to the waist.
 */
export const legPiece = (frame: LegPieceFrame): Piece => {
  const { which, leg, crotch, top, opening } = frame;
  const [upper, lower] = sideEdges(top, leg, opening);
  const down = seamOf(leg.inside);
  const inside = reversePath(down);
  const side = [top.sideAbove, ...seamOf(leg.side)];
  const sideLower = pathLength(lower);
  const strokes = which === 'front' ? 1 : 2;
  const hip = leg.side[0].from;
  const topSide = pathStart([top.sideAbove]);
  const rise = topSide.y + (frame.riseAt ?? 0.5) * (leg.hipLevel - topSide.y);
  const thighY = (leg.thigh[0].y + leg.thigh[1].y) / 2;
  const hemLevel = pathEnd(side).y;
  const across = (y: number): readonly [Point, Point] => [sideAt(down, y), sideAt(side, y)];
  const knee = kneeOf(leg);
  const onLeg = thighY + 0.55 * ((knee ? knee.side.y : hemLevel) - thighY);
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
    { id: 'opening-end', edge: 'side-upper', at: 1, strokes: 1 },
    ...(knee ? kneeNotches(leg, sideLower, pathLength(inside)) : []),
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
      ...(knee ? [level('knee', knee.inside, knee.side)] : []),
    ],
    landmarks: [
      landmark('crotch-point', leg.crotchPoint),
      landmark('centre-waist', pathEnd(crotch)),
      landmark('waist-side', topSide),
      landmark('hip-centre', onSeam(crotch, leg.hipLevel)),
      landmark('hip-side', hip),
      ...(knee ? [landmark('knee-side', knee.side), landmark('knee-inside', knee.inside)] : []),
      landmark('hem-centre', midpoint(pathEnd(side), pathEnd(down))),
    ],
    lines: [
      lengthenLine('rise', onSeam(crotch, rise), sideAt(side, rise)),
      lengthenLine(knee ? 'above-knee' : 'leg', ...across(onLeg)),
      ...(knee ? [lengthenLine('below-knee', ...across(knee.side.y + 0.45 * (hemLevel - knee.side.y)))] : []),
      ...(frame.lines ?? []),
    ],
  };
};
