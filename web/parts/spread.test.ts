import { expect, it } from 'vitest';
import { housePatterns } from '../../src/drafting/index.ts';
import { pathBounds } from '../../src/geometry/index.ts';
import { cutLine } from '../../src/pattern/index.ts';
import { spreadPieces } from './spread.ts';

it('spreads every size of every house pattern out without overlap', () => {
  for (const house of housePatterns) {
    for (const { garment } of house.pattern().sizes) {
      for (const aspect of [0.6, 1, 1.8]) {
        const spread = spreadPieces(garment, aspect, 30);
        const boxes = garment.pieces.map((piece) => {
          const bounds = pathBounds(cutLine(piece));
          const by = spread.get(piece.id) ?? { x: Number.NaN, y: 0 };
          return { x0: bounds.minX + by.x, x1: bounds.maxX + by.x, y0: bounds.minY + by.y, y1: bounds.maxY + by.y };
        });
        for (const [index, a] of boxes.entries()) {
          for (const b of boxes.slice(index + 1)) {
            const apart = a.x1 + 29 <= b.x0 || b.x1 + 29 <= a.x0 || a.y1 + 29 <= b.y0 || b.y1 + 29 <= a.y0;
            expect(apart).toBe(true);
          }
        }
      }
    }
  }
});
