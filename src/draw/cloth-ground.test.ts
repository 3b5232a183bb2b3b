import { describe, expect, it } from 'vitest';
import { pathBounds } from '../geometry/index.ts';
import { clothGround } from './cloth-ground.ts';
import { rectangle } from './marks.ts';

describe('the ground of light cloth', () => {
  const cloth = rectangle(10, 0, 300, 200);

  it('is told from paper by strokes that stay on the cloth', () => {
    const paths = clothGround(cloth, '#fdfbf5', 20)[0]?.paths ?? [];
    expect(paths.length).toBeGreaterThan(20);
    for (const path of paths) {
      const { minX, maxX, minY, maxY } = pathBounds(path);
      expect(minX).toBeGreaterThanOrEqual(10);
      expect(maxX).toBeLessThanOrEqual(310);
      expect(minY).toBeGreaterThanOrEqual(0);
      expect(maxY).toBeLessThanOrEqual(200);
      expect(maxX - minX).toBeCloseTo(maxY - minY, 6);
    }
  });

  it('is left plain where the cloth has a colour of its own', () => {
    expect(clothGround(cloth, '#9fb7c9', 20)).toEqual([]);
  });
});
