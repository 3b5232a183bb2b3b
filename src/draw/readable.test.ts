import { describe, expect, it } from 'vitest';
import type { Cloth } from '../cloth/index.ts';
import { housePattern, housePatterns } from '../drafting/index.ts';
import { type Bounds, distance, nearestOnPath, pathEnd, pathStart } from '../geometry/index.ts';
import { layoutProblemFor } from '../lay/index.ts';
import { cutLine, dartsOf, type Garment, pieceOf } from '../pattern/index.ts';
import {
  drawCollection,
  drawGarmentPieces,
  drawLayout,
  drawNest,
  drawPiece,
  type Mark,
  markBounds,
  rectangle,
  roomForWords,
  type TextMark,
} from './index.ts';

const blouse = housePattern('blouse');
if (!blouse) throw new Error('The house has no blouse');
const pattern = blouse.pattern();
const sizes = [0, 4, 9].map((index) => pattern.sizes[index] as (typeof pattern.sizes)[number]);

const poplin: Cloth = {
  format: 'easewright-cloth/1',
  name: 'poplin',
  structure: 'woven',
  fibres: 'cotton',
  weight: 110,
  width: 1400,
  length: null,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0,
  shrinkAcross: 0,
  washed: true,
  colour: '#9fb4c4',
  terms: 'bought',
  from: '',
  note: '',
};

const flat = (marks: readonly Mark[]): readonly Mark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? flat(mark.marks) : [mark]));
const textsOf = (marks: readonly Mark[]): readonly TextMark[] =>
  flat(marks).filter((mark): mark is TextMark => mark.kind === 'text');
const said = (marks: readonly Mark[]): string =>
  textsOf(marks)
    .map(({ text }) => text)
    .join(' ');

describe('pieces of the blouse', () => {
  it('say how many to cut from which layer, on the smallest piece of the smallest size too, in 10 point or more', () => {
    for (const { id, garment } of sizes) {
      for (const piece of garment.pieces) {
        const { marks } = drawPiece(piece, { unit: 'cm', size: id });
        const words = said(marks);
        for (const { count, layer } of piece.cut) {
          expect(words, `${id} ${piece.id}`).toMatch(
            new RegExp(`Cut ${count} of ${layer === 'shell' ? 'cloth' : layer}`),
          );
        }
        for (const { size } of textsOf(marks)) expect(size).toBeGreaterThanOrEqual(3.53);
      }
    }
  });
  it('name their fold, their levels and every line where they may be lengthened', () => {
    for (const { id, garment } of sizes) {
      for (const piece of ['front', 'back', 'sleeve'].map((role) => pieceOf(garment, role))) {
        const words = said(drawPiece(piece, { unit: 'in', size: id }).marks);
        expect(words.match(/Lengthen or shorten here/g), `${id} ${piece.id}`).toHaveLength(piece.lines.length);
        if (piece.id === 'front') expect(words).toMatch(/Centre front, on the fold/);
        for (const level of piece.levels) {
          const name = level.id === 'upper-arm' ? 'Upper arm' : level.id.charAt(0).toUpperCase() + level.id.slice(1);
          expect(words, `${id} ${piece.id}`).toContain(name);
        }
      }
    }
  });
  it('carry the legs of each dart on to the cut line, where they are snipped', () => {
    for (const { garment } of sizes) {
      for (const piece of garment.pieces) {
        const cut = cutLine(piece);
        const paths = flat(drawPiece(piece, { unit: 'cm' }).marks).flatMap((mark) =>
          mark.kind === 'path' ? mark.paths : [],
        );
        for (const leg of dartsOf(piece).flatMap(({ legs }) => legs)) {
          const snip = paths.filter(
            (path) => distance(pathStart(path), leg) < 1e-9 && nearestOnPath(cut, pathEnd(path)).distance < 0.01,
          );
          expect(snip).toHaveLength(1);
        }
      }
    }
  });
});

const paperOf = (group: Mark): Bounds => {
  const paper = flat([group]).find((mark) => mark.kind === 'path' && mark.ink === 'paper');
  const bounds = paper && markBounds(paper);
  if (!bounds) throw new Error('no paper');
  return bounds;
};
const width = (bounds: Bounds) => bounds.maxX - bounds.minX;
const height = (bounds: Bounds) => bounds.maxY - bounds.minY;

/** Names that stand over a name or a paper of another piece. */
const collisions = (marks: readonly Mark[]): readonly string[] => {
  const things = marks.flatMap((group, of) => [
    { of, name: 'paper', bounds: paperOf(group) },
    ...textsOf([group]).map((text) => ({ of, name: text.text, bounds: markBounds(text) as Bounds })),
  ]);
  const apart = (a: Bounds, b: Bounds) => a.maxX <= b.minX || b.maxX <= a.minX || a.maxY <= b.minY || b.maxY <= a.minY;
  return things.flatMap((one, index) =>
    things
      .slice(index + 1)
      .filter((other) => one.of !== other.of && !apart(one.bounds, other.bounds))
      .map((other) => `${one.name} (${one.of}) over ${other.name} (${other.of})`),
  );
};

const jacket = housePattern('jacket')?.pattern();
if (!jacket) throw new Error('The house has no jacket');
/** From words that are read on paper to words that are read on a phone. */
const textSizes = [12, 30, 60, 110];

