import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import { writeSvg } from '../formats/index.ts';
import { type Garment, walkAll } from '../pattern/index.ts';
import { drawSeamRoll } from './index.ts';
import type { GroupMark, PathMark } from './types.ts';

const blouse = housePattern('blouse')?.pattern().sizes[3]?.garment as Garment;

/** The edge of b at the place of touch lies on that of a, whatever was rolled. */
describe('a seam rolled', () => {
  it.each(walkAll(blouse).map((walk) => [walk.seam.id, walk] as const))(
    '%s touches where it was rolled to',
    (_, walk) => {
      for (const share of [0, 0.3, 0.7, 1]) {
        const at = share * walk.lengthB;
        const drawing = drawSeamRoll(walk, blouse, { unit: 'cm', at });
        const marks = (drawing.marks[0] as GroupMark).marks.filter((mark): mark is PathMark => mark.kind === 'path');
        const dot = marks.find(({ filled }) => filled)?.paths[0] ?? [];
        const xs = dot.map(({ from }) => from.x);
        const ys = dot.map(({ from }) => from.y);
        const centre = { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
        const rolled = marks.find(({ ink }) => ink === 'original')?.paths[0] ?? [];
        const near = Math.min(
          ...rolled.flatMap((segment) => {
            const tries = Array.from({ length: 400 }, (_, i) => i / 399);
            return tries.map((t) => {
              const [p, q] = [segment.from, segment.to];
              const [c, d] = segment.kind === 'cubic' ? [segment.control1, segment.control2] : [p, q];
              const [u, v, w, z] =
                segment.kind === 'cubic'
                  ? [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3]
                  : [1 - t, 0, 0, t];
              return Math.hypot(
                u * p.x + v * c.x + w * d.x + z * q.x - centre.x,
                u * p.y + v * c.y + w * d.y + z * q.y - centre.y,
              );
            });
          }),
        );
        expect(near).toBeLessThan(2);
        expect(drawing.label).toContain('rolled to');
      }
    },
  );

  it('is drawn as it was looked at: the side seam half walked', async () => {
    const walk = walkAll(blouse).find(({ seam }) => seam.id === 'side') as ReturnType<typeof walkAll>[number];
    const drawing = drawSeamRoll(walk, blouse, { unit: 'cm', at: 200 });
    await expect(writeSvg(drawing, { unit: 'mm', decimals: 2 })).toMatchFileSnapshot('golden/seam-roll-side.svg');
  });
});
