import type { MeasureId, Measures } from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { type BodicePlan, planBlouse } from './blouse-plan.ts';
import { readBody, readEase } from './read-body.ts';
import { settle } from './solve.ts';
import type { EaseByLevel } from './types.ts';

/** What the dress is drafted from beside the measures of a bodice. */
const needed = [
  'bustGirth',
  'waistGirth',
  'hipGirth',
  'waistToHip',
  'acrossBack',
  'armholeDepth',
  'backWaistLength',
  'armLength',
  'upperArmGirth',
  'elbowGirth',
  'wristGirth',
  'waistHeight',
  'kneeHeight',
] as const satisfies readonly MeasureId[];

/** What one view of the dress is made with. */
export interface ShirtDressView {
  readonly collar: boolean;
  readonly sleeve: 'long' | 'short';
  readonly tier: boolean;
}

export const shirtDressViews: Readonly<Record<string, ShirtDressView>> = {
  tiered: { collar: false, sleeve: 'long', tier: true },
  knee: { collar: true, sleeve: 'short', tier: false },
};

/** What is the same for every body, mm. */
export const shirtDress = {
  /** Finished width of the button stand; the centre front runs down its middle. */
  stand: 34,
  /** How far the shoulder seam is moved to the front of the shoulder: the yoke lies over it. */
  forward: 20,
  /** Depth of the box pleat's two folds. Its visible face is twice as wide, and so the folds meet behind it. */
  pleat: 30,
  waistband: 36,
  /** How much longer the bodice is than the body, so that it blouses over the waistband when the arms are raised. */
  blousing: 10,
  /** Upper skirt over waistband, and tier over upper skirt. */
  skirtFullness: 1.4,
  tierFullness: 1.5,
  /** The shoulder point of a shirt lies this much outside the body's, so that the sleeve hangs from the arm. */
  shoulderOut: 10,
  cuff: 60,
  /** By how much the cuff laps, and how much wider than the wrist it closes. */
  cuffLap: 20,
  cuffEase: 48,
  slit: 110,
} as const;

/** The pockets' mouths on the skirt's sides, from the waistband, mm: where a hand falls. */
export const pocketMouth = { from: 55, length: 150 } as const;

/** Numbers the pieces are drawn from, mm; levels with the nape at 0, y down. */
export interface ShirtDressPlan {
  readonly ease: EaseByLevel;
  readonly view: ShirtDressView;
  readonly bodice: BodicePlan;
  /** Where the bodice is joined to the waistband. */
  readonly bodiceLevel: number;
  /** Quarter of the finished waist. */
  readonly waistQuarter: number;
  readonly skirt: {
    /** From the waistband down. */
    readonly length: number;
    /** Of the side seam's hem, outward, over the length. */
    readonly flare: number;
    /** Top edge over waistband. */
    readonly fullness: number;
    /** From the waistband down to the hip's level. */
    readonly hip: number;
  };
  /** Height of the tier; 0 where the view has none. */
  readonly tier: number;
  readonly sleeve: {
    readonly upperArm: number;
    /** Cap top to wrist edge or hem. */
    readonly length: number;
    /** Cap top to elbow. */
    readonly elbow: number;
    readonly elbowGirth: number;
    /** Narrowest and widest wrist edge; a short sleeve's hem follows its upper arm. */
    readonly wrist: readonly [number, number];
    /** Finished cuff, buttoned. */
    readonly cuff: number;
  };
}

/** What the design asks for where nothing else is said, mm over the whole girth. */
const design = { bust: 110, waist: 110, hip: 110, upperArm: 115 } as const;

/** Ease that may be asked for, mm. */
const easeRange: Readonly<Record<string, readonly [number, number]>> = {
  bust: [60, 300],
  waist: [40, 300],
  hip: [80, 700],
  'upper-arm': [60, 200],
};

/** A skirt less full than this looks pulled in rather than gathered; a fuller one does not lie in its seam. */
const fullnessRange = [1.2, 2] as const;

/** Bodice over waistband, at least: enough to be drawn in evenly without looking like a slip of the scissors. */
const leastBlousing = 1.08;

/** A collar's neckline lies closer to the neck than a faced one: so much at the shoulder and at the front, mm. */
const closer = { aside: 3, down: 5 } as const;

/** Flare at each side over the length of the upper skirt: a skirt without tier needs it to be walked in. */
const flareOf = ({ tier }: ShirtDressView): number => (tier ? 0.04 : 0.08);

/** How the hem lies: mid-calf (this share of the knee's height over the floor) with a tier, at the middle of the knee without. */
const tierHem = 0.68;
/** Upper skirt's share of a skirt with a tier: the seam lies above the hem's middle, as rows of a tiered skirt widen downwards. */
const upperShare = 0.54;

/**
 * The wrist of a cuffed sleeve is wider than its cuff by two pleats: this share of what the upper sleeve is wider, and
 * so much in all at least and at most, mm.
 */
const wristShare = 0.36;
const pleats = { least: 40, most: 110 } as const;

