import {
  add,
  cubic,
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  perpendicular,
  scale,
  startTangent,
  subPath,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { jacketAllowances, lengthenLines } from './jacket-marks.ts';
import { draftFacingEdge } from './neckline.ts';
import { allowances, closeRuns, edge, edgeRun, interfacing, landmark, level, shell, straightRun } from './pieces.ts';
import { fallAt } from './princess.ts';
import { settle } from './solve.ts';

/** The lines along which facings and lining meet, mm; each also an edge of the lining. */
export interface FacingLines {
  /** Parts of the front and back shoulder that the facings copy, and those the lining has. */
  readonly frontShoulder: readonly [Path, Path];
  readonly backShoulder: readonly [Path, Path];
  /** From the front shoulder down to the lining's hem. */
  readonly front: Path;
  /** From the back shoulder to the centre back. */
  readonly back: Path;
  /** Heights of the lining's hem, and of the back facing at the centre. */
  readonly liningHem: number;
}

/** Widths: at the shoulder, at the front from the centre, at the centre back, each as far as the panel has room. */
const widths = { shoulder: 38, ofShoulder: 0.58, front: 56, ofFront: 0.56, centreBack: [42, 64] } as const;

/** The lining ends this much above the jacket's hem, mm; its own hem lies another finger higher when felled with room to move. */
const liningShorter = 20;

/**
 * Where facings end and the lining begins. Both facings leave the shoulder square to it and as wide, so that the line
 * runs on across the seam; the front's falls to the bust in one curve and from there along the grain.
 */
export const facingLines = ({ plan, body }: JacketDraft): FacingLines => {
  const { front, back } = body;
  const width = Math.min(
    widths.shoulder,
    widths.ofShoulder * Math.min(pathLength(front.shoulder), pathLength(back.shoulder)),
  );
  const cut = (shoulder: Path): readonly [Path, Path] => [
    subPath(shoulder, 0, width),
    subPath(shoulder, width, pathLength(shoulder)),
  ];
  const frontShoulder = cut(front.shoulder);
  const backShoulder = cut(back.shoulder);
  const down = (shoulder: Path): Point => scale(perpendicular(startTangent(shoulder)), -1);
  const start = pathEnd(frontShoulder[0]);
  const x = Math.min(widths.front, widths.ofFront * fallAt(front.princess, plan.waistLevel).x);
  const straight: Point = { x, y: settle(front.bust.y, start.y + 120, plan.waistLevel - 30) };
  const depth = straight.y - start.y;
  const liningHem = plan.hemLevel - liningShorter;
  return {
    frontShoulder,
    backShoulder,
    front: [
      cubic(start, add(start, scale(down(front.shoulder), 0.42 * depth)), { x, y: straight.y - 0.4 * depth }, straight),
      line(straight, { x, y: liningHem }),
    ],
    back: draftFacingEdge(pathEnd(backShoulder[0]), down(back.shoulder), {
      x: 0,
      y: pathStart(back.neck).y + settle(1.7 * width, ...widths.centreBack),
    }),
    liningHem,
  };
};

/** The front facing, a mirrored pair from the shoulder to the hem, of cloth and of interfacing. */
export const frontFacingPiece = (draft: JacketDraft): Piece => {
  const { plan, body } = draft;
  const lines = facingLines(draft);
  const neck = body.front.neck;
  const centreNeck = pathStart(neck);
  const low = pathEnd(lines.front);
  const hem: Point = { x: low.x, y: plan.hemLevel };
  const corner: Point = { x: -plan.stand, y: plan.hemLevel };
  const top: Point = { x: -plan.stand, y: centreNeck.y };
  return {
    id: 'front-facing',
    name: 'Front facing',
    role: 'front-facing',
    cut: [shell(2, true), interfacing(2, true)],
    runs: closeRuns([
      edgeRun('neck', neck),
      edgeRun('shoulder', lines.frontShoulder[0]),
      edgeRun('inner', lines.front),
      straightRun('inner-end', low, hem),
      straightRun('hem', hem, corner),
      straightRun('front-edge', corner, top),
      straightRun('neck-stand', top, centreNeck),
    ]),
    edges: [
      edge('neck', 'seam', jacketAllowances.edge),
      edge('shoulder', 'seam', allowances.seam),
      edge('inner', 'seam', allowances.seam),
      edge('inner-end', 'seam', allowances.seam),
      edge('hem', 'hem', jacketAllowances.hem),
      edge('front-edge', 'seam', jacketAllowances.edge),
      edge('neck-stand', 'seam', jacketAllowances.edge),
    ],
    darts: [],
    notches: [
      { id: 'neck-front', edge: 'neck', at: 0.5, strokes: 1 },
      { id: 'centre-front', edge: 'neck', at: 0, strokes: 1 },
      { id: 'waist-edge', edge: 'front-edge', at: (plan.hemLevel - plan.waistLevel) / (corner.y - top.y), strokes: 1 },
      { id: 'bust', edge: 'inner', at: pathLength(lines.front.slice(0, 1)) / pathLength(lines.front), strokes: 1 },
    ],
    grain: { from: { x: low.x / 3, y: body.front.bust.y }, to: { x: low.x / 3, y: plan.hipLevel } },
    levels: [level('waist', { x: -plan.stand, y: plan.waistLevel }, { x: low.x, y: plan.waistLevel })],
    landmarks: [landmark('centre-neck', centreNeck), landmark('neck-point', pathEnd(neck))],
    lines: lengthenLines(
      draft,
      (y) => ({ x: -plan.stand, y }),
      (y) => ({ x: low.x, y }),
    ),
  };
};

/** The back neck facing, on the fold, of cloth and of interfacing. */
export const backFacingPiece = (draft: JacketDraft): Piece => {
  const neck = draft.body.back.neck;
  const lines = facingLines(draft);
  const nape = pathStart(neck);
  const low = pathEnd(lines.back);
  const beside = 0.35 * pathEnd(neck).x;
  return {
    id: 'back-facing',
    name: 'Back neck facing',
    role: 'back-facing',
    cut: [shell(1, false), interfacing(1, false)],
    runs: closeRuns([
      edgeRun('neck', neck),
      edgeRun('shoulder', lines.backShoulder[0]),
      edgeRun('outer', lines.back),
      straightRun('centre-back', low, nape),
    ]),
    edges: [
      edge('neck', 'seam', jacketAllowances.edge),
      edge('shoulder', 'seam', allowances.seam),
      edge('outer', 'seam', allowances.seam),
      edge('centre-back', 'fold', 0),
    ],
    darts: [],
    notches: [{ id: 'neck-back', edge: 'neck', at: 0.5, strokes: 1 }],
    grain: { from: { x: beside, y: nape.y + 8 }, to: { x: beside, y: low.y - 8 } },
    levels: [],
    landmarks: [landmark('nape', nape), landmark('neck-point', pathEnd(neck))],
    lines: [],
  };
};
