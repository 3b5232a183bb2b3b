import {
  completeChild,
  completeMeasures,
  describeMeasure,
  impossibleMeasures,
  type MeasureId,
  type Measures,
  type Survey,
} from '../body/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { EaseByLevel } from './types.ts';

/** The measures a draft names, all known, mm. */
export type Read<Needed extends MeasureId> = Readonly<Record<Needed, number>>;

/**
 * The measures a draft needs, those not known estimated from those that are: after the survey's women or men, or
 * after the children's chart, for which nothing is indispensable but the stature (`body.not-a-childs-stature`
 * where the chart would have to be left).
 * Refuses a measure nobody has (`body.impossible`), and a body of which a measure it cannot do without is not
 * known (`drafting.no-measure`): nothing could be drafted from the rest.
 */
export const readBody = <Needed extends MeasureId>(
  body: Measures,
  needed: readonly Needed[],
  indispensable: MeasureId,
  after: Survey | 'children',
): Result<Read<Needed>> => {
  const [impossible] = impossibleMeasures(body, after === 'children' ? 'child' : 'adult');
  if (impossible) return { ok: false, problem: impossible };
  if (body[indispensable] === undefined) {
    return bad('drafting.no-measure', { measure: describeMeasure(indispensable).name.toLowerCase() });
  }
  if (needed.every((measure) => body[measure] !== undefined)) return good(body as Read<Needed>);
  if (after !== 'children') return good(completeMeasures(body, after).measures as Read<Needed>);
  const child = completeChild(body);
  return child.ok ? good(child.value.measures) : child;
};

/**
 * Ease wished for, when every level is one of the design's and within its range, mm; else
 * `drafting.no-such-level` or `drafting.ease-impossible`.
 */
export const readEase = (
  wished: EaseByLevel,
  ranges: Readonly<Record<string, readonly [low: number, high: number]>>,
): Result<EaseByLevel> => {
  for (const [level, mm] of Object.entries(wished)) {
    const range = ranges[level];
    if (range === undefined) return bad('drafting.no-such-level', { level, levels: Object.keys(ranges).join(', ') });
    const [low, high] = range;
    if (!(mm >= low && mm <= high)) {
      return bad('drafting.ease-impossible', { level, ease: { mm }, low: { mm: low }, high: { mm: high } });
    }
  }
  return good(wished);
};
