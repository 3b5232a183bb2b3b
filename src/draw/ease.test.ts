import { describe, expect, it } from 'vitest';
import { envelopeFigures, fitPattern } from '../fit/index.ts';
import { harbourBlouse } from '../fit/testing/envelope.ts';
import { drawEase } from './ease.ts';
import type { GroupMark } from './types.ts';

const inch = 25.4;
const measures = { bustGirth: 36 * inch, upperBustGirth: 36 * inch - 50, hipGirth: 38 * inch, upperArmGirth: 285 };

describe('ease at a level known of one size only', () => {
  const row = harbourBlouse.finished.find(({ of }) => of === 'upper-arm');
  const known = { ...harbourBlouse, finished: harbourBlouse.finished.filter((one) => one !== row) };
  const pieces = [{ name: 'Sleeve', flat: 380, allowances: 30, takenOut: 0, times: 1 }];
  const envelope = { ...known, flat: [{ of: 'upper-arm' as const, view: null, size: '16', pieces }] };
  const fit = fitPattern({ measures, pattern: envelopeFigures(envelope, 'a') });
  if (!fit.ok) throw new Error(fit.problem.code);
  const arm = (size: string): GroupMark => {
    const found = drawEase(fit.value, { unit: 'in', size }).marks.find(
      (mark): mark is GroupMark => mark.kind === 'group' && mark.id === 'ease-upper-arm',
    );
    if (!found) throw new Error('no upper arm');
    return found;
  };
  const firm = (size: string) => arm(size).marks.filter((mark) => mark.kind === 'path' && mark.ink === 'cut');
  it('has its firm dot and its figure for that size', () => {
    expect(JSON.stringify(arm('16'))).toMatch(/size 16: [^"]+, (snug|usual|roomy|too tight)/);
    expect(firm('16')).toHaveLength(1);
  });
  it('is said not to be known for another, and no dot stands for it', () => {
    expect(JSON.stringify(arm('18'))).toContain('size 18: not known');
    expect(arm('18').label).toMatch(/^Upper arm: of size 18 it is not known/);
    expect(firm('18')).toEqual([]);
  });
});