/**
 * From measures and ease to the numbers of the draft.
 *
 * The bodice is the block's, eased as a shirt (bust 110), its armhole 12 deeper and its shoulder 10 longer. Below the
 * bust it is drawn in by the side seams alone and gathered a little on to a waistband of waist + 110. The upper skirt
 * is gathered 1.4 times on to the waistband; where the hip then had less than 110 of ease, as much fuller as that
 * takes. Proportions as in manuals of metric pattern cutting (shirt block, gathered and tiered skirts).
 * Problems: those of the block's plan and of the ease asked for.
 */
export const planShirtDress = (given: Measures, view: ShirtDressView, asked: EaseByLevel): Result<ShirtDressPlan> => {
  const measured = readBody(given, needed, 'bustGirth', 'women');
  if (!measured.ok) return measured;
  const body = measured.value;
  const wished = readEase(asked, easeRange);
  if (!wished.ok) return wished;
  const bust = wished.value['bust'] ?? design.bust;
  const waist = wished.value['waist'] ?? design.waist;
  const upperArmEase = wished.value['upper-arm'] ?? design.upperArm;
  const finishedWaist = body.waistGirth + waist;
  const hanging = planBlouse(given, { ease: { bust, 'upper-arm': upperArmEase } });
  if (!hanging.ok) return hanging;
  const leastBodice = (leastBlousing * finishedWaist) / 4;
  const waistQuarter = finishedWaist / 4;
  const block = hanging.value;
  const bodice: BodicePlan = {
    ...block,
    waistQuarter: Math.max(block.waistQuarter, leastBodice),
    hipQuarter: Math.max(block.hipQuarter, leastBodice),
    armholeDepth: block.armholeDepth + 12,
    neck: {
      ...block.neck,
      backWidth: block.neck.backWidth - closer.aside,
      frontWidth: block.neck.frontWidth - closer.aside,
      frontDepth: block.neck.frontDepth - closer.down,
    },
    shoulder: {
      ...block.shoulder,
      length: block.shoulder.length + shirtDress.shoulderOut + closer.aside,
      ease: 0,
      dartLength: 0.4 * block.armholeDepth + 17,
    },
  };
  const inner = waistQuarter - shirtDress.stand / 2;
  const hipDepth = body.waistToHip - shirtDress.waistband / 2;
  const slope = flareOf(view);
  // What goes round the hip beside the skirt's own fullness: the button stand and the flare at both sides.
  const beside = shirtDress.stand + 4 * slope * hipDepth;
  const round = 2 * (inner + waistQuarter);
  const hipWith = (fullness: number): number => fullness * round + beside - body.hipGirth;
  const fullnessFor = (hip: number): number => (body.hipGirth + hip - beside) / round;
  const wishedHip = wished.value['hip'];
  const [least, most] = fullnessRange;
  if (wishedHip !== undefined && !(wishedHip >= hipWith(least) && wishedHip <= hipWith(most))) {
    return bad('drafting.ease-impossible', {
      level: 'hip',
      ease: { mm: wishedHip },
      low: { mm: Math.ceil(hipWith(least)) },
      high: { mm: Math.floor(hipWith(most)) },
    });
  }
  const fullness =
    wishedHip === undefined ? Math.max(shirtDress.skirtFullness, fullnessFor(design.hip)) : fullnessFor(wishedHip);
  const hip = hipWith(fullness);
  const toKnee = Math.max(body.waistHeight - body.kneeHeight, body.waistToHip + 150);
  const below = shirtDress.waistband / 2;
  const whole = view.tier ? toKnee + (1 - tierHem) * body.kneeHeight - below : toKnee - below;
  const length = view.tier
    ? Math.max(upperShare * whole, hipDepth + 60, pocketMouth.from + pocketMouth.length + 65)
    : whole;
  const cuff = body.wristGirth + shirtDress.cuffEase;
  const fallsFrom = body.armLength - shirtDress.shoulderOut;
  return good({
    ease: { bust, waist, hip, 'upper-arm': upperArmEase },
    view,
    bodice,
    bodiceLevel: bodice.waistLevel - shirtDress.waistband / 2 + shirtDress.blousing,
    waistQuarter,
    skirt: { length, flare: slope * length, fullness, hip: hipDepth },
    tier: view.tier ? Math.max(whole - length, 150) : 0,
    sleeve: {
      upperArm: body.upperArmGirth + upperArmEase,
      // A little longer than the arm, so that the cuff stays at the wrist when the elbow bends.
      length: view.sleeve === 'long' ? fallsFrom + 18 - shirtDress.cuff : 0.41 * body.armLength - 8,
      elbow: 0.57 * body.armLength - shirtDress.shoulderOut,
      elbowGirth: body.elbowGirth,
      wrist: [cuff + pleats.least, cuff + pleats.most],
      cuff,
    },
  });
};

/** Ease the bent elbow needs, and the share of a sleeve's taper that is behind where it bends. */
const elbow = { ease: 48, taper: 0.55 } as const;

/** The wrist edge of a sleeve so wide at the upper arm, mm: no narrower than leaves the elbow its ease. */
export const wristOf = ({ sleeve }: ShirtDressPlan, upperArm: number): number =>
  settle(
    Math.max(
      sleeve.cuff + wristShare * (upperArm - sleeve.cuff),
      upperArm - (upperArm - sleeve.elbowGirth - elbow.ease) / elbow.taper,
    ),
    sleeve.wrist[0],
    sleeve.wrist[1],
  );
