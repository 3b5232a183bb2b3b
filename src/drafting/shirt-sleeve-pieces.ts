import { line, type Point, pathEnd, pathLength, pathStart, reverseSegment } from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
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
import { capInThree, type ShirtSleeve, shirtSleeveAt } from './shirt-sleeve.ts';

/** What a shirt sleeve is set to: lengths of the three armholes and where their notches lie from the underarm, mm. */
export interface ArmholeLengths {
  readonly front: number;
  readonly back: number;
  readonly notchFront: number;
  readonly notchBack: number;
  /** Ease of the cap below the yoke, in front and behind. */
  readonly easeBelow: number;
}

/** The cuff a sleeve is pleated into, mm. */
export interface CuffSize {
  /** Round the wrist, buttoned. */
  readonly length: number;
  readonly lap: number;
  readonly depth: number;
  /** Length of the slit above it. */
  readonly slit: number;
}

/** Where slit and pleats lie on the wrist edge, as distances from the back seam, mm. */
export const wristMarks = (sleeve: ShirtSleeve, cuff: CuffSize) => {
  const wrist = sleeve.front.to.x - sleeve.back.to.x;
  const width = Math.abs(wrist);
  const slit = 0.25 * width;
  const depth = (width - cuff.length) / 2;
  const first = slit + 0.08 * width;
  const second = first + depth + 0.06 * width;
  return { width, slit, pleats: [first, first + depth, second, second + depth] as const };
};

/** How far up the pleats' folds are marked. */
const pleatMark = 50;

/**
 * A shirt sleeve, a mirrored pair: the left one seen from outside, its front to the left. With a cuff its wrist edge
 * carries slit and pleats; else it is hemmed.
 */
export const shirtSleevePiece = (
  sleeve: ShirtSleeve,
  armhole: ArmholeLengths,
  elbow: number,
  cuff: CuffSize | null,
): Piece => {
  const { cap, front, back, wristLevel } = sleeve;
  const [capFront, capYoke, capBack] = capInThree(
    cap,
    armhole.front + armhole.easeBelow,
    armhole.back + armhole.easeBelow,
  );
  const yokeFront = pathLength(capYoke.slice(0, 1));
  const yoke = pathLength(capYoke);
  const top = pathEnd(cap.front);
  const levelAt = (id: string, y: number) => level(id, ...shirtSleeveAt(sleeve, y));
  const low = cuff ? edge('wrist', 'seam', allowances.neck) : edge('hem', 'hem', allowances.sleeveHem);
  const elbowLevel = elbow - cap.height;
  const marks = cuff ? wristMarks(sleeve, cuff) : null;
  const down = (id: string, x: number, up: number): InnerLine => ({
    id,
    kind: id === 'slit' ? 'placement' : 'fold',
    path: [line({ x: back.to.x - x, y: wristLevel }, { x: back.to.x - x, y: wristLevel - up })],
  });
  return {
    id: 'sleeve',
    name: 'Sleeve',
    role: 'sleeve',
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('cap-front', capFront),
      edgeRun('cap-yoke', capYoke),
      edgeRun('cap-back', capBack),
      edgeRun('underarm-back', [back]),
      straightRun(low.id, back.to, front.to),
      edgeRun('underarm-front', [reverseSegment(front)]),
    ]),
    edges: [
      edge('cap-front', 'seam', allowances.seam),
      edge('cap-yoke', 'seam', allowances.seam),
      edge('cap-back', 'seam', allowances.seam),
      edge('underarm-back', 'seam', allowances.seam),
      low,
      edge('underarm-front', 'seam', allowances.seam),
    ],
    darts: [],
    notches: [
      { id: 'cap-front', edge: 'cap-front', at: armhole.notchFront / pathLength(capFront), strokes: 1 },
      { id: 'shoulder', edge: 'cap-yoke', at: yokeFront / yoke, strokes: 1 },
      { id: 'cap-back', edge: 'cap-back', at: 1 - armhole.notchBack / pathLength(capBack), strokes: 2 },
      ...(marks
        ? [
            { id: 'slit', edge: 'wrist', at: marks.slit / marks.width, strokes: 1 as const },
            ...marks.pleats.map((at, i) => ({
              id: `pleat-${i + 1}`,
              edge: 'wrist',
              at: at / marks.width,
              strokes: 1 as const,
            })),
          ]
        : []),
    ],
    grain: { from: { x: 0, y: 10 }, to: { x: 0, y: wristLevel - (cuff ? 60 : 15) } },
    levels: [levelAt('upper-arm', sleeve.armLevel), ...(cuff ? [levelAt('elbow', elbowLevel)] : [])],
    landmarks: [
      landmark('cap-top', top),
      landmark('underarm-front', pathStart(cap.front)),
      landmark('underarm-back', pathEnd(cap.back)),
      ...(cuff ? [landmark('wrist', { x: 0, y: wristLevel }), landmark('elbow', { x: 0, y: elbowLevel })] : []),
    ],
    lines: [
      ...(cuff
        ? [
            lengthenLine('above-elbow', ...shirtSleeveAt(sleeve, (sleeve.armLevel + elbowLevel) / 2)),
            lengthenLine('below-elbow', ...shirtSleeveAt(sleeve, (elbowLevel + wristLevel) / 2)),
          ]
        : [lengthenLine('above-hem', ...shirtSleeveAt(sleeve, (sleeve.armLevel + wristLevel) / 2))]),
      ...(cuff && marks
        ? [down('slit', marks.slit, cuff.slit), ...marks.pleats.map((x, i) => down(`pleat-${i + 1}`, x, pleatMark))]
        : []),
    ],
  };
};

