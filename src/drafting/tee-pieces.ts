import { type Point, pathEnd, pathLength, pathPointAtLength, pathStart, reverseSegment } from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { teeWords } from '../words/index.ts';
import { closeRuns, edge, edgeRun, landmark, lengthenLine, level, shell, straightRun } from './pieces.ts';
import { sideAt } from './side-seam.ts';
import type { TeeBody, TeeHalf } from './tee-body.ts';
import { band, type TeePlan } from './tee-plan.ts';
import { type TeeSleeve, teeSleeveAt } from './tee-sleeve.ts';

/** Allowances of a knit, mm: seams sewn and neatened in one, the same all round; hems turned once. */
export const knitAllowances = { seam: 8, hem: 22 } as const;

/** Distance of the armhole's notch from the underarm along the armhole, as a share of it. */
const notchShare = 0.4;

/** Alterations of the armhole hinge on its lower third. */
const hingeOn = ({ armhole }: TeeHalf): Point => pathPointAtLength(armhole, (2 / 3) * pathLength(armhole));

/** Levels at which both pieces may be lengthened: between bust and waist, clear of the bust so that its width stays, and below the waist. */
const lengthenLevels = (plan: TeePlan, { bustSide }: TeeHalf) => ({
  above: bustSide.y + 0.6 * (plan.waistLevel - bustSide.y),
  below: plan.waistLevel + 0.4 * (plan.hipLevel - plan.waistLevel),
});

/** Front or back, cut once on the fold. */
const bodyPiece = (plan: TeePlan, half: TeeHalf, which: 'front' | 'back', bustPoint: Point): Piece => {
  const front = which === 'front';
  const centre = front ? 'centre-front' : 'centre-back';
  const top = pathStart(half.neck);
  const hemCentre: Point = { x: 0, y: plan.hemLevel };
  const [waistCurve, hipCurve, straight] = half.side;
  const lengthen = lengthenLevels(plan, half);
  const sideLength = pathLength(half.side);
  return {
    id: which,
    name: teeWords.pieces[which],
    role: which,
    cut: [shell(1, false)],
    runs: closeRuns([
      edgeRun('neck', half.neck),
      edgeRun('shoulder', [half.shoulder]),
      edgeRun('armhole', half.armhole),
      edgeRun('side', half.side),
      straightRun('hem', straight.to, hemCentre),
      straightRun(centre, hemCentre, top),
    ]),
    edges: [
      edge('neck', 'seam', knitAllowances.seam),
      edge('shoulder', 'seam', knitAllowances.seam),
      edge('armhole', 'seam', knitAllowances.seam),
      edge('side', 'seam', knitAllowances.seam),
      edge('hem', 'hem', knitAllowances.hem),
      edge(centre, 'fold', 0),
    ],
    darts: [],
    notches: [
      { id: `neck-${which}`, edge: 'neck', at: 0.5, strokes: 1 },
      { id: `armhole-${which}`, edge: 'armhole', at: 1 - notchShare, strokes: front ? 1 : 2 },
      { id: 'waist', edge: 'side', at: pathLength([waistCurve]) / sideLength, strokes: 1 },
    ],
    grain: {
      from: { x: 0.62 * waistCurve.to.x, y: half.bustSide.y + 20 },
      to: { x: 0.62 * waistCurve.to.x, y: plan.hipLevel - 30 },
    },
    levels: [
      level('bust', { x: 0, y: half.bustSide.y }, half.bustSide),
      level('waist', { x: 0, y: plan.waistLevel }, waistCurve.to),
      level('hip', { x: 0, y: plan.hipLevel }, hipCurve.to),
    ],
    landmarks: [
      landmark(front ? 'centre-neck' : 'nape', top),
      landmark('neck-point', pathEnd(half.neck)),
      landmark('shoulder-point', half.shoulder.to),
      landmark(front ? 'across-front' : 'across-back', half.across),
      landmark('arm-hinge', hingeOn(half)),
      landmark('underarm', pathStart(half.side)),
      ...(front ? [landmark('bust-point', bustPoint)] : []),
      landmark('waist-side', waistCurve.to),
      landmark('hip-side', hipCurve.to),
    ],
    lines: [
      lengthenLine('above-waist', { x: 0, y: lengthen.above }, sideAt(half.side, lengthen.above)),
      lengthenLine('below-waist', { x: 0, y: lengthen.below }, sideAt(half.side, lengthen.below)),
    ],
  };
};

export const teeFront = (plan: TeePlan, body: TeeBody): Piece => bodyPiece(plan, body.front, 'front', body.bustPoint);

