import type { MeasureId, Measures } from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { cupShares } from './chart.ts';
import { type Read, readBody, readEase } from './read-body.ts';
import { settle } from './solve.ts';
import type { DraftOptions, EaseByLevel } from './types.ts';
import { withUsualCup } from './usual-cup.ts';

/** The measures the blouse is drafted from. */
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

export type BlouseMeasures = Read<(typeof needed)[number]>;

const degree = Math.PI / 180;

/**
 * Every number the pieces are drawn from, millimetres and radians. Halves and quarters are said so; the
 * rest is whole. Levels are heights with the nape at 0 and y down.
 */
export interface BlousePlan {
  readonly ease: EaseByLevel;
  readonly neck: {
    readonly backWidth: number;
    readonly frontWidth: number;
    /** How far the neck point lies above the nape. */
    readonly rise: number;
    /** Neck point to centre front, before lowering. */
    readonly frontDepth: number;
  };
  readonly shoulder: {
    readonly length: number;
    readonly backSlope: number;
    readonly frontSlope: number;
    readonly dartIntake: number;
    readonly dartLength: number;
    /** How much longer the back shoulder is, dart closed. */
    readonly ease: number;
  };
  readonly acrossBackHalf: number;
  readonly acrossFrontHalf: number;
  readonly waistLevel: number;
  readonly hipLevel: number;
  readonly hemLevel: number;
  /** Nape to underarm line at the back before the sleeve has been fitted. */
  readonly armholeDepth: number;
  /** Quarter of the girth finished for the usual cup; the front is wider by `frontWider`, the back narrower by as much. */
  readonly bustQuarter: number;
  readonly waistQuarter: number;
  readonly hipQuarter: number;
  readonly frontWider: number;
  readonly frontWaistLength: number;
  readonly bustDepth: number;
  readonly bustSpanHalf: number;
  /** The bust dart's intake the bust asks for. */
  readonly bustIntake: number;
  /** From the bust point to the dart's point. */
  readonly dartShort: number;
  readonly sleeve: {
    readonly upperArm: number;
    readonly elbow: number;
    readonly hand: number;
    readonly length: number;
  };
}

/** The plan of a bodice for the usual cup, with what makes it the body's own. */
export interface BodicePlan extends BlousePlan {
  /** What the front alone takes beyond the usual cup; see `fullerFront`. */
  readonly fuller: {
    /** More width at the bust on each front, and in all that lies over it, mm; negative for a smaller bust. */
    readonly width: number;
    readonly bustDepth: number;
    readonly bustSpanHalf: number;
    readonly acrossFrontHalf: number;
    readonly dartShort: number;
    /** Levels whose finished girth was asked for, and so does not follow the front. */
    readonly held: { readonly waist: boolean; readonly hip: boolean };
  };
}

/** What the design asks for where nothing else is said, mm over the whole girth. */
const design = { bust: 90, waist: 60, hip: 60, upperArm: 65 } as const;

/** Ease that may be asked for, mm: a woven cannot be smaller than the body, and beyond this it is another garment. */
const easeRange: Readonly<Record<string, readonly [number, number]>> = {
  bust: [20, 300],
  waist: [10, 500],
  hip: [20, 400],
  'upper-arm': [30, 200],
};

/** Underarm to waist needs this much for the dart and the lines below it, waist to hip this much for its curve, mm. */
const leastSide = 100;
const leastHip = 60;

/**
 * The blouse's own ease, by level.
 *
 * Bust 90 (easy), hip 60 and upper arm 65 follow the body. The waist is semi-fitted by the side seams
 * alone: on the line from bust to hip it is taken in 22 at each quarter (less where the bust lies low), never to less than the body + 60.
 * Cloth hangs from whatever is widest above it: the hip is never narrower than the waist, nor more than 60
 * narrower than the bust.
 */
const easeFor = (body: BlouseMeasures, wished: EaseByLevel, waistShare: number): EaseByLevel => {
  // A side seam cannot draw in faster than about one in seven below a low bust.
  const takenIn = Math.min(22, 0.14 * Math.max(body.frontWaistLength - body.bustDepth, 0));
  const bust = body.bustGirth + (wished.bust ?? design.bust);
  const leastWaist = body.waistGirth + design.waist;
  const hip =
    wished.hip === undefined ? Math.max(body.hipGirth + design.hip, leastWaist, bust - 60) : body.hipGirth + wished.hip;
  const straight = bust + waistShare * (hip - bust);
  const waist =
    wished.waist === undefined ? Math.max(leastWaist, straight - 4 * takenIn) : body.waistGirth + wished.waist;
  return {
    bust: bust - body.bustGirth,
    waist: waist - body.waistGirth,
    hip: hip - body.hipGirth,
    'upper-arm': wished['upper-arm'] ?? design.upperArm,
  };
};