const straight = (points: readonly (readonly [string, number, number])[]) =>
  points.map(([id, x, y], i): { id: string; from: Point; to: Point } => {
    const [, nextX, nextY] = points[(i + 1) % points.length] as readonly [string, number, number];
    return { id, from: { x, y }, to: { x: nextX, y: nextY } };
  });

const folded = (y: number, to: number): InnerLine => ({
  id: 'fold',
  kind: 'fold',
  path: [line({ x: 0, y }, { x: to, y })],
});

/**
 * A straight cuff folded along its lower edge: what shows and what lies inside are one piece. Its lap reaches past
 * the slit's back edge, under the buttonhole. A mirrored pair.
 */
export const cuffPiece = ({ length, lap, depth }: CuffSize): Piece => {
  const [width, low] = [length + lap, 2 * depth];
  const runs = straight([
    ['wrist', 0, 0],
    ['lap', length, 0],
    ['end-lap', width, 0],
    ['end-lap-inside', width, depth],
    ['lap-inside', width, low],
    ['wrist-inside', length, low],
    ['end-inside', 0, low],
    ['end', 0, depth],
  ]);
  const narrow = allowances.neck;
  const button = (id: string, x: number): InnerLine => ({
    id,
    kind: 'placement',
    path: [line({ x: x - 7, y: depth / 2 }, { x: x + 7, y: depth / 2 })],
  });
  return {
    id: 'cuff',
    name: 'Cuff',
    role: 'cuff',
    cut: [shell(2, true), interfacing(2, true)],
    runs: closeRuns(runs.map(({ id, from, to }) => straightRun(id, from, to))),
    edges: runs.map(({ id }) => edge(id, 'seam', narrow)),
    darts: [],
    notches: [{ id: 'lap', edge: 'lap', at: 0, strokes: 1 }],
    grain: { from: { x: 0.5 * width, y: 10 }, to: { x: 0.5 * width, y: low - 10 } },
    levels: [],
    landmarks: [],
    lines: [folded(depth, width), button('buttonhole', lap / 2), button('button', length + lap / 2)],
  };
};

/** The strip that binds the slit: twice as long, laid straight and folded over its edge. Cut twice. */
export const slitBinding = ({ slit }: CuffSize): Piece => {
  const [width, low] = [2 * slit, 20];
  const runs = straight([
    ['slit', 0, 0],
    ['end-2', width, 0],
    ['slit-inside', width, low],
    ['end-1', 0, low],
  ]);
  return {
    id: 'slit-binding',
    name: 'Slit binding',
    role: 'placket',
    cut: [shell(2, false)],
    runs: closeRuns(runs.map(({ id, from, to }) => straightRun(id, from, to))),
    edges: runs.map(({ id }) => edge(id, 'seam', 6)),
    darts: [],
    notches: [{ id: 'slit-end', edge: 'slit', at: 0.5, strokes: 1 }],
    grain: { from: { x: 0.2 * width, y: low / 2 }, to: { x: 0.8 * width, y: low / 2 } },
    levels: [],
    landmarks: [],
    lines: [folded(low / 2, width)],
  };
};
