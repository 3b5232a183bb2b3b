import {
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  reverseSegment,
  splitPathAtLength,
} from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import { raincoatWords } from '../words/index.ts';
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
import { type RaincoatBody, type RaincoatHalf, sideSeam, sideX } from './raincoat-body.ts';
import type { RaincoatDraft, RaincoatSleeve } from './raincoat-fit.ts';
import { bustBelow, type RaincoatPlan } from './raincoat-plan.ts';
import { pocketPlace } from './raincoat-pocket.ts';
import { seamAt } from './tapered-sleeve.ts';

const names = raincoatWords.pieces;

/**
 * The sleeve's hem is turned back this deep: 50 of it let down are two sizes' growth of the arm (25 for each 60 of
 * stature), and 20 are left to hem it again.
 */
export const growingHem = 70;

/** The placket is this wide when finished: it covers a zip's teeth and tapes and takes a stud's two flanges. */
export const placketWidth = 40;

/** Distance of the armhole's notch from the underarm along the armhole, as a share of it. */
export const notchShare = 0.4;

/** Alterations of the armhole hinge on its lower third. */
const hingeOn = ({ armhole }: RaincoatHalf): Point => pathPointAtLength(armhole, (2 / 3) * pathLength(armhole));

/** Levels at which the body may be lengthened: above the pocket's flap, and between pocket and hem, clear of where the lining's hem rises to the side. */
export const lengthenLevels = (plan: RaincoatPlan, body: RaincoatBody) => {
  const pocket = pocketPlace(plan, body);
  const bust = body.depth + bustBelow;
  return { above: bust + 0.5 * (pocket.flapTop - bust), below: pocket.bottom + 0.38 * (plan.hemLevel - pocket.bottom) };
};

/** The back neck in two: the middle part, which the hood's strip is sewn to, and the rest. */
export const backNeckParts = ({ body, hood }: RaincoatDraft): readonly [Path, Path] => {
  const [middle, rest] = splitPathAtLength(body.back.neck, pathLength([hood.strip.neck]));
  if (!middle || !rest) throw new Error('The strip is wider than the back neck');
  return [middle, rest];
};

/** Half the coat's body, front cut twice and back on the fold. */
const bodyPiece = (draft: RaincoatDraft, which: 'front' | 'back'): Piece => {
  const { plan, body } = draft;
  const front = which === 'front';
  const half = body[which];
  const centre = front ? 'centre-front' : 'centre-back';
  const top = pathStart(half.neck);
  const hemCentre = half.hem.to;
  const bust = body.depth + bustBelow;
  const across = (id: string, y: number) => level(id, { x: 0, y }, { x: sideX(plan, body.depth, y), y });
  const onSide = (y: number): Point => ({ x: sideX(plan, body.depth, y), y });
  const lengthen = lengthenLevels(plan, body);
  const [middle, rest] = backNeckParts(draft);
  const sideAt = (y: number): number => pathLength([sideSeam(plan, body.depth, y)]) / pathLength([half.side]);
  return {
    id: which,
    name: names[which],
    role: which,
    cut: [front ? shell(2, true) : shell(1, false)],
    runs: closeRuns([
      ...(front ? [edgeRun('neck', half.neck)] : [edgeRun('neck-centre', middle), edgeRun('neck', rest)]),
      edgeRun('shoulder', [half.shoulder]),
      edgeRun('armhole', half.armhole),
      edgeRun('side', [half.side]),
      edgeRun('hem', [half.hem]),
      straightRun(centre, hemCentre, top),
    ]),
    edges: [
      ...(front ? [] : [edge('neck-centre', 'seam', allowances.neck)]),
      edge('neck', 'seam', allowances.neck),
      edge('shoulder', 'seam', allowances.seam),
      edge('armhole', 'seam', allowances.seam),
      edge('side', 'seam', allowances.seam),
      edge('hem', 'hem', allowances.bodyHem),
      front ? edge(centre, 'seam', allowances.neck) : edge(centre, 'fold', 0),
    ],
    darts: [],
    notches: [
      { id: `neck-${which}`, edge: 'neck', at: 0.5, strokes: 1 },
      // The hood's seam meets the neck here.
      ...(front ? [] : [{ id: 'hood-seam', edge: 'neck-centre', at: 1, strokes: 1 as const }]),
      { id: `armhole-${which}`, edge: 'armhole', at: 1 - notchShare, strokes: front ? 1 : 2 },
      { id: 'waist', edge: 'side', at: sideAt(plan.waistLevel), strokes: 1 },
      ...(front
        ? [
            {
              id: 'waist-centre',
              edge: 'centre-front',
              at: (hemCentre.y - plan.waistLevel) / (hemCentre.y - top.y),
              strokes: 1 as const,
            },
          ]
        : []),
    ],
    grain: {
      from: { x: 0.66 * plan.bustQuarter, y: bust + 10 },
      to: { x: 0.66 * plan.bustQuarter, y: plan.hemLevel - 40 },
    },
    levels: [across('bust', bust), across('waist', plan.waistLevel), across('hip', plan.hipLevel)],
    landmarks: [
      landmark(front ? 'centre-neck' : 'nape', top),
      landmark('neck-point', pathEnd(half.neck)),
      landmark('shoulder-point', half.shoulder.to),
      landmark(front ? 'across-front' : 'across-back', half.across),
      landmark('arm-hinge', hingeOn(half)),
      landmark('underarm', half.side.from),
      landmark('waist-side', onSide(plan.waistLevel)),
      landmark('hip-side', onSide(plan.hipLevel)),
      landmark('hem-centre', hemCentre),
    ],
    lines: [
      lengthenLine('above-waist', { x: 0, y: lengthen.above }, onSide(lengthen.above)),
      lengthenLine('below-waist', { x: 0, y: lengthen.below }, onSide(lengthen.below)),
      ...(front
        ? [...pocketPlace(plan, body).lines, studLine(top.y, plan.hemLevel)]
        : [reflective({ x: 0, y: half.across.y }, half.across)]),
    ],
  };
};