/**
 * From measures and ease to the numbers of the draft. Proportions are those of block construction as taught
 * in manuals of metric pattern cutting; a measure is used where the body gives it, and kept within bounds
 * where taking it at its word would spoil the shape (a tape slips more easily than a shoulder blade).
 * All but `fuller` is for the body with the usual cup.
 */
export const planBlouse = (given: Measures, options: DraftOptions = {}): Result<BodicePlan> => {
  const measured = readBody(given, needed, 'bustGirth', 'women');
  if (!measured.ok) return measured;
  const { usual: body, more } = withUsualCup(measured.value);
  const wished = readEase(options.ease ?? {}, easeRange);
  if (!wished.ok) return wished;
  const slope = settle(Math.asin(settle(body.shoulderDrop / body.shoulderLength, 0, 0.6)), 14 * degree, 27 * degree);
  const fifth = body.neckBaseGirth / 5;
  const waistLevel = body.backWaistLength;
  const hipLevel = waistLevel + body.waistToHip;
  // The arm crease, and 20 for movement; a tenth of the bust and 115 is what block drafts give, and how far readings may stray from it.
  const armholeDepth = settle(body.armholeDepth + 20, body.bustGirth / 10 + 95, body.bustGirth / 10 + 135);
  if (waistLevel < armholeDepth + leastSide || hipLevel < waistLevel + leastHip) {
    return bad('drafting.levels-too-close', {
      waist: { mm: Math.round(waistLevel) },
      armhole: { mm: Math.round(body.armholeDepth) },
    });
  }
  const waistShare = (waistLevel - armholeDepth) / (hipLevel - armholeDepth);
  const ease = easeFor(body, wished.value, waistShare);
  const dartShort = settle(25 + 0.04 * (body.bustGirth - 940), 22, 38);
  const cup = body.bustGirth - body.upperBustGirth;
  const backSlope = slope - 2 * degree;
  const frontSlope = slope + 1 * degree;
  const bustHalf = (body.bustGirth + (ease.bust ?? 0)) / 2;
  const upperArm = body.upperArmGirth + (ease['upper-arm'] ?? 0);
  // The armhole's width is what the across lines leave of half the bust: the arm must go through it.
  const readBack = body.acrossBack / 2 + 9;
  const readFront = body.acrossFront / 2 + 6;
  const width = bustHalf - readBack - readFront;
  const wider = (width - settle(width, 0.36 * upperArm, 0.5 * upperArm)) / 2;
  const acrossBackHalf = readBack + wider;
  const acrossFrontHalf = readFront + wider;
  // The shoulder point stands a little outside both across lines; readings that disagree share the difference.
  const standsOut =
    (fifth - 2 + (body.shoulderLength + 15) * Math.cos(backSlope) - acrossBackHalf) / 2 +
    (fifth - 4 + body.shoulderLength * Math.cos(frontSlope) - acrossFrontHalf) / 2;
  const longer = settle(settle(standsOut, 11, 28) - standsOut, -10, 15);
  return good({
    ease,
    neck: {
      backWidth: fifth - 2,
      frontWidth: fifth - 4,
      rise: settle(body.neckBaseGirth * 0.054, 16, 26),
      frontDepth: fifth + 2,
    },
    shoulder: {
      length: body.shoulderLength + longer,
      backSlope,
      frontSlope,
      dartIntake: 12,
      dartLength: 75,
      ease: 3,
    },
    acrossBackHalf,
    acrossFrontHalf,
    waistLevel,
    hipLevel,
    hemLevel: hipLevel + 25,
    armholeDepth,
    bustQuarter: bustHalf / 2,
    waistQuarter: (body.waistGirth + (ease.waist ?? 0)) / 4,
    hipQuarter: (body.hipGirth + (ease.hip ?? 0)) / 4,
    frontWider: 0,
    frontWaistLength: body.frontWaistLength,
    bustDepth: body.bustDepth,
    bustSpanHalf: body.bustSpan / 2,
    bustIntake: settle(32 + 0.3 * (cup - 50) + 0.03 * (body.bustGirth - 940), 22, 58),
    dartShort,
    fuller: {
      width: more / 2,
      bustDepth: cupShares.bustDepth * more,
      bustSpanHalf: (cupShares.bustSpan * more) / 2,
      acrossFrontHalf: (cupShares.acrossFront * more) / 2,
      dartShort: settle(dartShort + 0.35 * more, 22, 48) - dartShort,
      held: { waist: wished.value['waist'] !== undefined, hip: wished.value['hip'] !== undefined },
    },
    sleeve: {
      upperArm,
      elbow: body.elbowGirth,
      hand: body.handGirth,
      length: body.armLength,
    },
  });
};
