import type { MeasureId, Measures, Survey } from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { type Read, readBody, readEase } from './read-body.ts';
import { settle } from './solve.ts';
import type { LegPlan } from './trouser-fit.ts';
import { leansIn, planLeg, trouserMeasures } from './trousers-plan.ts';
import type { EaseByLevel } from './types.ts';

/** The measures dungarees are drafted from: a trouser's, and the torso's that bib and straps lie on. */
const needed = [
  ...trouserMeasures,
  'frontWaistLength',
  'backWaistLength',
  'bustDepth',
  'bustSpan',
  'acrossFront',
  'acrossBack',
  'shoulderLength',
  'shoulderDrop',
  'neckBaseGirth',
] as const satisfies readonly MeasureId[];

export type DungareesMeasures = Read<(typeof needed)[number]>;

export type DungareesView = 'full' | 'short';

export interface DungareesPlan extends LegPlan {
  readonly view: DungareesView;
  readonly body: DungareesMeasures;
  readonly ease: LegPlan['ease'] & { readonly hip: number; readonly knee: number };
  readonly waistWished?: number;
  /** Half the waist, the least the design gives. */
  readonly leastWaistHalf: number;
  readonly waistToHip: number;
  /** Where the short view's hem lies. */
  readonly cutAt: number;
  readonly bib: BibPlan;
  readonly backBib: BibPlan;
  /** Cut length of a strap from the back bib's top to where its buckle is hooked, and what is left beyond for letting out. */
  readonly strap: { readonly worn: number; readonly spare: number };
}

/** A bib above the waist, mm. */
export interface BibPlan {
  readonly height: number;
  readonly topHalf: number;
}

/**
 * Design ease, mm over the whole girth: roomy, as clothes for work are, since straps and bib tie crotch to shoulder: rise
 * and crotch length have what a bent back takes beside their usual.
 */
const design = { hip: 95, thigh: 95, knee: 100, waist: 60, rise: 32, crotchLength: 48 } as const;

const ranges = { waist: [30, 360], hip: [50, 260], thigh: [40, 260], knee: [40, 300] } as const;

/** The curved leg's knee as a share of the thigh above it: the leg keeps its width down to there; its hem as a share of the knee, and how far above the floor's length it ends; the short one's place between crotch and knee. */
const leg = { knee: { full: 0.86, short: 0.91 }, hem: 0.68, crop: 0.05, short: 0.62 } as const;

/** Beyond what it takes standing, a strap gives this for bending and sitting, and this is left to let it out, mm. */
const strapEase = { bending: 20, spare: 90 } as const;

/** The bib's share of the front waist length, and how far above the bust point it ends at least and at most; the back bib's share of the back waist, and half its top, mm. */
const bibs = { front: 0.57, aboveBust: [45, 130], back: 0.42, backTop: 62 } as const;

/** Over its upright sides a bib needs height for its curve and its pocket: lower than this, mm, it is none. */
const leastBib = 110;

/**
 * What a strap has to bridge, from the back bib's top over the shoulder to the bib's: front and back of the body from waist
 * to the neck point, less what the shoulder falls to where the strap lies, half way out, less both bibs; a little
 * more where it runs aslant. Neck point to waist behind is the back waist length and the neck's rise.
 */
const strapFor = (body: DungareesMeasures, bib: BibPlan, backBib: BibPlan): number => {
  const onShoulder = body.neckBaseGirth / 5 + 0.45 * body.shoulderLength;
  const fall = 0.45 * body.shoulderDrop;
  const front = body.frontWaistLength - fall - bib.height;
  const back = body.backWaistLength + 0.054 * body.neckBaseGirth - fall - backBib.height;
  return Math.hypot(front, onShoulder - bib.topHalf) + Math.hypot(back, onShoulder - backBib.topHalf);
};

/** Ease at the knee of a leg that keeps its width down to there. */
const kneeOf = (body: DungareesMeasures, view: DungareesView): number =>
  Math.max(leg.knee[view] * (body.thighGirth + design.thigh) - body.kneeGirth, design.knee);

/**
 * From measures and ease to the numbers of the draft; a man's and a woman's by one rule. Problems: those of the measures and
 * the ease asked for, `drafting.measures-contradict` where no bib can be drawn.
 */
export const planDungarees = (
  given: Measures,
  after: Survey,
  view: DungareesView,
  asked: EaseByLevel,
): Result<DungareesPlan> => {
  const measured = readBody(given, needed, 'hipGirth', after);
  if (!measured.ok) return measured;
  const body = measured.value;
  const wished = readEase(asked, ranges);
  if (!wished.ok) return wished;
  const { waist, hip = design.hip, thigh, knee = kneeOf(body, view) } = wished.value;
  const legs = planLeg(body, { hip, knee, hem: leg.hem, crop: leg.crop });
  const leastWaistHalf = (body.waistGirth + (waist ?? design.waist)) / 2;
  const crotch = body.bodyRise + design.rise;
  const toBust = body.frontWaistLength - body.bustDepth;
  const bib: BibPlan = {
    height: settle(bibs.front * body.frontWaistLength, toBust + bibs.aboveBust[0], toBust + bibs.aboveBust[1]),
    topHalf: settle(body.bustSpan / 2 + 26, 0.28 * body.acrossFront, 0.42 * body.acrossFront),
  };
  const backBib: BibPlan = { height: bibs.back * body.backWaistLength, topHalf: bibs.backTop };
  // A bust that lies near the waist, or below it, is no bust of this body.
  if (Math.min(bib.height, backBib.height) < leastBib) return bad('drafting.measures-contradict');
  return good({
    view,
    body,
    ease: { rise: design.rise, crotchLength: design.crotchLength, thigh: design.thigh, hip, knee },
    ...(waist === undefined ? {} : { waistWished: waist }),
    ...(thigh === undefined ? {} : { thighWished: thigh }),
    legs: { ...legs, lower: view === 'full' ? 'curved' : 'straight' },
    frontLeansIn: Math.min(leansIn(legs.hip.front, leastWaistHalf, legs.hipLevel), 8),
    leastWaistHalf,
    waistToHip: legs.hipLevel,
    cutAt: crotch + leg.short * (legs.kneeLevel - crotch),
    bib,
    backBib,
    strap: { worn: strapFor(body, bib, backBib) + strapEase.bending, spare: strapEase.spare },
  });
};
