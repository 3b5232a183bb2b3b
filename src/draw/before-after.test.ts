import { describe, expect, it } from 'vitest';
import { insideOutline } from '../geometry/index.ts';
import { cutLine, notchPlace, type Piece, transformPiece } from '../pattern/index.ts';
import { createDrawingCache, type Drawing, drawBeforeAfter, type Mark } from './index.ts';
import { estimatedTextWidth, textBounds } from './marks.ts';
import { sampleFront, sampleGarment, sampleStrip } from './testing/garment.ts';

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

describe('before and after', () => {
  const withFront = (front: Piece) => ({
    ...sampleGarment,
    pieces: sampleGarment.pieces.map((piece) => (piece.id === front.id ? front : piece)),
  });
  const [first] = sampleFront.notches;
  if (!first) throw new Error('the sample front has no notch');

  it('shows a notch that alone was moved in red, with its old place in grey, and says by how much', () => {
    const at = first.at + 0.1;
    const moved = {
      ...sampleFront,
      notches: sampleFront.notches.map((one) => (one === first ? { ...one, at } : one)),
    };
    const drawing = drawBeforeAfter(sampleGarment, withFront(moved), { unit: 'cm', changedOnly: true });
    expect(groupsOf(drawing).map(({ id }) => id)).toEqual(['front']);
    const lengthOf = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);
    const strokes = (ink: string) =>
      leaves(drawing.marks).flatMap((mark) =>
        mark.kind === 'path' && mark.ink === ink && mark.paths.every((path) => path.length === 1) ? mark.paths : [],
      );
    expect(strokes('changed')).toHaveLength(first.strokes);
    const [now] = strokes('changed');
    const grey = strokes('original').map((path) => path[0]?.from);
    const apart = lengthOf(notchPlace(sampleFront, first).point, notchPlace(moved, { ...first, at }).point);
    expect(grey.map((from) => from && now?.[0] && lengthOf(from, now[0].from))).toContainEqual(
      expect.closeTo(apart, 6),
    );
    expect(drawing.label).toMatch(/moved by \d/);
  });

  it('draws only the pieces asked for', () => {
    const drawing = drawBeforeAfter(sampleGarment, stretched(1.05), { unit: 'cm', only: ['front', 'strip'] });
    expect(groupsOf(drawing).map(({ id }) => id)).toEqual(['front', 'strip']);
  });

  it('writes amounts clear of the piece, beside a sloping edge too', () => {
    const wide = transformPiece(sampleFront, { a: 1.05, b: 0, c: 0, d: 1, e: 0, f: 0 });
    const drawing = drawBeforeAfter(sampleGarment, withFront(wide), { unit: 'cm', changedOnly: true });
    const words = leaves(drawing.marks).flatMap((mark) =>
      mark.kind === 'text' && mark.ink === 'changed' && /Shoulder|Side|Hem/.test(mark.text)
        ? [textBounds(mark, estimatedTextWidth(mark.text, mark.size, 'regular'))]
        : [],
    );
    expect(words.length).toBeGreaterThan(1);
    const [paper] = groupsOf(drawing)[0]?.marks ?? [];
    const cut = paper?.kind === 'path' ? (paper.paths[0] ?? []) : [];
    expect(cut).toHaveLength(cutLine(wide).length);
    for (const box of words) {
      const corners = [box.minX, box.maxX].flatMap((x) => [box.minY, box.maxY].map((y) => ({ x, y })));
      expect(corners.filter((corner) => insideOutline(cut, corner))).toEqual([]);
    }
  });
});
