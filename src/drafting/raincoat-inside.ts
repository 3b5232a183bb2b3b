import {
  add,
  type Cubic,
  cubic,
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  perpendicular,
  reversePath,
  reverseSegment,
  scale,
  segmentPointAt,
  splitSegment,
  startTangent,
  tolerance,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { raincoatWords } from '../words/index.ts';
import { draftFacingEdge } from './neckline.ts';
import {
  allowances,
  closeRuns,
  edge,
  edgeRun,
  landmark,
  lengthenLine,
  level,
  lining,
  shell,
  straightRun,
} from './pieces.ts';
import { levelHem, type RaincoatHalf, sideSeam, sideX } from './raincoat-body.ts';
import type { RaincoatDraft } from './raincoat-fit.ts';
import { backNeckParts, growingHem, lengthenLevels, notchShare, sleeveLine } from './raincoat-pieces.ts';
import { parameterAtHeight } from './side-seam.ts';
import { solveBetween } from './solve.ts';
import { seamAt } from './tapered-sleeve.ts';

/** What lies inside the coat: facings copied from its own edges, and the lining, which is the coat less its facings. */

const names = raincoatWords.pieces;

/** The lining hangs this much shorter than the coat and its sleeves. */
export const liningShorter = 15;

/** The lining's pleat at the centre back, on the half: jersey gives, so it needs little. */
export const liningPleat = 10;

/** Of a cubic hem from side to centre, the place that lies a distance from the centre. */
const hemAt = (hem: Cubic, x: number): number => {
  const at = solveBetween((t) => segmentPointAt(hem, t).x - x, 0, 1, tolerance.same * 1e-6);
  if (at === null) throw new Error('The facing is wider than the hem');
  return at;
};

/** The front's facing edge: from the shoulder, square to it, and down to the hem along the grain. */
const innerFront = ({ plan, body }: RaincoatDraft, hem: Cubic) => {
  const { shoulder } = body.front;
  const out = startTangent([shoulder]);
  const from = add(shoulder.from, scale(out, plan.facing.shoulder));
  const down = scale(perpendicular(out), -1);
  const at = hemAt(hem, plan.facing.front);
  const foot = segmentPointAt(hem, at);
  const turn: Point = { x: foot.x, y: body.depth };
  const drop = turn.y - from.y;
  const curve = cubic(from, add(from, scale(down, 0.35 * drop)), { x: foot.x, y: turn.y - 0.45 * drop }, turn);
  return { from, curve, turn, foot, at };
};

/** Level of the lining's hem at the centre. */
const liningLevel = ({ plan }: RaincoatDraft): number => plan.hemLevel - liningShorter;

export const frontFacing = (draft: RaincoatDraft): Piece => {
  const { plan, body } = draft;
  const { neck, shoulder, hem } = body.front;
  const inner = innerFront(draft, hem);
  const liningHem = levelHem(plan, body.depth, liningLevel(draft));
  const liningFoot: Point = { x: inner.foot.x, y: segmentPointAt(liningHem, hemAt(liningHem, inner.foot.x)).y };
  const [, toCentre] = splitSegment(hem, inner.at);
  const lengthen = lengthenLevels(plan, body);
  return {
    id: 'front-facing',
    name: names['front-facing'],
    role: 'front-facing',
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('neck', neck),
      straightRun('shoulder', pathEnd(neck), inner.from),
      edgeRun('inner', [inner.curve, line(inner.turn, liningFoot)]),
      straightRun('inner-hem', liningFoot, inner.foot),
      edgeRun('hem', [toCentre]),
      straightRun('centre-front', hem.to, pathStart(neck)),
    ]),
    edges: [
      edge('neck', 'seam', allowances.neck),
      edge('shoulder', 'seam', allowances.seam),
      edge('inner', 'seam', allowances.neck),
      edge('inner-hem', 'seam', allowances.neck),
      edge('hem', 'hem', allowances.bodyHem),
      edge('centre-front', 'seam', allowances.neck),
    ],
    darts: [],
    notches: [
      { id: 'neck-front', edge: 'neck', at: 0.5, strokes: 1 },
      {
        id: 'waist-centre',
        edge: 'centre-front',
        at: (hem.to.y - plan.waistLevel) / (hem.to.y - pathStart(neck).y),
        strokes: 1,
      },
    ],
    grain: {
      from: { x: 0.5 * inner.foot.x, y: body.depth },
      to: { x: 0.5 * inner.foot.x, y: plan.hemLevel - 40 },
    },
    levels: [level('waist', { x: 0, y: plan.waistLevel }, { x: inner.foot.x, y: plan.waistLevel })],
    landmarks: [landmark('centre-neck', pathStart(neck)), landmark('neck-point', shoulder.from)],
    lines: (
      [
        ['above-waist', lengthen.above],
        ['below-waist', lengthen.below],
      ] as const
    ).map(([id, y]) => lengthenLine(id, { x: 0, y }, { x: inner.foot.x, y })),
  };
};

