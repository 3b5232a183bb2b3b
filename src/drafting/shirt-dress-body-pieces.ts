import {
  type Cubic,
  type Line,
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  segmentPointAt,
  splitSegment,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
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
import type { ShirtDressDraft } from './shirt-dress-fit.ts';
import { shirtDress } from './shirt-dress-plan.ts';
import { parameterAtHeight } from './side-seam.ts';

/** Front and yoke end at the seam of the button stand, this far from the centre, mm. */
export const standHalf = shirtDress.stand / 2;

/** Distance of an armhole's notch from the underarm: below it the sleeve is set in flat, above it eased. */
export const shirtNotch = (armhole: Path): number => 0.42 * pathLength(armhole);

const hingeOn = (armhole: Path): Point => pathPointAtLength(armhole, (2 / 3) * pathLength(armhole));

/** The side seam cut off at the level where the bodice meets its waistband. */
const cutSide = (curve: Cubic, at: number): Cubic => splitSegment(curve, parameterAtHeight(curve, at))[0] as Cubic;

const sideX = (curve: Cubic, y: number): Point => ({ ...segmentPointAt(curve, parameterAtHeight(curve, y)), y });

/**
 * Level at which the bodice may be lengthened: between the bust dart and the waistband, the same on both pieces,
 * nearer the waistband, so that the bust keeps its width when much is folded out.
 */
export const lengthenBodiceAt = ({ bodice, plan }: ShirtDressDraft): number => {
  const dart = pathStart(bodice.front.sideBelow).y;
  return dart + 0.6 * (plan.bodiceLevel - dart);
};

/** The waist's level is drawn this far above the bodice's gathered edge, mm, so that it can be told from it. */
const aboveSeam = 4;

const bodiceEdges = [
  edge('armhole', 'seam', allowances.seam),
  edge('side', 'seam', allowances.seam),
  edge('waist', 'seam', allowances.seam),
];

/** The front, a mirrored pair, from the button stand's seam to the side. */
export const shirtFront = (draft: ShirtDressDraft): Piece => {
  const { plan, bodice, cut } = draft;
  const { front } = bodice;
  const [, neck] = draft.neck;
  const low = plan.bodiceLevel;
  const sideBelow = cutSide(front.sideBelow[0], low);
  const corner: Point = { x: standHalf, y: low };
  const lengthen = lengthenBodiceAt(draft);
  const armhole = cut.front.armhole;
  return {
    id: 'front',
    name: 'Front',
    role: 'front',
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('neck', [neck]),
      edgeRun('shoulder', [cut.front.shoulder]),
      edgeRun('armhole', armhole),
      edgeRun('side', front.sideAbove),
      mouthRun('bust', pathEnd(front.sideAbove), sideBelow.from),
      edgeRun('side', [sideBelow]),
      straightRun('waist', sideBelow.to, corner),
      straightRun('stand', corner, neck.from),
    ]),
    edges: [
      edge('neck', 'seam', allowances.neck),
      edge('shoulder', 'seam', allowances.seam),
      ...bodiceEdges,
      edge('stand', 'seam', allowances.neck),
    ],
    darts: [{ id: 'bust', point: front.dartPoint, aims: 'bust-point', pressed: 'after' }],
    notches: [
      { id: 'neck-front', edge: 'neck', at: 0.5, strokes: 1 },
      {
        id: 'armhole-front',
        edge: 'armhole',
        at: 1 - shirtNotch(armhole) / pathLength(armhole),
        strokes: 1,
      },
      { id: 'waist-front', edge: 'waist', at: 0.5, strokes: 1 },
    ],
    grain: {
      from: { x: 0.45 * front.bustPoint.x + 20, y: front.bustPoint.y - 40 },
      to: { x: 0.45 * front.bustPoint.x + 20, y: low - 25 },
    },
    levels: [
      level('bust', { x: standHalf, y: front.bustSide.y }, front.bustSide),
      level('waist', { x: standHalf, y: low - aboveSeam }, sideX(sideBelow, low - aboveSeam)),
    ],
    landmarks: [
      landmark('neck-point', cut.front.shoulder.from),
      landmark('shoulder-point', cut.front.shoulder.to),
      landmark('across-front', front.across),
      landmark('arm-hinge', hingeOn(armhole)),
      landmark('underarm', front.sideAbove[0].from),
      landmark('bust-point', front.bustPoint),
      landmark('waist-side', sideBelow.to),
    ],
    lines: [lengthenLine('above-waist', { x: standHalf, y: lengthen }, sideX(sideBelow, lengthen))],
  };
};

/** A fold or placement line down a piece. */
const upright = (id: string, kind: 'fold' | 'placement', x: number, from: number, to: number) => ({
  id,
  kind,
  path: [line({ x, y: from }, { x, y: to })],
});

/** How far down from the yoke the pleat's folds are marked: below, it falls free, mm. */
const pleatMark = 90;

