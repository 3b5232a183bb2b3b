import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import { insideOutline, pathToSvg } from '../geometry/index.ts';
import { cutLine, outlineOf, type Piece, transformPiece, walkSeam } from '../pattern/index.ts';
import { differingStretches } from './differing.ts';
import { drawBeforeAfter, drawPiece, type Mark, pieceChanges, sayWalk } from './index.ts';
import { estimatedTextWidth, textBounds } from './marks.ts';
import { moveMarks } from './move.ts';
import { sideBySide } from './side-by-side.ts';
import { sampleFacing, sampleFront, sampleGarment, sampleSleeve, sampleStrip } from './testing/garment.ts';

const leaves = (marks: readonly Mark[]): Exclude<Mark, { kind: 'group' }>[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? leaves(mark.marks) : [mark]));
const textsOf = (marks: readonly Mark[]) => leaves(marks).filter((mark) => mark.kind === 'text');
const pathsOf = (marks: readonly Mark[], layer: string, ink: string) =>
  leaves(marks).flatMap((mark) => (mark.kind === 'path' && mark.layer === layer && mark.ink === ink ? mark.paths : []));

describe('a piece drawn', () => {
  it('has its cut and stitching lines whole and exact', () => {
    const { marks } = drawPiece(sampleFront, { unit: 'cm' });
    expect(pathsOf(marks, 'cut', 'cut').map((path) => pathToSvg(path))).toEqual([pathToSvg(cutLine(sampleFront))]);
    expect(pathsOf(marks, 'seam', 'seam').map((path) => pathToSvg(path))).toEqual([pathToSvg(outlineOf(sampleFront))]);
  });

  it('draws notch strokes across the allowance: one, or two', () => {
    const { marks } = drawPiece(sampleSleeve, { unit: 'cm', layers: ['marks'] });
    const strokes = leaves(marks).flatMap((mark) => (mark.kind === 'path' && mark.ink === 'mark' ? mark.paths : []));
    const long = strokes.filter((path) => {
      const [only] = path;
      return (
        path.length === 1 && only && Math.abs(Math.hypot(only.to.x - only.from.x, only.to.y - only.from.y) - 15) < 1e-9
      );
    });
    expect(long).toHaveLength(4);
  });

  it('draws only the layers asked for', () => {
    const { marks } = drawPiece(sampleFront, { unit: 'cm', layers: ['seam'] });
    expect(new Set(leaves(marks).map((mark) => mark.layer))).toEqual(new Set(['seam']));
  });

  it('says to a screen reader what it is and how it is cut', () => {
    expect(drawPiece(sampleFront, { unit: 'cm' }).label).toBe('Front. Cut 1 of cloth, on the fold.');
    expect(drawPiece(sampleSleeve, { unit: 'cm' }).label).toBe('Sleeve. Cut 2 of cloth, one mirrored.');
  });

  it('puts its words where no line is, inside the piece', () => {
    const sizes = housePattern('blouse')?.pattern().sizes ?? [];
    const drafted = [sizes[0], sizes.at(-1)].flatMap((size) => size?.garment.pieces ?? []);
    expect(drafted.length).toBeGreaterThan(0);
    for (const piece of [...sampleGarment.pieces, ...drafted]) {
      for (const textSize of [4, 8, 14]) {
        const { marks } = drawPiece(piece, { unit: 'cm', size: '42', textSize, namedOutside: false });
        expect(wordsOverLines(piece, marks)).toEqual([]);
      }
    }
  });

  it('names a piece that has no room above its paper', () => {
    const small = transformPiece(sampleStrip, { a: 0.1, b: 0, c: 0, d: 0.3, e: 0, f: 0 });
    const [name] = textsOf(drawPiece(small, { unit: 'cm' }).marks);
    expect(name).toMatchObject({ text: 'Neck strip', anchor: 'middle' });
    expect(name?.at.y).toBeLessThan(0);
  });
});

/** Words whose box meets a line, or lies partly outside the stitching line. */
const wordsOverLines = (piece: Piece, marks: readonly Mark[]): string[] => {
  const lines = leaves(marks).flatMap((mark) => (mark.kind === 'path' && mark.ink !== 'paper' ? mark.paths : []));
  const samples = lines.flatMap((path) =>
    path.flatMap((segment) =>
      Array.from({ length: 201 }, (_, i) => {
        const t = i / 200;
        const [u, v] = [1 - t, t];
        const mix = (a: number, b: number, c: number, d: number) =>
          u ** 3 * a + 3 * u * u * v * b + 3 * u * v * v * c + v ** 3 * d;
        return segment.kind === 'line'
          ? { x: segment.from.x * u + segment.to.x * v, y: segment.from.y * u + segment.to.y * v }
          : {
              x: mix(segment.from.x, segment.control1.x, segment.control2.x, segment.to.x),
              y: mix(segment.from.y, segment.control1.y, segment.control2.y, segment.to.y),
            };
      }),
    ),
  );
  return textsOf(marks).flatMap((mark) => {
    const box = textBounds(mark, estimatedTextWidth(mark.text, mark.size, mark.weight ?? 'regular'));
    const crossed = samples.some((p) => p.x > box.minX && p.x < box.maxX && p.y > box.minY && p.y < box.maxY);
    const corners = [
      { x: box.minX, y: box.minY },
      { x: box.maxX, y: box.minY },
      { x: box.maxX, y: box.maxY },
      { x: box.minX, y: box.maxY },
    ];
    const outside = corners.some((p) => !insideOutline(outlineOf(piece), p));
    return crossed || outside ? [mark.text] : [];
  });
};

