import { describe, expect, it } from 'vitest';
import { transformPiece } from '../pattern/index.ts';
import { createDrawingCache, type Drawing, drawBeforeAfter, type Mark } from './index.ts';
import { sampleGarment, sampleStrip } from './testing/garment.ts';

const leaves = (marks: readonly Mark[]): Exclude<Mark, { kind: 'group' }>[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? leaves(mark.marks) : [mark]));
const groupsOf = (drawing: Drawing) => drawing.marks.flatMap((mark) => (mark.kind === 'group' ? [mark] : []));

/** The sample garment with its strip longer by a share, as under a slider. */
const stretched = (by: number) => ({
  ...sampleGarment,
  pieces: sampleGarment.pieces.map((piece) =>
    piece.id === 'strip' ? transformPiece(sampleStrip, { a: by, b: 0, c: 0, d: 1, e: 0, f: 0 }) : piece,
  ),
});

describe('before and after, while an amount is dragged', () => {
  it('is drawn the same with what was drawn last remembered as without', () => {
    const cache = createDrawingCache();
    for (const amounts of ['none', 'none', 'told', 'jotted', 'written', 'none'] as const) {
      for (const by of [1.02, 1.05, 1.05, 1, 1.02]) {
        for (const textSize of [12, 12, 14]) {
          const options = { unit: 'cm', amounts, textSize } as const;
          const remembered = drawBeforeAfter(sampleGarment, stretched(by), { ...options, cache });
          expect(remembered).toEqual(drawBeforeAfter(sampleGarment, stretched(by), options));
        }
      }
    }
  });

  it('does not draw again what did not change, though its pieces were made anew', () => {
    const options = { unit: 'cm', amounts: 'none', cache: createDrawingCache() } as const;
    const first = groupsOf(drawBeforeAfter(sampleGarment, stretched(1.02), options));
    const second = groupsOf(drawBeforeAfter(sampleGarment, structuredClone(stretched(1.05)), options));
    expect(second.map(({ id }) => id)).toContain('strip');
    second.forEach((group, index) => {
      if (group.id === 'strip') expect(group).not.toEqual(first[index]);
      else expect(group).toBe(first[index]);
    });
  });

  it('tells amounts without writing them, or leaves them out, as asked; lines stay the same', () => {
    const [written, told, none] = (['written', 'told', 'none'] as const).map((amounts) =>
      drawBeforeAfter(sampleGarment, stretched(1.05), { unit: 'cm', amounts }),
    ) as [Drawing, Drawing, Drawing];
    expect(leaves(told.marks).filter((mark) => mark.kind === 'text' && mark.ink === 'changed')).toEqual([]);
    expect(told.label).toBe(written.label);
    expect(written.label).toContain('longer');
    expect(none.label).not.toContain('longer');
    const lines = (drawing: Drawing) => leaves(drawing.marks).filter((mark) => mark.kind === 'path');
    expect(lines(told)).toEqual(lines(written));
    expect(lines(none)).toEqual(lines(written));
  });
});
