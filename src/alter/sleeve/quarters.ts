import {
  add,
  distance,
  dot,
  normalize,
  type Point,
  rotate,
  scale,
  subtract,
  turnBetween,
} from '../../geometry/index.ts';
import type { CutPlan } from '../cut.ts';
import type { Sleeve } from './anatomy.ts';

/** Where a sleeve's corners come to lie when its cap top T and its wrist W are pulled together (or apart). */
export interface Pulled {
  /** From T to W, mm. */
  readonly down: number;
  readonly corners: readonly [Point, Point];
  /** How much wider at the upper arm, where the sleeve says it lies, or else at its corners, mm. */
  readonly gained: number;
  /** The same at the corners. */
  readonly atCorners: number;
}

/** Down the middle of the sleeve, from the cap's top to the wrist. */
export const axisOf = ({ top, wrist }: Sleeve): Point => normalize(subtract(wrist, top));

/** The corners when T and W lie `down` apart, each still as far from both as it was: where two circles meet. Null where they do not. */
const pulledTo = (sleeve: Sleeve, down: number): Pulled | null => {
  const { top, wrist, corners } = sleeve;
  const axis = axisOf(sleeve);
  const across: Point = { x: axis.y, y: -axis.x };
  const wristNow = add(top, scale(axis, down));
  let atCorners = 0;
  const placed: Point[] = [];
  for (const corner of corners) {
    const [r, s] = [distance(corner, top), distance(corner, wrist)];
    const along = (r * r - s * s + down * down) / (2 * down);
    const square = r * r - along * along;
    if (square < 0) return null;
    const was = dot(subtract(corner, top), across);
    const out = Math.sqrt(square);
    atCorners += out - Math.abs(was);
    placed.push(add(add(top, scale(axis, along)), scale(across, Math.sign(was) * out)));
  }
  const [left, right] = placed as [Point, Point];
  return {
    down,
    corners: [left, right],
    atCorners,
    gained: gainedAtLevel(sleeve, [left, right], wristNow) ?? atCorners,
  };
};

/** How much longer the level of the upper arm becomes when its ends turn about the wrist with their quarters; null where the sleeve has none. */
const gainedAtLevel = (
  { piece, corners, wrist }: Sleeve,
  placed: readonly [Point, Point],
  wristNow: Point,
): number | null => {
  const level = piece.levels.find(({ id }) => id === 'upper-arm');
  if (!level) return null;
  const ends = [level.from, level.to].toSorted((a, b) => a.x - b.x) as [Point, Point];
  const turned = ends.map((end, i) => {
    const turn = turnBetween(subtract(corners[i] as Point, wrist), subtract(placed[i] as Point, wristNow));
    return add(wristNow, rotate(subtract(end, wrist), turn));
  }) as [Point, Point];
  return distance(...turned) - distance(...ends);
};

/**
 * How near T and W have to lie for the sleeve to be w wider at its corners: the trade's √(b² + q), for corners of any
 * height, found by halving. Null where no pull gives so much.
 */
export const pulledFor = (sleeve: Sleeve, w: number, at: 'gained' | 'atCorners' = 'gained'): Pulled | null => {
  const now = distance(sleeve.top, sleeve.wrist);
  const reach = sleeve.corners.map((corner) => [distance(corner, sleeve.top), distance(corner, sleeve.wrist)] as const);
  // Between these all circles meet; the width grows as the two come nearer.
  const near = Math.max(...reach.map(([r, s]) => Math.abs(r - s)));
  const far = Math.min(...reach.map(([r, s]) => r + s));
  let [low, high] = w >= 0 ? [near, now] : [now, far];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if ((pulledTo(sleeve, middle)?.[at] ?? -Infinity) > w) low = middle;
    else high = middle;
  }
  const found = pulledTo(sleeve, (low + high) / 2);
  return found && Math.abs(found[at] - w) < 1e-6 * Math.max(1, Math.abs(w)) ? found : null;
};

/** The cuts to the corners rise a little towards them, by this share of the sleeve below: a cap that comes in flat is not cut into. */
const belowCorners = 0.12;

/** The four cuts: from the middle line near the height of the corners up to the cap's top, down to the wrist, out to both corners. */
export const quarterCuts = (sleeve: Sleeve): CutPlan => {
  const axis = axisOf(sleeve);
  const [left, right] = sleeve.corners.map((corner) => dot(subtract(corner, sleeve.top), axis)) as [number, number];
  const height = (left + right) / 2;
  const whole = distance(sleeve.top, sleeve.wrist);
  const node = { node: 'centre' };
  return {
    nodes: { centre: add(sleeve.top, scale(axis, height + belowCorners * (whole - height))) },
    cuts: [
      { id: 'top', from: node, to: sleeve.topEnd },
      { id: 'wrist', from: node, to: sleeve.wristEnd },
      { id: 'left', from: node, to: { edge: sleeve.left, at: 1 } },
      { id: 'right', from: node, to: { edge: sleeve.right, at: 0 } },
    ],
  };
};
