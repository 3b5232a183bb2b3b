import { describe, expect, it } from 'vitest';
import { distance, line, pathEnd, pathStart } from '../geometry/index.ts';
import { edgeLength, edgeRuns, pieceOf, trueAcross, trueLength, validateGarment, walkSeam } from './index.ts';
import { plainBack, plainFront, plainGarment } from './testing/bodice.ts';
import type { Garment, Piece, Seam } from './types.ts';

const side = plainGarment.seams[1] as Seam;

/** The plain garment with its front's side seam leaning, so that the hem makes a corner where it crosses the seam. */
const leaning: Garment = (() => {
  const foot = { x: 270, y: 598 };
  const front: Piece = {
    ...plainFront,
    runs: plainFront.runs.map((run, index) => {
      if (index === 5) return { ...run, path: [line({ x: 240, y: 300 }, foot)] };
      return index === 6 ? { ...run, path: [line(foot, { x: 0, y: 600 })] } : run;
    }),
  };
  return { ...plainGarment, pieces: [front, plainBack] };
})();

describe('truing', () => {
  it('makes the hem run on smoothly across a side seam, without moving a corner or a seam', () => {
    const before = walkSeam(leaning, side);
    expect(Math.abs(before.ends[1].turn)).toBeGreaterThan(0.05);
    const { garment, area } = trueAcross(leaning, side, 'end');
    const after = walkSeam(garment, side);
    expect(after.ends[1].turn).toBeCloseTo(0, 6);
    expect(after.lengthA).toBeCloseTo(before.lengthA, 9);
    expect(after.lengthB).toBeCloseTo(before.lengthB, 9);
    expect(validateGarment(garment)).toEqual([]);
    for (const id of ['front', 'back']) {
      const [hemBefore, hemAfter] = [leaning, garment].map((one) => edgeRuns(pieceOf(one, id), 'hem')[0] ?? []);
      expect(distance(pathStart(hemBefore ?? []), pathStart(hemAfter ?? []))).toBe(0);
      expect(distance(pathEnd(hemBefore ?? []), pathEnd(hemAfter ?? []))).toBe(0);
      expect(Math.abs(area[id] ?? Number.NaN)).toBeGreaterThan(0);
      expect(Math.abs(area[id] ?? Number.NaN)).toBeLessThan(250);
    }
  });

  it('lengthens or shortens one side until the seam meets', () => {
    for (const by of [-8, 12]) {
      const short = {
        ...plainGarment,
        pieces: [
          plainFront,
          {
            ...plainBack,
            runs: plainBack.runs.map((run, index) => {
              if (index === 3) return { ...run, path: [line({ x: 240, y: 220 }, { x: 240, y: 570 + by })] };
              return index === 4 ? { ...run, path: [line({ x: 240, y: 570 + by }, { x: 0, y: 570 })] } : run;
            }),
          },
        ],
      };
      expect(walkSeam(short, side).meets).toBe(false);
      const { garment } = trueLength(short, side, 'b', 'end');
      expect(walkSeam(garment, side).difference).toBeCloseTo(0, 6);
      expect(edgeLength(pieceOf(garment, 'back'), 'side')).toBeCloseTo(350, 6);
      expect(validateGarment(garment)).toEqual([]);
    }
  });
});
