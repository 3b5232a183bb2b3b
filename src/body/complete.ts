import { describeMeasure } from './describe.ts';
import type { Matrix } from './linear.ts';
import { dotProduct, inverseOfCovariance } from './linear.ts';
import { surveyJoint } from './survey-joint.ts';
import type { Survey } from './survey-row.ts';
import type { MeasureId, Measures } from './types.ts';
import { measureIds } from './types.ts';

/** A body made whole: what was known as it was, the rest estimated. */
export interface CompletedMeasures {
  readonly measures: Measures;
  readonly estimated: readonly MeasureId[];
  /** Standard deviation of each estimate, mm. */
  readonly deviation: Measures;
  /**
   * Known measures further than 3.3 deviations from the survey's mean: a body (a child's, for one) the survey
   * hardly saw, whose estimates are a guess.
   */
  readonly outsideSurvey: readonly MeasureId[];
}

/** A known measure far from what the others make likely; shown and asked about, never changed. */
export interface Doubt {
  readonly measure: MeasureId;
  readonly mm: number;
  /** The middle 80 % of what the other measures make likely, mm. */
  readonly low: number;
  readonly high: number;
  /** How many deviations off. */
  readonly score: number;
}

const deviationOf = (survey: Survey, index: number): number => surveyJoint[survey].deviation[index] ?? 0;
const meanOf = (survey: Survey, index: number): number => surveyJoint[survey].mean[index] ?? 0;

const covariance = (survey: Survey, i: number, j: number): number => {
  const { correlation } = surveyJoint[survey];
  const r = i === j ? 1 : (correlation[Math.max(i, j)]?.[Math.min(i, j)] ?? 0);
  return r * deviationOf(survey, i) * deviationOf(survey, j);
};

const indicesOf = (measures: Measures): readonly number[] =>
  measureIds.flatMap((id, i) => (measures[id] === undefined ? [] : [i]));

/** How far each known measure is from the survey's mean, mm. */
const departuresOf = (measures: Measures, survey: Survey, index: readonly number[]): readonly number[] =>
  index.map((i) => (measures[measureIds[i] as MeasureId] ?? 0) - meanOf(survey, i));

const precisionOf = (survey: Survey, index: readonly number[]): Matrix =>
  inverseOfCovariance(index.map((i) => index.map((j) => covariance(survey, i, j))));

/** An estimate never leaves what somebody could measure, however far out the known measures lie. */
const withinPossible = (id: MeasureId, mm: number): number => {
  const { adult } = describeMeasure(id).possible;
  return Math.min(adult[1], Math.max(adult[0], mm));
};

/**
 * Estimates what is not known from what is: the mean of a multivariate normal distribution given some of
 * its variables (regression on all known measures at once; Anderson, An Introduction to Multivariate
 * Statistical Analysis, 2.5), with means and correlations of the survey. Every known measure comes back
 * unchanged. The survey is of soldiers: fit adults, few over 50, no children; wherever an estimate is
 * shown this is said. With nothing known nothing is estimated.
 */
export const completeMeasures = (known: Measures, survey: Survey = 'women'): CompletedMeasures => {
  const index = indicesOf(known);
  if (index.length === 0) return { measures: {}, estimated: [], deviation: {}, outsideSurvey: [] };
  const departure = departuresOf(known, survey, index);
  // Only what is missing needs the inverse; a whole body goes through untouched.
  const precision = index.length === measureIds.length ? [] : precisionOf(survey, index);
  const measures: { -readonly [K in MeasureId]?: number } = { ...known };
  const deviation: { -readonly [K in MeasureId]?: number } = {};
  const estimated: MeasureId[] = [];
  for (const [i, id] of measureIds.entries()) {
    if (known[id] !== undefined) continue;
    const withKnown = index.map((j) => covariance(survey, i, j));
    const weights = precision.map((row) => dotProduct(row, withKnown));
    measures[id] = withinPossible(id, meanOf(survey, i) + dotProduct(weights, departure));
    deviation[id] = Math.sqrt(Math.max(0, covariance(survey, i, i) - dotProduct(weights, withKnown)));
    estimated.push(id);
  }
  const outsideSurvey = index.flatMap((i, k) =>
    Math.abs(departure[k] ?? 0) > farOut * deviationOf(survey, i) ? [measureIds[i] as MeasureId] : [],
  );
  return { measures, estimated, deviation, outsideSurvey };
};

/** One in a thousand lies further out on a normal distribution. */
const farOut = 3.3;

/** Deviations that hold the middle 80 %. */
const middle80 = 1.2816;

/**
 * Known measures that the other known ones make unlikely, worst first: further than 3.3 deviations from
 * the mean given all the others. Needs three known measures to say anything.
 */
export const doubtfulMeasures = (known: Measures, survey: Survey): readonly Doubt[] => {
  const index = indicesOf(known);
  if (index.length < 3) return [];
  const departure = departuresOf(known, survey, index);
  const precision = precisionOf(survey, index);
  const doubts = index.flatMap((i, k): Doubt[] => {
    // The diagonal of the precision is one over the variance given all the others.
    const diagonal = precision[k]?.[k] ?? 0;
    const deviation = Math.sqrt(1 / diagonal);
    const off = dotProduct(precision[k] ?? [], departure) / diagonal;
    const id = measureIds[i] as MeasureId;
    const mm = known[id] ?? 0;
    if (Math.abs(off) <= farOut * deviation) return [];
    const expected = mm - off;
    return [
      {
        measure: id,
        mm,
        low: expected - middle80 * deviation,
        high: expected + middle80 * deviation,
        score: Math.abs(off) / deviation,
      },
    ];
  });
  return doubts.toSorted((a, b) => b.score - a.score);
};
