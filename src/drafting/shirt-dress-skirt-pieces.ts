import { type Line, type Point, pathEnd } from '../geometry/index.ts';
import type { Edge, Piece, Run } from '../pattern/index.ts';
import {
  allowances,
  closeRuns,
  edge,
  edgeRun,
  interfacing,
  landmark,
  lengthenLine,
  level,
  shell,
  straightRun,
} from './pieces.ts';
import { splitSide } from './pocket-on-side.ts';
import { pocketMouth, type ShirtDressPlan, shirtDress } from './shirt-dress-plan.ts';
import type { SkirtPanel } from './shirt-dress-skirt.ts';

type Half = 'front' | 'back';

/** The front's pieces end in the button stand's seam and come in pairs; the back's lie on the fold. */
const centreEdge = (half: Half): Edge =>
  half === 'front' ? edge('stand', 'seam', allowances.neck) : edge('centre-back', 'fold', 0);

const orders = (half: Half) => (half === 'front' ? shell(2, true) : shell(1, false));

const centreRun = (half: Half, low: Point, high: Point): Run =>
  straightRun(half === 'front' ? 'stand' : 'centre-back', low, high);

const seamEdges = (...ids: readonly string[]): readonly Edge[] => ids.map((id) => edge(id, 'seam', allowances.seam));

const grainDown = (x: number, length: number) => ({
  from: { x, y: 0.2 * length },
  to: { x, y: 0.8 * length },
});

/** Quarter points of a gathered edge and of what it is gathered to: they meet, and the gathers are even between. */
const quarters = (edgeId: string): Piece['notches'] =>
  [0.25, 0.5, 0.75].map((at, i) => ({ id: `${edgeId}-${i + 1}`, edge: edgeId, at, strokes: 1 as const }));

/** A straight waistband set in between bodice and skirt: one layer, interfaced, since its seams are pressed into it. */
export const waistPiece = (half: Half, { from, waist }: SkirtPanel): Piece => {
  const depth = shirtDress.waistband;
  const [left, right] = [from, from + waist];
  return {
    id: `waist-${half}`,
    name: `Waistband, ${half}`,
    role: 'waistband',
    cut: half === 'front' ? [shell(2, true), interfacing(2, true)] : [shell(1, false), interfacing(1, false)],
    runs: closeRuns([
      straightRun('top', { x: left, y: 0 }, { x: right, y: 0 }),
      straightRun('side', { x: right, y: 0 }, { x: right, y: depth }),
      straightRun('bottom', { x: right, y: depth }, { x: left, y: depth }),
      centreRun(half, { x: left, y: depth }, { x: left, y: 0 }),
    ]),
    edges: [...seamEdges('top', 'side', 'bottom'), centreEdge(half)],
    darts: [],
    notches: [{ id: 'top-middle', edge: 'top', at: 0.5, strokes: 1 }, ...quarters('bottom')],
    grain: { from: { x: left + 0.5 * waist, y: 4 }, to: { x: left + 0.5 * waist, y: depth - 4 } },
    levels: [level('waist', { x: left, y: depth / 2 }, { x: right, y: depth / 2 })],
    landmarks: [landmark('waist-side', { x: right, y: depth / 2 })],
    lines: [],
  };
};

/** Where a straight side passes a height. */
const onSide = ({ from, to }: Line, y: number): Point => ({
  x: from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y),
  y,
});

/** The upper skirt, front pair or back on the fold; its hem is hemmed where no tier follows. */
export const skirtPiece = (half: Half, panel: SkirtPanel, { skirt, view }: ShirtDressPlan): Piece => {
  const corner: Point = { x: panel.from, y: 0 };
  const low = pathEnd(panel.hem);
  const [above, mouth, below] = splitSide(panel.side, pocketMouth);
  const lengthen = (skirt.hip + skirt.length) / 2;
  const hemEdge = view.tier ? edge('tier', 'seam', allowances.seam) : edge('hem', 'hem', allowances.bodyHem);
  return {
    id: `skirt-${half}`,
    name: half === 'front' ? 'Skirt front' : 'Skirt back',
    role: 'tier',
    cut: [orders(half)],
    runs: closeRuns([
      edgeRun('waist', panel.top),
      edgeRun('side-above', [above]),
      edgeRun('pocket', [mouth]),
      edgeRun('side', [below]),
      edgeRun(hemEdge.id, panel.hem),
      centreRun(half, low, corner),
    ]),
    edges: [...seamEdges('waist', 'side-above', 'pocket', 'side'), hemEdge, centreEdge(half)],
    darts: [],
    notches: [
      ...quarters('waist'),
      { id: 'mouth-top', edge: 'pocket', at: 0, strokes: 1 },
      { id: 'mouth-end', edge: 'pocket', at: 1, strokes: 1 },
      ...(view.tier ? quarters('tier') : []),
    ],
    grain: grainDown(panel.from + 0.4 * skirt.fullness * panel.waist, skirt.length),
    levels: [level('hip', { x: panel.from, y: skirt.hip }, onSide(panel.side, skirt.hip))],
    landmarks: [landmark('hip-side', onSide(panel.side, skirt.hip)), landmark('hem-centre', low)],
    lines: [lengthenLine('below-hip', { x: panel.from, y: lengthen }, onSide(panel.side, lengthen))],
  };
};

/** The gathered tier: a straight length, front pair or back on the fold. */
export const tierPiece = (half: Half, { from, tier }: SkirtPanel, height: number): Piece => {
  const corners: readonly [Point, Point, Point, Point] = [
    { x: from, y: 0 },
    { x: from + tier, y: 0 },
    { x: from + tier, y: height },
    { x: from, y: height },
  ];
  return {
    id: `tier-${half}`,
    name: half === 'front' ? 'Tier front' : 'Tier back',
    role: 'tier',
    cut: [orders(half)],
    runs: closeRuns([
      straightRun('top', corners[0], corners[1]),
      straightRun('side', corners[1], corners[2]),
      straightRun('hem', corners[2], corners[3]),
      centreRun(half, corners[3], corners[0]),
    ]),
    edges: [...seamEdges('top', 'side'), edge('hem', 'hem', allowances.bodyHem), centreEdge(half)],
    darts: [],
    notches: quarters('top'),
    grain: grainDown(from + 0.4 * tier, height),
    levels: [],
    landmarks: [landmark('hem-centre', corners[3])],
    lines: [lengthenLine('tier', { x: from, y: height / 2 }, { x: from + tier, y: height / 2 })],
  };
};
