import type { MeasureId, Measures } from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { type Read, readBody, readEase } from './read-body.ts';
import { settle } from './solve.ts';
import type { EaseByLevel } from './types.ts';

/** The measures the raincoat is drafted from. */
const needed = [
  'stature',
  'bustGirth',
  'hipGirth',
  'waistToHip',
  'neckBaseGirth',
  'shoulderLength',
  'shoulderDrop',
  'acrossBack',
  'armholeDepth',
  'backWaistLength',
  'upperArmGirth',
  'armLength',
  'handGirth',
  'headGirth',
  'napeHeight',
  'waistHeight',
  'insideLeg',
  'kneeHeight',
] as const satisfies readonly MeasureId[];

export type RaincoatMeasures = Read<(typeof needed)[number]>;

const degree = Math.PI / 180;

/**
 * A dropped shoulder is laid this much straighter than the body's: it rests on a pullover, runs on over the round of the
 * shoulder, and its armhole, square to it, falls nearly upright.
 */
const straighter = 5 * degree;

/**
 * Every number the pieces are drawn from, millimetres and radians. Halves and quarters are said so; the rest is whole.
 * Levels are heights with the nape at 0 and y down.
 */
export interface RaincoatPlan {
  readonly ease: EaseByLevel;
  readonly neck: {
    /** Half the width, back and front, opened past the base of the neck for what is worn under. */
    readonly backWidth: number;
    readonly frontWidth: number;
    /** How far both neck points lie above the nape. */
    readonly rise: number;
    /** Neck point to centre front. */
    readonly frontDepth: number;
  };
  readonly shoulder: {
    /** Neck point to where the sleeve begins, down the arm. */
    readonly length: number;
    readonly backSlope: number;
    readonly frontSlope: number;
  };
  readonly waistLevel: number;
  readonly hipLevel: number;
  readonly hemLevel: number;
  /** Nape to underarm line before the sleeve has been fitted. */
  readonly armholeDepth: number;
  readonly bustQuarter: number;
  /** Quarter of the finished girth at the hip level; what the side slants follows from the two. */
  readonly hipQuarter: number;
  /** How far the underarm may lie outside the shoulder point, at least and at most. */
  readonly hole: readonly [number, number];
  readonly sleeve: {
    readonly upperArm: number;
    readonly hem: number;
    /** The body's own arm. */
    readonly arm: number;
    /** Neck point to hem, over the shoulder. */
    readonly reach: number;
    /** Whether it may be cut wider than the design's ease to suit the armhole: not where an ease was asked for. */
    readonly mayWiden: boolean;
  };
  readonly hood: {
    /** Neck point to crown. */
    readonly height: number;
    /** Front to back of the side panel. */
    readonly depth: number;
    /** Half the centre strip's width at its front and at the nape. */
    readonly stripFront: number;
    readonly stripNape: number;
  };
  readonly pocket: { readonly width: number; readonly height: number; readonly flap: number };
  readonly facing: { readonly front: number; readonly shoulder: number; readonly back: number };
}

/** Levels at which ease may be asked for, mm over the whole girth: the least a jumper leaves, and the most. */
const easeRanges = {
  bust: [120, 400],
  hip: [90, 700],
  'upper-arm': [70, 240],
} as const satisfies Readonly<Record<string, readonly [number, number]>>;

/** Between bust and hip the side slants outward by this much for each mm down: six degrees, an A-line that a stride opens. */
const flares = { design: 0.108, least: 0.03, most: 0.24 } as const;

/** Least ease at the hip, where the child sits on a wet step with a jumper pulled down. */
const leastHipEase = 120;

/** The neck is opened this far along the shoulder from the base of the neck, for a jumper's collar. */
const opened = 8;

/** The sleeve begins at least this far down the arm, and the back is at least this much wider than the body's across half. */
const leastDrop = 14;
const leastAcross = 26;

/** Where the bust is read on the pieces, below the underarm line. */
export const bustBelow = 15;

/**
 * From measures and ease to the numbers of the draft.
 *
 * Roomy over a pullover: a coat over a jacket wants 130 to 200 of ease at the bust; a child's also has to
 * last a second winter and be got into alone, so 200 for a child of 860 to 260 for one of 1520. The arm gets 112 to
 * 160 over its girth. A-line: the hip gets what the slant of the side brings there, never under 120.
 *
 * The shoulder is dropped past the shoulder point by four tenths of its length and the sleeve has a low cap. So the
 * armhole seam lies down on the arm, where it hangs and rain runs off it instead of standing in it; the sleeve is
 * sewn in flat, so every seam can be felled or taped before the side is closed; and a low cap lets arms be lifted
 * without the coat. A raglan, the other choice, puts two long bias seams across the shoulders, where rain strikes.
 *
 * Children's block construction as taught in manuals of metric pattern cutting for children; amounts as said. Problems:
 * those of `readBody` and `readEase`, and `drafting.levels-too-close`.
 */
