import type { MeasureId, Measures } from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { BlousePlan } from './blouse-plan.ts';
import { type Read, readBody, readEase } from './read-body.ts';
import { settle } from './solve.ts';
import type { EaseByLevel } from './types.ts';

/** The measures the jacket is drafted from. */
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
  'elbowGirth',
  'armLength',
  'handGirth',
] as const satisfies readonly MeasureId[];

type JacketMeasures = Read<(typeof needed)[number]>;

const degree = Math.PI / 180;

/** How far the neckline lies outside the base of the neck, mm: along the shoulder, down the front, down the back. */
export interface NeckOutside {
  readonly shoulder: number;
  readonly front: number;
  readonly back: number;
}

/** A collar's seam lies a little outside the blouse's neckline; without a collar the neck is cut wider and lower. */
const neckOutside = {
  collar: { shoulder: 9, front: 16, back: 4 },
  collarless: { shoulder: 17, front: 42, back: 8 },
} as const satisfies Readonly<Record<string, NeckOutside>>;

export type JacketView = keyof typeof neckOutside;

/**
 * Every number the jacket is drawn from, millimetres and radians: a bodice's, as the blouse's plan has them, with what
 * the seams over bust and shoulder blade take in, all of one half of the body.
 */
export interface JacketPlan extends BlousePlan {
  readonly view: JacketView;
  readonly neckOutside: NeckOutside;
  /** Width of the stand beyond the centre front: the overlap's half. */
  readonly stand: number;
  /** Half of the finished girths. */
  readonly bustHalf: number;
  readonly waistHalf: number;
  readonly hipHalf: number;
  /** How much wider the front's half of the bust is than the back's. */
  readonly frontMore: number;
  /** Taken in at the waist by each seam, on the straight from bust to hip, mm. Negative where the waist is wider. */
  readonly takenIn: { readonly front: number; readonly back: number; readonly centre: number };
  /** Left open between the panels at the hip; negative where they flare past one another. */
  readonly atHip: { readonly front: number; readonly back: number; readonly centre: number };
}

/** What the design asks for over a blouse, mm over the whole girth. */
const design = { bust: 130, waist: 100, hip: 100, upperArm: 92 } as const;

/** Over a blouse with 60 of ease at the waist a jacket that is buttoned needs this much in all, mm. */
const leastWaistEase = 80;

/** Ease that may be asked for, mm. */
const easeRange: Readonly<Record<string, readonly [number, number]>> = {
  bust: [60, 300],
  waist: [40, 400],
  hip: [50, 300],
  'upper-arm': [60, 200],
};

/** The cup the block's proportions are written for, mm. */
const usualCup = 50;

/** Underarm to waist needs this much for the lines over it, waist to hip this much for its curve, mm. */
const leastSide = 90;
const leastHip = 60;

/**
 * Most the seams of one half take in at the waist, mm: front and back princess seam, two sides, centre back. More
 * than this is steeper than cloth is pressed.
 */
const mostTakenIn = 128;

/** What is taken in even on a body with no waist, where the ease allows: a fitted jacket has a line. */
const wishedTakenIn = 26;

/**
 * Of what is taken in at the waist, how much each seam takes; the rest is the side seams'. Tailors put most over the
 * bust and the blade, and least at the centre back, which follows the spine.
 */
const shares = { front: 0.3, back: 0.34, centre: 0.15 } as const;

/**
 * The jacket's own ease by level. Bust 130: a blouse has 90, and a jacket wants 40 more than what is under it. Hip
 * and waist 100, upper arm 92. A body whose waist is far narrower than its bust gets more at the waist, for seams
 * take in so much and no more; one with hardly any waist gets down to 80, so that the seams can still be shaped, and
 * the hip is made wide enough for cloth to hang past the waist.
 */
const easeFor = (body: JacketMeasures, wished: EaseByLevel, waistShare: number): EaseByLevel => {
  const bust = body.bustGirth + (wished['bust'] ?? design.bust);
  const wishedWaist = body.waistGirth + design.waist;
  const leastWaist = body.waistGirth + leastWaistEase;
  const hip =
    wished['hip'] === undefined
      ? Math.max(body.hipGirth + design.hip, leastWaist + 10, bust - 70)
      : body.hipGirth + wished['hip'];
  const straight = bust + waistShare * (hip - bust);
  const shaped = settle(straight - 2 * wishedTakenIn, leastWaist, wishedWaist);
  const waist =
    wished['waist'] === undefined ? Math.max(shaped, straight - 2 * mostTakenIn) : body.waistGirth + wished['waist'];
  return {
    bust: bust - body.bustGirth,
    waist: waist - body.waistGirth,
    hip: hip - body.hipGirth,
    'upper-arm': wished['upper-arm'] ?? design.upperArm,
  };
};