/** The back below the yoke, on the fold, with its box pleat beyond the centre back (x = 0). */
export const shirtBack = (draft: ShirtDressDraft): Piece => {
  const { plan, bodice, cut } = draft;
  const { back } = bodice;
  const low = plan.bodiceLevel;
  const [above, toWaist] = back.side;
  const below = cutSide(toWaist, low);
  const [topStart] = cut.back.top as readonly [Line, ...Cubic[]];
  const extra = 2 * shirtDress.pleat;
  const fold: Point = { x: -extra, y: topStart.from.y };
  const corner: Point = { x: -extra, y: low };
  const top: Path = [line(fold, topStart.to), ...cut.back.top.slice(1)];
  const topLength = pathLength(top);
  const waist = below.to.x + extra;
  const lengthen = lengthenBodiceAt(draft);
  const { armhole } = cut.back;
  return {
    id: 'back',
    name: 'Back',
    role: 'back',
    cut: [shell(1, false)],
    runs: closeRuns([
      edgeRun('yoke', top),
      edgeRun('armhole', armhole),
      edgeRun('side', [above, below]),
      straightRun('waist', below.to, corner),
      straightRun('centre-back', corner, fold),
    ]),
    edges: [edge('yoke', 'seam', allowances.seam), ...bodiceEdges, edge('centre-back', 'fold', 0)],
    darts: [],
    notches: [
      { id: 'pleat-face', edge: 'yoke', at: shirtDress.pleat / topLength, strokes: 1 },
      { id: 'pleat-under', edge: 'yoke', at: extra / topLength, strokes: 1 },
      {
        id: 'armhole-back',
        edge: 'armhole',
        at: 1 - shirtNotch(armhole) / pathLength(armhole),
        strokes: 2,
      },
      { id: 'waist-back', edge: 'waist', at: (0.5 * below.to.x) / waist, strokes: 1 },
    ],
    grain: {
      from: { x: 0.45 * below.to.x, y: topStart.from.y + 50 },
      to: { x: 0.45 * below.to.x, y: low - 30 },
    },
    levels: [
      { ...level('bust', { x: 0, y: back.bustSide.y }, back.bustSide), stops: 'from' },
      { ...level('waist', { x: 0, y: low - aboveSeam }, sideX(below, low - aboveSeam)), stops: 'from' },
    ],
    landmarks: [
      landmark('yoke-end', pathEnd(top)),
      landmark('across-back', back.across),
      landmark('arm-hinge', hingeOn(armhole)),
      landmark('underarm', pathStart(back.side)),
      landmark('waist-side', below.to),
    ],
    lines: [
      lengthenLine('above-waist', { x: -extra, y: lengthen }, sideX(below, lengthen)),
      upright('pleat-face', 'fold', -shirtDress.pleat, fold.y, fold.y + pleatMark),
      upright('pleat-under', 'fold', 0, fold.y, fold.y + pleatMark),
    ],
  };
};

/** The yoke, twice on the fold: one outside, one inside. */
export const shirtYoke = ({ cut }: ShirtDressDraft): Piece => {
  const { yoke } = cut;
  const nape = pathStart(yoke.neck);
  const centre = pathEnd([yoke.back]);
  const over = pathLength(yoke.armhole.slice(0, 1));
  return {
    id: 'yoke',
    name: 'Yoke',
    role: 'yoke',
    cut: [shell(2, false)],
    runs: closeRuns([
      edgeRun('neck', yoke.neck),
      edgeRun('front', [yoke.front]),
      edgeRun('armhole', yoke.armhole),
      edgeRun('back', [yoke.back]),
      straightRun('centre-back', centre, nape),
    ]),
    edges: [
      edge('neck', 'seam', allowances.neck),
      edge('front', 'seam', allowances.seam),
      edge('armhole', 'seam', allowances.seam),
      edge('back', 'seam', allowances.seam),
      edge('centre-back', 'fold', 0),
    ],
    darts: [],
    notches: [
      { id: 'neck-back', edge: 'neck', at: 0.5, strokes: 1 },
      { id: 'shoulder', edge: 'armhole', at: over / pathLength(yoke.armhole), strokes: 1 },
      { id: 'pleat', edge: 'back', at: 1 - shirtDress.pleat / pathLength([yoke.back]), strokes: 1 },
    ],
    grain: {
      from: { x: 0.45 * yoke.neckPoint.x, y: nape.y + 15 },
      to: { x: 0.45 * yoke.neckPoint.x, y: centre.y - 12 },
    },
    levels: [],
    landmarks: [
      landmark('nape', nape),
      landmark('neck-point', yoke.neckPoint),
      landmark('shoulder-point', yoke.shoulderPoint),
    ],
    lines: [{ id: 'shoulder', kind: 'placement', path: [line(yoke.neckPoint, yoke.shoulderPoint)] }],
  };
};
