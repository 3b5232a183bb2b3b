import type { MeasureId, Measures } from '../body/index.ts';
import type { ChartSize } from './types.ts';

/** A measure at the chart's middle, mm, and how much it grows for each mm of the measure the chart is graded by. */
export type Growth = readonly [middle: number, per: number];

/** A chart of sizes: one body for each value of the measure it is graded by, every other measure at its own share of that growth, whole mm. */
export const chartOf = (
  gradedBy: readonly number[],
  middle: number,
  growths: Readonly<Record<MeasureId, Growth>>,
  name: (value: number, index: number) => string = (_value, index) => String(index + 1),
): readonly ChartSize[] =>
  gradedBy.map((value, index) => ({
    id: name(value, index),
    body: Object.fromEntries(
      Object.entries(growths).map(([measure, [at, per]]) => [measure, Math.round(at + per * (value - middle))]),
    ) as Measures,
  }));

/** How much of each mm that a cup is larger goes into what lies over the bust, beside the bust girth itself. */
export const cupShares = {
  frontWaistLength: 0.25,
  bustDepth: 0.15,
  bustSpan: 0.1,
  acrossFront: 0.05,
  chestDepth: 0.25,
} as const satisfies Partial<Record<MeasureId, number>>;

/**
 * The same body with another cup (bust girth − upper bust girth, mm). Upper bust, back and shoulders stay; the bust,
 * and what lies over it, change: of each mm of bust a quarter more front waist length and three twentieths more bust
 * depth (the front goes over a deeper curve), a tenth more bust span, a twentieth across the front. So multi-cup
 * patterns are drafted by the alteration of a full bust, as manuals of fitting give it: about as much length in all
 * as width on one front.
 */
export const bodyWithCup = (body: Measures, cup: number): Measures => {
  const { bustGirth = 0, upperBustGirth = 0 } = body;
  const more = upperBustGirth + cup - bustGirth;
  const changed = Object.entries(cupShares).flatMap(([measure, share]) => {
    const known = body[measure as MeasureId];
    return known === undefined ? [] : [[measure, Math.round(known + share * more)]];
  });
  return { ...body, ...Object.fromEntries(changed), bustGirth: upperBustGirth + cup };
};
