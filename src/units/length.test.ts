import { describe, expect, it } from 'vitest';
import {
  formatLength,
  formatPercent,
  formatWeight,
  lengthToBuy,
  parseLength,
  parsePercent,
  parseWeight,
} from './index.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('reading a length', () => {
  const inch = 25.4;
  it.each<[string, 'cm' | 'in', number]>([
    ['5 ft 5 1/2 in', 'cm', 65.5 * inch],
    ['65½"', 'cm', 65.5 * inch],
    ['65 ½ ”', 'cm', 65.5 * inch],
    ['1 5/8"', 'cm', 1.625 * inch],
    ['1-5/8"', 'cm', 1.625 * inch],
    ['1 – 5/8 inches', 'cm', 1.625 * inch],
    ['5\'5½"', 'cm', 65.5 * inch],
    ["5'5½", 'cm', 65.5 * inch],
    ['5′ 5½″', 'cm', 65.5 * inch],
    ["5' 5½''", 'cm', 65.5 * inch],
    ['5’5”', 'cm', 65 * inch],
    ['166,4 cm', 'in', 1664],
    ['166.4cm', 'in', 1664],
    ['166.4\u00a0cm', 'in', 1664],
    ['1664 mm', 'in', 1664],
    ['1 m 66 cm', 'in', 1660],
    ['1m60', 'in', 1600],
    ['1 m 66', 'in', 1660],
    ['1.664 m', 'in', 1664],
    ['2 1/4 yd', 'cm', 2.25 * 914.4],
    ['2¼ yards', 'cm', 2.25 * 914.4],
    ['1 yd 9 in', 'cm', 1.25 * 914.4],
    ['1.9 m', 'in', 1900],
    ['98', 'cm', 980],
    ['98', 'in', 98 * inch],
    ['38 5/8', 'in', 38.625 * inch],
    ['38⅝', 'in', 38.625 * inch],
    ['38³⁄₁₆″', 'cm', 38.1875 * inch],
    ['3/4', 'in', 0.75 * inch],
    ['.5', 'in', 0.5 * inch],
    ['1.125"', 'cm', 1.125 * inch],
    ['1,664.5 mm', 'cm', 1664.5],
    ['1.664,5 mm', 'cm', 1664.5],
    ['0', 'cm', 0],
    ['  98  CM ', 'cm', 980],
  ])('%s (default %s)', (text, unit, mm) => {
    const read = parseLength(text, unit);
    expect(read).toMatchObject({ ok: true });
    if (read.ok) expect(read.value).toBeCloseTo(mm, 5);
  });

  it.each<[string, string]>([
    ['', 'units.empty'],
    [' \u00a0', 'units.empty'],
    ['-5', 'units.negative'],
    ['−5 cm', 'units.negative'],
    ['5 in 5 ft', 'units.wrong-order'],
    ['5 ft 5 cm', 'units.wrong-order'],
    ['5 cm 5 cm', 'units.wrong-order'],
    ['2 m 5', 'units.not-a-length'],
    ['12 1/0', 'units.zero-denominator'],
    ['1e9', 'units.not-a-length'],
    ['1,664', 'units.ambiguous-thousands'],
    ['1.664 mm', 'units.ambiguous-thousands'],
    ['1 9/8 in', 'units.fraction-too-large'],
    ['5.5 ft 3 in', 'units.broken-part'],
    ['5 ft 14 in', 'units.part-too-large'],
    ['98 99', 'units.not-a-length'],
    ['98-99', 'units.not-a-length'],
    ['about 98', 'units.not-a-length'],
    ['98 kg', 'units.not-a-length'],
    ['cm', 'units.not-a-length'],
    ['1.2.3', 'units.not-a-number'],
    ['5.', 'units.not-a-number'],
    ['9999999999999999999999', 'units.too-long'],
    ['2000 m', 'units.too-long'],
    ['NaN', 'units.not-a-length'],
    ['Infinity', 'units.not-a-length'],
    ['9'.repeat(500), 'units.not-a-length'],
  ])('refuses “%s” as %s', (text, code) => {
    expect(parseLength(text, 'cm')).toMatchObject({ ok: false, problem: { code } });
  });

  it('takes a minus only where amounts go either way', () => {
    expect(parseLength('-1,2 cm', 'cm', { signed: true })).toEqual({ ok: true, value: -12 });
    expect(parseLength('+1.2', 'cm', { signed: true })).toEqual({ ok: true, value: 12 });
    expect(parseLength('-0', 'cm', { signed: true })).toEqual({ ok: true, value: 0 });
  });
});

