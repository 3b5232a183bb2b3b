import { describe, expect, it } from 'vitest';
import { inflections, pathLength, tolerance } from '../../geometry/index.ts';
import { edgeLength, edgeRuns, type Garment, levelWidth, pieceOf, walkAll } from '../../pattern/index.ts';
import { garmentsApart, sharpest } from '../testing/compare.ts';
import { altered, houseGarment } from '../testing/garments.ts';

const trousers = houseGarment('trousers');
const length = (garment: Garment, piece: string, edge: string): number => edgeLength(pieceOf(garment, piece), edge);
const straightOf = (garment: Garment): number => {
  const [path] = edgeRuns(pieceOf(garment, 'back'), 'crotch');
  return pathLength([(path ?? []).at(-1) as NonNullable<typeof path>[number]]);
};

describe('a crotch curve', () => {
  it.each([12, 6, -5])('dropped by %d along its straight bends back nowhere; both its ends stay', (amount) => {
    const { garment } = altered(trousers, ['crotch-curve', { where: 'back', amount }]);
    const [path] = edgeRuns(pieceOf(garment, 'back'), 'crotch');
    expect(straightOf(garment) - straightOf(trousers)).toBeCloseTo(amount, 6);
    expect(inflections(path ?? [])).toEqual([]);
    expect(sharpest(pieceOf(garment, 'back'), 'crotch')).toBeLessThan(0.02);
    for (const edge of ['waist', 'inside-leg']) {
      expect(length(garment, 'back', edge)).toBeCloseTo(length(trousers, 'back', edge), 3);
    }
    expect(pieceOf(garment, 'front')).toBe(pieceOf(trousers, 'front'));
  });

  it('flattened again by as much is the one it was', () => {
    const { garment } = altered(
      trousers,
      ['crotch-curve', { where: 'back', amount: 9 }],
      ['crotch-curve', { where: 'back', amount: -9 }],
    );
    expect(garmentsApart(garment, trousers)).toBeLessThan(1e-6);
  });
});

describe('a crotch point', () => {
  it.each([15, -8])('moved by %d keeps the inside leg and the hip, and widens the thigh', (amount) => {
    const { garment } = altered(trousers, ['crotch-point', { where: 'back', amount }]);
    expect(length(garment, 'back', 'inside-leg')).toBeCloseTo(length(trousers, 'back', 'inside-leg'), 2);
    const [was, now] = [trousers, garment].map((one) => pieceOf(one, 'back')) as [never, never];
    expect(levelWidth(now, 'hip')).toBeCloseTo(levelWidth(was, 'hip'), 1);
    expect(Math.sign(levelWidth(now, 'thigh') - levelWidth(was, 'thigh'))).toBe(Math.sign(amount));
    expect(walkAll(garment).every(({ meets }) => meets)).toBe(true);
  });
});

describe('a crotch length', () => {
  it.each([15, -8])('changed by %d changes the seam by that and nothing beside it', (amount) => {
    const { garment } = altered(trousers, ['crotch-length', { where: 'back', amount }]);
    expect(length(garment, 'back', 'crotch') - length(trousers, 'back', 'crotch')).toBeGreaterThan(
      amount - tolerance.wedge,
    );
    expect(length(garment, 'back', 'crotch') - length(trousers, 'back', 'crotch')).toBeLessThan(
      amount + tolerance.wedge,
    );
    for (const { id } of pieceOf(trousers, 'back').edges.filter((edge) => edge.id !== 'crotch')) {
      expect(Math.abs(length(garment, 'back', id) - length(trousers, 'back', id))).toBeLessThanOrEqual(tolerance.holds);
    }
  });
});

describe('a leg', () => {
  it('wider at the hem by an amount is so half on each side of every piece, and the same above the knee', () => {
    const { garment } = altered(trousers, ['leg-width', { where: 'hem', amount: 20 }]);
    for (const id of ['front', 'back']) {
      expect(length(garment, id, 'hem') - length(trousers, id, 'hem')).toBeCloseTo(20, 0);
      expect(levelWidth(pieceOf(garment, id), 'thigh')).toBeCloseTo(levelWidth(pieceOf(trousers, id), 'thigh'), 3);
    }
    expect(walkAll(garment).every(({ meets }) => meets)).toBe(true);
  });
});
