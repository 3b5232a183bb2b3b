import { describe, expect, it } from 'vitest';
import { type AlteredGarment, judgeAltered, judgeAreas } from './altered.ts';
import { readRuns, runsLength, sampled } from './path.ts';
import { judgeSeams, type PrintedGarment, type PrintedPiece, widthAt } from './pieces.ts';
import { easewright, put, withFolder } from './program.ts';

type Step = readonly [alteration: string, params: Readonly<Record<string, number | string>>];

const alter = async (size: string, steps: readonly Step[], pattern = 'blouse'): Promise<AlteredGarment> =>
  withFolder(async (folder) => {
    const list = {
      format: 'easewright-alterations/1',
      pattern,
      steps: steps.map(([alteration, params], i) => ({ id: `s${i + 1}`, alteration, version: 1, on: true, params })),
    };
    const file = put(folder, 'list.json', JSON.stringify(list));
    const { lines } = await easewright(['alter', pattern, '--size', size, '--alterations', file, '--json']);
    return lines[0] as AlteredGarment;
  });

const pieceOf = (garment: PrintedGarment, id: string): PrintedPiece => {
  const found = garment.pieces.find((piece) => piece.id === id);
  if (!found) throw new Error(`no piece ${id}`);
  return found;
};

const edge = (piece: PrintedPiece, id: string): number =>
  runsLength(readRuns(piece.edges.find((one) => one.id === id)?.path ?? ''));

describe('alterations, judged from what is printed', () => {
  it.each([
    ['1', 8],
    ['4', 14],
    ['5', 18],
    ['7', 24],
    ['10', 30],
  ])('a full bust in size %s by %d mm a front', async (size, amount) => {
    const plain = await alter(size, []);
    const full = await alter(size, [['full-bust', { amount }]]);
    expect(full.ok, full.message).toBe(true);
    expect(judgeAltered(plain, full, 1)).toEqual([]);
    const [before, after] = [pieceOf(plain, 'front'), pieceOf(full, 'front')];
    for (const id of ['neck', 'shoulder', 'armhole', 'side']) {
      expect(Math.abs(edge(after, id) - edge(before, id)), id).toBeLessThan(0.1);
    }
    for (const level of ['bust', 'waist', 'hip']) {
      expect(widthAt(after, level) - widthAt(before, level), level).toBeGreaterThan(amount - 0.6);
      expect(widthAt(after, level) - widthAt(before, level), level).toBeLessThan(amount + 0.6);
    }
    // v and θ by the trade's closed formulas would give the drop; the sign and size of it are plain enough to see.
    expect(edge(after, 'centre-front')).toBeGreaterThan(edge(before, 'centre-front') + amount / 4);
    expect(pieceOf(full, 'back').outline).toBe(pieceOf(plain, 'back').outline);
  });

  it.each(['above-waist', 'below-waist', 'sleeve'])('lengthened and shortened %s', async (where) => {
    const plain = await alter('4', []);
    for (const amount of [-25, 40]) {
      const altered = await alter('4', [['lengthen-shorten', { where, amount }]]);
      expect(altered.ok, altered.message).toBe(true);
      expect(judgeAltered(plain, altered, 1)).toEqual([]);
      const [piece, line] = where === 'sleeve' ? ['sleeve', 'hem'] : ['back', 'neck'];
      expect(Math.abs(edge(pieceOf(altered, piece), line) - edge(pieceOf(plain, piece), line))).toBeLessThan(0.1);
      const height = (of: PrintedGarment) => {
        const ys = sampled(readRuns(pieceOf(of, piece).outline)[0] ?? [], 1).map((spot) => spot.y);
        return Math.max(...ys) - Math.min(...ys);
      };
      expect(height(altered) - height(plain)).toBeCloseTo(amount, 1);
    }
  });

  it('a small bust, and several steps one after another', async () => {
    const plain = await alter('6', []);
    const small = await alter('6', [['small-bust', { amount: 8 }]]);
    expect(small.ok, small.message).toBe(true);
    expect(judgeAltered(plain, small, 1)).toEqual([]);
    const several = await alter('6', [
      ['lengthen-shorten', { where: 'above-waist', amount: 20 }],
      ['full-bust', { amount: 15 }],
      ['lengthen-shorten', { where: 'sleeve', amount: -20 }],
    ]);
    expect(several.ok, several.message).toBe(true);
    expect(judgeAltered(plain, several, 3)).toEqual([]);
  });

  it('a step that cannot hold is refused with the reason and the largest amount that would', async () => {
    const refused = await alter('5', [['small-bust', { amount: 40 }]]);
    expect(refused.ok).toBe(false);
    expect(refused.step).toBe('s1');
    expect(refused.message).toMatch(/\w/);
    expect(refused.largest).toBeGreaterThan(0);
    const within = await alter('5', [['small-bust', { amount: Math.floor(refused.largest ?? 0) }]]);
    expect(within.ok, within.message).toBe(true);
    expect(judgeAltered(await alter('5', []), within, 1)).toEqual([]);
  });

  it('the judge finds an area that was not accounted for and an altered piece that no longer meets', async () => {
    const full = await alter('5', [['full-bust', { amount: 18 }]]);
    const misprinted = {
      ...full,
      pieces: full.pieces.map((piece) => ({ ...piece, areaTrued: (piece.areaTrued ?? 0) + 5 })),
    };
    expect(judgeAreas(misprinted)).not.toEqual([]);
    const plain = await alter('5', []);
    const mixed = {
      ...full,
      pieces: full.pieces.map((piece) =>
        piece.id === 'front'
          ? {
              ...piece,
              edges: piece.edges.map((one) => (one.id === 'side' ? { ...one, path: `${one.path} L 0 0` } : one)),
            }
          : piece,
      ),
    };
    expect(judgeSeams(mixed)).not.toEqual([]);
    expect(judgeSeams(plain)).toEqual([]);
  });
});
