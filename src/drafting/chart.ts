import type { MeasureId, Measures } from '../body/index.ts';
import type { ChartSize } from './types.ts';

/** A measure at the chart's middle, mm, and how much it grows for each mm of bust. */
export type Growth = readonly [middle: number, perBust: number];

/** A chart of sizes numbered from 1: one body for each bust girth, every measure at its own share of the bust's growth, whole mm. */
export const chartOf = (
  busts: readonly number[],
  middleBust: number,
  growths: Readonly<Record<MeasureId, Growth>>,
): readonly ChartSize[] =>
  busts.map((bust, index) => ({
    id: String(index + 1),
    body: Object.fromEntries(
      Object.entries(growths).map(([measure, [middle, perBust]]) => [
        measure,
        Math.round(middle + perBust * (bust - middleBust)),
      ]),
    ) as Measures,
  }));
