import { describe, expect, it } from 'vitest';
import {
  checkMeasure,
  childBodies,
  childMeasures,
  childSpread,
  type MeasureId,
  type Measures,
  measureIds,
} from '../body/index.ts';
import { childrenCsv, generateChildren } from './testing/generated-children.ts';

/** How far each child lies from the chart in a measure, in its stated deviations. */
const departures = (children: readonly Measures[], id: MeasureId): readonly number[] =>
  children.map((body) => {
    const chart = childMeasures(body.stature ?? Number.NaN);
    if (!chart.ok) throw new Error(chart.problem.code);
    return ((body[id] ?? Number.NaN) / chart.value[id] - 1) / childSpread[id].varies;
  });

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const correlation = (a: readonly number[], b: readonly number[]): number => {
  const [meanA, meanB] = [mean(a), mean(b)];
  const together = mean(a.map((value, i) => (value - meanA) * ((b[i] ?? 0) - meanB)));
  const spread = (values: readonly number[], about: number) => Math.sqrt(mean(values.map((one) => (one - about) ** 2)));
  return together / (spread(a, meanA) * spread(b, meanB));
};

describe('generated children', () => {
  const children = generateChildren(661, 20261);

  it('have statures spread evenly from 860 to 1520, and are the same for the same seed', () => {
    expect(children).toHaveLength(661);
    children.forEach(({ stature }, i) => {
      expect(stature).toBeCloseTo(860 + i, 6);
    });
    expect(generateChildren(661, 20261)).toEqual(children);
    expect(generateChildren(661, 20262)).not.toEqual(children);
  });

  it.each(measureIds.filter((id) => childSpread[id].varies > 0 && id !== 'crotchLength'))(
    'stray in %s by as much as is stated, about the chart, and are all possible',
    (id) => {
      const off = departures(children, id);
      expect(Math.abs(mean(off))).toBeLessThan(0.2);
      expect(Math.sqrt(mean(off.map((value) => value ** 2)))).toBeGreaterThan(0.85);
      expect(Math.sqrt(mean(off.map((value) => value ** 2)))).toBeLessThan(1.15);
      for (const body of children) expect(checkMeasure(id, body[id] ?? Number.NaN, 'child').ok).toBe(true);
    },
  );

  it('are stout or slender all over, whatever the length of their limbs', () => {
    expect(correlation(departures(children, 'bustGirth'), departures(children, 'hipGirth'))).toBeGreaterThan(0.7);
    expect(Math.abs(correlation(departures(children, 'bustGirth'), departures(children, 'armLength')))).toBeLessThan(
      0.15,
    );
  });

  it('can be written as a file and read back', () => {
    const read = childBodies(childrenCsv(40, 7));
    if (!read.ok) throw new Error(read.problem.code);
    expect(read.value.map(({ problem }) => problem)).toEqual(Array.from({ length: 40 }, () => null));
    generateChildren(40, 7).forEach((body, i) => {
      for (const id of measureIds) expect(read.value[i]?.measures[id]).toBeCloseTo(body[id] ?? Number.NaN, 1);
    });
  });
});