export const teeBack = (plan: TeePlan, body: TeeBody): Piece => bodyPiece(plan, body.back, 'back', body.bustPoint);

/** The sleeve, cut as a mirrored pair: the left one, seen from outside, its front to the left. */
export const teeSleevePiece = (sleeve: TeeSleeve, body: TeeBody): Piece => {
  const { cap, front, back, hemLevel, armLevel } = sleeve;
  const notch = (half: TeeHalf): number => notchShare * pathLength(half.armhole);
  const lengthenAt = (armLevel + hemLevel) / 2;
  return {
    id: 'sleeve',
    name: teeWords.pieces.sleeve,
    role: 'sleeve',
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('cap-front', cap.front),
      edgeRun('cap-back', cap.back),
      edgeRun('underarm-back', [back]),
      straightRun('hem', back.to, front.to),
      edgeRun('underarm-front', [reverseSegment(front)]),
    ]),
    edges: [
      edge('cap-front', 'seam', knitAllowances.seam),
      edge('cap-back', 'seam', knitAllowances.seam),
      edge('underarm-back', 'seam', knitAllowances.seam),
      edge('hem', 'hem', knitAllowances.hem),
      edge('underarm-front', 'seam', knitAllowances.seam),
    ],
    darts: [],
    notches: [
      { id: 'cap-front', edge: 'cap-front', at: notch(body.front) / pathLength(cap.front), strokes: 1 },
      { id: 'shoulder', edge: 'cap-front', at: 1, strokes: 1 },
      { id: 'cap-back', edge: 'cap-back', at: 1 - notch(body.back) / pathLength(cap.back), strokes: 2 },
    ],
    grain: { from: { x: 0, y: -0.6 * cap.height }, to: { x: 0, y: hemLevel - 15 } },
    levels: [level('upper-arm', ...teeSleeveAt(sleeve, armLevel))],
    landmarks: [
      landmark('cap-top', pathEnd(cap.front)),
      landmark('underarm-front', pathStart(cap.front)),
      landmark('underarm-back', pathEnd(cap.back)),
      landmark('hem-centre', { x: 0, y: hemLevel }),
    ],
    lines: [lengthenLine('sleeve', ...teeSleeveAt(sleeve, lengthenAt))],
  };
};

/**
 * The neck band: half of a strip, on the fold at the centre front and joined at the centre back, folded along its
 * length. It runs crosswise, where a knit stretches most, and both its long edges are stretched on to the neckline
 * by one share: front to front, back to back.
 */
export const teeBand = (body: TeeBody): Piece => {
  const height = 2 * band.width;
  const shoulder = band.share * pathLength(body.front.neck);
  const end = shoulder + band.share * pathLength(body.back.neck);
  const at = (x: number, y: number): Point => ({ x, y });
  return {
    id: 'neck-band',
    name: teeWords.pieces['neck-band'],
    role: 'neck-band',
    cut: [shell(1, false)],
    runs: closeRuns([
      straightRun('inner-front', at(0, 0), at(shoulder, 0)),
      straightRun('inner-back', at(shoulder, 0), at(end, 0)),
      straightRun('centre-back', at(end, 0), at(end, height)),
      straightRun('neck-back', at(end, height), at(shoulder, height)),
      straightRun('neck-front', at(shoulder, height), at(0, height)),
      straightRun('centre-front', at(0, height), at(0, 0)),
    ]),
    edges: [
      edge('inner-front', 'seam', knitAllowances.seam),
      edge('inner-back', 'seam', knitAllowances.seam),
      edge('centre-back', 'seam', knitAllowances.seam),
      edge('neck-back', 'seam', knitAllowances.seam),
      edge('neck-front', 'seam', knitAllowances.seam),
      edge('centre-front', 'fold', 0),
    ],
    darts: [],
    notches: [
      { id: 'inner-shoulder', edge: 'inner-front', at: 1, strokes: 1 },
      { id: 'band-back', edge: 'neck-back', at: 0.5, strokes: 1 },
      { id: 'shoulder', edge: 'neck-back', at: 1, strokes: 1 },
      { id: 'band-front', edge: 'neck-front', at: 0.5, strokes: 1 },
    ],
    grain: { from: at(end / 2, 6), to: at(end / 2, height - 6) },
    levels: [],
    landmarks: [landmark('shoulder-seam', at(shoulder, height))],
    lines: [{ id: 'fold', kind: 'fold', path: straightRun('fold', at(0, band.width), at(end, band.width)).path }],
  };
};