describe('before and after', () => {
  const longer: Piece = transformPiece(sampleStrip, { a: 1.05, b: 0, c: 0, d: 1, e: 0, f: 0 });
  const after = {
    ...sampleGarment,
    pieces: sampleGarment.pieces.map((piece) => (piece.id === 'strip' ? longer : piece)),
  };

  it('finds what changed, and by how much', () => {
    expect(pieceChanges(sampleStrip, longer).map(({ id, by }) => [id, Number(by.toFixed(6))])).toEqual([
      ['top', 21],
      ['bottom', 21],
    ]);
    expect(pieceChanges(sampleStrip, sampleStrip)).toEqual([]);
  });

  it('marks in red only stretches that moved', () => {
    const drawing = drawBeforeAfter(sampleGarment, after, { unit: 'cm', changedOnly: true });
    expect(drawing.marks.flatMap((mark) => (mark.kind === 'group' ? [mark.id] : []))).toEqual(['strip']);
    expect(textsOf(drawing.marks).at(-1)?.text).toBe('Each amount is for one piece, as drawn.');
    expect(pathsOf(drawing.marks, 'seam', 'changed').length).toBeGreaterThan(0);
    expect(textsOf(drawing.marks).map((mark) => mark.text)).toContain('Top +2.1\u00a0cm');
    expect(drawing.label).toContain('Top 2.1\u00a0cm longer');
  });

  it('finds the stretch of a line that differs to a tenth of a millimetre and finds none where nothing does', () => {
    const bent = [
      { kind: 'line', from: { x: 0, y: 0 }, to: { x: 100, y: 0 } },
      { kind: 'line', from: { x: 100, y: 0 }, to: { x: 200, y: 10 } },
    ] as const;
    const straight = [{ kind: 'line', from: { x: 0, y: 0 }, to: { x: 200, y: 0 } }] as const;
    expect(differingStretches(straight, straight)).toEqual([]);
    const [stretch] = differingStretches(bent, straight);
    // It rises 1 in 10: 0.1 mm apart one millimetre past the bend.
    expect(stretch?.[0]?.from.x).toBeCloseTo(101, 0);
    expect(stretch?.at(-1)?.to).toEqual({ x: 200, y: 10 });
  });
});

describe('a seam walked, in words', () => {
  const seam = sampleGarment.seams[0];
  if (!seam) throw new Error('the sample has no seam');
  const walk = walkSeam(sampleGarment, seam);

  it('meets, is too long, is too short, is eased in', () => {
    expect(sayWalk(walk, 'cm')).toBe('meets');
    expect(sayWalk({ ...walk, excess: 4, meets: false }, 'cm')).toBe('does not meet: 4.0\u00a0mm too long');
    expect(sayWalk({ ...walk, excess: -4, meets: false }, 'cm')).toBe('does not meet: 4.0\u00a0mm too short');
    const eased = { ...walk, difference: 18, seam: { ...seam, how: 'eased' as const } };
    expect(sayWalk(eased, 'cm')).toBe('meets, with 1.8\u00a0cm eased in');
  });
});

describe('marks moved', () => {
  it('never stand on their heads or mirrored', () => {
    const marks = drawPiece(sampleFacing, { unit: 'cm' }).marks;
    for (const degrees of [0, 45, 90, 91, 135, 180, 225, 270, 315]) {
      for (const hand of [1, -1]) {
        const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
        for (const mark of textsOf(moveMarks(marks, { a: c * hand, b: s * hand, c: -s, d: c, e: 0, f: 0 }))) {
          expect(Math.abs(mark.angle ?? 0)).toBeLessThanOrEqual(Math.PI / 2 + 1e-9);
        }
      }
    }
  });
});

describe('papers side by side', () => {
  it('do not overlap, whatever their sizes', () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const boxes = Array.from({ length: (seed % 9) + 1 }, (_, i) => {
        const width = 20 + ((seed * 37 + i * 91) % 400);
        const height = 20 + ((seed * 53 + i * 29) % 700);
        return { minX: -i * 10, minY: i, maxX: width - i * 10, maxY: height + i };
      });
      const places = sideBySide(boxes, 1.5);
      const laid = boxes.map((box, i) => {
        const by = places[i] ?? { x: 0, y: 0 };
        return { left: box.minX + by.x, right: box.maxX + by.x, top: box.minY + by.y, bottom: box.maxY + by.y };
      });
      laid.forEach((a, i) => {
        for (const b of laid.slice(i + 1)) {
          expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(true);
        }
      });
    }
  });
});
