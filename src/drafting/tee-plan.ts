import type { MeasureId, Measures, Survey } from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { type Read, readBody, readEase } from './read-body.ts';
import { settle } from './solve.ts';
import type { DraftOptions, EaseByLevel } from './types.ts';

/** The measures the tee is drafted from. */
const needed = [
  'bustGirth',
  'upperBustGirth',
  'waistGirth',
  'hipGirth',
  'waistToHip',
  'neckBaseGirth',
  'shoulderLength',
  'shoulderDrop',
  'acrossBack',
  'acrossFront',
  'armholeDepth',
  'backWaistLength',
  'frontWaistLength',
  'bustDepth',
  'bustSpan',
  'upperArmGirth',
  'armLength',
  'headGirth',
] as const satisfies readonly MeasureId[];

export type TeeMeasures = Read<(typeof needed)[number]>;

const degree = Math.PI / 180;

/**
 * A tee's shoulder is laid this much straighter than the body's: its neck is opened past the steep foot of the neck, and
 * the arm is lifted in it. Blocks for knits, as taught in manuals of cutting knitted cloth.
 */
const straighter = 1.5 * degree;

/** Crosswise stretch the cloth has to have: 100 mm reach 125. */
export const stretchNeeded = 0.25;

/**
 * The neck band over the neckline it is stretched on to. Bands in the garment's own knit are cut 10 to 18 in a
 * hundred shorter, as manuals of sewing knits have it: the band's folded edge lies inside the seam, on a smaller
 * round, and would stand away if it were as long.
 */
export const band = { share: 0.86, least: 0.82, most: 0.9, width: 18 } as const;

/**
 * Every number the pieces are drawn from, millimetres and radians. Halves and quarters are said so; the
 * rest is whole. Levels are heights with the nape at 0 and y down.
 */
export interface TeePlan {
  readonly ease: EaseByLevel;
  readonly neck: {
    /** Half the width at the base of the neck, back and front. */
    readonly backWidth: number;
    readonly frontWidth: number;
    /** How far the back neck point lies above the nape, and the front's above the back's. */
    readonly rise: number;
    readonly raise: number;
    /** Neck point to centre front at the base of the neck, before lowering. */
    readonly frontDepth: number;
    /** The whole finished neckline has to be at least this long, for its band to pass the head and lie outside the base of the neck. */
    readonly leastRound: number;
  };
  readonly shoulder: { readonly length: number; readonly backSlope: number; readonly frontSlope: number };
  readonly acrossBackHalf: number;
  readonly acrossFrontHalf: number;
  readonly waistLevel: number;
  readonly hipLevel: number;
  readonly hemLevel: number;
  /** Nape to underarm line before the sleeve has been fitted. */
  readonly armholeDepth: number;
  /** Quarter of the finished girth; the front is wider by `frontWider`, the back narrower by as much. */
  readonly bustQuarter: number;
  readonly waistQuarter: number;
  readonly hipQuarter: number;
  readonly frontWider: number;
  readonly bustDepth: number;
  readonly bustSpanHalf: number;
  readonly sleeve: {
    /** Finished, at the upper arm and at the hem. */
    readonly upperArm: number;
    readonly hem: number;
    /** Underarm line to hem. */
    readonly below: number;
    /** Whether it may be cut wider than the design's ease to suit the armhole: not where an ease was asked for. */
    readonly mayWiden: boolean;
  };
}

/**
 * What the design asks for where nothing else is said, mm over the whole girth: semi-fitted.
 *
 * A knit needs no wearing ease: what a woven gives as 65 to 90 of ease, a cloth of stretch s gives by stretching
 * (in wear 0.1 s to 0.2 s, at most 0.3 s: here up to 70 of a bust of 950). So the least is the body less
 * what may be stretched; the design adds a little so that the tee skims instead of clinging.
 */
const design = { bust: 45, waist: 40, hip: 40, upperArm: 50 } as const;

/** Levels at which ease may be asked for: the body measure, and the most beyond which it is another garment, mm. */
const levels: Readonly<Record<string, readonly [MeasureId & keyof TeeMeasures, number]>> = {
  bust: ['bustGirth', 300],
  waist: ['waistGirth', 500],
  hip: ['hipGirth', 400],
  'upper-arm': ['upperArmGirth', 200],
};

/** The least ease a body may be given: garment ≥ body / (1 + 0.3 s). */
const leastEase = (body: number): number => Math.ceil(body / (1 + 0.3 * stretchNeeded) - body);

/** Underarm to waist and waist to hip need this much for the curve of the side, mm. */
const leastSide = 70;
const leastHip = 60;

/**
 * The tee's own ease, by level.
 *
 * Bust, hip and upper arm follow the body. A tee hangs from shoulder blades and chest down to the hip, and cloth
 * passes over the hollow of the back there whoever wears it: the first 26 of hollow at each side seam
 * are not followed. Of what the waist is hollower than that, nine tenths are, up to 22 a seam (less below a low bust); less where the
 * bust hardly stands out before the chest, for there the front hangs straight: a third at a cup of 15 and under, all at 35.
 * So a shapely body gets a drawn-in side and a straight one a straight side. Cloth hangs from what is widest
 * above it: the hip is never narrower than the waist, nor more than 40 narrower than the bust.
 */
