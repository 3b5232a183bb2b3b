import {
  add,
  applyToPath,
  type Cubic,
  distance,
  midpoint,
  normalize,
  type Point,
  rotate,
  rotation,
  scale,
  segmentPointAt,
  splitSegment,
  subtract,
} from '../geometry/index.ts';
import type { BlousePlan } from './blouse-plan.ts';
import { parameterAtHeight, type Side } from './side-seam.ts';
import { settle, solveBetween } from './solve.ts';

/** How far below the bust level the bust dart's upper leg meets the side seam, mm. */
export const dartBelowBust = 14;

/** A parameter or angle found to this is found to well under `tolerance.same`. */
const fine = 1e-12;

/** The bust dart and the height of the front neck point, which hang together. */
export const balance = (plan: BlousePlan, depth: number, backShoulderLevel: number) => {
  const drop = plan.shoulder.length * Math.sin(plan.shoulder.frontSlope);
  const backHeight = depth - backShoulderLevel;
  const heightFor = (intake: number, base: number) => depth - intake - (base + drop);
  const asMeasured = plan.waistLevel - plan.frontWaistLength;
  // The intake that leaves the front armhole 22 less high than the back, with the front as long as measured.
  const asked = heightFor(0, asMeasured) - (backHeight - 22);
  // A dart is no wider than half of what lies between its point and the side: a small bust cannot hold a wide one.
  const room = (plan.bustQuarter - plan.bustSpanHalf - plan.dartShort) / 2;
  const most = Math.min(64, 1.3 * plan.bustIntake, Math.max(22, room));
  const intake = settle((asked + plan.bustIntake) / 2, Math.min(Math.max(22, 0.75 * plan.bustIntake), most), most);
  const height = settle(heightFor(intake, asMeasured), backHeight - 30, backHeight - 12);
  return { intake, baseLevel: depth - intake - height - drop };
};

/** Height of the bust dart's lower leg on the closed side seam: the dart rises a little from the seam to the bust. */
export const mouthLevel = (plan: BlousePlan, bustPoint: Point, depth: number, intake: number): number =>
  settle(bustPoint.y + dartBelowBust + intake, depth + 44, plan.waistLevel - 25);

/** The front's side seam with its dart opened, and where the dart points. */
export const openSide = (plan: BlousePlan, closed: Side, bustPoint: Point, mouth: number, intake: number) => {
  const [beforeDart, afterDart] = splitSegment(closed[1], parameterAtHeight(closed[1], mouth)) as readonly [
    Cubic,
    Cubic,
  ];
  const low = beforeDart.to;
  let aim: Point = { x: low.x, y: low.y - intake / 2 };
  let point = bustPoint;
  let angle = 0;
  // The dart's axis passes through the bust point: each round starts from the last one's mouth and gains two digits.
  for (let round = 0; round < 12; round++) {
    point = add(bustPoint, scale(normalize(subtract(aim, bustPoint)), plan.dartShort));
    // A side as near as the intake is wide is met only while the width is being sought.
    angle = 2 * Math.asin(Math.min(intake / (2 * distance(point, low)), 1));
    aim = midpoint(low, rotate(low, -angle, point));
  }
  const above = applyToPath(rotation(-angle, point), [closed[0], beforeDart]) as readonly [Cubic, Cubic];
  return { above, below: [afterDart, closed[2], closed[3]] as const, point };
};

/** Where the opened side seam passes a height, and at what height that place lies while the dart is closed. */
export const onOpened = (above: readonly [Cubic, Cubic], closed: Side, mouth: number, level: number) => {
  const [curve, from, to] =
    level < above[0].to.y ? [above[0], closed[0].from.y, closed[0].to.y] : [above[1], closed[1].from.y, mouth];
  // A level outside the seam is that of its end; the finished bust then cannot be met, and the draft says so.
  const t = solveBetween((at) => segmentPointAt(curve, at).y - level, 0, 1, fine) ?? (level < curve.from.y ? 0 : 1);
  return { point: { ...segmentPointAt(curve, t), y: level }, closedHeight: from + t * (to - from) };
};