describe('writing a length', () => {
  it.each<[number, 'cm' | 'in', Parameters<typeof formatLength>[2], string]>([
    [978, 'cm', {}, '97.8 cm'],
    [970, 'cm', {}, '97.0 cm'],
    [978, 'cm', { locale: 'de' }, '97,8 cm'],
    [981.075, 'in', {}, '38⅝″'],
    [38.1875 * 25.4, 'in', { purpose: 'amount' }, '38³⁄₁₆″'],
    [12, 'in', { purpose: 'amount' }, '½″'],
    [-12, 'cm', { purpose: 'amount' }, '−1.2 cm'],
    [12, 'cm', { purpose: 'amount', signed: true }, '+1.2 cm'],
    [-0.2, 'cm', { signed: true }, '0.0 cm'],
    [-0.2, 'in', { signed: true }, '0″'],
    [0.12, 'cm', { purpose: 'fine' }, '0.1 mm'],
    [65.5 * 25.4, 'in', { purpose: 'stature' }, '5′ 5½″'],
    [71.9 * 25.4, 'in', { purpose: 'stature' }, '6′ 0″'],
    [1664, 'cm', { purpose: 'stature' }, '166.4 cm'],
    [1940, 'cm', { purpose: 'cloth' }, '1.94 m'],
    [1900, 'cm', { purpose: 'cloth' }, '1.9 m'],
    [2.25 * 914.4, 'in', { purpose: 'cloth' }, '2¼ yd'],
    [1187, 'cm', { purpose: 'cloth', round: 'up' }, '1.19 m'],
    [1187, 'cm', { purpose: 'cloth', round: 'down' }, '1.18 m'],
    [1190, 'in', { purpose: 'cloth', round: 'up' }, '1 yd 10⅞″'],
    [1800, 'in', { purpose: 'cloth', round: 'down' }, '1 yd 34¾″'],
    [1800, 'in', { purpose: 'cloth' }, '1 yd 34⅞″'],
    [100, 'in', { purpose: 'cloth', round: 'down' }, '3⅞″'],
    [0, 'in', { purpose: 'cloth' }, '0 yd'],
    [-12.4, 'cm', { purpose: 'amount', round: 'up' }, '−1.2 cm'],
    [-12.4, 'cm', { purpose: 'amount', round: 'down' }, '−1.3 cm'],
    [978, 'cm', { bare: true }, '97.8'],
  ])('%d in %s %o is %s', (mm, unit, format, text) => {
    expect(plain(formatLength(mm, unit, format))).toBe(text);
  });

  it('throws on what is no length', () => {
    expect(() => formatLength(Number.NaN, 'cm')).toThrow();
  });

  it('rounds up what is to be bought', () => {
    expect(lengthToBuy(1810, 'cm')).toBe(1900);
    expect(lengthToBuy(1800, 'cm')).toBe(1800);
    expect(lengthToBuy(914.4, 'in')).toBeCloseTo(914.4, 9);
    expect(lengthToBuy(915, 'in')).toBeCloseTo(914.4 * 1.125, 9);
  });
});

describe('weights and shares', () => {
  it('knows the ounce per square yard', () => {
    const read = parseWeight('1 oz/yd²', 'cm');
    expect(read.ok && read.value).toBeCloseTo(33.9, 1);
  });
  it.each<[string, 'cm' | 'in', number]>([
    ['150 g/m²', 'in', 150],
    ['150gsm', 'in', 150],
    ['150', 'cm', 150],
    ['4 1/2 oz', 'cm', 152.6],
    ['4,5', 'in', 152.6],
  ])('reads %s', (text, unit, weight) => {
    const read = parseWeight(text, unit);
    expect(read.ok && read.value).toBeCloseTo(weight, 1);
  });
  it('writes them in her unit', () => {
    expect(plain(formatWeight(150, 'cm'))).toBe('150 g/m²');
    expect(plain(formatWeight(152.6, 'in'))).toBe('4.5 oz/yd²');
    expect(plain(formatPercent(0.3))).toBe('30 %');
  });
  it.each<[string, string]>([
    ['', 'units.empty'],
    ['heavy', 'units.not-a-number'],
    ['150 kg', 'units.not-a-weight'],
    ['9000', 'units.too-heavy'],
  ])('refuses the weight “%s”', (text, code) => {
    expect(parseWeight(text, 'cm')).toMatchObject({ ok: false, problem: { code } });
  });
  it('reads shares', () => {
    expect(parsePercent('30 %')).toEqual({ ok: true, value: 0.3 });
    expect(parsePercent('30')).toEqual({ ok: true, value: 0.3 });
    expect(parsePercent('0')).toEqual({ ok: true, value: 0 });
    expect(parsePercent('0.3')).toMatchObject({ ok: false, problem: { code: 'units.ambiguous-percentage' } });
    expect(parsePercent('-3')).toMatchObject({ ok: false, problem: { code: 'units.negative' } });
    expect(parsePercent('400 %')).toMatchObject({ ok: false, problem: { code: 'units.percentage-too-large' } });
    expect(parsePercent('30 cm')).toMatchObject({ ok: false, problem: { code: 'units.not-a-percentage' } });
  });
});
