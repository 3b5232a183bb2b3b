import { cubic, line, type Path, type Point, polyline } from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import { raincoatWords } from '../words/index.ts';
import { closeRuns, edge, edgeRun, interfacing, landmark, shell, straightRun } from './pieces.ts';
import { type RaincoatBody, sideX } from './raincoat-body.ts';
import type { RaincoatPlan } from './raincoat-plan.ts';
import { settle } from './solve.ts';

/** Where a pocket and its flap lie on the front, mm. */
export interface PocketPlace {
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  readonly flapTop: number;
  readonly flap: number;
  readonly lines: readonly InnerLine[];
}

/** Clear of the placket, which lies over the other front, and of the side seam; the flap is a little wider than its pocket. */
const clear = { placket: 52, side: 16, hem: 42, overlap: 4, above: 14 } as const;

/** The lower corners are rounded this much: they fill with water and crumbs otherwise. */
const corner = 22;

/** A square corner rounded: from one side to the other, a quarter of a circle. */
const rounded = (from: Point, at: Point, to: Point): ReturnType<typeof cubic> => {
  const share = 0.5523;
  const towards = (end: Point): Point => ({ x: end.x + share * (at.x - end.x), y: end.y + share * (at.y - end.y) });
  return cubic(from, towards(from), towards(to), to);
};

/** Down the right side, round both lower corners and up the left, of something whose top left corner is given. */
const bag = ({ x, y }: Point, width: number, height: number, round: number): readonly [Path, Path, Path] => {
  const at = (right: number, down: number): Point => ({ x: x + right, y: y + down });
  return [
    [line(at(width, 0), at(width, height - round))],
    [
      rounded(at(width, height - round), at(width, height), at(width - round, height)),
      line(at(width - round, height), at(round, height)),
      rounded(at(round, height), at(0, height), at(0, height - round)),
    ],
    [line(at(0, height - round), at(0, 0))],
  ];
};

/**
 * The pocket's place: a hand's breadth and room for a mitten, its flap begins a little below the waist, where a
 * child's hand finds it with the arm bent; between placket and side, and clear of the hem.
 */
export const pocketPlace = (plan: RaincoatPlan, body: RaincoatBody): PocketPlace => {
  const flapTop = Math.max(plan.waistLevel + 0.1 * (plan.hipLevel - plan.waistLevel), body.depth + 40);
  const top = flapTop + clear.above;
  const right = sideX(plan, body.depth, top) - clear.side;
  const width = settle(plan.pocket.width, 70, Math.max(right - clear.placket, 70));
  const height = settle(plan.pocket.height, 70, Math.max(plan.hemLevel - clear.hem - top, 70));
  // In the middle of the room there is, or a little nearer the front.
  const left = Math.max(clear.placket + 0.42 * (right - clear.placket - width), clear.placket - 8);
  const outline = bag({ x: left, y: top }, width, height, corner).flat();
  return {
    left,
    width,
    top,
    bottom: top + height,
    flapTop,
    flap: plan.pocket.flap,
    lines: [
      { id: 'pocket', kind: 'placement', path: outline },
      {
        id: 'pocket-flap',
        kind: 'placement',
        path: polyline([
          { x: left - clear.overlap, y: flapTop },
          { x: left + width + clear.overlap, y: flapTop },
        ]),
      },
    ],
  };
};

/** A flap's stud lies this far above its lower edge: clear of the topstitching. */
const studUp = 14;

/** Where the two halves of a flap's stud go, on flap and pocket. */
const studMark = (x: number, y: number): InnerLine => ({
  id: 'press-stud',
  kind: 'placement',
  path: [line({ x: x - 6, y }, { x: x + 6, y })],
});

/** The patch pocket: its top hemmed, the rest turned in and stitched to the front. */
export const raincoatPocket = (plan: RaincoatPlan, body: RaincoatBody): Piece => {
  const { width, top, bottom } = pocketPlace(plan, body);
  const height = bottom - top;
  const [right, below, left] = bag({ x: 0, y: 0 }, width, height, corner);
  return {
    id: 'pocket',
    name: raincoatWords.pieces.pocket,
    role: 'pocket',
    cut: [shell(2, true)],
    runs: closeRuns([
      straightRun('top', { x: 0, y: 0 }, { x: width, y: 0 }),
      edgeRun('side', right),
      edgeRun('bottom', below),
      edgeRun('side-front', left),
    ]),
    edges: [
      edge('top', 'hem', 25),
      edge('side', 'seam', 10),
      edge('bottom', 'seam', 10),
      edge('side-front', 'seam', 10),
    ],
    darts: [],
    notches: [],
    grain: { from: { x: width / 4, y: 12 }, to: { x: width / 4, y: height - 12 } },
    levels: [],
    landmarks: [landmark('pocket-centre', { x: width / 2, y: height / 2 })],
    // The flap begins above the pocket, and so its stud lies that much higher on it.
    lines: [studMark(width / 2, plan.pocket.flap - studUp - clear.above)],
  };
};

/** The flap: two layers joined round three sides, turned, its top sewn to the front and folded down over the pocket. */
export const raincoatFlap = (plan: RaincoatPlan, body: RaincoatBody): Piece => {
  const place = pocketPlace(plan, body);
  const width = place.width + 2 * clear.overlap;
  const height = place.flap;
  const [right, below, left] = bag({ x: 0, y: 0 }, width, height, 0.4 * height);
  return {
    id: 'pocket-flap',
    name: raincoatWords.pieces['pocket-flap'],
    role: 'pocket',
    cut: [shell(4, true), interfacing(2, true)],
    runs: closeRuns([
      straightRun('top', { x: 0, y: 0 }, { x: width, y: 0 }),
      edgeRun('side', right),
      edgeRun('bottom', below),
      edgeRun('side-front', left),
    ]),
    edges: [edge('top', 'seam', 10), edge('side', 'seam', 8), edge('bottom', 'seam', 8), edge('side-front', 'seam', 8)],
    darts: [],
    notches: [],
    grain: { from: { x: width / 4, y: 6 }, to: { x: width / 4, y: height - 6 } },
    levels: [],
    landmarks: [landmark('press-stud', { x: width / 2, y: height - studUp })],
    lines: [studMark(width / 2, height - studUp)],
  };
};
