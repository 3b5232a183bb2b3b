import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import { sayEdge, saySeam } from './index.ts';

const seamsOf = (id: string): readonly string[] => {
  const garment = housePattern(id)?.pattern().sizes[0]?.garment;
  if (!garment) throw new Error(`no ${id}`);
  return garment.seams.map((seam) => saySeam(garment, seam));
};

describe('seams and edges as the trade names them', () => {
  it('names the seams of the blouse', () => {
    expect(seamsOf('blouse')).toEqual([
      'Back shoulder to front shoulder',
      'Front side seam to back side seam',
      'Centre back, to its mirror image',
      'Sleeve cap, front, into front armhole',
      'Sleeve cap, back, into back armhole',
      'Sleeve underarm, front to back',
      'Front neck facing to front, at the neck',
      'Back neck facing to back, at the neck',
      'Back neck facing to front neck facing, at the shoulder',
    ]);
  });

  it('names the seams of the tee', () => {
    expect(seamsOf('tee')).toEqual([
      'Back shoulder to front shoulder',
      'Front side seam to back side seam',
      'Sleeve cap, front, into front armhole',
      'Sleeve cap, back, into back armhole',
      'Sleeve underarm, front to back',
      'Neck band, centre back, to its mirror image',
      'Neck band, inner edge to neck, front',
      'Neck band, inner edge to neck, back',
      'Neck band to front, at the neck',
      'Neck band to back, at the neck',
    ]);
  });

  it('reads an edge it does not know off its id', () => {
    expect(sayEdge('cap-front')).toBe('Cap, front');
    expect(sayEdge('centre-front')).toBe('Centre front');
    expect(sayEdge('princess-line-back')).toBe('Princess line, back');
    expect(sayEdge('front')).toBe('Front');
    expect(sayEdge('left')).toBe('Left');
  });
});