/** Across lines, shoulder and neck, each read from the body and made to agree with the others. */
const planTop = (body: JacketMeasures, bustHalf: number, upperArm: number) => {
  // A thin pad and two layers of cloth lie on the shoulder: it slopes a degree and a half less.
  const slope =
    settle(Math.asin(settle(body.shoulderDrop / body.shoulderLength, 0, 0.6)), 14 * degree, 27 * degree) - 1.5 * degree;
  const fifth = body.neckBaseGirth / 5;
  const backSlope = slope - 2 * degree;
  const frontSlope = slope + 1 * degree;
  // Across the back 30 in all, so that the arms can reach forward; 18 across the front.
  const readBack = body.acrossBack / 2 + 15;
  const readFront = body.acrossFront / 2 + 9;
  const width = bustHalf - readBack - readFront;
  // What the armhole cannot hold goes over the chest and the back, most of it over the chest: a full bust lies there.
  const wider = width - settle(width, 0.35 * upperArm, 0.48 * upperArm);
  const acrossBackHalf = readBack + 0.35 * wider;
  const acrossFrontHalf = readFront + 0.65 * wider;
  const length = body.shoulderLength + 10;
  // The shoulder point stands a little outside both across lines; readings that disagree share the difference.
  const standsOut =
    (fifth - 2 + (length + 20) * Math.cos(backSlope) - acrossBackHalf) / 2 +
    (fifth - 4 + length * Math.cos(frontSlope) - acrossFrontHalf) / 2;
  const longer = settle(settle(standsOut, 11, 28) - standsOut, -10, 15);
  return {
    neck: {
      backWidth: fifth - 2,
      frontWidth: fifth - 4,
      rise: settle(body.neckBaseGirth * 0.054, 16, 26),
      frontDepth: fifth + 2,
    },
    shoulder: { length: length + longer, backSlope, frontSlope, dartIntake: 14, dartLength: 92, ease: 5 },
    acrossBackHalf,
    acrossFrontHalf,
  };
};

/**
 * From measures and ease to the numbers of the draft. Proportions are those of jacket construction as taught in
 * manuals of metric pattern cutting: the bodice's, 30 across the back, an armhole 12 deeper than a blouse's, a
 * shoulder 10 longer. Problems: those of the measures and the ease asked for, `drafting.levels-too-close`.
 */
export const planJacket = (given: Measures, view: JacketView, wishedEase: EaseByLevel): Result<JacketPlan> => {
  const measured = readBody(given, needed, 'bustGirth', 'women');
  if (!measured.ok) return measured;
  const body = measured.value;
  const wished = readEase(wishedEase, easeRange);
  if (!wished.ok) return wished;
  const waistLevel = body.backWaistLength;
  const hipLevel = waistLevel + body.waistToHip;
  // A fuller cup does not lower the arm: the tenth is taken of the bust that goes with the upper bust.
  const tenth = (body.upperBustGirth + usualCup) / 10;
  const armholeDepth = settle(body.armholeDepth + 32, tenth + 107, tenth + 147);
  if (waistLevel < armholeDepth + leastSide || hipLevel < waistLevel + leastHip) {
    return bad('drafting.levels-too-close', {
      waist: { mm: Math.round(waistLevel) },
      armhole: { mm: Math.round(body.armholeDepth) },
    });
  }
  const waistShare = (waistLevel - armholeDepth) / (hipLevel - armholeDepth);
  const ease = easeFor(body, wished.value, waistShare);
  const bustHalf = (body.bustGirth + (ease['bust'] ?? 0)) / 2;
  const waistHalf = (body.waistGirth + (ease['waist'] ?? 0)) / 2;
  const hipHalf = (body.hipGirth + (ease['hip'] ?? 0)) / 2;
  const upperArm = body.upperArmGirth + (ease['upper-arm'] ?? 0);
  const cup = body.bustGirth - body.upperBustGirth;
  const flare = hipHalf - bustHalf;
  const taken = bustHalf + waistShare * flare - waistHalf;
  const atHip = {
    front: settle(-0.3 * flare, -36, 14),
    back: settle(-0.3 * flare, -36, 14),
    centre: settle(0.45 * shares.centre * taken, 0, 9),
  };
  return good({
    view,
    neckOutside: neckOutside[view],
    stand: 22,
    ease,
    ...planTop(body, bustHalf, upperArm),
    waistLevel,
    hipLevel,
    hemLevel: hipLevel + 45,
    armholeDepth,
    bustHalf,
    waistHalf,
    hipHalf,
    frontMore: settle(4 + 0.1 * (cup - usualCup), 0, 12),
    takenIn: {
      front: shares.front * taken + waistShare * atHip.front,
      back: shares.back * taken + waistShare * atHip.back,
      centre: settle(shares.centre * taken, 0, 20),
    },
    atHip,
    bustQuarter: bustHalf / 2,
    waistQuarter: waistHalf / 2,
    hipQuarter: hipHalf / 2,
    frontWider: 0,
    frontWaistLength: body.frontWaistLength,
    bustDepth: body.bustDepth,
    bustSpanHalf: body.bustSpan / 2,
    bustIntake: settle(32 + 0.3 * (cup - usualCup) + 0.03 * (body.bustGirth - 940), 22, 58),
    // The seam passes this far outside the bust point, and its shaping is greatest there.
    dartShort: 12,
    sleeve: { upperArm, elbow: body.elbowGirth, hand: body.handGirth, length: body.armLength + 10 },
  });
};
