import { childMeasures, type Measures } from '../body/index.ts';
import type { ChartSize } from './types.ts';

/** Statures of the sizes, mm: 60 apart, which is about a year's growth. */
const statures = [860, 920, 980, 1040, 1100, 1160, 1220, 1280, 1340, 1400, 1460, 1520] as const;

const sizeOf = (stature: number): ChartSize => {
  const measures = childMeasures(stature);
  if (!measures.ok) throw new Error(`The children's chart has no ${stature}`);
  const whole = Object.entries(measures.value).map(([measure, mm]) => [measure, Math.round(mm)] as const);
  return { id: String(stature / 10), body: Object.fromEntries(whole) as Measures };
};

/**
 * Our own children's chart, graded and named by stature in cm, as children's sizes are (ISO 8559-2 takes the stature as a
 * child's primary dimension): each size the likely child of that stature (`childProportions` gives the sources), whole mm.
 * Its growth is even between 1040, 1220 and 1400 and changes there, as children's does.
 */
export const childrenChart: readonly ChartSize[] = statures.map(sizeOf);
