import { describe, expect, it } from 'vitest';
import { applyAlterations } from '../../src/alter/index.ts';
import { housePattern } from '../../src/drafting/index.ts';
import type { AlterationStep, Garment } from '../../src/pattern/index.ts';
import { fill } from '../../src/words/index.ts';
import type { Say } from '../app/settings.tsx';
import { sayWhatFollows } from './what-follows.ts';

const say = {
  unit: 'cm',
  length: (mm: number) => `${(mm / 10).toFixed(1)} cm`,
  words: (template: string, values = {}) => fill(template, values, 'cm'),
} as unknown as Say;

const garmentOf = (id: 'blouse' | 'trousers'): Garment => {
  const garment = housePattern(id)?.pattern().sizes[4]?.garment;
  if (!garment) throw new Error(`no ${id}`);
  return garment;
};

const follows = (garment: Garment, alteration: string, params: AlterationStep['params']): readonly string[] => {
  const { garment: after, refusal } = applyAlterations(garment, [
    { id: 's', alteration, version: 1, on: true, params },
  ]);
  expect(refusal).toBeNull();
  return sayWhatFollows(garment, after, say);
};

describe('what a list does to the rest', () => {
  it('speaks of a sleeve head only where there is a sleeve', () => {
    const lines = follows(garmentOf('trousers'), 'run-sides', { where: 'waist', amount: 8, side: 'both' });
    expect(lines.filter((line) => line.includes('sleeve'))).toEqual([]);
    expect(lines.some((line) => line.startsWith('Finished waist: '))).toBe(true);
  });

  it('says nothing of a garment that is as it was', () => {
    const blouse = garmentOf('blouse');
    expect(sayWhatFollows(blouse, blouse, say)).toEqual([]);
  });
});
