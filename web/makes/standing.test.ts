import { describe, expect, it } from 'vitest';
import type { Make } from '../../src/make/index.ts';
import { waitsFor } from './standing.ts';
import { sayTight } from './tight.ts';

const make = { state: 'planned', size: '5', cloth: 'grey-wool' } as Make;

describe('what a make waits for', () => {
  it('is a size, then a cloth, then the scissors', () => {
    expect(waitsFor({ ...make, size: null, cloth: null }).passage).toBe('fit');
    expect(waitsFor({ ...make, cloth: null }).passage).toBe('layout');
    expect(waitsFor(make)).toEqual({ words: 'the scissors; its sheets can be printed', passage: 'print' });
  });
  it('is an alteration before the scissors where it is too tight, and says where', () => {
    const tight = sayTight(
      [
        { level: 'bust', verdict: 'snug' },
        { level: 'waist', verdict: 'too-tight' },
        { level: 'upper-arm', verdict: 'too-tight' },
      ],
      'en',
    );
    expect(tight).toBe('waist and upper arm');
    expect(waitsFor(make, 'pieces', tight)).toEqual({
      words: 'the scissors, but it is too tight at the waist and upper arm',
      passage: 'alterations',
    });
    expect(waitsFor({ ...make, cloth: null }, 'pieces', tight).words).toMatch(/^a cloth, but .* waist and upper arm$/);
    expect(waitsFor({ ...make, state: 'sewn' }, 'pieces', tight).words).not.toMatch(/tight/);
  });
  it('is nothing else where it is tight nowhere', () => {
    expect(sayTight([{ level: 'hip', verdict: 'usual' }], 'en')).toBe('');
  });
});
