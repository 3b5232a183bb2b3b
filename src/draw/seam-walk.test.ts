import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import { distance, type Path, pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import { type Garment, type SeamWalk, transformPiece, walkAll } from '../pattern/index.ts';
import { drawSeamWalk, type Mark } from './index.ts';

const garment = housePattern('blouse')?.pattern().sizes[3]?.garment as Garment;
const walks = walkAll(garment);
const walkOf = (id: string): SeamWalk => {
  const walk = walks.find(({ seam }) => seam.id === id);
  if (!walk) throw new Error(`no seam ${id}`);
  return walk;
};
const groupOf = (marks: readonly Mark[], id: string): readonly Mark[] => {
  const group = marks.find((mark) => mark.kind === 'group' && mark.id === id);
  if (group?.kind !== 'group') throw new Error(`no group ${id}`);
  return group.marks;
};
const pathsIn = (marks: readonly Mark[], ink: string): readonly Path[] =>
  marks.flatMap((mark) => (mark.kind === 'path' && mark.ink === ink ? mark.paths : []));
const textsIn = (marks: readonly Mark[]): readonly string[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

describe('a seam walked, as a picture', () => {
  it('draws both edges at their true length, darts in them stitched shut', () => {
    for (const walk of walks) {
      const marks = groupOf(drawSeamWalk(walk, garment, { unit: 'cm' }).marks, walk.seam.id);
      const shared = Math.min(walk.lengthA, walk.lengthB);
      const [a] = pathsIn(marks, 'seam');
      expect(pathLength(a as Path)).toBeCloseTo(shared, 3);
      (a as Path).slice(1).forEach((segment, index) => {
        expect(distance((a as Path)[index]?.to ?? { x: 0, y: 0 }, segment.from)).toBeLessThan(1e-6);
      });
    }
  });

  it('lays edges that are alike beside each other all along', () => {
    for (const id of ['side', 'centre-back', 'underarm', 'neck-front']) {
      const marks = groupOf(drawSeamWalk(walkOf(id), garment, { unit: 'cm', textSize: 10 }).marks, id);
      const [a, b] = pathsIn(marks, 'seam') as [Path, Path];
      expect(distance(pathStart(a), pathStart(b))).toBeCloseTo(7, 1);
      // A side seam bends otherwise at the front than at the back: they part by less than a tenth of their length.
      expect(distance(pathEnd(a), pathEnd(b))).toBeLessThan(7 + 0.1 * pathLength(a));
    }
  });

  it('says by how much an edge is longer, in ink where that is eased in, in red where it does not meet', () => {
    const eased = drawSeamWalk(walkOf('armhole-back'), garment, { unit: 'cm' });
    const said = textsIn(groupOf(eased.marks, 'armhole-back'));
    expect(said.some((text) => /^\d\.\d\u00a0cm longer$/.test(text))).toBe(true);
    expect(pathsIn(groupOf(eased.marks, 'armhole-back'), 'changed')).toEqual([]);
    const longer = {
      ...garment,
      pieces: garment.pieces.map((piece) =>
        piece.id === 'front-facing' ? transformPiece(piece, { a: 1.1, b: 0, c: 0, d: 1.1, e: 0, f: 0 }) : piece,
      ),
    };
    const wrong = walkAll(longer).find(({ seam }) => seam.id === 'neck-front') as SeamWalk;
    expect(wrong.meets).toBe(false);
    const marks = groupOf(drawSeamWalk(wrong, longer, { unit: 'cm' }).marks, 'neck-front');
    const red = pathsIn(marks, 'changed');
    expect(red.reduce((sum, path) => Math.max(sum, pathLength(path)), 0)).toBeCloseTo(wrong.difference, 2);
  });

  it('joins every pair of notches that should meet', () => {
    for (const walk of walks) {
      const marks = groupOf(drawSeamWalk(walk, garment, { unit: 'cm' }).marks, walk.seam.id);
      expect(pathsIn(marks, 'mark').filter((path) => path.length === 1)).toHaveLength(2 * walk.notches.length);
    }
  });

  it('shows where the seam is: both pieces, one piece twice mirrored, or one with both edges', () => {
    const small = (id: string) =>
      drawSeamWalk(walkOf(id), garment, { unit: 'cm' }).marks.flatMap((mark) =>
        mark.kind === 'group' && mark.id.endsWith('-small') ? [mark] : [],
      );
    expect(small('side').map(({ label }) => label)).toEqual(['Front', 'Back']);
    expect(small('centre-back').map(({ label }) => label)).toEqual(['Its mirror image', 'Back']);
    expect(small('underarm').map(({ label }) => label)).toEqual(['Sleeve']);
    const [front] = small('side');
    // The heavy line is the edge, in its two runs on either side of the dart.
    expect(pathsIn(front?.marks ?? [], 'cut')).toHaveLength(2);
    expect(pathsIn(small('underarm')[0]?.marks ?? [], 'cut')).toHaveLength(2);
  });
});
