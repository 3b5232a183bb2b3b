import {
  type Cubic,
  distance,
  type Line,
  type Path,
  type Point,
  pathLength,
  pathPointAtLength,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { armholeLooks } from './blouse-armhole.ts';
import type { Bodice } from './blouse-bodice.ts';
import { bustPointFor, drawFront, type FrontFrame, frontArmhole, openFront } from './blouse-front.ts';
import type { BlousePlan, BodicePlan } from './blouse-plan.ts';
import { mouthLevel } from './bust-dart.ts';
import { fallingCurve, type Side, slopeBetween } from './side-seam.ts';
import { settle } from './solve.ts';

/** A bodice with its own cup, and how much wider than for the usual cup each front is at waist and hip, mm. */
export interface FullerBodice {
  readonly bodice: Bodice;
  readonly wider: number;
}

/** Between these the dart's intake grows and shrinks, ever less as it comes near: below it is a sliver, beyond it a dart is better split in two, mm. */
const intakes = { least: 20.5, most: 65 } as const;

/** How much of what an alteration would open it by the dart takes here: the side seam takes the rest, which keeps the dart clear of the waist and lets the front be altered further. */
const dartShare = 0.48;

/** How much less the armhole of a fuller front is hollowed, as it turns up with the dart; most of that from this width on, mm. */
const mostRounder = 0.05;
const roundFrom = 15;

/** A wide dart's upper leg meets the side nearer below the bust level than another's, by at most this, mm: so its lower leg keeps clear of the waist. */
const mostRaised = 9;

/** The dart's lower leg stays at least this far below the bust level the closed side seam was drawn for, mm. */
const leastBelowBust = 10;

/** By how much more, in its mean slope from bust to waist, a side may draw in than the one it is sewn to. */
const mostSteeper = 0.03;

/**
 * How much more outward, in its mean slope from underarm to bust, a fuller front may lean, and how much more inward one
 * for a smaller bust, so that the underarm stays where it was.
 */
const mostLeaning = { outward: 0.08, inward: 0.12 } as const;

/** A millimetre at the base of the neck makes the armhole between 0.9 and 1.8 longer, the more the further its bust dart reaches. */
const armholePerLevel = 1.35;

/** Lengths and widths are found to this, mm: well under `tolerance.same`. */
const fine = 1e-6;

/** Most are found in twenty rounds; where the bust point is kept below the underarm a round gains a tenth. */
const mostRounds = 400;

const aside = (point: Point, by: number): Point => ({ x: point.x + by, y: point.y });

const curveAside = (curve: Cubic, by: number): Cubic => ({
  ...curve,
  from: aside(curve.from, by),
  control1: aside(curve.control1, by),
  control2: aside(curve.control2, by),
  to: aside(curve.to, by),
});

/** How far a curve goes outward for each mm it falls, where it begins. */
const slopeFrom = ({ from, control1 }: Cubic): number => (control1.x - from.x) / (control1.y - from.y);

const slopeOf = (from: Point, to: Point): number => (to.x - from.x) / (to.y - from.y);

/** The closed side of a fuller front, against the side it is sewn to, mm. */
interface Moved {
  /** Further out at the bust; at the waist and from there down. */
  readonly bust: number;
  readonly waist: number;
  /** By how much less than at the bust it is further out at the underarm. */
  readonly lean: number;
  /** How far below the other underarm it begins, which makes it as long. */
  readonly lower: number;
}

/** A closed side moved so; from the waist down it is the same curve. */
const movedSide = ([above, drawnIn, hip, straight]: Side, { bust, waist, lean, lower }: Moved): Side => {
  const underarm = { x: above.from.x + bust - lean, y: above.from.y + lower };
  const fullest = aside(above.to, bust);
  const narrowest = aside(drawnIn.to, waist);
  const leaving = slopeFrom(above) + (1.25 * lean) / (fullest.y - underarm.y);
  const atBust = slopeBetween(leaving, slopeOf(fullest, narrowest));
  return [
    fallingCurve(underarm, fullest, leaving, atBust),
    fallingCurve(fullest, narrowest, atBust, slopeFrom(hip)),
    curveAside(hip, waist),
    { ...straight, from: aside(straight.from, waist), to: aside(straight.to, waist) } satisfies Line,
  ];
};

/**
 * What the alteration of a full bust opens a dart by, radians: a front slashed from its armhole's hinge to the bust
 * point, its side part turned about the hinge until the bust point's place has moved out by `width` (manuals of fitting).
 */
const openedBy = (armhole: Path, bustPoint: Point, width: number): number => {
  const hinge = pathPointAtLength(armhole, (2 / 3) * pathLength(armhole));
  const out = hinge.x - bustPoint.x;
  const up = bustPoint.y - hinge.y;
  return Math.atan2(out, up) + Math.asin(settle((width - out) / Math.hypot(out, up), -1, 1));
};

/** The plan with what lies over the bust as the body's own has it. */
const withBust = (plan: BodicePlan): BlousePlan => ({
  ...plan,
  bustDepth: plan.bustDepth + plan.fuller.bustDepth,
  bustSpanHalf: plan.bustSpanHalf + plan.fuller.bustSpanHalf,
  acrossFrontHalf: plan.acrossFrontHalf + plan.fuller.acrossFrontHalf,
  dartShort: plan.dartShort + plan.fuller.dartShort,
});

/**
 * The front of a body whose bust is larger or smaller than the usual cup's, as the alteration of a full bust would
 * make it; the back stays as it is, and so does the sleeve.
 *
 * 1. The dart opens further, and with it the front is longer over the bust. It takes about half of what the alteration
 *    would open it by, and never passes 65.
 * 2. The sewn side seam lies further out at the bust by what the width still needs, leans a little from the underarm to
 *    there, and draws in a little more to the waist: what is then left is gained at waist and hip. It is the back's
 *    curve from the waist down, and begins as much lower or higher at the underarm as makes it as long above: it walks.
 * 3. The neck rises or falls by as much as keeps the armhole as long as it was.
 *
 * After the alteration of a full bust as given in manuals of fitting; there the widths below grow by as much as the
 * bust, and are offered to be taken in at the side, as here. The largest cups gain less length than their bust asks for.
 * Problem `drafting.bust-points-too-far-apart` where the dart would not lie between bust point and side.
 */
export const fullerFront = (plan: BodicePlan, depth: number, bodice: Bodice): Result<FullerBodice> => {
  const { width } = plan.fuller;
  if (width === 0) return good({ bodice, wider: 0 });
  const own = withBust(plan);
  const { back, front, frame } = bodice;
  const armhole = pathLength(front.armhole);

  const { point, above } = { point: front.dartPoint, above: front.sideAbove[1].to };
  const leg = distance(point, above);
  const opened = 2 * Math.asin(frame.intake / (2 * leg)) + openedBy(front.armhole, front.bustPoint, width);
  const asked = dartShare * (2 * leg * Math.sin(opened / 2) - frame.intake);
  const room = (plan.bustQuarter + width - own.bustSpanHalf - own.dartShort) / 2;
  const left = asked > 0 ? Math.min(intakes.most, room) - frame.intake : frame.intake - intakes.least;
  const intake = frame.intake + (left > 0 ? left * Math.tanh(asked / left) : 0);
  if (own.bustSpanHalf + own.dartShort + 2 * intake > plan.bustQuarter + width) {
    return bad('drafting.bust-points-too-far-apart', { span: { mm: Math.round(2 * own.bustSpanHalf) } });
  }

  const [bustCurve, waistCurve] = frame.closed;
  const toWaist = pathLength([bustCurve, waistCurve]);
  const drawsIn = mostSteeper * (waistCurve.to.y - waistCurve.from.y);
  const height = bustCurve.to.y - bustCurve.from.y;
  const underarm = front.sideAbove[0].from;
  const look = {
    ...armholeLooks.front,
    hollow: armholeLooks.front.hollow - mostRounder * Math.tanh(Math.max(width, 0) / roundFrom),
  };
  const raised = settle(width / 3, 0, mostRaised);
  let lean = 0;
  let baseLevel = frame.baseLevel;
  let wider = width;
  let lower = 0;
  for (let round = 0; ; round++) {
    const bustPoint = bustPointFor(own, depth, intake, baseLevel);
    const mouth = Math.max(mouthLevel(own, bustPoint, depth, intake) - raised, bustCurve.to.y + leastBelowBust);
    const below = wider - settle(wider, -drawsIn, drawsIn);
    const closed = movedSide(frame.closed, { bust: wider, waist: below, lean, lower });
    const drawn: FrontFrame = { closed, intake, baseLevel, bustPoint, mouth };
    const open = openFront(own, drawn);
    const tooWide = open.bustSide.x - front.bustSide.x - width;
    const tooLong = pathLength(frontArmhole(own, baseLevel, open, look).path) - armhole;
    const leaning = settle(
      lean + open.opened.above[0].from.x - underarm.x,
      -mostLeaning.inward * height,
      mostLeaning.outward * height,
    );
    const sideTooLong = pathLength(closed.slice(0, 2)) - toWaist;
    if (Math.max(...[tooWide, tooLong, sideTooLong, leaning - lean].map(Math.abs)) < fine) {
      return good({
        bodice: {
          back,
          front: drawFront(own, drawn, open, look),
          frame: drawn,
        },
        wider: below,
      });
    }
    if (round === mostRounds)
      return bad('drafting.bodice-cannot-fit', { bust: { mm: Math.round(4 * plan.bustQuarter + 2 * width) } });
    wider -= tooWide;
    baseLevel += tooLong / armholePerLevel;
    lower += sideTooLong;
    lean = leaning;
  }
};
