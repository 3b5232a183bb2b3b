import { describe, expect, it } from 'vitest';
import { edgeLength, type Garment, levelWidth, type Piece, pieceOf, walkAll } from '../../pattern/index.ts';
import { altered, houseGarment } from '../testing/garments.ts';

const blouse = houseGarment('blouse', 'long');
const sleeveOf = (garment: Garment): Piece => pieceOf(garment, 'sleeve');
const was = sleeveOf(blouse);
const capOf = (sleeve: Piece): number => edgeLength(sleeve, 'cap-front') + edgeLength(sleeve, 'cap-back');

describe('a sleeve', () => {
  it('made fuller at the upper arm is so much wider there; cap, seams and hem keep their lengths', () => {
    const { garment, outcomes } = altered(blouse, ['full-upper-arm', { amount: 12 }]);
    const now = sleeveOf(garment);
    expect(Math.abs(levelWidth(now, 'upper-arm') - levelWidth(was, 'upper-arm') - 12)).toBeLessThan(0.3);
    for (const { id } of was.edges) expect(Math.abs(edgeLength(now, id) - edgeLength(was, id))).toBeLessThan(0.1);
    // What the halves turn in, the cap falls: it is told, for the crown has to be given back in the ease.
    expect(outcomes[0]?.applied.changes.map(({ what }) => what)).toContain('cap-height');
    expect(walkAll(garment).every(({ meets }) => meets)).toBe(true);
  });

  it('gathered at its head is fuller there and nowhere else', () => {
    const { garment } = altered(blouse, ['sleeve-head', { amount: 60 }]);
    const now = sleeveOf(garment);
    expect(capOf(now) - capOf(was)).toBeGreaterThan(60);
    expect(edgeLength(now, 'hem')).toBeCloseTo(edgeLength(was, 'hem'), 2);
  });

  it('opened at its hem is fuller there, its cap as it was', () => {
    const { garment } = altered(blouse, ['sleeve-hem', { amount: 50 }]);
    const now = sleeveOf(garment);
    expect(edgeLength(now, 'hem') - edgeLength(was, 'hem')).toBeGreaterThan(48);
    expect(capOf(now)).toBeCloseTo(capOf(was), 1);
  });
});
