import {
  endTangent,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  reverseSegment,
  scale,
  splitSegment,
} from '../geometry/index.ts';
import type { Piece, Run } from '../pattern/index.ts';
import { blouseWords } from '../words/index.ts';
import type { BackDraft, FrontDraft } from './blouse-bodice.ts';
import { armholeNotch } from './blouse-body-pieces.ts';
import { type SleeveDraft, sleeveAt } from './blouse-sleeve.ts';
import { draftFacingEdge } from './neckline.ts';
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
import { parameterAtHeight } from './side-seam.ts';

/** The sleeve, cut as a mirrored pair: the left one, seen from outside, its front to the left. */
export const sleevePiece = (sleeve: SleeveDraft, front: FrontDraft, back: BackDraft): Piece => {
  const { cap, front: seamFront, back: seamBack, hemLevel } = sleeve;
  const capFront = pathLength(cap.front);
  const capBack = pathLength(cap.back);
  const wrist: Point = { x: 0, y: hemLevel };
  const levelAt = (id: string, y: number) => level(id, ...sleeveAt(sleeve, y));
  const lengthenAt = (id: string, y: number) => lengthenLine(id, ...sleeveAt(sleeve, y));
  const [aboveElbow] = splitSegment(seamBack, parameterAtHeight(seamBack, sleeve.elbowLevel));
  const elbowShare = pathLength([aboveElbow]) / pathLength([seamBack]);
  return {
    id: 'sleeve',
    name: blouseWords.pieces.sleeve,
    role: 'sleeve',
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('cap-front', cap.front),
      edgeRun('cap-back', cap.back),
      edgeRun('underarm-back', [seamBack]),
      straightRun('hem', seamBack.to, seamFront.to),
      edgeRun('underarm-front', [reverseSegment(seamFront)]),
    ]),
    edges: [
      edge('cap-front', 'seam', allowances.seam),
      edge('cap-back', 'seam', allowances.seam),
      edge('underarm-back', 'seam', allowances.seam),
      edge('hem', 'hem', allowances.sleeveHem),
      edge('underarm-front', 'seam', allowances.seam),
    ],
    darts: [],
    notches: [
      { id: 'cap-front', edge: 'cap-front', at: armholeNotch(front.armhole) / capFront, strokes: 1 },
      { id: 'shoulder', edge: 'cap-front', at: 1, strokes: 1 },
      { id: 'cap-back', edge: 'cap-back', at: 1 - armholeNotch(back.armhole) / capBack, strokes: 2 },
      { id: 'elbow-back', edge: 'underarm-back', at: elbowShare, strokes: 1 },
      { id: 'elbow-front', edge: 'underarm-front', at: 1 - elbowShare, strokes: 1 },
      { id: 'hem-back', edge: 'underarm-back', at: 1, strokes: 1 },
      { id: 'hem-front', edge: 'underarm-front', at: 0, strokes: 1 },
    ],
    grain: { from: { x: 0, y: sleeve.armLevel + 20 }, to: { x: 0, y: hemLevel - 60 } },
    levels: [levelAt('upper-arm', sleeve.armLevel), levelAt('elbow', sleeve.elbowLevel)],
    landmarks: [
      landmark('cap-top', pathEnd(cap.front)),
      landmark('underarm-front', pathStart(cap.front)),
      landmark('underarm-back', pathEnd(cap.back)),
      landmark('wrist', wrist),
      landmark('elbow', { x: 0, y: sleeve.elbowLevel }),
    ],
    lines: [
      lengthenAt('above-elbow', (sleeve.armLevel + sleeve.elbowLevel) / 2),
      lengthenAt('below-elbow', (sleeve.elbowLevel + hemLevel) / 2),
    ],
  };
};

/** Width of the neck facings at the centre, and at the shoulder where the back dart leaves room, mm. */
const facingWidth = { centre: 60, shoulder: 55 } as const;

/** Both facings are as wide at the shoulder, so that they meet; clear of the back's dart, which is not copied. */
const atShoulder = (back: BackDraft): number => Math.min(facingWidth.shoulder, pathLength([back.shoulder[0]]) - 8);

/** A facing copies the neck, the shoulder and the centre of the piece it faces, to the last bit. */
const facingRuns = (neck: Path, shoulder: Path, width: number, centreEdge: string): readonly Run[] => {
  const centre = pathStart(neck);
  const low: Point = { x: centre.x, y: centre.y + facingWidth.centre };
  const end = pathPointAtLength(shoulder, width);
  return closeRuns([
    edgeRun('neck', neck),
    straightRun('shoulder', pathStart(shoulder), end),
    edgeRun('outer', draftFacingEdge(end, scale(endTangent(neck), -1), low)),
    straightRun(centreEdge, low, centre),
  ]);
};

/** The front neck facing, on the fold, from cloth and from interfacing. */
export const frontFacing = (front: FrontDraft, back: BackDraft): Piece => ({
  id: 'front-facing',
  name: blouseWords.pieces['front-facing'],
  role: 'front-facing',
  cut: [shell(1, false), interfacing(1, false)],
  runs: facingRuns(front.neck, [front.shoulder], atShoulder(back), 'centre-front'),
  edges: [
    edge('neck', 'seam', allowances.neck),
    edge('shoulder', 'seam', allowances.seam),
    edge('outer', 'raw', 0),
    edge('centre-front', 'fold', 0),
  ],
  darts: [],
  notches: [{ id: 'neck-front', edge: 'neck', at: 0.5, strokes: 1 }],
  grain: facingGrain(front.neck),
  levels: [],
  landmarks: [landmark('centre-neck', pathStart(front.neck)), landmark('neck-point', pathEnd(front.neck))],
  lines: [],
});

/** The back neck facing, a mirrored pair, from cloth and from interfacing. */
export const backFacing = (back: BackDraft): Piece => ({
  id: 'back-facing',
  name: blouseWords.pieces['back-facing'],
  role: 'back-facing',
  cut: [shell(2, true), interfacing(2, true)],
  runs: facingRuns(back.neck, [back.shoulder[0]], atShoulder(back), 'centre-back'),
  edges: [
    edge('neck', 'seam', allowances.neck),
    edge('shoulder', 'seam', allowances.seam),
    edge('outer', 'raw', 0),
    edge('centre-back', 'seam', allowances.seam),
  ],
  darts: [],
  notches: [{ id: 'neck-back', edge: 'neck', at: 0.5, strokes: 1 }],
  grain: facingGrain(back.neck),
  levels: [],
  landmarks: [landmark('nape', pathStart(back.neck)), landmark('neck-point', pathEnd(back.neck))],
  lines: [],
});

/** A short arrow beside the centre, within the facing. */
const facingGrain = (neck: Path) => {
  const centre = pathStart(neck);
  return {
    from: { x: centre.x + 28, y: centre.y + 10 },
    to: { x: centre.x + 28, y: centre.y + facingWidth.centre - 10 },
  };
};
