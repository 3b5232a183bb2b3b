import { describe, expect, it } from 'vitest';
import { fill } from './fill.ts';

describe('filling words', () => {
  it('puts lengths that stand in a sentence into the reader’s unit', () => {
    expect(fill('Turn {10 mm}, then {20 mm}.', {}, 'cm')).toMatch(/^Turn 1\.0\scm, then 2\.0\scm\.$/);
    expect(fill('{70 mm} deep', {}, 'in')).toMatch(/^2¾″ deep$/);
  });
  it('leaves a name without a value standing', () => {
    expect(fill('{what} and {known}', { known: 'seen' }, 'cm')).toBe('{what} and seen');
  });
});
