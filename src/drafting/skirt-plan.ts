import type { MeasureId, Measures } from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { readBody, readEase } from './read-body.ts';
import type { EaseByLevel } from './types.ts';

/** The measures the skirt is drafted from. */
const needed = [
  'waistGirth',
  'abdomenGirth',
  'hipGirth',
  'waistToHip',
  'waistHeight',
  'kneeHeight',
] as const satisfies readonly MeasureId[];

export type SkirtView = 'knee' | 'midi' | 'pockets';

/** One dart: share of the finished waist from the centre, mm long, mm taken in. */
export interface PlannedDart {
  readonly at: number;
  readonly length: number;
  readonly intake: number;
}

/** Every number the pieces are drawn from, millimetres and radians. Heights with the waist at centre front at 0 and y down. */
export interface SkirtPlan {
  readonly ease: EaseByLevel;
  readonly front: { readonly waist: number; readonly hip: number; readonly darts: readonly PlannedDart[] };
  readonly back: { readonly waist: number; readonly hip: number; readonly darts: readonly PlannedDart[] };
  /** What the side seam takes in of a quarter, from hip to waist. */
  readonly sideIntake: number;
  /** How far the waist rises at the side, and dips at the centre back. */
  readonly sideRise: number;
  readonly backDip: number;
  readonly hipLevel: number;
  readonly hemLevel: number;
  /** How far each side seam leans out below the hip. */
  readonly flare: number;
  /** From the waist at the centre back down to the end of the zip. */
  readonly zip: number;
  /** Whether there are pockets in the side seams. */
  readonly pocketed: boolean;
  /** The band, folded, and how far its underlap runs on. */
  readonly band: { readonly width: number; readonly underlap: number };
  /** How much shorter the lining is. */
  readonly liningShorter: number;
}

/** What the design asks for where nothing else is said, mm over the whole girth. */
const design = { waist: 16, hip: 60, abdomen: 40 } as const;

/** Ease that may be asked for, mm. */
const easeRange: Readonly<Record<string, readonly [number, number]>> = { waist: [0, 80], hip: [20, 260] };

/** A quarter of the skirt is this much wider at the hip than at the waist at least: with less there is nothing to shape, mm. */
const leastShaped = 30;

/** How much wider the back is than the front at the hip and narrower at the waist, together, as a share of a quarter's shaping and at most, mm. */
const backward = { share: 0.14, most: 10 } as const;

/** Of a quarter's shaping, what the side seam takes; darts take the rest. */
const sideShare = 0.54;

/** A dart is at least so many times as long as it is wide, or it ends in a pouch; and for that at most so much longer, as a share of the hip's depth. */
const longEnough = 3;
const mostLonger = 0.17;

/** How far each side seam leans out below the hip, radians. */
const flare = (7 * Math.PI) / 180;

/** Waist to hip, and hip to hem, need this much, mm. */
const least = { hip: 90, below: 120 } as const;

/**
 * From measures and ease to the numbers of the draft.
 *
 * The band has 16 of ease (10–25 is usual), the hip 60 (50–75). Over a belly that stands out as far as the seat the skirt
 * is cut wider at the hip, for it hangs from there: belly + 40; and a body with hardly a waist gets a skirt that widens by
 * 30 a quarter all the same, so that its darts are darts. What a quarter is wider at the hip is shared by side seam
 * (54 in a hundred) and darts; the back is up to 10 wider at the hip and narrower at the waist, so its two darts
 * together take about twice the front's one. Front darts end above the belly, about half way to the hip, back darts at two
 * thirds. Proportions are those of the skirt block in manuals of metric pattern cutting; the flare, seven degrees at
 * each side seam, is that of an A-line.
 */
export const planSkirt = (given: Measures, view: SkirtView, wishes: EaseByLevel): Result<SkirtPlan> => {
  const measured = readBody(given, needed, 'hipGirth', 'women');
  if (!measured.ok) return measured;
  const body = measured.value;
  const wished = readEase(wishes, easeRange);
  if (!wished.ok) return wished;
  const waist = body.waistGirth + (wished.value.waist ?? design.waist);
  const hip =
    wished.value.hip === undefined
      ? Math.max(body.hipGirth + design.hip, body.abdomenGirth + design.abdomen, waist + 4 * leastShaped)
      : body.hipGirth + wished.value.hip;
  const shaped = (hip - waist) / 4;
  if (shaped < leastShaped / 2) {
    return bad('drafting.waist-too-near-hip', { waist: { mm: Math.round(waist) }, hip: { mm: Math.round(hip) } });
  }
  const hipLevel = body.waistToHip;
  const knee = body.waistHeight - body.kneeHeight;
  const hemLevel = view === 'midi' ? body.waistHeight - 0.45 * body.kneeHeight : knee + 30;
  if (hipLevel < least.hip || hemLevel < hipLevel + least.below) {
    return bad('drafting.skirt-levels', {
      hip: { mm: Math.round(hipLevel) },
      hem: { mm: Math.round(hemLevel) },
    });
  }
  const back = Math.min(backward.share * shaped, backward.most);
  const sideIntake = sideShare * shaped;
  const frontDart = shaped - back - sideIntake;
  const backDarts = shaped + back - sideIntake;
  const dart = (at: number, share: number, intake: number): PlannedDart => ({
    at,
    length: Math.min(Math.max(share * hipLevel, longEnough * intake), (share + mostLonger) * hipLevel),
    intake,
  });
  return good({
    ease: { waist: waist - body.waistGirth, hip: hip - body.hipGirth },
    front: {
      waist: waist / 4 + back / 2,
      hip: hip / 4 - back / 2,
      darts: [dart(0.5, 0.47, frontDart)],
    },
    back: {
      waist: waist / 4 - back / 2,
      hip: hip / 4 + back / 2,
      darts: [dart(0.36, 0.68, 0.53 * backDarts), dart(0.69, 0.6, 0.47 * backDarts)],
    },
    sideIntake,
    // As far as a level of a cone rises on its flat pattern, and what going over the hip takes more than down the front;
    // not more than a side that is hardly shaped can rise without a wave in the waist.
    sideRise: Math.min((hip / 4) * Math.tan(flare / 2) + 0.08 * sideIntake, 1 + 0.8 * sideIntake),
    backDip: 8,
    hipLevel,
    hemLevel,
    flare,
    zip: Math.ceil((hipLevel + 10) / 5) * 5,
    pocketed: view === 'pockets',
    band: { width: 35, underlap: 30 },
    liningShorter: 20,
  });
};
