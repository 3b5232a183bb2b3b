import { describe, expect, it } from 'vitest';
import { edgeLength, levelWidth, type Piece, pieceOf } from '../pattern/index.ts';
import { blouse } from './blouse.ts';
import { shapeComplaints } from './testing/house-harness.ts';
import { changedPiece } from './testing/spoiled.ts';

const usual = blouse.pattern({ cup: 50 });
const drafts = (cup: number) =>
  blouse
    .pattern({ cup })
    .sizes.map(({ garment, body }, i) => ({ garment, body, as: usual.sizes[i]?.garment ?? garment }));

describe.each([20, 80, 110])('the blouse with a cup of %i, beside the usual one', (cup) => {
  it('leaves back, shoulders, armholes and sleeve as they are', () => {
    for (const { garment, as } of drafts(cup)) {
      const same = (piece: string, edges: (one: Piece) => readonly string[]) => {
        for (const edge of edges(pieceOf(as, piece))) {
          const off = edgeLength(pieceOf(garment, piece), edge) - edgeLength(pieceOf(as, piece), edge);
          expect(Math.abs(off), `${piece}.${edge}`).toBeLessThan(2);
        }
      };
      const every = (one: Piece) => one.edges.map(({ id }) => id);
      same('back', every);
      same('sleeve', every);
      same('back-facing', every);
      same('front', () => ['neck', 'shoulder', 'armhole', 'side']);
    }
  });

  it('puts the width of the bust into the front alone, half of the difference on each', () => {
    for (const { garment, as } of drafts(cup)) {
      const gained = (piece: string) =>
        levelWidth(pieceOf(garment, piece), 'bust') - levelWidth(pieceOf(as, piece), 'bust');
      expect(Math.abs(gained('front') - (cup - 50) / 2)).toBeLessThan(1);
      expect(Math.abs(gained('back'))).toBeLessThan(1);
    }
  });

  it('opens or closes the bust dart with the bust', () => {
    for (const { garment, as } of drafts(cup)) {
      const mouth = (one: typeof garment) => {
        const run = pieceOf(one, 'front').runs.find(({ kind }) => kind === 'mouth')?.path[0];
        return run ? Math.hypot(run.to.x - run.from.x, run.to.y - run.from.y) : Number.NaN;
      };
      expect(Math.sign(mouth(garment) - mouth(as))).toBe(Math.sign(cup - 50));
    }
  });
});

describe('the share of the bust', () => {
  it('is seen to be wrong where the front has not taken the cup', () => {
    const { garment, body, as } = drafts(110)[4] ?? {};
    if (!garment || !body || !as) throw new Error('no size 5');
    const spoiled = changedPiece(garment, 'front', () => pieceOf(as, 'front'));
    expect(shapeComplaints(blouse, 'long', spoiled, body).join()).toMatch(/bust-shared/);
  });
});
