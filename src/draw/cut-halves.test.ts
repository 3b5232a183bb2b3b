import { describe, expect, it } from 'vitest';
import { applyAlterations } from '../alter/index.ts';
import { housePattern } from '../drafting/index.ts';
import { pathBounds } from '../geometry/index.ts';
import { type AlterationStep, outlineOf } from '../pattern/index.ts';
import { cutPlaces } from './index.ts';

const blouse = (() => {
  const garment = housePattern('blouse')?.pattern().sizes[4]?.garment;
  if (!garment) throw new Error('no blouse');
  return garment;
})();

const step = (alteration: string, params: AlterationStep['params']): AlterationStep => ({
  id: `${alteration} ${params['side']}`,
  alteration,
  version: 1,
  on: true,
  params,
});

const placesOf = (steps: readonly AlterationStep[]) => {
  const altered = applyAlterations(blouse, steps);
  expect(altered.refusal).toBeNull();
  const front = altered.before.pieces.find(({ id }) => id === 'front');
  const box = front && pathBounds(outlineOf(front));
  const middle = box ? (box.minX + box.maxX) / 2 : Number.NaN;
  const places = cutPlaces(altered.before, altered).filter(({ piece }) => piece === 'front');
  return places.map((place) => {
    const { minX, maxX } = pathBounds(place.path);
    return { ...place, half: (minX + maxX) / 2 > middle ? 'right' : 'left' };
  });
};

describe('cuts where right and left differ', () => {
  it('are drawn on both halves of a piece opened at its fold, as often on each, for a step done on both', () => {
    const places = placesOf([
      step('full-bust', { amount: 15, side: 'both' }),
      step('shoulder-slope', { amount: -10, side: 'right' }),
    ]);
    const count = (half: string) => places.filter((place) => place.half === half).length;
    expect(count('right')).toBeGreaterThan(0);
    expect(count('left')).toBe(count('right'));
  });

  it('are drawn on its own half for a step done on one', () => {
    const halvesOf = (side: string) => [
      ...new Set(placesOf([step('full-bust', { amount: 10, side })]).map(({ half }) => half)),
    ];
    expect(halvesOf('right')).toHaveLength(1);
    expect(halvesOf('left')).toHaveLength(1);
    expect(halvesOf('left')).not.toEqual(halvesOf('right'));
  });
});
