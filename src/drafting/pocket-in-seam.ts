import {
  cubic,
  endTangent,
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  subPath,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { allowances, closeRuns, edge, edgeRun, lengthenLine, shell } from './pieces.ts';
import { sideAt } from './side-seam.ts';
import type { LegTop } from './trouser-top.ts';

export interface SeamPocketFrame {
  readonly name: string;
  /** The front's waist, centre to side, and its side from the waist to the end of the pocket's mouth. */
  readonly waist: Path;
  readonly side: Path;
  /** From the waist down the side to where the mouth begins, mm. */
  readonly mouthFrom: number;
  /** Where the front may be lengthened above the hip; left out where it may not. */
  readonly rise?: number;
  readonly sideAbove: LegTop['sideAbove'];
}

/** How far the bag reaches below its mouth; its share of the front waist, least and most width, mm. */
const bag = { below: 105, share: 0.58, least: 100, most: 185 } as const;

const onBag = (turn: Point, top: Point, y: number): Point => ({
  x: top.x + ((turn.x - top.x) * (y - top.y)) / (turn.y - top.y),
  y,
});

/**
 * The bag of a pocket in the side seam, hung from the waist so that it does not sag: its waist and side copy the front's
 * to the last bit, and from the mouth's end it is rounded back up to the waist. A pair from cloth lies behind, where
 * it is seen in the mouth, a pair from lining in front.
 *
 * Pocket in a seam as taught in manuals of dressmaking.
 */
export const seamPocket = ({ name, waist, side, mouthFrom, rise, sideAbove }: SeamPocketFrame): Piece => {
  const waistLength = pathLength(waist);
  const width = Math.min(Math.max(bag.share * waistLength, bag.least), bag.most, 0.95 * waistLength);
  const top = subPath(waist, waistLength - width, waistLength);
  const left = pathStart(top);
  const low = pathEnd(side);
  const down = endTangent(side);
  const bottom: Point = { x: left.x + 0.42 * (low.x - left.x), y: low.y + bag.below };
  const turn: Point = { x: left.x - 4, y: low.y + 0.15 * bag.below };
  const round: Path = [
    cubic(
      low,
      { x: low.x + 0.62 * bag.below * down.x, y: low.y + 0.62 * bag.below * down.y },
      { x: bottom.x + 0.6 * (low.x - bottom.x), y: bottom.y },
      bottom,
    ),
    cubic(
      bottom,
      { x: bottom.x - 0.55 * (bottom.x - turn.x), y: bottom.y },
      { x: turn.x, y: turn.y + 0.5 * (bottom.y - turn.y) },
      turn,
    ),
    line(turn, left),
  ];
  const middle = pathPointAtLength(top, 0.5 * width);
  return {
    id: 'pocket',
    name,
    role: 'pocket',
    cut: [shell(2, true), { layer: 'lining', count: 2, mirrored: true }],
    runs: closeRuns([edgeRun('waist', top), edgeRun('side', side), edgeRun('bag', round)]),
    edges: [
      edge('waist', 'seam', allowances.seam),
      edge('side', 'seam', allowances.seam),
      edge('bag', 'seam', allowances.seam),
    ],
    darts: [],
    notches: [
      { id: 'mouth', edge: 'side', at: mouthFrom / pathLength(side), strokes: 1 },
      { id: 'hip', edge: 'side', at: pathLength([sideAbove]) / pathLength(side), strokes: 1 },
      { id: 'mouth-end', edge: 'side', at: 1, strokes: 1 },
    ],
    grain: { from: { x: middle.x, y: middle.y + 25 }, to: { x: middle.x, y: low.y + 30 } },
    levels: [],
    landmarks: [],
    lines: rise === undefined ? [] : [lengthenLine('rise', onBag(turn, left, rise), sideAt([sideAbove], rise))],
  };
};
