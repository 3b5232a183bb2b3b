import { describe, expect, it } from 'vitest';
import { finishedFromFlat, finishedKinds, flatMeasureGuide } from './index.ts';

const piece = { name: 'Front', flat: 280, allowances: 30, takenOut: 20, times: 2 };

describe('a finished measurement from the tissue', () => {
  it('is what is left of each piece, as often as it is cut', () => {
    const back = { name: 'Back', flat: 260, allowances: 15, takenOut: 0, times: 2 };
    expect(finishedFromFlat({ pieces: [piece, back] })).toEqual({ ok: true, value: 2 * 230 + 2 * 245 });
  });

  it.each([
    ['no pieces', [], 'envelope.flat-no-pieces'],
    ['no length', [{ ...piece, flat: 0 }], 'envelope.flat-no-length'],
    ['a negative allowance', [{ ...piece, allowances: -15 }], 'envelope.flat-no-length'],
    ['no number', [{ ...piece, takenOut: Number.NaN }], 'envelope.flat-no-length'],
    ['counted by halves', [{ ...piece, times: 1.5 }], 'envelope.flat-times'],
    ['never counted', [{ ...piece, times: 0 }], 'envelope.flat-times'],
    ['more left out than there is', [{ ...piece, takenOut: 260 }], 'envelope.flat-nothing-left'],
    ['longer than any garment', [{ ...piece, flat: 15_000 }], 'envelope.flat-too-long'],
  ])('is refused with %s', (_, pieces, code) => {
    expect(finishedFromFlat({ pieces })).toMatchObject({ ok: false, problem: { code } });
  });
});

describe('where to lay the tape', () => {
  const kinds = ['top', 'dress', 'jacket', 'coat', 'trousers', 'skirt'] as const;
  it.each(kinds)('is said in words for a %s, with pieces that can be drawn', (kind) => {
    for (const of of finishedKinds) {
      const guide = flatMeasureGuide(of, kind);
      if (guide.pieces.length === 0) continue;
      expect(guide.where).toMatch(/\.$/);
      expect(guide.leaveOut.length).toBeGreaterThan(0);
      for (const { tape, leaveOut } of guide.pieces) {
        expect(leaveOut).toContain('allowances');
        expect(tape.flat().every((share) => share >= 0 && share <= 1)).toBe(true);
        expect(tape[0]).not.toEqual(tape[1]);
      }
    }
  });

  it('measures round the body twice, round a leg once', () => {
    expect(flatMeasureGuide('hip', 'trousers').pieces.map(({ piece, times }) => [piece, times])).toEqual([
      ['leg-front', 2],
      ['leg-back', 2],
    ]);
    expect(flatMeasureGuide('thigh', 'trousers').pieces.map(({ times }) => times)).toEqual([1, 1]);
    expect(flatMeasureGuide('hem-width', 'trousers').pieces.map(({ times }) => times)).toEqual([1, 1]);
    expect(flatMeasureGuide('hem-width', 'skirt').pieces.map(({ times }) => times)).toEqual([2, 2]);
  });

  it('leaves the facing and the overlap out of a front, darts out of bust and waist', () => {
    const [front, back] = flatMeasureGuide('bust', 'jacket').pieces;
    expect(front?.leaveOut).toEqual(expect.arrayContaining(['darts', 'overlap', 'facing']));
    expect(back?.leaveOut).not.toContain('overlap');
  });

  it('has nowhere to measure a bust on a skirt, and says so', () => {
    expect(flatMeasureGuide('bust', 'skirt')).toMatchObject({ pieces: [], care: [] });
    expect(flatMeasureGuide('bust', 'skirt').where).toMatch(/no piece/);
  });
});
