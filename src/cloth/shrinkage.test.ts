import { describe, expect, it } from 'vitest';
import { usualShrinkage } from './index.ts';

describe('what the first wash usually takes', () => {
  it.each<['woven' | 'knit', string, readonly [number, number] | null]>([
    ['woven', 'Cotton 100 %', [0.02, 0.05]],
    ['woven', 'linen 55 %, cotton 45 %', [0.03, 0.08]],
    ['woven', 'viscose', [0.03, 0.08]],
    ['knit', 'cotton 95 %, elastane 5 %', [0.05, 0.1]],
    ['woven', 'polyester', [0, 0.01]],
    ['woven', 'wool', null],
    ['woven', '', null],
  ])('%s of %s', (structure, fibres, share) => {
    const usual = usualShrinkage({ structure, fibres });
    expect(usual === null ? null : [usual.from, usual.to]).toEqual(share);
  });
});