/** Where reflective tape may be stitched: on the back at the across line, on the sleeve below the elbow. */
const reflective = (from: Point, to: Point): InnerLine => ({
  id: 'reflective-tape',
  kind: 'placement',
  path: [line(from, to)],
});

export const raincoatFront = (draft: RaincoatDraft): Piece => bodyPiece(draft, 'front');

export const raincoatBack = (draft: RaincoatDraft): Piece => bodyPiece(draft, 'back');

/** Where the sleeve may be lengthened, as a share of the way from underarm line to hem: above the elbow, clear of the deep hem. */
export const sleeveLine = 0.42;

/** The sleeve, cut as a mirrored pair: the left one, seen from outside, its front to the left. */
export const raincoatSleeve = (sleeve: RaincoatSleeve, body: RaincoatBody): Piece => {
  const { cap, front, back, hemLevel, armLevel } = sleeve;
  const notch = (half: RaincoatHalf): number => notchShare * pathLength(half.armhole);
  const at = (y: number): readonly [Point, Point] => [seamAt(front, y), seamAt(back, y)];
  return {
    id: 'sleeve',
    name: names.sleeve,
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
      edge('cap-front', 'seam', allowances.seam),
      edge('cap-back', 'seam', allowances.seam),
      edge('underarm-back', 'seam', allowances.seam),
      edge('hem', 'hem', growingHem),
      edge('underarm-front', 'seam', allowances.seam),
    ],
    darts: [],
    notches: [
      { id: 'cap-front', edge: 'cap-front', at: notch(body.front) / pathLength(cap.front), strokes: 1 },
      { id: 'shoulder', edge: 'cap-front', at: 1, strokes: 1 },
      { id: 'cap-back', edge: 'cap-back', at: 1 - notch(body.back) / pathLength(cap.back), strokes: 2 },
    ],
    grain: { from: { x: 0, y: -0.5 * cap.height }, to: { x: 0, y: hemLevel - 20 } },
    levels: [level('upper-arm', ...at(armLevel))],
    landmarks: [
      landmark('cap-top', pathEnd(cap.front)),
      landmark('underarm-front', pathStart(cap.front)),
      landmark('underarm-back', pathEnd(cap.back)),
      landmark('hem-centre', { x: 0, y: hemLevel }),
    ],
    lines: [lengthenLine('sleeve', ...at(sleeveLine * hemLevel)), reflective(...at(0.62 * hemLevel))],
  };
};

/**
 * The placket: one strip folded along its length, as long as the front edge. Both its long edges are sewn into that
 * edge's seam, its ends are closed before.
 */
export const raincoatPlacket = ({ plan, body }: RaincoatDraft): Piece => {
  const length = plan.hemLevel - pathStart(body.front.neck).y;
  const at = (x: number, y: number): Point => ({ x, y });
  const [fold, width] = [placketWidth, 2 * placketWidth];
  /** A level of the coat across the strip, whose lower end lies at the hem's. */
  const across = (y: number): readonly [Point, Point] => [
    at(0, y - plan.hemLevel + length),
    at(width, y - plan.hemLevel + length),
  ];
  const lengthen = lengthenLevels(plan, body);
  return {
    id: 'placket',
    name: names.placket,
    role: 'placket',
    cut: [shell(1, false), interfacing(1, false)],
    runs: closeRuns([
      straightRun('top', at(0, 0), at(fold, 0)),
      straightRun('top-under', at(fold, 0), at(width, 0)),
      straightRun('attach-under', at(width, 0), at(width, length)),
      straightRun('bottom-under', at(width, length), at(fold, length)),
      straightRun('bottom', at(fold, length), at(0, length)),
      straightRun('attach', at(0, length), at(0, 0)),
    ]),
    edges: ['top', 'top-under', 'attach-under', 'bottom-under', 'bottom', 'attach'].map((id) =>
      edge(id, 'seam', allowances.neck),
    ),
    darts: [],
    notches: [
      {
        id: 'waist-centre',
        edge: 'attach',
        at: (plan.hemLevel - plan.waistLevel) / length,
        strokes: 1,
      },
    ],
    grain: { from: at(1.5 * fold, 30), to: at(1.5 * fold, length - 30) },
    levels: [level('waist', ...across(plan.waistLevel))],
    landmarks: [],
    lines: [
      { id: 'fold', kind: 'fold', path: [line(at(fold, 0), at(fold, length))] },
      lengthenLine('above-waist', ...across(lengthen.above)),
      lengthenLine('below-waist', ...across(lengthen.below)),
      studLine(0, length),
    ],
  };
};

/** Press studs stand no further apart than this: closer, and small hands give up; further, and rain comes in between. */
export const studsApart = 90;

/**
 * Studs stand in the middle of the placket's upper layer, from below the neck to above the hem, and their lower halves on
 * the front it closes over, as far from the centre. Evenly spaced, the first and the last at the ends of the line.
 */
const studLine = (top: number, bottom: number): InnerLine => ({
  id: 'press-studs',
  kind: 'placement',
  path: [line({ x: placketWidth / 2, y: top + 25 }, { x: placketWidth / 2, y: bottom - 45 })],
});
