import { describe, expect, it } from 'vitest';
import { measureIds } from '../body/index.ts';
import { easeWord, girthOfLayer, knitEase, knitExtension, usualEase } from './index.ts';

describe('usual ease', () => {
  it('is the trade’s table for a dress or blouse', () => {
    expect(usualEase('bustGirth', 'top')).toEqual({ least: 50, low: 65, high: 90 });
    expect(usualEase('waistGirth', 'dress')).toEqual({ least: 20, low: 25, high: 40 });
    expect(usualEase('waistGirth', 'trousers')).toEqual({ least: 10, low: 10, high: 25 });
    expect(usualEase('kneeGirth', 'trousers')).toEqual({ least: 30, low: 40, high: 60 });
    expect(usualEase('neckBaseGirth', 'top')).toBeNull();
  });
  it('puts a jacket over a blouse and a coat over a jacket', () => {
    expect(usualEase('bustGirth', 'jacket')).toEqual({ least: 90, low: 105, high: 160 });
    expect(usualEase('bustGirth', 'coat')).toEqual({ least: 115, low: 130, high: 200 });
  });
  it('is ordered wherever there is one', () => {
    for (const kind of ['top', 'dress', 'jacket', 'coat', 'trousers', 'skirt'] as const) {
      for (const id of measureIds) {
        const usual = usualEase(id, kind);
        if (!usual) continue;
        expect(usual.least).toBeLessThanOrEqual(usual.low);
        expect(usual.low).toBeLessThan(usual.high);
      }
    }
  });
  it('has the trade’s words', () => {
    expect([59.9, 60, 94.9, 95, 150, 151].map(easeWord)).toEqual(['skims', 'easy', 'easy', 'roomy', 'roomy', 'full']);
  });
  it('costs 31 for 5 mm of wadding', () => {
    expect(girthOfLayer(5)).toBeCloseTo(31.4, 1);
  });
});

describe('knits', () => {
  it('extend by a tenth to a fifth of their stretch, three tenths at most, never over a quarter', () => {
    expect(knitExtension(0.5)).toEqual({ usualLow: 0.05, usualHigh: 0.1, most: 0.15 });
    expect(knitExtension(1).most).toBe(0.25);
    expect(knitExtension(2).usualHigh).toBe(0.25);
  });
  it('do not extend without stretch or without springing back', () => {
    expect(knitExtension(0.19).most).toBe(0);
    expect(knitExtension(0.6, 0.85).most).toBe(0);
    expect(knitEase(900, 0.1)).toEqual({ least: 0, low: 0, high: 0 });
  });
  it('make the garment body / (1 + u)', () => {
    const ease = knitEase(900, 0.5);
    expect(900 / (900 + ease.least) - 1).toBeCloseTo(0.15, 9);
    expect(ease.least).toBeLessThan(ease.low);
    expect(ease.low).toBeLessThan(ease.high);
  });
});