/** The back neck facing's outer edge, from the shoulder to the centre. */
const outerBack = ({ plan, body }: RaincoatDraft): Path => {
  const { shoulder } = body.back;
  const out = startTangent([shoulder]);
  const from = add(shoulder.from, scale(out, plan.facing.shoulder));
  return draftFacingEdge(from, scale(perpendicular(out), -1), { x: 0, y: plan.facing.back });
};

export const backFacing = (draft: RaincoatDraft): Piece => {
  const { plan, body } = draft;
  const [middle, rest] = backNeckParts(draft);
  const outer = outerBack(draft);
  const nape = pathStart(middle);
  return {
    id: 'back-facing',
    name: names['back-facing'],
    role: 'back-facing',
    cut: [shell(1, false)],
    runs: closeRuns([
      edgeRun('neck-centre', middle),
      edgeRun('neck', rest),
      straightRun('shoulder', body.back.shoulder.from, pathStart(outer)),
      edgeRun('outer', outer),
      straightRun('centre-back', pathEnd(outer), nape),
    ]),
    edges: [
      edge('neck-centre', 'seam', allowances.neck),
      edge('neck', 'seam', allowances.neck),
      edge('shoulder', 'seam', allowances.seam),
      edge('outer', 'seam', allowances.neck),
      edge('centre-back', 'fold', 0),
    ],
    darts: [],
    notches: [{ id: 'neck-back', edge: 'neck', at: 0.5, strokes: 1 }],
    grain: { from: { x: 14, y: 8 }, to: { x: 14, y: plan.facing.back - 6 } },
    levels: [],
    landmarks: [landmark('nape', nape), landmark('neck-point', body.back.shoulder.from)],
    lines: [],
  };
};

const liningEdges = (ids: readonly string[], hem = 20) =>
  ids.map((id) =>
    id === 'hem'
      ? edge(id, 'hem', hem)
      : id === 'centre-back'
        ? edge(id, 'fold', 0)
        : edge(id, 'seam', id === 'facing' ? allowances.neck : allowances.seam),
  );

/** The lining's side: the coat's own, ended at the lining's hem. */
const liningSide = ({ plan, body }: RaincoatDraft, hem: Cubic): Cubic => sideSeam(plan, body.depth, hem.from.y);

const liningNotches = (draft: RaincoatDraft, which: 'front' | 'back', side: Cubic): Piece['notches'] => [
  { id: `armhole-${which}`, edge: 'armhole', at: 1 - notchShare, strokes: which === 'front' ? 1 : 2 },
  {
    id: 'waist',
    edge: 'side',
    at: pathLength([sideSeam(draft.plan, draft.body.depth, draft.plan.waistLevel)]) / pathLength([side]),
    strokes: 1,
  },
];

const liningLines = ({ plan, body }: RaincoatDraft, from: (y: number) => number): Piece['lines'] => {
  const lengthen = lengthenLevels(plan, body);
  return (
    [
      ['above-waist', lengthen.above],
      ['below-waist', lengthen.below],
    ] as const
  ).map(([id, y]) => lengthenLine(id, { x: from(y), y }, { x: sideX(plan, body.depth, y), y }));
};

/** The waist across the lining, from its facing's edge or the centre's pleat to the side. */
const waistFrom = ({ plan, body }: RaincoatDraft, x: number) =>
  level('waist', { x, y: plan.waistLevel }, { x: sideX(plan, body.depth, plan.waistLevel), y: plan.waistLevel });

export const liningFront = (draft: RaincoatDraft): Piece => {
  const { plan, body } = draft;
  const half = body.front;
  const hem = levelHem(plan, body.depth, liningLevel(draft));
  const inner = innerFront(draft, half.hem);
  const [fromSide] = splitSegment(hem, hemAt(hem, inner.foot.x));
  const foot: Point = { x: inner.foot.x, y: fromSide.to.y };
  const side = liningSide(draft, hem);
  return {
    id: 'lining-front',
    name: names['lining-front'],
    role: 'front',
    cut: [lining(2, true)],
    runs: closeRuns([
      straightRun('shoulder', inner.from, half.shoulder.to),
      edgeRun('armhole', half.armhole),
      edgeRun('side', [side]),
      edgeRun('hem', [{ ...fromSide, to: foot }]),
      edgeRun('facing', reversePath([inner.curve, line(inner.turn, foot)])),
    ]),
    edges: liningEdges(['shoulder', 'armhole', 'side', 'hem', 'facing']),
    darts: [],
    notches: liningNotches(draft, 'front', side),
    grain: {
      from: { x: 0.66 * plan.bustQuarter, y: body.depth + 20 },
      to: { x: 0.66 * plan.bustQuarter, y: plan.hemLevel - 60 },
    },
    levels: [waistFrom(draft, inner.foot.x)],
    landmarks: [landmark('shoulder-point', half.shoulder.to), landmark('underarm', half.side.from)],
    lines: liningLines(draft, () => inner.foot.x),
  };
};

