import type { Measures, Survey } from '../body/index.ts';
import { good, type Result } from '../units/index.ts';
import { type Read, readBody, readEase } from './read-body.ts';
import { planTee, type TeePlan } from './tee-plan.ts';
import type { EaseByLevel } from './types.ts';

/** Measures the sweatshirt takes beside those of the knit block it is drafted from. */
const needed = [
  'bustGirth',
  'waistGirth',
  'hipGirth',
  'upperArmGirth',
  'shoulderLength',
  'armLength',
  'headGirth',
  'neckBaseGirth',
  'handGirth',
  'wristGirth',
  'armholeDepth',
] as const;

export type SweatshirtView = 'long' | 'pocket' | 'three-quarter';

/** Crosswise stretch the cloth has to have: 100 mm reach 120. */
export const sweatStretch = 0.2;

/**
 * The bands over the edges they are stretched on to, and how far that may be varied; their finished widths, mm. Bands
 * in the garment's own knit, as manuals of sewing knits have it: a neck's least shorter, so that it lies flat without
 * dragging; a cuff's most, for the sleeve is gathered in by it; a hem's so that it holds the body at the hip.
 */
export const bands = {
  neck: { share: 0.88, least: 0.84, most: 0.92, width: 24 },
  cuff: { share: 0.8, least: 0.74, most: 0.88, width: 58 },
  hem: { share: 0.9, least: 0.85, most: 0.95, width: 58 },
} as const;

/** Every number the pieces are drawn from beside the block's, millimetres and radians. */
export interface SweatshirtPlan {
  readonly ease: EaseByLevel;
  /** The knit block, with the sweatshirt's widths: neck, shoulders, levels, sides. */
  readonly block: TeePlan;
  /** Nape to underarm line. */
  readonly armholeDepth: number;
  /** The underarm is not lowered below this. */
  readonly lowestDepth: number;
  readonly sleeve: {
    readonly upperArm: number;
    /** The edge the cuff is stretched on to; a three-quarter sleeve's own hem. */
    readonly hem: number;
    /** From the shoulder point to the cuff's seam, or to the hem. */
    readonly length: number;
    /** From there to the elbow. */
    readonly elbowLevel: number;
    readonly mayWiden: boolean;
  };
  readonly cuffRound: number;
  /** Girth of the hand, for a pocket. */
  readonly hand: number;
}

/** What the design asks for where nothing else is said, mm over the whole girth: roomy. */
const design = { bust: 120, waist: 80, hip: 75, upperArm: 95 } as const;

/** The most ease that may be asked for at a level, mm. */
const mostEase = { bust: 320, waist: 500, hip: 400, 'upper-arm': 220 } as const;

/** The least ease a body may be given: garment ≥ body / (1 + 0.3 s). */
const leastEase = (body: number): number => Math.ceil(body / (1 + 0.3 * sweatStretch) - body);

/** The underarm lies this much below a set-in tee's, mm: a raglan is lifted with the arm and must not bind. */
const deeper = 42;

/** However deep an armhole is read, the underarm lies at least so much below the arm crease before it is raised for a thin arm, mm. */
const clearOfArm = 26;

/** The underarm stays this far above the waist, mm. */
const aboveWaist = 75;

/**
 * From measures and ease to the numbers of the draft, by way of the knit set-in block: its neck, shoulders and levels.
 *
 * Bust 120 and upper arm 95 follow the body; the hip 75, wider where waist or bust need it: the sweatshirt hangs nearly
 * straight, never narrower at the hip than the body at its waist with 80, nor more than 60 narrower than the bust. The waist
 * lies on the line between. The neckline is as long as its band needs to pass the head by the stretch of the cloth;
 * the cuff as long as the hand needs, or the wrist and an eighth.
 */
export const planSweatshirt = (
  given: Measures,
  survey: Survey,
  view: SweatshirtView,
  wishes: EaseByLevel,
): Result<SweatshirtPlan> => {
  const measured = readBody(given, needed, 'bustGirth', survey);
  if (!measured.ok) return measured;
  const body: Read<(typeof needed)[number]> = measured.value;
  const wished = readEase(wishes, {
    bust: [leastEase(body.bustGirth), mostEase.bust],
    waist: [leastEase(body.waistGirth), mostEase.waist],
    hip: [leastEase(body.hipGirth), mostEase.hip],
    'upper-arm': [leastEase(body.upperArmGirth), mostEase['upper-arm']],
  });
  if (!wished.ok) return wished;
  const bustEase = wished.value.bust ?? design.bust;
  const armEase = wished.value['upper-arm'] ?? design.upperArm;
  const drafted = planTee(given, survey, {
    ease: { bust: Math.min(bustEase, 300), 'upper-arm': Math.min(armEase, 200) },
  });
  if (!drafted.ok) return drafted;
  const tee = drafted.value;
  const bust = body.bustGirth + bustEase;
  const hip =
    wished.value.hip === undefined
      ? Math.max(body.hipGirth + design.hip, body.waistGirth + design.waist, bust - 60)
      : body.hipGirth + wished.value.hip;
  const armholeDepth = Math.min(
    Math.max(tee.armholeDepth + deeper, body.armholeDepth + clearOfArm),
    tee.waistLevel - aboveWaist,
  );
  const share = (tee.waistLevel - armholeDepth) / (tee.hipLevel - armholeDepth);
  const waist = wished.value.waist === undefined ? bust + share * (hip - bust) : body.waistGirth + wished.value.waist;
  const cuffRound = Math.max((body.handGirth + 4) / (1 + sweatStretch), 1.125 * body.wristGirth);
  // The block's shoulder may be longer than the body's: the sleeve begins where it ends.
  const extended = tee.shoulder.length - body.shoulderLength;
  const upperArm = body.upperArmGirth + armEase;
  const cuffed = view !== 'three-quarter';
  const wrist = Math.min(cuffRound / bands.cuff.share, 0.82 * upperArm);
  const block: TeePlan = {
    ...tee,
    neck: {
      ...tee.neck,
      leastRound: Math.max((body.headGirth + 5) / (1 + sweatStretch), 1.03 * body.neckBaseGirth) / bands.neck.share,
    },
    hemLevel: tee.hipLevel + 12,
    bustQuarter: bust / 4,
    waistQuarter: waist / 4,
    hipQuarter: hip / 4,
    frontWider: 0,
  };
  return good({
    ease: {
      bust: bustEase,
      waist: waist - body.waistGirth,
      hip: hip - body.hipGirth,
      'upper-arm': armEase,
    },
    block,
    armholeDepth,
    lowestDepth: tee.waistLevel - aboveWaist / 2,
    sleeve: {
      upperArm,
      hem: cuffed ? wrist : wrist + 0.4 * (upperArm - wrist),
      // With a cuff a little longer than the arm: it pouches over it. Without, to below the elbow.
      length: (cuffed ? body.armLength - bands.cuff.width + 14 : 0.76 * body.armLength) - extended,
      elbowLevel: 0.57 * body.armLength - extended,
      mayWiden: wished.value['upper-arm'] === undefined,
    },
    cuffRound,
    hand: body.handGirth,
  });
};
