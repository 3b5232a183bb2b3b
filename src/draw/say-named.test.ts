import { describe, expect, it } from 'vitest';
import { applyAlterations } from '../alter/index.ts';
import { housePattern } from '../drafting/index.ts';
import type { AlterationStep } from '../pattern/index.ts';
import { sayEdgeOf, sayNamed, sayOutcomes, saySeam } from './index.ts';

const blouse = (() => {
  const garment = housePattern('blouse')?.pattern().sizes[4]?.garment;
  if (!garment) throw new Error('no blouse');
  return garment;
})();

const step = (alteration: string, params: AlterationStep['params']): AlterationStep => ({
  id: alteration,
  alteration,
  version: 1,
  on: true,
  params,
});

describe('what a step names, as the trade names it', () => {
  it('says darts, notches and seams of a garment', () => {
    expect(sayNamed(blouse, 'dart', 'front/bust')).toBe('Front bust dart');
    expect(sayNamed(blouse, 'edge', 'front-facing/outer')).toBe('Front neck facing, outer edge');
    expect(sayNamed(blouse, 'seam', 'armhole-front')).toBe('Sleeve cap, front, into front armhole');
    expect(
      sayNamed(blouse, 'notch', `front/${blouse.pieces.find(({ id }) => id === 'front')?.notches[0]?.id}`),
    ).toMatch(/^Notch .* on the front /);
  });

  it('says a dart that was moved, and the one it became, each as of its step', () => {
    const moved = step('move-dart', { dart: 'front/bust', to: 'front/hem', at: 0.5, share: 1, side: 'both' });
    const first = applyAlterations(blouse, [moved]);
    expect(first.refusal).toBeNull();
    const dart = first.garment.pieces.find(({ id }) => id === 'front')?.darts[0]?.id;
    expect(dart).toBe('hem-dart');
    // What a step leaves to the garment is the first that fits, and is named all the same.
    const list = [moved, step('dart-to', { as: 'gathers', side: 'both' })];
    const { outcomes } = applyAlterations(blouse, list);
    expect(sayOutcomes(blouse, outcomes, 'cm')).toEqual([
      'the front bust dart moved to the front hem',
      'the front hem dart let go into gathers',
    ]);
  });

  it('says an amount on one half once, and no amount of the other half', () => {
    const { outcomes } = applyAlterations(blouse, [
      step('shoulder-width', { amount: 8, side: 'right' }),
      step('sleeve-hem', { amount: 20, side: 'left' }),
      step('full-bust', { amount: 10, side: 'both' }),
    ]);
    expect(sayOutcomes(blouse, outcomes, 'cm')).toEqual([
      'on the right half only, shoulder 0.8\u00a0cm wider',
      'on the left half only, sleeve hem wider by 2.0\u00a0cm',
      'full bust: 1.0\u00a0cm more on each half of the front, 2.0\u00a0cm in all',
    ]);
  });

  it('tells pieces and edges of right and left apart', () => {
    const { garment } = applyAlterations(blouse, [step('shoulder-slope', { amount: -10, side: 'right' })]);
    const back = garment.pieces.find(({ id }) => id === 'back');
    expect(back && sayEdgeOf(back, 'armhole')).toBe('Right back armhole');
    const seams = garment.seams.map((seam) => saySeam(garment, seam));
    expect(new Set(seams).size).toBe(seams.length);
    expect(seams).toContain('Front neck facing to front, at the neck, right');
    expect(seams).toContain('Sleeve cap, back, into right back armhole');
  });
});
