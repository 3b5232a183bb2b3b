import type { Cubic, Line, Path, Point } from '../geometry/index.ts';
import { armholeBetween, armholeLooks } from './blouse-armhole.ts';
import type { BlousePlan } from './blouse-plan.ts';
import { frontShoulder, jewel, neckLean } from './blouse-shoulder.ts';
import { onOpened, openSide } from './bust-dart.ts';
import { draftNeckline } from './neckline.ts';
import type { Side } from './side-seam.ts';
import { settle } from './solve.ts';

export interface FrontDraft {
  readonly neck: Path;
  readonly shoulder: Path[number];
  readonly armhole: Path;
  readonly across: Point;
  /** Underarm to the bust dart's upper leg. */
  readonly sideAbove: readonly [Cubic, Cubic];
  /** From its lower leg to the waist, the hip and the hem. */
  readonly sideBelow: readonly [Cubic, Cubic, Line];
  readonly dartPoint: Point;
  readonly bustPoint: Point;
  /** Where the bust level ends on the side seam. */
  readonly bustSide: Point;
}

/** What a front is drawn from, beside its plan. */
export interface FrontFrame {
  /** The side seam as it is sewn, its dart closed. */
  readonly closed: Side;
  /** How wide the bust dart opens at the side, mm. */
  readonly intake: number;
  /** Height of the base of the neck at the shoulder. */
  readonly baseLevel: number;
  readonly bustPoint: Point;
  /** Height of the dart's lower leg on the closed side seam. */
  readonly mouth: number;
}

/** How far at least the bust point lies below the front's underarm, mm. */
const leastAboveBust = 18;

/** The bust is measured level under the arms, so its point cannot lie above the underarm, whatever a height says. */
export const bustPointFor = (plan: BlousePlan, depth: number, intake: number, baseLevel: number): Point => {
  const across = plan.bustSpanHalf - plan.neck.frontWidth;
  const fallen = Math.sqrt(plan.bustDepth ** 2 - Math.min(Math.abs(across), plan.bustDepth / 2) ** 2);
  return { x: plan.bustSpanHalf, y: Math.max(baseLevel + fallen, depth - intake + leastAboveBust) };
};

/** The front's side with its dart opened, and where the bust level ends on it: open, and while the dart is closed. */
export const openFront = (plan: BlousePlan, { closed, intake, bustPoint, mouth }: FrontFrame) => {
  const opened = openSide(plan, closed, bustPoint, mouth, intake);
  const level = settle(bustPoint.y, opened.above[0].from.y + 12, opened.above[1].to.y - 5);
  const { point: bustSide, closedHeight } = onOpened(opened.above, closed, mouth, level);
  return { opened, bustSide, closedHeight };
};

export type OpenFront = ReturnType<typeof openFront>;

/** The front's armhole over its opened side. */
export const frontArmhole = (plan: BlousePlan, baseLevel: number, { opened }: OpenFront, look = armholeLooks.front) =>
  armholeBetween(frontShoulder(plan, baseLevel), opened.above[0], plan.acrossFrontHalf, look);

/** The front, all its lines. */
export const drawFront = (
  plan: BlousePlan,
  frame: FrontFrame,
  open: OpenFront,
  look = armholeLooks.front,
): FrontDraft => {
  const { baseLevel, bustPoint } = frame;
  const shoulder = frontShoulder(plan, baseLevel);
  const armhole = frontArmhole(plan, baseLevel, open, look);
  return {
    neck: draftNeckline({
      centre: { x: 0, y: baseLevel + plan.neck.frontDepth + jewel.front },
      neckPoint: shoulder.neckPoint,
      shoulderDirection: shoulder.directions[0],
      lean: neckLean,
      fullness: 0.58,
    }),
    shoulder: { kind: 'line', from: shoulder.neckPoint, to: shoulder.point },
    armhole: armhole.path,
    across: armhole.narrowest,
    sideAbove: open.opened.above,
    sideBelow: open.opened.below,
    dartPoint: open.opened.point,
    bustPoint,
    bustSide: open.bustSide,
  };
};
