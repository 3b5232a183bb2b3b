import {
  applyToPath,
  cubic,
  directionAt,
  mirrorX,
  type Path,
  type Point,
  pathLength,
  reversePath,
  tolerance,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { solveBetween } from './solve.ts';

/** The shape of one half of a sleeve cap, as shares of its width and height. */
export interface CapShape {
  /** Where the curve changes from hollow to round: along the width from the underarm, and up the height. */
  readonly across: number;
  readonly up: number;
  /** How much of the width from there to the top the round head takes up, level with the top: 0.5 is well rounded. */
  readonly head: number;
  /** How far the hollow keeps to the underarm, as a share of the way to the crossing of its two tangents. */
  readonly hollow: number;
}

export interface CapRequest {
  /** Sleeve width at the underarm line, whole, mm. */
  readonly width: number;
  /** What each half of the cap has to measure: its armhole + its ease, mm. */
  readonly frontLength: number;
  readonly backLength: number;
  /** How far the cap rises as it leaves the underarm, radians: square to the underarm seam. */
  readonly rise: number;
  readonly front: CapShape;
  readonly back: CapShape;
  /** No cap flatter than this share of its width is looked for; a tenth where left out. A wide sleeve's steep rise leaves no room for a hollow below it. */
  readonly flattest?: number;
}

export interface Cap {
  /** Cap top to underarm line, mm. */
  readonly height: number;
  readonly frontWidth: number;
  readonly backWidth: number;
  /** From front underarm to cap top. The cap top lies at (0, −height), the underarm line along y = 0. */
  readonly front: Path;
  /** From cap top to back underarm. */
  readonly back: Path;
}

/**
 * Half a cap from the underarm (0, 0) to its top (width, −height), hollow below and round above, in two
 * curves that meet where the bend changes sign, with no bend at all there and level at the top.
 */
export const halfCap = (width: number, height: number, rise: number, shape: CapShape): Path => {
  const turn: Point = { x: shape.across * width, y: -shape.up * height };
  const top: Point = { x: width, y: -height };
  // The straight through the turning point meets the top's level where the head begins.
  const head: Point = { x: width - shape.head * (width - turn.x), y: -height };
  const slope: Point = { x: head.x - turn.x, y: head.y - turn.y };
  const along = (share: number): Point => ({ x: turn.x + share * slope.x, y: turn.y + share * slope.y });
  // The same straight, carried down, meets the line on which the cap leaves the underarm.
  const leaving = directionAt(-rise);
  const crossing = (turn.x * slope.y - turn.y * slope.x) / (leaving.x * slope.y - leaving.y * slope.x);
  const out = shape.hollow * crossing;
  const foot: Point = { x: crossing * leaving.x, y: crossing * leaving.y };
  return [
    cubic(
      { x: 0, y: 0 },
      { x: out * leaving.x, y: out * leaving.y },
      { x: foot.x + (turn.x - foot.x) / 3, y: foot.y + (turn.y - foot.y) / 3 },
      turn,
    ),
    cubic(turn, along(0.55), head, top),
  ];
};

/** The width at which half a cap of this height measures `length`; null where none does. */
const widthFor = (length: number, height: number, rise: number, shape: CapShape, whole: number): number | null =>
  solveBetween((width) => pathLength(halfCap(width, height, rise, shape)) - length, whole / 4, whole, tolerance.same);

/**
 * The cap that fits an armhole: of the width the arm needs, each half as long as asked. Height and the
 * place of the cap top follow: for a height, each half has one width at which its curve measures what it
 * should; the height is the one at which both widths together make the sleeve's width. A higher cap
 * makes a longer curve, so there is only one.
 *
 * The sleeve is drafted to the armhole, never the armhole to the sleeve, as every manual of pattern
 * cutting teaches. Problem `drafting.cap-cannot-fit` where the armhole is too short to reach across the
 * arm, or so long that the cap would stand higher than the sleeve is wide.
 */
export const fitCap = (request: CapRequest): Result<Cap> => {
  const { width, frontLength, backLength, rise, flattest = 0.1 } = request;
  const front = (height: number) => widthFor(frontLength, height, rise, request.front, width);
  const back = (height: number) => widthFor(backLength, height, rise, request.back, width);
  const surplus = (height: number): number => {
    const [a, b] = [front(height), back(height)];
    // No width short enough: the curve is too long at this height, so the height is too great.
    return a === null || b === null ? -width : a + b - width;
  };
  const height = solveBetween(surplus, flattest * width, width, tolerance.same);
  const frontWidth = height === null ? null : front(height);
  if (height === null || frontWidth === null) {
    return bad('drafting.cap-cannot-fit', {
      armhole: { mm: Math.round(frontLength + backLength) },
      sleeve: { mm: Math.round(width) },
    });
  }
  const backWidth = width - frontWidth;
  const place = (path: Path, atX: number) => applyToPath({ a: 1, b: 0, c: 0, d: 1, e: atX, f: 0 }, path);
  const rising = place(halfCap(frontWidth, height, rise, request.front), -frontWidth);
  const falling = reversePath(
    applyToPath(mirrorX(), place(halfCap(backWidth, height, rise, request.back), -backWidth)),
  );
  return good({ height, frontWidth, backWidth, front: toTop(rising, height), back: fromTop(falling, height) });
};

/** Both halves end in the one cap top, to the last bit. */
const toTop = (path: Path, height: number): Path =>
  path.map((segment, i) => (i === path.length - 1 ? { ...segment, to: { x: 0, y: -height } } : segment));

const fromTop = (path: Path, height: number): Path =>
  path.map((segment, i) => (i === 0 ? { ...segment, from: { x: 0, y: -height } } : segment));
