import { describe, expect, it } from 'vitest';
import { newSet } from '../app/documents.ts';
import { readApart, readingsApart, readingsOf, together, withReading } from './readings.ts';

const read = (mm: number) => ({ mm, written: `${mm / 10} cm` });
const lengths = (set: ReturnType<typeof newSet>) => set.readings.map((reading) => [reading.side, reading.mm]);

describe('two readings of one day', () => {
  it.each<[number, number, boolean]>([
    [700, 704, false],
    [700, 712, true],
    [700, 680, true],
    [1664, 1678, false],
    [1664, 1690, true],
    [160, 164, false],
    [160, 166, true],
  ])('of %d and %d are queried: %s', (first, second, queried) => {
    let set = withReading(newSet('m1', '2026-03-14'), 'waistGirth', 'both', 0, read(first));
    expect(readingsApart(set, 'waistGirth', 'both')).toBeNull();
    set = withReading(set, 'waistGirth', 'both', 1, read(second));
    expect(readingsApart(set, 'waistGirth', 'both') !== null).toBe(queried);
  });
});

describe('readings', () => {
  it('keep a second beside the first and change each in its place', () => {
    let set = withReading(newSet('m1', '2026-03-14'), 'waistGirth', 'both', 0, read(700));
    set = withReading(set, 'hipGirth', 'both', 0, read(980));
    set = withReading(set, 'waistGirth', 'both', 1, read(704));
    set = withReading(set, 'waistGirth', 'both', 0, read(698));
    expect(readingsOf(set, 'waistGirth', 'both').map((reading) => reading.mm)).toEqual([698, 704]);
    set = withReading(set, 'waistGirth', 'both', 0, null);
    expect(readingsOf(set, 'waistGirth', 'both').map((reading) => reading.mm)).toEqual([704]);
    expect(readingsOf(set, 'hipGirth', 'both')).toHaveLength(1);
  });

  it('of one side take the place of what was read for both, and go together again', () => {
    let set = withReading(newSet('m1', '2026-03-14'), 'shoulderDrop', 'both', 0, read(45));
    expect(readApart(set, 'shoulderDrop')).toBe(false);
    set = withReading(set, 'shoulderDrop', 'left', 0, read(40));
    set = withReading(set, 'shoulderDrop', 'right', 0, read(52));
    expect(lengths(set)).toEqual([
      ['left', 40],
      ['right', 52],
    ]);
    expect(lengths(together(set, 'shoulderDrop', 'smaller'))).toEqual([['both', 40]]);
    expect(lengths(together(set, 'shoulderDrop', 'larger'))).toEqual([['both', 52]]);
  });
});
