import type { MeasureId, Measures, Survey } from '../body/index.ts';
import { good, type Result } from '../units/index.ts';
import { type Read, readBody, readEase } from './read-body.ts';
import { settle } from './solve.ts';
import type { LegPlan } from './trouser-fit.ts';
import type { EaseByLevel } from './types.ts';

/** The measures trousers are drafted from. */
export const trouserMeasures = [
  'waistGirth',
  'hipGirth',
  'waistToHip',
  'bodyRise',
  'crotchLength',
  'crotchLengthFront',
  'crotchLengthBack',
  'insideLeg',
  'thighGirth',
  'kneeGirth',
  'calfGirth',
  'kneeHeight',
  'heelGirth',
] as const satisfies readonly MeasureId[];

export type TrouserMeasures = Read<(typeof trouserMeasures)[number]>;

export type TrouserView = 'straight' | 'cropped';

export interface TrousersPlan extends LegPlan {
  readonly view: TrouserView;
  readonly body: TrouserMeasures;
  /** At waist, hip and knee; the thigh's follows from the legs, the waist's may yet be widened. */
  readonly ease: LegPlan['ease'] & { readonly waist: number; readonly hip: number; readonly knee: number };
  readonly waistWished: boolean;
  /** Half the finished waist, as worn. */
  readonly waistHalf: number;
  readonly waistToHip: number;
}

/** Design ease, mm over the whole girth: classic trousers, in the middle of what manuals of fitting call usual. */
const design = { waist: 15, hip: 60, thigh: 65, rise: 22, crotchLength: 31 } as const;

/** Ease that may be asked for, mm: from what one can just move in to where it is another garment. */
const ranges = { waist: [0, 120], hip: [25, 220], thigh: [30, 220], knee: [20, 220] } as const;

/** The seated rise is more than the standing by what the seat spreads and sinks on a chair, mm: `surveyRules.bodyRise`. */
const seatSpreads = 25;

/** How far the hem hangs above the floor, mm: bare feet, so that it clears the ground and meets a flat shoe. */
const aboveFloor = 20;

/**
 * The crotch curve needs height between hip line and crotch: this share of both forks, which are about what the thigh
 * is more than half the hip, and this at least, mm. A hip that lies lower is measured higher up.
 */
const hipAboveCrotch = { share: 0.5, least: 68 } as const;

/** Back wider than front on one leg, mm: at the hip, and on each side of the crease at knee and hem. */
const backWider = { hip: 16, crease: 12 } as const;

/** A view's leg: ease at the knee, the hem as a share of the finished knee, and where it hangs. */
const views: Readonly<Record<TrouserView, { knee: number; hem: number; crop: number }>> = {
  straight: { knee: 60, hem: 0.97, crop: 0 },
  cropped: { knee: 48, hem: 0.82, crop: 0.15 },
};

/** Calf and heel have to pass the leg, with this to spare, mm. */
const clear = { calf: 40, heel: 15 } as const;

/** Where knee and hem lie, and how wide they are: what legs of every kind are planned from. */
export const planLeg = (
  body: TrouserMeasures,
  {
    hip,
    knee,
    hem,
    crop,
  }: { readonly hip: number; readonly knee: number; readonly hem: number; readonly crop: number },
): LegPlan['legs'] & { readonly knee: number } => {
  const hipQuarter = (body.hipGirth + hip) / 4;
  const rise = body.bodyRise - seatSpreads;
  const hemLevel = rise + (1 - crop) * body.insideLeg - aboveFloor;
  const crotch = body.bodyRise + design.rise;
  const fullLeg = rise + body.insideLeg - aboveFloor - crotch;
  const kneeLevel = crotch + settle((rise + body.insideLeg - body.kneeHeight - crotch) / fullLeg, 0.32, 0.46) * fullLeg;
  const forks = body.thighGirth + design.thigh - 2 * hipQuarter;
  const curveRoom = Math.max(hipAboveCrotch.share * forks, hipAboveCrotch.least);
  const kneeGirth = body.kneeGirth + knee;
  const hemGirth = Math.max(hem * kneeGirth, body.heelGirth + clear.heel);
  return {
    knee: kneeGirth,
    hip: { front: hipQuarter - backWider.hip / 2, back: hipQuarter + backWider.hip / 2 },
    hipLevel: Math.min(body.waistToHip, crotch - curveRoom),
    kneeLevel,
    hemLevel,
    kneeHalf: { front: (kneeGirth / 2 - backWider.crease) / 2, back: (kneeGirth / 2 + backWider.crease) / 2 },
    hemHalf: { front: (hemGirth / 2 - backWider.crease) / 2, back: (hemGirth / 2 + backWider.crease) / 2 },
    lower: 'straight',
  };
};

/** Of a leg that hangs straight the knee is this much of the thigh. */
const kneeOfThigh = 0.67;

/**
 * The knee's ease. A leg keeps its line: the knee lies midway between what the knee asks for and what goes with the
 * thigh above it; not under three quarters of the ease designed, nor what a full calf needs to pass.
 */
export const kneeEase = (body: TrouserMeasures, designed: number): number =>
  Math.max(
    (designed + kneeOfThigh * (body.thighGirth + design.thigh) - body.kneeGirth) / 2,
    0.75 * designed,
    body.calfGirth + clear.calf - body.kneeGirth,
  );

/** How far the centre front leans in: a fifth of what the front is taken in from hip to waist; over a belly it stands out by near half. */
export const leansIn = (front: number, waistHalf: number, waistToHip: number): number => {
  const takenIn = front - waistHalf / 2;
  return takenIn < 0 ? Math.max(0.45 * takenIn, -45) : Math.min(0.2 * takenIn, 12, 0.06 * waistToHip);
};

/**
 * From measures and ease to the numbers of the draft. Nothing depends on whose chart the body is from: what differs
 * between a woman's trousers and a man's follows from waist, hip, rise and crotch.
 */
export const planTrousers = (
  given: Measures,
  after: Survey,
  view: TrouserView,
  asked: EaseByLevel,
): Result<TrousersPlan> => {
  const measured = readBody(given, trouserMeasures, 'hipGirth', after);
  if (!measured.ok) return measured;
  const body = measured.value;
  const wished = readEase(asked, ranges);
  if (!wished.ok) return wished;
  const { waist, hip = design.hip, thigh, knee } = wished.value;
  const shown = views[view];
  const kneeIs = knee ?? kneeEase(body, shown.knee);
  const legs = planLeg(body, { hip, knee: kneeIs, hem: shown.hem, crop: shown.crop });
  const waistIs = waist ?? design.waist;
  const waistHalf = (body.waistGirth + waistIs) / 2;
  return good({
    view,
    body,
    ease: {
      rise: design.rise,
      crotchLength: design.crotchLength,
      thigh: design.thigh,
      waist: waistIs,
      hip,
      knee: kneeIs,
    },
    waistWished: waist !== undefined,
    ...(thigh === undefined ? {} : { thighWished: thigh }),
    legs,
    frontLeansIn: leansIn(legs.hip.front, waistHalf, legs.hipLevel),
    waistHalf,
    waistToHip: legs.hipLevel,
  });
};
