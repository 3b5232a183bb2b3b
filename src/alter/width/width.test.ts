import { describe, expect, it } from 'vitest';
import { housePatterns } from '../../drafting/index.ts';
import { pathBounds } from '../../geometry/index.ts';
import {
  edgeLength,
  finishedGirths,
  type Garment,
  levelWidth,
  onFold,
  outlineOf,
  pieceOf,
  walkAll,
} from '../../pattern/index.ts';
import { altered, houseGarment, type Tried } from '../testing/garments.ts';

const skirt = houseGarment('skirt', 'midi');
const blouse = houseGarment('blouse');

const girth = (garment: Garment, level: string): number =>
  finishedGirths(garment).find((one) => one.level === level)?.finished ?? Number.NaN;

const waisted = housePatterns
  .map(({ id }) => id)
  .filter((id) => houseGarment(id).girths.some(({ level }) => level === 'waist'));

const walks = (garment: Garment): boolean => walkAll(garment).every(({ meets }) => meets);

describe('side seams let out', () => {
  it('at the waist make it four times as much wider, and the hip no wider', () => {
    const { garment } = altered(blouse, ['run-sides', { where: 'waist', amount: 6 }]);
    expect(girth(garment, 'waist') - girth(blouse, 'waist')).toBeCloseTo(24, 0);
    expect(girth(garment, 'hip')).toBeCloseTo(girth(blouse, 'hip'), 0);
    expect(walks(garment)).toBe(true);
  });

  it.each(waisted)('make the finished waist of the %s so much wider, whether it hangs from a band or not', (id) => {
    const garment = houseGarment(id);
    for (const amount of [-5, 7]) {
      const { garment: now } = altered(garment, ['run-sides', { where: 'waist', amount }]);
      expect(Math.abs(girth(now, 'waist') - girth(garment, 'waist') - 4 * amount)).toBeLessThan(1);
    }
  });

  it('take the waistband with them', () => {
    const { garment } = altered(skirt, ['run-sides', { where: 'waist', amount: 5 }]);
    const long = (one: Garment): number => {
      const { minX, maxX, minY, maxY } = pathBounds(outlineOf(pieceOf(one, 'waistband')));
      return Math.max(maxX - minX, maxY - minY);
    };
    // Cut once on the fold, it is half of the waist.
    const shares = onFold(pieceOf(skirt, 'waistband')) ? 2 : 1;
    expect(shares * (long(garment) - long(skirt))).toBeCloseTo(20, 0);
    expect(walks(garment)).toBe(true);
  });
});

describe('flare', () => {
  it('opens the hem from points above it; the waist stays', () => {
    const { garment } = altered(skirt, ['flare', { amount: 40 }]);
    for (const id of ['front', 'back']) {
      const [was, now] = [pieceOf(skirt, id), pieceOf(garment, id)];
      expect(edgeLength(now, 'hem')).toBeGreaterThan(edgeLength(was, 'hem') + 30);
      expect(edgeLength(now, 'waist')).toBeCloseTo(edgeLength(was, 'waist'), 1);
    }
    expect(walks(garment)).toBe(true);
  });
});

describe('the waist at the centre', () => {
  const raised: readonly (readonly [string, string])[] = [
    ['abdomen', 'front'],
    ['seat', 'back'],
  ];
  it.each(raised)('for the %s is raised on the %s alone, to nothing at the side', (alteration, id) => {
    const step: Tried = [alteration, { amount: 12 }];
    const { garment } = altered(skirt, step);
    const centre = `centre-${id}`;
    expect(edgeLength(pieceOf(garment, id), centre) - edgeLength(pieceOf(skirt, id), centre)).toBeCloseTo(12, 1);
    expect(edgeLength(pieceOf(garment, id), 'side')).toBeCloseTo(edgeLength(pieceOf(skirt, id), 'side'), 2);
    const other = id === 'front' ? 'back' : 'front';
    expect(levelWidth(pieceOf(garment, other), 'hip')).toBe(levelWidth(pieceOf(skirt, other), 'hip'));
    expect(walks(garment)).toBe(true);
  });
});