export const liningBack = (draft: RaincoatDraft): Piece => {
  const { plan, body } = draft;
  const half = body.back;
  const hem = levelHem(plan, body.depth, liningLevel(draft));
  const outer = outerBack(draft);
  const fold = -liningPleat;
  const top = pathEnd(outer);
  const side = liningSide(draft, hem);
  return {
    id: 'lining-back',
    name: names['lining-back'],
    role: 'back',
    cut: [lining(1, false)],
    runs: closeRuns([
      edgeRun('facing', [line({ x: fold, y: top.y }, top), ...reversePath(outer)]),
      straightRun('shoulder', pathStart(outer), half.shoulder.to),
      edgeRun('armhole', half.armhole),
      edgeRun('side', [side]),
      edgeRun('hem', [hem, line(hem.to, { x: fold, y: hem.to.y })]),
      straightRun('centre-back', { x: fold, y: hem.to.y }, { x: fold, y: top.y }),
    ]),
    edges: liningEdges(['facing', 'shoulder', 'armhole', 'side', 'hem', 'centre-back']),
    darts: [],
    notches: [
      { id: 'pleat', edge: 'facing', at: liningPleat / (liningPleat + pathLength(outer)), strokes: 1 },
      ...liningNotches(draft, 'back', side),
    ],
    grain: {
      from: { x: 0.66 * plan.bustQuarter, y: body.depth + 20 },
      to: { x: 0.66 * plan.bustQuarter, y: plan.hemLevel - 60 },
    },
    levels: [waistFrom(draft, 0)],
    landmarks: [landmark('shoulder-point', half.shoulder.to), landmark('underarm', half.side.from)],
    lines: [
      { id: 'pleat', kind: 'stitching', path: [line(top, { x: 0, y: top.y + 60 })] },
      ...liningLines(draft, () => fold),
    ],
  };
};

/**
 * The sleeve's lining: the sleeve, shorter. It is caught to the sleeve's hem that is turned back inside; its own is as
 * deep, so that both let down together.
 */
export const liningSleeve = ({ sleeve, body }: RaincoatDraft): Piece => {
  const { cap, hemLevel } = sleeve;
  const bottom = hemLevel - liningShorter;
  const lengthenAt = sleeveLine * hemLevel;
  const shorter = (seam: Cubic): Cubic => splitSegment(seam, parameterAtHeight(seam, bottom))[0] as Cubic;
  const [front, back] = [shorter(sleeve.front), shorter(sleeve.back)];
  const notch = (half: RaincoatHalf): number => notchShare * pathLength(half.armhole);
  return {
    id: 'lining-sleeve',
    name: names['lining-sleeve'],
    role: 'sleeve',
    cut: [lining(2, true)],
    runs: closeRuns([
      edgeRun('cap-front', cap.front),
      edgeRun('cap-back', cap.back),
      edgeRun('underarm-back', [back]),
      straightRun('hem', back.to, front.to),
      edgeRun('underarm-front', [reverseSegment(front)]),
    ]),
    edges: liningEdges(['cap-front', 'cap-back', 'underarm-back', 'hem', 'underarm-front'], growingHem),
    darts: [],
    notches: [
      { id: 'cap-front', edge: 'cap-front', at: notch(body.front) / pathLength(cap.front), strokes: 1 },
      { id: 'shoulder', edge: 'cap-front', at: 1, strokes: 1 },
      { id: 'cap-back', edge: 'cap-back', at: 1 - notch(body.back) / pathLength(cap.back), strokes: 2 },
    ],
    grain: { from: { x: 0, y: -0.5 * cap.height }, to: { x: 0, y: bottom - 20 } },
    levels: [],
    landmarks: [
      landmark('cap-top', pathEnd(cap.front)),
      landmark('underarm-front', pathStart(cap.front)),
      landmark('underarm-back', pathEnd(cap.back)),
    ],
    lines: [lengthenLine('sleeve', seamAt(sleeve.front, lengthenAt), seamAt(sleeve.back, lengthenAt))],
  };
};