export const planRaincoat = (given: Measures, wished: EaseByLevel): Result<RaincoatPlan> => {
  const measured = readBody(given, needed, 'stature', 'children');
  if (!measured.ok) return measured;
  const body = measured.value;
  const asked = readEase(wished, easeRanges);
  if (!asked.ok) return asked;
  const grown = settle((body.stature - 860) / 660, 0, 1);
  const waistLevel = body.backWaistLength;
  const hipLevel = waistLevel + body.waistToHip;
  // A jumper's armhole is lower than the body's, and the coat's lies below that.
  const armholeDepth = body.armholeDepth + 26 + 6 * grown;
  if (waistLevel < armholeDepth + 20 || hipLevel < waistLevel + 40) {
    return bad('drafting.levels-too-close', {
      waist: { mm: Math.round(waistLevel) },
      armhole: { mm: Math.round(body.armholeDepth) },
    });
  }
  const midThigh = (body.insideLeg + body.kneeHeight) / 2;
  const toThigh = settle(body.waistHeight - midThigh, body.waistToHip + 60, body.waistToHip + 0.18 * body.stature);
  const fifth = body.neckBaseGirth / 5;
  const slope = settle(
    Math.asin(settle(body.shoulderDrop / body.shoulderLength, 0, 0.6)) - straighter,
    9 * degree,
    20 * degree,
  );
  const arm = body.upperArmGirth + (asked.value['upper-arm'] ?? 112 + 48 * grown);
  const hole = [0.115 * arm, 0.24 * arm] as const;
  // Of a slender child with broad shoulders the coat is as wide as these need.
  const shoulders = fifth + opened + (body.shoulderLength - opened + leastDrop) * Math.cos(slope);
  const leastQuarter = Math.max(shoulders, body.acrossBack / 2 + leastAcross) + hole[0];
  const width = widths(body, asked.value, grown, hipLevel - armholeDepth - bustBelow, leastQuarter);
  // The crown stands as far above the nape as nobody's head is long or short of; a stray reading is held to that.
  const crown = settle(body.stature - body.napeHeight, 0.32 * body.headGirth, 0.47 * body.headGirth);
  return good({
    ease: { ...width.ease, 'upper-arm': arm - body.upperArmGirth },
    neck: {
      backWidth: fifth + opened,
      frontWidth: fifth + opened - 2,
      rise: settle(body.neckBaseGirth * 0.055, 12, 22),
      frontDepth: fifth + 12,
    },
    shoulder: {
      length: 1.4 * body.shoulderLength - opened,
      backSlope: slope - 1.5 * degree,
      frontSlope: slope + 1.5 * degree,
    },
    waistLevel,
    hipLevel,
    hemLevel: waistLevel + toThigh,
    armholeDepth,
    bustQuarter: width.bustQuarter,
    hipQuarter: width.hipQuarter,
    hole,
    sleeve: {
      upperArm: arm,
      // A hand in a mitten goes through, and a jumper's cuff does not bunch.
      hem: Math.min(Math.max(body.handGirth + 50, 0.75 * arm), arm - 30),
      // Over the wrist bone with the arm forward, as the coat is worn over thick sleeves.
      reach: body.shoulderLength + body.armLength + 10,
      arm: body.armLength,
      mayWiden: asked.value['upper-arm'] === undefined,
    },
    hood: {
      // As high as the crown above the nape, and an eighth of the head for nodding, hair and a woollen hat: half the strip
      // lies over the crown besides. Much higher, and it falls over the eyes and stays behind when the head turns.
      height: crown + 0.13 * body.headGirth,
      // A head is about a third of its girth long; the rest is room for a hat and the visor. Half the strip lies behind.
      depth: 0.395 * body.headGirth,
      // Together nearly as broad as a head, which is 0.27 of its girth; narrower at the nape, as the head is.
      stripFront: 0.105 * body.headGirth,
      stripNape: 0.075 * body.headGirth,
    },
    pocket: { width: body.handGirth / 2 + 38, height: 1.08 * (body.handGirth / 2 + 38), flap: 38 + 8 * grown },
    facing: { front: 46 + 12 * grown, shoulder: 0.36 * body.shoulderLength, back: 48 + 12 * grown },
  });
};

/** Ease by level, and the quarters that follow from it. Wide hips slant the side more; very wide ones widen the whole coat. */
const widths = (
  body: RaincoatMeasures,
  wished: EaseByLevel,
  grown: number,
  bustToHip: number,
  leastQuarter: number,
): { readonly ease: EaseByLevel; readonly bustQuarter: number; readonly hipQuarter: number } => {
  const bust =
    wished.bust === undefined
      ? Math.max(body.bustGirth + 200 + 60 * grown, 4 * leastQuarter)
      : body.bustGirth + wished.bust;
  const least = body.hipGirth + (wished.hip ?? leastHipEase);
  const slanting = (flare: number): number => bust + 4 * flare * bustToHip;
  const hip =
    wished.hip === undefined ? Math.max(slanting(flares.design), least) : Math.max(least, slanting(flares.least));
  const wider = Math.max(hip - slanting(flares.most), 0);
  return {
    ease: { bust: bust + wider - body.bustGirth, hip: hip - body.hipGirth },
    bustQuarter: (bust + wider) / 4,
    hipQuarter: hip / 4,
  };
};