describe('a nest', () => {
  it('names the sizes of each piece in their order: all, or where there is no room the first, the chosen and the last', () => {
    for (const textSize of textSizes) {
      for (const group of drawNest(pattern, { unit: 'cm', size: '5', textSize }).marks) {
        const names = textsOf([group])
          .filter(({ text }) => /^\d+$/.test(text))
          .sort((a, b) => a.at.y - b.at.y)
          .map(({ text }) => Number(text));
        const rising = (names[0] ?? 0) < (names.at(-1) ?? 0) ? names : names.toReversed();
        const all = pattern.sizes.map(({ id }) => Number(id));
        // How much of the nest's height all the names would take: between the two either is right, for the paper is
        // that of the largest size alone.
        const share = (all.length * 1.25 * textSize) / height(paperOf(group));
        if (share < 0.95) expect(rising).toEqual(all);
        if (share > 1.15) expect(rising).toEqual([all[0], 5, all.at(-1)]);
      }
    }
  });
  it.each(textSizes)('keeps names of pieces and sizes off its neighbours, in words of %s mm', (textSize) => {
    for (const each of [pattern, jacket]) {
      const { marks } = drawNest(each, { unit: 'cm', size: '5', textSize, aspect: 1.05 });
      expect(collisions(marks)).toEqual([]);
    }
  });
});

describe('all pieces', () => {
  it.each(textSizes)('have their names off their neighbours, in words of %s mm', (textSize) => {
    const garment = jacket.sizes[4]?.garment as Garment;
    expect(collisions(drawGarmentPieces(garment, { unit: 'cm', textSize, aspect: 1.05 }).marks)).toEqual([]);
  });
  it('break a name over a paper into lines no wider than the paper, where its words allow', () => {
    const garment = jacket.sizes[4]?.garment as Garment;
    const { marks } = drawGarmentPieces(garment, { unit: 'cm', textSize: 30 });
    const facing = marks.find((mark) => mark.kind === 'group' && mark.label.startsWith('Back neck facing')) as Mark;
    const above = textsOf([facing]).filter(({ at }) => at.y < paperOf(facing).minY);
    expect(above.map(({ text }) => text).join(' ')).toBe('Back neck facing');
    for (const line of above) {
      if (line.text.includes(' '))
        expect(width(markBounds(line) as Bounds)).toBeLessThanOrEqual(width(paperOf(facing)));
    }
  });
});

describe('the collection', () => {
  const entries = housePatterns.flatMap((house) => {
    const drafted = house.draft(house.chart[0]?.body ?? {});
    return drafted.ok ? [{ id: house.id, name: house.name, sketch: house.sketch(drafted.value) }] : [];
  });
  it.each([15, 48, 160])('keeps each name whole on its own paper, in words of %s mm', (textSize) => {
    const { marks } = drawCollection(entries, { label: 'All', aspect: 1.05, textSize, frontOnly: true });
    expect(marks).toHaveLength(housePatterns.length);
    expect(collisions(marks)).toEqual([]);
    marks.forEach((group, index) => {
      const paper = paperOf(group);
      const name = textsOf([group]);
      expect(name.map(({ text }) => text).join(' ')).toBe(entries[index]?.name);
      for (const line of name) {
        const { minX, maxX, minY, maxY } = markBounds(line) as Bounds;
        expect(minX >= paper.minX && maxX <= paper.maxX && minY >= paper.minY && maxY <= paper.maxY).toBe(true);
      }
    });
  });
});

describe('a plan', () => {
  it('says all of a piece that is too small for words beside it, on free cloth', () => {
    const garment = pattern.sizes[4]?.garment as Garment;
    const facing = pieceOf(garment, 'back-facing');
    const problem = layoutProblemFor({ ...garment, pieces: [facing] }, poplin, { fold: 'single', gap: 2 });
    if (!problem.ok) throw new Error(problem.problem.code);
    const placed = { id: facing.id, stretch: 0, rotation: 0, x: 200, y: 200, mirrored: false, opened: false };
    const { marks } = drawLayout(
      problem.value,
      {
        length: 600,
        density: 1,
        stretches: [{ kind: 'single', from: 0, length: 600, height: 1400 }],
        placed: [placed],
        spare: [],
      },
      { unit: 'cm', garment, textSize: 20 },
    );
    const words = said(marks);
    expect(words).toMatch(/Back neck facing/);
    expect(words).toMatch(/from the end/);
    expect(words).toMatch(/from the selvage/);
  });
  it('keeps words out of shapes that are left out', () => {
    const room = roomForWords(rectangle(0, 0, 300, 100), [], [], [rectangle(0, 0, 200, 100)]);
    expect(room.isFree({ x: 100, y: 50 }, 40, 20)).toBe(false);
    expect(room.isFree({ x: 250, y: 50 }, 40, 20)).toBe(true);
    expect(room.find(40, 20, { x: 0, y: 50 })?.x).toBeGreaterThan(220);
  });
  it('keeps later words off earlier ones', () => {
    const room = roomForWords(rectangle(0, 0, 300, 100), []);
    room.take({ x: 150, y: 50 }, 60, 40);
    expect(room.isFree({ x: 150, y: 50 }, 10, 10)).toBe(false);
    expect(room.isFree({ x: 240, y: 50 }, 60, 40)).toBe(true);
  });
});
