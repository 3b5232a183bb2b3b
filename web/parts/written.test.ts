import { describe, expect, it } from 'vitest';
import { namesUnit, plainUnit, readTyped, shownLength, withUnit } from './written.ts';

describe('what is typed into a field', () => {
  it('is kept with the unit it was meant in', () => {
    expect(withUnit(' 38 1/2 ', 'in')).toBe('38 1/2 in');
    expect(withUnit('98 cm', 'in')).toBe('98 cm');
    expect(withUnit('65½"', 'cm')).toBe('65½"');
    expect(namesUnit("5'5")).toBe(true);
    expect(namesUnit('97,5')).toBe(false);
  });

  it('is shown again as typed in its own unit, and turned into the other', () => {
    expect(shownLength(977.9, '38 1/2 in', 'in', 'measure', 'en-GB')).toBe('38 1/2');
    expect(shownLength(977.9, '38 1/2 in', 'cm', 'measure', 'en-GB')).toBe('97.8');
    expect(shownLength(980, '98 cm', 'in', 'measure', 'en-GB')).toBe('38⅝');
    expect(shownLength(1664, '166,4 cm', 'cm', 'stature', 'en-GB')).toBe('166,4');
    expect(shownLength(1664, '166,4 cm', 'in', 'stature', 'en-GB')).toBe('5′ 5½″');
    expect(shownLength(null, null, 'in', 'measure', 'en-GB')).toBe('');
  });

  it('shows nothing that it would not read back as the same length', () => {
    for (const unit of ['in', 'cm'] as const) {
      for (const purpose of ['measure', 'amount', 'cloth', 'stature'] as const) {
        const shown = shownLength(1682.75, null, unit, purpose, 'en-GB');
        const read = readTyped(shown, unit, purpose, false);
        const again = read !== 'empty' && read.ok ? shownLength(read.value, null, unit, purpose, 'en-GB') : null;
        expect(again).toBe(shown);
      }
    }
  });

  it('never shows more cloth in hand than there is', () => {
    expect(shownLength(1800, null, 'in', 'cloth', 'en-GB')).toBe('1 yd 34¾″');
    expect(shownLength(2057.4, null, 'in', 'cloth', 'en-GB')).toBe('2¼');
    expect(shownLength(1809, null, 'cm', 'cloth', 'en-GB')).toBe('1.8');
  });

  it('means metres and yards for cloth, millimetres for what a seam differs by', () => {
    expect(plainUnit('cm', 'cloth')).toBe('m');
    expect(plainUnit('in', 'cloth')).toBe('yd');
    expect(plainUnit('cm', 'fine')).toBe('mm');
    expect(readTyped('2 1/4', 'in', 'cloth', false)).toEqual({ ok: true, value: 2057.4 });
    expect(readTyped('  ', 'in', 'measure', false)).toBe('empty');
  });
});
