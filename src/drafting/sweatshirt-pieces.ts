import {
  type Cubic,
  lerp,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  reverseSegment,
} from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import { closeRuns, edge, edgeRun, landmark, lengthenLine, level, mouthRun, shell, straightRun } from './pieces.ts';
import { sideAt } from './side-seam.ts';
import type { SweatshirtDraft } from './sweatshirt-fit.ts';
import type { SweatshirtView } from './sweatshirt-plan.ts';
import { seamAt } from './tapered-sleeve.ts';

/** Allowances, mm: seams sewn and neatened in one; the hem of a sleeve without cuff turned once. */
export const sweatAllowances = { seam: 8, sleeveHem: 25 } as const;

type Half = 'front' | 'back';

/** Where the raglan's notch lies: body and sleeve part there, and their edges are the same curve down to it. */
const notchAt = (raglan: readonly [Cubic, Cubic]): number => pathLength([raglan[0]]) / pathLength(raglan);

/** Alterations of the armhole hinge on its lower third. */
const hingeOn = (raglan: Path): Point => pathPointAtLength(raglan, (2 / 3) * pathLength(raglan));

/** Front or back, cut once on the fold. */
export const sweatBody = (draft: SweatshirtDraft, which: Half, lines: readonly InnerLine[] = []): Piece => {
  const { block } = draft.plan;
  const { neck, raglan } = draft[which];
  const { side, bustSide } = draft.body[which];
  const front = which === 'front';
  const centre = front ? 'centre-front' : 'centre-back';
  const top = pathStart(neck);
  const hemCentre: Point = { x: 0, y: block.hemLevel };
  const [waistCurve, hipCurve, straight] = side;
  const above = bustSide.y + 0.6 * (block.waistLevel - bustSide.y);
  const below = block.waistLevel + 0.4 * (block.hipLevel - block.waistLevel);
  return {
    id: which,
    name: front ? 'Front' : 'Back',
    role: which,
    cut: [shell(1, false)],
    runs: closeRuns([
      edgeRun('neck', neck),
      edgeRun('raglan', raglan),
      edgeRun('side', side),
      straightRun('hem', straight.to, hemCentre),
      straightRun(centre, hemCentre, top),
    ]),
    edges: [
      edge('neck', 'seam', sweatAllowances.seam),
      edge('raglan', 'seam', sweatAllowances.seam),
      edge('side', 'seam', sweatAllowances.seam),
      edge('hem', 'seam', sweatAllowances.seam),
      edge(centre, 'fold', 0),
    ],
    darts: [],
    notches: [
      { id: `neck-${which}`, edge: 'neck', at: 0.5, strokes: 1 },
      { id: `raglan-${which}`, edge: 'raglan', at: notchAt(raglan), strokes: front ? 1 : 2 },
      { id: 'waist', edge: 'side', at: pathLength([waistCurve]) / pathLength(side), strokes: 1 },
      { id: `hem-${which}`, edge: 'hem', at: 0.5, strokes: 1 },
    ],
    grain: {
      from: { x: 0.5 * waistCurve.to.x, y: bustSide.y + 10 },
      to: { x: 0.5 * waistCurve.to.x, y: block.hipLevel - 40 },
    },
    levels: [
      level('bust', { x: 0, y: bustSide.y }, bustSide),
      level('waist', { x: 0, y: block.waistLevel }, waistCurve.to),
      level('hip', { x: 0, y: block.hipLevel }, hipCurve.to),
    ],
    landmarks: [
      landmark(front ? 'centre-neck' : 'nape', top),
      landmark('neck-point', pathEnd(neck)),
      landmark('arm-hinge', hingeOn(raglan)),
      landmark('underarm', pathStart(side)),
      ...(front ? [landmark('bust-point', draft.body.bustPoint)] : []),
      landmark('waist-side', waistCurve.to),
      landmark('hip-side', hipCurve.to),
    ],
    lines: [
      lengthenLine('above-waist', { x: 0, y: above }, sideAt(side, above)),
      lengthenLine('below-waist', { x: 0, y: below }, sideAt(side, below)),
      ...lines,
    ],
  };
};

/** The sleeve, cut as a mirrored pair: the left one, seen from outside, its front to the left. */
export const sweatSleeve = (draft: SweatshirtDraft, view: SweatshirtView): Piece => {
  const { sleeve, plan } = draft;
  const end = sleeve.hemLevel;
  const cuffed = view !== 'three-quarter';
  const [legFront, legBack] = [pathEnd(sleeve.neckFront), pathStart(sleeve.neckBack)];
  const across = (y: number): readonly [Point, Point] => [
    seamAt(sleeve.underarmFront, y),
    seamAt(sleeve.underarmBack, y),
  ];
  const hemCentre: Point = { x: 0, y: end };
  return {
    id: 'sleeve',
    name: 'Sleeve',
    role: 'sleeve',
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('raglan-front', sleeve.front),
      edgeRun('neck', sleeve.neckFront),
      mouthRun('shoulder', legFront, legBack),
      edgeRun('neck', sleeve.neckBack),
      edgeRun('raglan-back', sleeve.back),
      edgeRun('underarm-back', [sleeve.underarmBack]),
      straightRun('hem', sleeve.underarmBack.to, sleeve.underarmFront.to),
      edgeRun('underarm-front', [reverseSegment(sleeve.underarmFront)]),
    ]),
    edges: [
      edge('raglan-front', 'seam', sweatAllowances.seam),
      edge('neck', 'seam', sweatAllowances.seam),
      edge('raglan-back', 'seam', sweatAllowances.seam),
      edge('underarm-back', 'seam', sweatAllowances.seam),
      cuffed ? edge('hem', 'seam', sweatAllowances.seam) : edge('hem', 'hem', sweatAllowances.sleeveHem),
      edge('underarm-front', 'seam', sweatAllowances.seam),
    ],
    darts: [{ id: 'shoulder', point: sleeve.dartPoint, pressed: 'after' }],
    notches: [
      {
        id: 'raglan-front',
        edge: 'raglan-front',
        at: 1 - notchAt(draft.front.raglan),
        strokes: 1,
      },
      { id: 'raglan-back', edge: 'raglan-back', at: notchAt(draft.back.raglan), strokes: 2 },
      ...(cuffed ? [{ id: 'hem', edge: 'hem', at: 0.5, strokes: 1 as const }] : []),
    ],
    grain: { from: { x: 0, y: sleeve.underarmLevel }, to: { x: 0, y: end - 40 } },
    levels: [level('upper-arm', ...across(sleeve.armLevel)), level('elbow', ...across(plan.sleeve.elbowLevel))],
    landmarks: [
      landmark('neck-point', lerp(legFront, legBack, 0.5)),
      landmark('shoulder-point', { x: 0, y: 0 }),
      landmark('underarm-front', pathStart(sleeve.front)),
      landmark('underarm-back', pathEnd(sleeve.back)),
      landmark('hem-centre', hemCentre),
    ],
    lines: [
      lengthenLine('above-elbow', ...across((sleeve.armLevel + plan.sleeve.elbowLevel) / 2)),
      lengthenLine('below-elbow', ...across((plan.sleeve.elbowLevel + end) / 2)),
    ],
  };
};
