import { describe, expect, it } from 'vitest';
import { clothWords } from '../words/index.ts';
import { type ClothConversion, convertCloth } from './index.ts';

const yard = 914.4;
const convert = (request: ClothConversion) => {
  const read = convertCloth(request);
  if (!read.ok) throw new Error(read.problem.code);
  return read.value;
};
const codes = (request: ClothConversion): readonly string[] =>
  convert(request).why.map(({ code }) => code.replace('cloth.convert-', ''));

describe('cloth in another width', () => {
  const same: ClothConversion = { needed: 2000, fromWidth: 1150, toWidth: 1150, washed: true };

  it('takes the printed length in the same width, and enough to square the ends', () => {
    expect(convert(same)).toMatchObject({ length: 2000, buy: 2100, estimate: true });
    expect(codes(same)).toEqual(['squaring']);
  });

  // The extension services' conversion chart: what 1 yd, 1½ yd … of one width are in another, in yards.
  it.each([
    ['45 to 60', 45, 60, 1.375, 1],
    ['45 to 60', 45, 60, 2.25, 1.75],
    ['45 to 60', 45, 60, 3.375, 2.625],
    ['60 to 45', 60, 45, 1, 1.375],
    ['60 to 45', 60, 45, 1.75, 2.25],
    ['45 to 36', 45, 36, 2.25, 2.875],
    ['54 to 36', 54, 36, 2, 3.125],
  ])('%s inches promises no less than the trade’s chart, and at most ⅜ yd more', (_, from, to, yards, chart) => {
    const { length } = convert({ needed: yards * yard, fromWidth: from * 25.4, toWidth: to * 25.4, washed: true });
    // The chart rounds to the eighth of a yard, either way.
    expect(length / yard).toBeGreaterThanOrEqual(chart - 1 / 8);
    expect(length / yard).toBeLessThanOrEqual(chart + 3 / 8);
  });

  it('adds a quarter yard for cloth laid one way where the printed length has none, and promises no saving back', () => {
    expect(convert({ ...same, nap: { from: 'without', to: 'with' } }).length).toBeCloseTo(2000 + yard / 4, 6);
    expect(convert({ ...same, nap: { from: 'with', to: 'without' } }).length).toBe(2000);
    expect(convert({ ...same, nap: { from: 'either', to: 'with' } }).length).toBe(2000);
  });

  it('shrinks L / (1 − s), by the most usual where nothing is entered, and never twice', () => {
    const cotton = { structure: 'woven', fibres: 'cotton' } as const;
    const raw = { ...same, washed: false };
    expect(convert({ ...raw, shrinkage: { along: 0.1, across: 0 } }).buy).toBe(2300); // 2000 / 0.9 + 50 = 2272
    expect(codes({ ...raw, cloth: cotton })).toEqual(['usual-shrinkage', 'squaring']);
    expect(convert({ ...raw, cloth: cotton }).buy).toBe(2200); // 2000 / 0.95 + 50 = 2155
    expect(codes({ ...raw, cloth: cotton, washed: true })).toEqual(['squaring']);
  });

  it('counts what the width loses in the wash as narrower cloth', () => {
    expect(convert({ ...same, washed: false, shrinkage: { along: 0, across: 0.04 } }).length).toBeGreaterThan(
      2000 / 0.96,
    );
  });

  it('has the widest pieces follow one another where they no longer lie side by side', () => {
    const skirt: ClothConversion = {
      ...same,
      fromWidth: 1500,
      needed: 1000,
      widestPiece: 700,
      layout: { from: 'single', to: 'single' },
    };
    expect(convert(skirt).length).toBe(2000);
    expect(codes(skirt)).toContain('widest');
  });

  it('is never less than the pieces cover', () => {
    expect(convert({ ...same, minimumArea: 3000 * 1150 }).length).toBeCloseTo(3000, 9);
  });

  it('of a range takes the larger, and buys by eighths of a yard in inches', () => {
    const { length, buy } = convert({ ...same, needed: [1800, 2000], unit: 'in' });
    expect(length).toBe(2000);
    expect((buy / yard) * 8).toBeCloseTo(Math.round((buy / yard) * 8), 9);
  });

  it('says every allowance in words', () => {
    const request: ClothConversion = {
      ...same,
      toWidth: 900,
      washed: false,
      shrinkage: { along: 0.05, across: 0 },
      nap: { from: 'without', to: 'with' },
      layout: { from: 'single', to: 'lengthwise' },
    };
    expect(codes(request)).toEqual(['narrower', 'apart', 'nap', 'fold', 'shrinkage-added', 'squaring']);
    for (const { code } of convert(request).why) expect(clothWords.converted[code]).toMatch(/\{amount\}/);
  });

  it.each<[string, Partial<ClothConversion>, string]>([
    ['no length', { needed: 0 }, 'no-length'],
    ['a length that is no number', { needed: Number.NaN }, 'no-length'],
    ['60 m', { needed: 60_000 }, 'no-length'],
    ['a width in metres', { toWidth: 1.5 }, 'no-width'],
    ['a width that is no number', { fromWidth: Number.NaN }, 'no-width'],
    ['shrinkage as a percentage', { washed: false, shrinkage: { along: 5, across: 0 } }, 'shrinkage'],
    ['a negative area', { minimumArea: -1 }, 'no-pieces'],
    ['a piece wider than half the cloth on a fold', { widestPiece: 600 }, 'piece-too-wide'],
  ])('refuses %s', (_, change, code) => {
    expect(convertCloth({ ...same, ...change })).toMatchObject({
      ok: false,
      problem: { code: `cloth.convert-${code}` },
    });
  });
});
