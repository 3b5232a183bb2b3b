import { describe, expect, it } from 'vitest';
import { dartOf, edgeLength, type Garment, levelWidth, pieceOf, printedPiece, walkAll } from '../../pattern/index.ts';
import { altered, houseGarment, refusalOf, type Tried } from '../testing/garments.ts';

const blouse = houseGarment('blouse');
const skirt = houseGarment('skirt', 'midi');

describe('a dart', () => {
  it('shortened has its point drawn back along its middle, its mouth as it was', () => {
    const { garment } = altered(blouse, ['shorten-dart', { dart: 'front/bust', amount: 15 }]);
    const [was, now] = [dartOf(pieceOf(blouse, 'front'), 'bust'), dartOf(pieceOf(garment, 'front'), 'bust')];
    expect(now.legs).toEqual(was.legs);
    expect(Math.abs(now.legLengths[0] - now.legLengths[1])).toBeLessThan(0.1);
    expect(was.legLengths[0] - now.legLengths[0]).toBeCloseTo(15, 0);
  });

  it('moved whole leaves its edge closed and opens the other by the same angle', () => {
    const { garment } = altered(blouse, ['move-dart', { dart: 'front/bust', to: 'front/hem', at: 0.5, share: 1 }]);
    const front = pieceOf(garment, 'front');
    expect(front.darts.map(({ id }) => id)).toContain('hem-dart');
    expect(front.darts.map(({ id }) => id)).not.toContain('bust');
    expect(edgeLength(front, 'side')).toBeCloseTo(edgeLength(pieceOf(blouse, 'front'), 'side'), 1);
    expect(walkAll(garment).every(({ meets }) => meets)).toBe(true);
  });

  it('with legs a hair unlike is gone when it is moved whole, so that the piece can be printed', () => {
    const { garment } = altered(
      skirt,
      ['dart-intake', { dart: 'back/waist-inner', amount: -1, side: 'both' }],
      ['move-dart', { dart: 'back/waist-inner', to: 'back/side', at: 0.43, share: 1, side: 'right' }],
    );
    const back = garment.pieces.find(({ darts }) => darts.some(({ id }) => id === 'side-dart'));
    expect(back?.darts.map(({ id }) => id)).not.toContain('waist-inner');
    expect(() => garment.pieces.map(printedPiece)).not.toThrow();
  });

  it('let go leaves its edge longer by what it took in', () => {
    const { garment, outcomes } = altered(skirt, ['dart-to', { dart: 'front/waist', as: 'gathers' }]);
    const grew = edgeLength(pieceOf(garment, 'front'), 'waist') - edgeLength(pieceOf(skirt, 'front'), 'waist');
    const intake = dartOf(pieceOf(skirt, 'front'), 'waist').intake;
    expect(Math.abs(grew - intake)).toBeLessThan(0.03 * intake);
    expect(outcomes[0]?.applied.changes[0]).toMatchObject({ what: 'dart-let-go', by: intake, now: 0 });
  });

  it('moved to the hem and let go leaves the hip wider by what it takes in there, not narrower', () => {
    const toHem: Tried = ['move-dart', { dart: 'front/bust', to: 'front/hem', at: 0.5, share: 1 }];
    const moved = altered(blouse, toHem).garment;
    const { garment } = altered(blouse, toHem, ['dart-to', { dart: 'front/hem-dart', as: 'gathers' }]);
    const hip = (one: Garment): number => levelWidth(pieceOf(one, 'front'), 'hip');
    // With the dart closed the hip is as wide as it was; open, by the wedge at that height, a little under its mouth.
    expect(hip(moved)).toBeCloseTo(hip(blouse), 0);
    const { intake } = dartOf(pieceOf(moved, 'front'), 'hem-dart');
    expect(hip(garment) - hip(blouse)).toBeGreaterThan(0.6 * intake);
    expect(hip(garment) - hip(blouse)).toBeLessThan(intake);
  });

  it('takes in more, its point where it was and its legs alike; not more than there is edge beside it', () => {
    const { garment } = altered(skirt, ['dart-intake', { dart: 'back/waist-outer', amount: 6 }]);
    const [was, now] = [dartOf(pieceOf(skirt, 'back'), 'waist-outer'), dartOf(pieceOf(garment, 'back'), 'waist-outer')];
    expect(now.point).toEqual(was.point);
    expect(now.intake - was.intake).toBeCloseTo(6, 0);
    expect(Math.abs(now.legLengths[0] - now.legLengths[1])).toBeLessThan(0.01);
    const wide: Parameters<typeof altered>[1] = ['dart-intake', { dart: 'back/waist-outer', amount: 30 }];
    expect(refusalOf(skirt, wide, wide, wide, wide)).toBe('alter.no-edge-beside-dart');
  });
});
