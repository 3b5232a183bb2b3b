import { describe, expect, it } from 'vitest';
import { inflections, tolerance } from '../../geometry/index.ts';
import { edgeLength, edgeRuns, landmarkOf, levelWidth, outlineOf, pieceOf, walkAll } from '../../pattern/index.ts';
import { apart } from '../testing/compare.ts';
import { altered, houseGarment } from '../testing/garments.ts';

const blouse = houseGarment('blouse');
const back = pieceOf(blouse, 'back');

describe('a back', () => {
  it.each([10, -8])('broader by %d lies so much further out at its mark; shoulder, waist and hem stay', (amount) => {
    const { garment } = altered(blouse, ['back-width', { amount }]);
    const now = pieceOf(garment, 'back');
    const across = (landmarkOf(now, 'across-back')?.x ?? 0) - (landmarkOf(back, 'across-back')?.x ?? 0);
    expect(Math.abs(across - amount)).toBeLessThan(tolerance.askew);
    expect(edgeLength(now, 'shoulder')).toBeCloseTo(edgeLength(back, 'shoulder'), 3);
    expect(levelWidth(now, 'waist')).toBeCloseTo(levelWidth(back, 'waist'), 1);
    const [armhole] = edgeRuns(now, 'armhole');
    expect(inflections(armhole ?? [], tolerance.holds)).toEqual([]);
    expect(walkAll(garment).every(({ meets }) => meets)).toBe(true);
  });

  it('made broader and narrower again by as much is as it was', () => {
    const { garment } = altered(blouse, ['back-width', { amount: 8 }], ['back-width', { amount: -8 }]);
    expect(apart(outlineOf(pieceOf(garment, 'back')), outlineOf(back))).toBeLessThan(tolerance.walk);
  });

  it('swayed by an amount is so much shorter at the centre and as long at the side', () => {
    const { garment } = altered(blouse, ['sway-back', { amount: 12 }]);
    const now = pieceOf(garment, 'back');
    expect(edgeLength(back, 'centre-back') - edgeLength(now, 'centre-back')).toBeCloseTo(12, 0);
    expect(edgeLength(now, 'side')).toBeCloseTo(edgeLength(back, 'side'), 1);
    expect(Math.abs(levelWidth(now, 'waist') - levelWidth(back, 'waist'))).toBeLessThanOrEqual(tolerance.waistKept);
  });

  it('rounder by an amount is so much longer at the centre, and as long at the armhole', () => {
    const { garment } = altered(blouse, ['round-back', { amount: 10 }]);
    const now = pieceOf(garment, 'back');
    expect(Math.abs(edgeLength(now, 'centre-back') - edgeLength(back, 'centre-back') - 10)).toBeLessThan(
      tolerance.wedge,
    );
    expect(edgeLength(now, 'shoulder')).toBeCloseTo(edgeLength(back, 'shoulder'), 1);
  });
});
