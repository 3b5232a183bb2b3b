import { bad, good, type Result } from '../units/index.ts';
import { childMeasures } from './child-chart.ts';
import { type ChildFactor, childSpread } from './child-spread.ts';
import { describeMeasure } from './describe.ts';
import type { MeasureId, Measures } from './types.ts';
import { measureIds } from './types.ts';

/** A child's body made whole. */
export interface CompletedChild {
  /** Every measure, mm: what was known as it was, the rest estimated. */
  readonly measures: Readonly<Record<MeasureId, number>>;
  readonly estimated: readonly MeasureId[];
  /** Standard deviation of each estimate, mm. */
  readonly deviation: Measures;
}

/** What the known measures say of one factor: its mean, and what variance is left of one. */
interface FactorScore {
  readonly mean: number;
  readonly variance: number;
}

/**
 * A factor from the measures known that go with it, by how far each lies from the chart in its own deviations: the
 * regression score of a one-factor model (Thomson, The Factorial Analysis of Human Ability, 1951).
 */
const scoreOf = (factor: ChildFactor, known: Measures, chart: Readonly<Record<MeasureId, number>>): FactorScore => {
  let weight = 1;
  let sum = 0;
  for (const id of measureIds) {
    const { varies, factor: own, share } = childSpread[id];
    const mm = known[id];
    if (mm === undefined || own !== factor || share === 0 || varies === 0) continue;
    const departure = (mm / chart[id] - 1) / varies;
    weight += share ** 2 / (1 - share ** 2);
    sum += (share * departure) / (1 - share ** 2);
  }
  return { mean: sum / weight, variance: 1 / weight };
};

/**
 * Estimates what was not measured of a child. What the chart gives for the stature is changed in the ratio in which the
 * measures known depart from the chart, as far as the two go together: a plump child's arm is taken to be
 * plump too, her legs no longer. Nothing known is changed. Children are hardly surveyed in public, so this rests on
 * the chart's reasoned proportions; wherever an estimate is shown this is said.
 *
 * Problems: `body.no-stature` where it is not known, `body.not-a-childs-stature`.
 */
export const completeChild = (known: Measures): Result<CompletedChild> => {
  if (known.stature === undefined) return bad('body.no-stature');
  const chart = childMeasures(known.stature);
  if (!chart.ok) return chart;
  const scores = new Map<ChildFactor, FactorScore>();
  const measures: { -readonly [K in MeasureId]?: number } = { ...known };
  const deviation: { -readonly [K in MeasureId]?: number } = {};
  const estimated = measureIds.filter((id) => known[id] === undefined);
  for (const id of estimated) {
    const { varies, factor, share } = childSpread[id];
    const score = scores.get(factor) ?? scoreOf(factor, known, chart.value);
    scores.set(factor, score);
    const likely = chart.value[id];
    const [low, high] = describeMeasure(id).possible.child;
    measures[id] = Math.min(Math.max(likely * (1 + varies * share * score.mean), low), high);
    deviation[id] = likely * varies * Math.sqrt(share ** 2 * score.variance + 1 - share ** 2);
  }
  return good({ measures: measures as CompletedChild['measures'], estimated, deviation });
};
