import {
  add,
  endTangent,
  fairCurve,
  intersectPaths,
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathTangentAtLength,
  perpendicular,
  scale,
  startTangent,
  subPath,
} from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import { allowances, closeRuns, edge, edgeRun, interfacing, lengthenLine, shell, straightRun } from './pieces.ts';

/** The buttoned opening of a side: how wide the front's facing and the back's underlap are, mm. */
export const sideOpening = { facing: 40, underlap: 34, button: 20 } as const;

/** Where its buttons sit below the top of the underlap: on the bib's side, and twice on the leg's, as shares of each. */
const buttons = { bib: 0.5, leg: [0.3, 0.72] } as const;

/** Inward of a side seam that is drawn downward with the piece to its left in the picture. */
const inward = (tangent: Point): Point => scale(perpendicular(tangent), -1);

const placement = (id: string, from: Point, to: Point): InnerLine => ({
  id,
  kind: 'placement',
  path: [line(from, to)],
});

/** Where a line square to the grain from a point of the side meets the facing's inner edge. */
const crossingAt = (inner: Path, from: Point): Point =>
  intersectPaths(inner, [line({ x: from.x - 3 * sideOpening.facing, y: from.y }, from)])[0]?.point ?? from;

/**
 * Where a front's buttonhole begins from its edge, and how far inside that end the button's shank pulls: so far from the
 * seam that edge is to lie on the button is sewn, mm.
 */
const hole = { from: 12, shank: 3 } as const;

/** Button positions along the leg's part of the opening, from the waist, mm. */
export const buttonsOnLeg = (opening: number): readonly number[] => buttons.leg.map((share) => share * opening);

/** Buttonholes of the front, across the opening's edge so that they hold. */
export const buttonholesOnLeg = (upper: Path): readonly InnerLine[] =>
  buttonsOnLeg(pathLength(upper)).map((mm, i) => {
    const at = pathPointAtLength(upper, mm);
    const into = inward(pathTangentAtLength(upper, mm));
    return placement(
      `buttonhole-${i + 2}`,
      add(at, scale(into, hole.from)),
      add(at, scale(into, hole.from + sideOpening.button + 2)),
    );
  });

export const buttonholeOnBib = (waist: number, side: number): InnerLine => {
  const y = -(1 - buttons.bib) * side;
  return placement('buttonhole-1', { x: waist - hole.from, y }, { x: waist - hole.from - 2 - sideOpening.button, y });
};

/**
 * The front's facing along the opening: it copies the side and the end of the waist to the last bit. `rise`: from the
 * waist down the side to where the front may be lengthened, mm.
 */
export const sideFacing = (name: string, waist: Path, upper: Path, rise: number): Piece => {
  const width = sideOpening.facing;
  const length = pathLength(waist);
  const top = subPath(waist, length - width, length);
  const low = pathEnd(upper);
  const lowIn = add(low, scale(inward(endTangent(upper)), width));
  const inner = fairCurve(lowIn, scale(endTangent(upper), -1), pathStart(top), scale(startTangent(upper), -1));
  const middle = { x: (low.x + lowIn.x) / 2, y: low.y };
  return {
    id: 'side-facing',
    name,
    role: 'front-facing',
    cut: [shell(2, true), interfacing(2, true)],
    runs: closeRuns([
      edgeRun('waist', top),
      edgeRun('side', upper),
      straightRun('bottom', low, lowIn),
      edgeRun('inner', [inner]),
    ]),
    edges: [
      edge('waist', 'seam', allowances.seam),
      edge('side', 'seam', allowances.seam),
      edge('bottom', 'raw', 0),
      edge('inner', 'raw', 0),
    ],
    darts: [],
    notches: [],
    grain: { from: { x: middle.x, y: pathStart(upper).y + 40 }, to: { x: middle.x, y: low.y - 20 } },
    levels: [],
    landmarks: [],
    lines: [lengthenLine('rise', crossingAt([inner], pathPointAtLength(upper, rise)), pathPointAtLength(upper, rise))],
  };
};

/**
 * The back's underlap: a strip folded along its length, sewn to the back bib's side and the back leg's upper side, its
 * inner half felled to the same seam. It carries the buttons; closed, the front's edge meets the seam.
 */
export const sideUnderlap = (name: string, bibSide: number, opening: number, rise: number): Piece => {
  const width = sideOpening.underlap;
  const length = bibSide + opening;
  const at = (x: number, y: number): Point => ({ x, y });
  const sew = (y: number): Point => at(2 * width - hole.from - hole.shank, y);
  const ids = ['top-inner', 'top-outer', 'bib', 'leg', 'bottom-outer', 'bottom-inner', 'inner-leg', 'inner-bib'];
  const corners = [
    at(0, 0),
    at(width, 0),
    at(2 * width, 0),
    at(2 * width, bibSide),
    at(2 * width, length),
    at(width, length),
    at(0, length),
    at(0, bibSide),
  ];
  const corner = (i: number): Point => corners[i % corners.length] as Point;
  const places = [buttons.bib * bibSide, ...buttonsOnLeg(opening).map((mm) => bibSide + mm)];
  return {
    id: 'side-underlap',
    name,
    role: 'placket',
    cut: [shell(2, true), interfacing(2, true)],
    runs: closeRuns(ids.map((id, i) => straightRun(id, corner(i), corner(i + 1)))),
    edges: ids.map((id) => edge(id, 'seam', id.startsWith('top') ? allowances.neck : allowances.seam)),
    darts: [],
    notches: [
      { id: 'waist', edge: 'bib', at: 1, strokes: 1 },
      { id: 'inner-waist', edge: 'inner-leg', at: 1, strokes: 1 },
    ],
    grain: { from: at(width / 2, 25), to: at(width / 2, length - 25) },
    levels: [],
    landmarks: [],
    lines: [
      { id: 'fold', kind: 'fold', path: [line(at(width, 0), at(width, length))] },
      lengthenLine('rise', at(0, bibSide + rise), at(2 * width, bibSide + rise)),
      ...places.map((y, i) => placement(`button-${i + 1}`, add(sew(y), { x: -3, y: 0 }), add(sew(y), { x: 3, y: 0 }))),
    ],
  };
};
