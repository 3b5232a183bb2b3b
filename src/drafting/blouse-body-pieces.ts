import {
  distance,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  segmentPointAt,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { blouseWords } from '../words/index.ts';
import type { BackDraft, FrontDraft } from './blouse-bodice.ts';
import type { BlousePlan } from './blouse-plan.ts';
import {
  allowances,
  closeRuns,
  edge,
  edgeRun,
  landmark,
  lengthenLine,
  level,
  mouthRun,
  shell,
  straightRun,
} from './pieces.ts';
import { parameterAtHeight, sideAt } from './side-seam.ts';

/** How far below the nape's edge the concealed zip ends, where the back is long enough for it, mm. */
const zipLength = 550;

/** Distance of the armhole's notch from the underarm, mm: below it the sleeve is set in flat, above it eased. */
export const armholeNotch = (armhole: Path): number => 0.4 * pathLength(armhole);

/** FBA and its like hinge on the armhole at its lower third. */
const hingeOn = (armhole: Path): Point => pathPointAtLength(armhole, (2 / 3) * pathLength(armhole));

/** Levels at which both pieces may be lengthened: the same on each, clear of the dart and of the zip's end. */
const lengthenLevels = (plan: BlousePlan, front: FrontDraft) => ({
  above: (pathStart(front.sideBelow).y + plan.waistLevel) / 2,
  below: plan.waistLevel + 0.4 * (plan.hipLevel - plan.waistLevel),
});

const bodyEdges = (centre: 'centre-front' | 'centre-back') => [
  edge('neck', 'seam', allowances.neck),
  edge('shoulder', 'seam', allowances.seam),
  edge('armhole', 'seam', allowances.seam),
  edge('side', 'seam', allowances.seam),
  edge('hem', 'hem', allowances.bodyHem),
  centre === 'centre-front' ? edge(centre, 'fold', 0) : edge(centre, 'seam', allowances.seam),
];

const grainOf = (x: number, from: number, to: number) => ({
  from: { x, y: from },
  to: { x, y: to },
});

/** The front, cut once on the fold. */
export const frontPiece = (plan: BlousePlan, front: FrontDraft): Piece => {
  const centreNeck = pathStart(front.neck);
  const hemSide = pathEnd(front.sideBelow);
  const hemCentre: Point = { x: 0, y: plan.hemLevel };
  const legAbove = front.sideAbove[1].to;
  const legBelow = pathStart(front.sideBelow);
  const [waistCurve, hipCurve, straight] = front.sideBelow;
  const sideLength = pathLength([...front.sideAbove, ...front.sideBelow]);
  const toWaist = pathLength([...front.sideAbove, waistCurve]);
  const armhole = pathLength(front.armhole);
  const lengthen = lengthenLevels(plan, front);
  const waistSide = waistCurve.to;
  const across = (y: number): Point => {
    const curve = y < waistSide.y ? waistCurve : hipCurve;
    return { ...segmentPointAt(curve, parameterAtHeight(curve, y)), y };
  };
  return {
    id: 'front',
    name: blouseWords.pieces.front,
    role: 'front',
    cut: [shell(1, false)],
    runs: closeRuns([
      edgeRun('neck', front.neck),
      edgeRun('shoulder', [front.shoulder]),
      edgeRun('armhole', front.armhole),
      edgeRun('side', front.sideAbove),
      mouthRun('bust', legAbove, legBelow),
      edgeRun('side', front.sideBelow),
      straightRun('hem', hemSide, hemCentre),
      straightRun('centre-front', hemCentre, centreNeck),
    ]),
    edges: bodyEdges('centre-front'),
    darts: [{ id: 'bust', point: front.dartPoint, aims: 'bust-point', pressed: 'after' }],
    notches: [
      { id: 'neck-front', edge: 'neck', at: 0.5, strokes: 1 },
      { id: 'armhole-front', edge: 'armhole', at: 1 - armholeNotch(front.armhole) / armhole, strokes: 1 },
      { id: 'waist', edge: 'side', at: toWaist / sideLength, strokes: 1 },
      { id: 'hem', edge: 'side', at: 1, strokes: 1 },
    ],
    grain: grainOf(0.45 * front.bustPoint.x, front.bustPoint.y + 40, plan.hipLevel - 40),
    levels: [
      level('bust', { x: 0, y: front.bustSide.y }, front.bustSide),
      level('waist', { x: 0, y: plan.waistLevel }, waistSide),
      level('hip', { x: 0, y: plan.hipLevel }, straight.from),
    ],
    landmarks: [
      landmark('centre-neck', centreNeck),
      landmark('neck-point', pathEnd(front.neck)),
      landmark('shoulder-point', front.shoulder.to),
      landmark('across-front', front.across),
      landmark('arm-hinge', hingeOn(front.armhole)),
      landmark('underarm', front.sideAbove[0].from),
      landmark('bust-point', front.bustPoint),
      landmark('waist-side', waistSide),
      landmark('hip-side', straight.from),
    ],
    lines: [
      lengthenLine('above-waist', { x: 0, y: lengthen.above }, across(lengthen.above)),
      lengthenLine('below-waist', { x: 0, y: lengthen.below }, across(lengthen.below)),
    ],
  };
};

/** The back, cut as a mirrored pair with a seam at the centre for the concealed zip. */
export const backPiece = (plan: BlousePlan, back: BackDraft, front: FrontDraft): Piece => {
  const nape = pathStart(back.neck);
  const [bustCurve, waistCurve, hipCurve, straight] = back.side;
  const hemCentre: Point = { x: 0, y: plan.hemLevel };
  const [inner, outer] = back.shoulder;
  const centre = distance(nape, hemCentre);
  const sideLength = pathLength(back.side);
  const armhole = pathLength(back.armhole);
  const lengthen = lengthenLevels(plan, front);
  return {
    id: 'back',
    name: blouseWords.pieces.back,
    role: 'back',
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('neck', back.neck),
      edgeRun('shoulder', [inner]),
      mouthRun('shoulder', inner.to, outer.from),
      edgeRun('shoulder', [outer]),
      edgeRun('armhole', back.armhole),
      edgeRun('side', back.side),
      straightRun('hem', straight.to, hemCentre),
      straightRun('centre-back', hemCentre, nape),
    ]),
    edges: bodyEdges('centre-back'),
    darts: [{ id: 'shoulder', point: back.dartPoint, pressed: 'before' }],
    notches: [
      { id: 'neck-back', edge: 'neck', at: 0.5, strokes: 1 },
      { id: 'armhole-back', edge: 'armhole', at: 1 - armholeNotch(back.armhole) / armhole, strokes: 2 },
      { id: 'waist', edge: 'side', at: pathLength([bustCurve, waistCurve]) / sideLength, strokes: 1 },
      { id: 'hem', edge: 'side', at: 1, strokes: 1 },
      { id: 'hem-centre', edge: 'centre-back', at: 0, strokes: 1 },
      { id: 'zip-end', edge: 'centre-back', at: 1 - Math.min(zipLength, centre - 30) / centre, strokes: 1 },
      { id: 'waist-centre', edge: 'centre-back', at: 1 - (plan.waistLevel - nape.y) / centre, strokes: 1 },
    ],
    grain: grainOf(0.4 * waistCurve.to.x, back.bustSide.y - 40, plan.hipLevel - 40),
    levels: [
      level('bust', { x: 0, y: back.bustSide.y }, back.bustSide),
      level('waist', { x: 0, y: plan.waistLevel }, waistCurve.to),
      level('hip', { x: 0, y: plan.hipLevel }, hipCurve.to),
    ],
    landmarks: [
      landmark('nape', nape),
      landmark('neck-point', pathEnd(back.neck)),
      landmark('shoulder-point', outer.to),
      landmark('across-back', back.across),
      landmark('arm-hinge', hingeOn(back.armhole)),
      landmark('underarm', pathStart(back.side)),
      landmark('waist-side', waistCurve.to),
      landmark('hip-side', hipCurve.to),
    ],
    lines: [
      lengthenLine('above-waist', { x: 0, y: lengthen.above }, sideAt(back.side, lengthen.above)),
      lengthenLine('below-waist', { x: 0, y: lengthen.below }, sideAt(back.side, lengthen.below)),
    ],
  };
};
