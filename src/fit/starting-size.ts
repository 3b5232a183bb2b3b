import type { MeasureId } from '../body/index.ts';
import type { Problem } from '../units/index.ts';
import { type EaseQuestion, easeCell, levelsOf, stretchCountedOn } from './ease-cells.ts';
import type { PatternFigures, SizeFigures } from './figures.ts';

/** A reason as data: its sentence stands in words/fit.ts under the same code. */
export type Reason = Problem;

/** By what a size is chosen: a body measure, set against one figure a size. */
export interface SizeScale {
  readonly by: 'upper-bust' | 'bust' | 'hip' | 'waist' | 'stature' | 'finished-bust';
  readonly measure: MeasureId;
  /** What the body is set against, size by size, in the order of the figures. */
  readonly chart: readonly number[];
  readonly body: number;
}

export interface SizeChoice {
  readonly index: number;
  /** Where the body lies between the sizes: 2.4 is four tenths of the way from the third to the fourth. Ends are not gone beyond. */
  readonly position: number;
  /** The size nearest after the chosen one, or null where there is only one. */
  readonly next: number | null;
  readonly close: boolean;
  /** How far the body lies beyond the smallest or largest size's half step, mm, else 0. */
  readonly outside: number;
}

/** Two sizes are a close call when the body is nearly as near to the one as to the other: within a fifth of the step. */
const closeShare = 0.2;

/**
 * The size whose figure is nearest to the body's; of two equally near the smaller, which fits the neck and
 * shoulders that are hard to alter. Figures must not fall from size to size. A larger body never gets a
 * smaller size.
 */
export const nearestSize = (chart: readonly number[], body: number): SizeChoice => {
  const off = chart.map((figure) => Math.abs(figure - body));
  const index = off.reduce((best, value, i) => (value < (off[best] ?? Infinity) ? i : best), 0);
  const next = [index - 1, index + 1]
    .filter((i) => i >= 0 && i < chart.length)
    .reduce<number | null>((best, i) => (best === null || (off[i] ?? 0) < (off[best] ?? 0) ? i : best), null);
  const here = chart[index] ?? 0;
  const step = next === null ? 0 : Math.abs((chart[next] ?? 0) - here);
  const first = chart[0] ?? 0;
  const last = chart.at(-1) ?? 0;
  const halfStep = step / 2;
  const outside = body > last + halfStep ? body - last : body < first - halfStep ? first - body : 0;
  const close = next !== null && step > 0 && outside === 0 && (off[next] ?? 0) - (off[index] ?? 0) < closeShare * step;
  return { index, position: positionIn(chart, body), next, close, outside };
};

const positionIn = (chart: readonly number[], body: number): number => {
  for (let i = 0; i + 1 < chart.length; i += 1) {
    const [from, to] = [chart[i] ?? 0, chart[i + 1] ?? 0];
    if (body <= to) return body <= from ? i : i + (body - from) / (to - from);
  }
  return Math.max(0, chart.length - 1);
};

/** A style is full when the design gives more at the bust than the trade calls roomy: over 150. */
const fullStyle = 150;

/** A skirt is gathered or flared when its hip has this much more than usual by design. */
const fullHip = 150;

const chartOf = (figures: PatternFigures, of: (size: SizeFigures) => number | undefined): readonly number[] | null => {
  const chart = figures.sizes.map(of);
  return chart.every((figure): figure is number => figure !== undefined) ? chart : null;
};

const designedEase = (figures: PatternFigures, measure: MeasureId): number | null => {
  const eases = figures.sizes.flatMap((size) => {
    const girth = size.girths.find((one) => one.measure === measure);
    const body = size.body[measure];
    return girth && body !== undefined ? [girth.finished - body] : [];
  });
  return eases.length === 0 ? null : eases.reduce((sum, ease) => sum + ease, 0) / eases.length;
};

/**
 * By what the starting size is chosen: what is hard to alter. Tops, dresses, jackets, coats: upper bust
 * against the chart's bust less the drafted cup. Knits, and patterns without bust shaping: bust. Full
 * styles: finished measurements alone. Trousers and straight skirts: hip; gathered or flared ones: waist.
 * Children: stature. Null when the body lacks the measure, or the chart does.
 */
export const sizeScale = (question: EaseQuestion, likedBustEase: number | undefined): SizeScale | null => {
  const { figures, measures } = question;
  const scale = (by: SizeScale['by'], measure: MeasureId, chart: readonly number[] | null, body = measures[measure]) =>
    chart === null || body === undefined ? null : { by, measure, chart, body };
  const own = (measure: MeasureId) => chartOf(figures, (size) => size.body[measure]);
  if (figures.for === 'child') return scale('stature', 'stature', own('stature'));
  if (figures.kind === 'trousers') return scale('hip', 'hipGirth', own('hipGirth'));
  if (figures.kind === 'skirt') {
    const flared = (designedEase(figures, 'hipGirth') ?? 0) > fullHip;
    return flared ? scale('waist', 'waistGirth', own('waistGirth')) : scale('hip', 'hipGirth', own('hipGirth'));
  }
  const finished = chartOf(figures, (size) => size.girths.find((girth) => girth.measure === 'bustGirth')?.finished);
  const designed = designedEase(figures, 'bustGirth');
  const stretch = stretchCountedOn(figures, question.cloth);
  if (stretch === null && designed !== null && designed > fullStyle && finished && measures.bustGirth !== undefined) {
    return scale('finished-bust', 'bustGirth', finished, measures.bustGirth + (likedBustEase ?? designed));
  }
  const cup = figures.draftedCup;
  if (figures.cloth.structure === 'woven' && cup !== null) {
    // A chart that prints the upper bust itself outranks a cup that is only supposed.
    const printed = figures.cupSupposed ? own('upperBustGirth') : null;
    const chart =
      printed ??
      chartOf(figures, (size) => (size.body.bustGirth === undefined ? undefined : size.body.bustGirth - cup));
    return scale('upper-bust', 'upperBustGirth', chart);
  }
  if (likedBustEase !== undefined && finished && measures.bustGirth !== undefined) {
    return scale('finished-bust', 'bustGirth', finished, measures.bustGirth + likedBustEase);
  }
  return scale('bust', 'bustGirth', own('bustGirth'));
};

/** The least size, from `index` on, in which no level of the trunk is strained beyond what the knit may bear; the last if all are. */
export const upForStretch = (question: EaseQuestion, index: number): number => {
  const strained = (size: SizeFigures): boolean =>
    levelsOf(question.figures).some((level) => {
      const cell = easeCell(question, size, level);
      return cell !== null && cell.measure === 'bustGirth' && cell.verdict === 'too-tight';
    });
  const fit = question.figures.sizes.findIndex((size, i) => i >= index && !strained(size));
  return fit < 0 ? question.figures.sizes.length - 1 : fit;
};