const easeFor = (body: TeeMeasures, wished: EaseByLevel, waistShare: number): EaseByLevel => {
  const bust = body.bustGirth + (wished.bust ?? design.bust);
  const leastWaist = body.waistGirth + design.waist;
  const hip =
    wished.hip === undefined ? Math.max(body.hipGirth + design.hip, leastWaist, bust - 40) : body.hipGirth + wished.hip;
  const straight = bust + waistShare * (hip - bust);
  const hollow = (straight - leastWaist) / 4;
  const followed = settle((body.bustGirth - body.upperBustGirth - 5) / 30, 1 / 3, 1);
  // A side seam cannot draw in faster than about one in eight below a low bust.
  const steepest = Math.min(22, 0.12 * Math.max(body.frontWaistLength - body.bustDepth, 0));
  const takenIn = followed * settle(0.9 * (hollow - 26), 0, steepest);
  const waist =
    wished.waist === undefined ? Math.max(leastWaist, straight - 4 * takenIn) : body.waistGirth + wished.waist;
  return {
    bust: bust - body.bustGirth,
    waist: waist - body.waistGirth,
    hip: hip - body.hipGirth,
    'upper-arm': wished['upper-arm'] ?? design.upperArm,
  };
};

/** From the least a body may be given to the most, by level. */
const easeRanges = (body: TeeMeasures): Readonly<Record<string, readonly [number, number]>> =>
  Object.fromEntries(
    Object.entries(levels).map(([level, [measure, most]]) => [level, [leastEase(body[measure]), most] as const]),
  );

/**
 * From measures and ease to the numbers of the draft. Nothing depends on whose chart the body is from: what
 * differs between a woman's tee and a man's follows from cup, waist, arm and shoulder. Proportions are those of
 * knit blocks as taught in manuals of metric pattern cutting: less depth and width of armhole than a woven's, one
 * length of front and back at the side, no darts.
 */
export const planTee = (given: Measures, survey: Survey, options: DraftOptions = {}): Result<TeePlan> => {
  const measured = readBody(given, needed, 'bustGirth', survey);
  if (!measured.ok) return measured;
  const body = measured.value;
  const wished = readEase(options.ease ?? {}, easeRanges(body));
  if (!wished.ok) return wished;
  const bodySlope = Math.asin(settle(body.shoulderDrop / body.shoulderLength, 0, 0.6));
  const slope = settle(bodySlope - straighter, 13 * degree, 25 * degree);
  const fifth = body.neckBaseGirth / 5;
  const waistLevel = body.backWaistLength;
  const hipLevel = waistLevel + body.waistToHip;
  // The arm crease, and 5: a knit moves with the arm, and the nearer the armhole the less it drags the body up.
  const armholeDepth = settle(body.armholeDepth + 5, body.bustGirth / 10 + 83, body.bustGirth / 10 + 133);
  if (waistLevel < armholeDepth + leastSide || hipLevel < waistLevel + leastHip) {
    return bad('drafting.levels-too-close', {
      waist: { mm: Math.round(waistLevel) },
      armhole: { mm: Math.round(body.armholeDepth) },
    });
  }
  const ease = easeFor(body, wished.value, (waistLevel - armholeDepth) / (hipLevel - armholeDepth));
  const cup = body.bustGirth - body.upperBustGirth;
  const rise = settle(body.neckBaseGirth * 0.054, 16, 26);
  // A front longer than the back over the bust is cut higher at the neck point as far as a dartless front can take; the
  // shoulder point goes up by half of it, for the armhole is no longer in front.
  const raise = settle((body.frontWaistLength - body.backWaistLength - rise) / 2, 0, 5);
  const backSlope = slope - 1.5 * degree;
  const frontSlope = slope + 1.5 * degree + Math.asin(raise / 2 / body.shoulderLength);
  const bustHalf = (body.bustGirth + (ease.bust ?? 0)) / 2;
  const upperArm = body.upperArmGirth + (ease['upper-arm'] ?? 0);
  // The armhole's width is what the across lines leave of half the bust: the arm must go through it.
  // Front and back differ by less than they read on the body: a front cut in as far as a woven's makes its armhole the longer.
  const readMean = (body.acrossBack + body.acrossFront) / 4 + 4.5;
  const differ = settle((body.acrossBack - body.acrossFront) / 4 - 1, 2.5, 3.5);
  const width = bustHalf - 2 * readMean;
  const wider = (width - settle(width, 0.3 * upperArm, 0.5 * upperArm)) / 2;
  const acrossBackHalf = readMean + differ + wider;
  const acrossFrontHalf = readMean - differ + wider;
  // The shoulder point stands a little outside both across lines; readings that disagree share the difference. A
  // shoulder that would stand far out hooks the armhole under it, so most of what is too much is left off.
  const standsOut =
    (fifth - 2 + body.shoulderLength * Math.cos(backSlope) - acrossBackHalf) / 2 +
    (fifth - 4 + body.shoulderLength * Math.cos(frontSlope) - acrossFrontHalf) / 2;
  const longer = settle(13 - standsOut, 0, 14) - settle(0.62 * (standsOut - 18), 0, 20);
  return good({
    ease,
    neck: {
      backWidth: fifth - 2,
      frontWidth: fifth - 4,
      rise,
      raise,
      frontDepth: fifth + 2,
      leastRound: Math.max((body.headGirth + 5) / (1 + stretchNeeded), 1.03 * body.neckBaseGirth) / band.share,
    },
    shoulder: { length: body.shoulderLength + longer, backSlope, frontSlope },
    acrossBackHalf,
    acrossFrontHalf,
    waistLevel,
    hipLevel,
    hemLevel: hipLevel + 40,
    armholeDepth,
    bustQuarter: bustHalf / 2,
    waistQuarter: (body.waistGirth + (ease.waist ?? 0)) / 4,
    hipQuarter: (body.hipGirth + (ease.hip ?? 0)) / 4,
    frontWider: settle(0.06 * (cup - 20), 0, 2.5),
    bustDepth: body.bustDepth,
    bustSpanHalf: body.bustSpan / 2,
    sleeve: {
      upperArm,
      hem: upperArm - 14,
      below: 0.135 * body.armLength,
      mayWiden: wished.value['upper-arm'] === undefined,
    },
  });
};
