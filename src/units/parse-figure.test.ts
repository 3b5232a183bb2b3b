import { describe, expect, it } from 'vitest';
import { type LengthUnit, parseFigure } from './index.ts';

const inch = 25.4;

describe('reading a figure of a printed chart', () => {
  it.each<[string, LengthUnit, number, number, LengthUnit | null]>([
    ['24 1/2', 'in', 24.5 * inch, 24.5 * inch, null],
    ['24-1/2', 'in', 24.5 * inch, 24.5 * inch, null],
    ['24½', 'in', 24.5 * inch, 24.5 * inch, null],
    ['24 ½"', 'cm', 24.5 * inch, 24.5 * inch, 'in'],
    ['½', 'yd', 457.2, 457.2, null],
    ['24,5', 'cm', 245, 245, null],
    ['24.5 cm', 'in', 245, 245, 'cm'],
    ['32–34', 'in', 32 * inch, 34 * inch, null],
    ['32 - 34', 'cm', 320, 340, null],
    ['32 to 34', 'in', 32 * inch, 34 * inch, null],
    ['81,5 – 84 cm', 'in', 815, 840, 'cm'],
    ['32"–34"', 'cm', 32 * inch, 34 * inch, 'in'],
    ['32 in to 34', 'cm', 32 * inch, 34 * inch, 'in'],
    ['24 1/2 - 25 1/2', 'in', 24.5 * inch, 25.5 * inch, null],
    ['24-1/2-25-1/2', 'in', 24.5 * inch, 25.5 * inch, null],
    ['24½–25½"', 'cm', 24.5 * inch, 25.5 * inch, 'in'],
    ['24-25 1/2', 'in', 24 * inch, 25.5 * inch, null],
    ['½-¾', 'yd', 457.2, 685.8, null],
    ['5\'2"', 'cm', 62 * inch, 62 * inch, 'in'],
    ['1m60', 'cm', 1600, 1600, 'm'],
  ])('%s (default %s)', (text, unit, low, high, named) => {
    const read = parseFigure(text, unit);
    expect(read).toMatchObject({ ok: true, value: { unit: named } });
    if (!read.ok) return;
    expect(read.value.low).toBeCloseTo(low, 5);
    expect(read.value.high).toBeCloseTo(high, 5);
  });

  it.each<[string, string]>([
    ['34–32', 'units.range-falls'],
    ['32–32', 'units.range-falls'],
    ['32–34–36', 'units.not-a-length'],
    ['32 cm to 34 kg', 'units.not-a-length'],
    ['-32', 'units.negative'],
    ['', 'units.empty'],
    ['$12.50', 'units.not-a-length'],
    ['1e9', 'units.not-a-length'],
    ['32 34', 'units.not-a-length'],
  ])('refuses “%s” as %s', (text, code) => {
    expect(parseFigure(text, 'cm')).toMatchObject({ ok: false, problem: { code } });
  });
});
