import { describe, expect, it } from 'vitest';
import { blouse } from './blouse.ts';
import { bodyWithCup } from './chart.ts';
import { womenChart } from './chart-women.ts';
import { tee } from './tee.ts';

const body = womenChart[4]?.body ?? {};

describe('cups', () => {
  it('are chosen by bust less upper bust, the smaller of two as near', () => {
    const cup = (mm: number) => blouse.nearestCup({ ...body, bustGirth: (body.upperBustGirth ?? 0) + mm });
    expect([0, 20, 34, 35, 36, 64, 80, 95, 96, 200].map(cup)).toEqual([20, 20, 20, 20, 50, 50, 80, 80, 110, 110]);
  });
  it('are not chosen where there are none, or the bust is not known', () => {
    expect(tee.nearestCup(body)).toBeUndefined();
    expect(blouse.nearestCup({ bustGirth: 960 })).toBeUndefined();
  });
  it('leave upper bust and shoulders as they are, and the middle cup is the chart', () => {
    expect(bodyWithCup(body, 50)).toEqual(body);
    const fuller = bodyWithCup(body, 110);
    expect(fuller.bustGirth).toBe((body.bustGirth ?? 0) + 60);
    expect(fuller.frontWaistLength).toBe((body.frontWaistLength ?? 0) + 15);
    for (const measure of ['upperBustGirth', 'acrossBack', 'shoulderLength', 'backWaistLength', 'hipGirth'] as const) {
      expect(fuller[measure]).toBe(body[measure]);
    }
    expect(blouse.chartFor(110)[4]?.body).toEqual(fuller);
    expect(blouse.chartFor()).toBe(womenChart);
  });
});
