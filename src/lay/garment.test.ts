import { describe, expect, test } from 'vitest';
import type { Cloth } from '../cloth/index.ts';
import { housePattern } from '../drafting/index.ts';
import { flattenPath, type Point } from '../geometry/index.ts';
import { cutLine, type Garment, type Piece } from '../pattern/index.ts';
import { layoutProblemFor } from './garment.ts';
import { overlapDeeperThan } from './overlap.ts';
import { placedPoint } from './place.ts';
import { searchLayout } from './search.ts';
import type { Layout, LayoutProblem } from './types.ts';
import { verifyLayout } from './verify.ts';

const cloth: Cloth = {
  format: 'easewright-cloth/1',
  name: 'concert crêpe',
  structure: 'woven',
  fibres: 'viscose',
  weight: 180,
  width: 1420,
  length: 2400,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0.05,
  shrinkAcross: 0.02,
  washed: false,
  colour: 'black',
  terms: 'bought',
  from: 'the shop on the quay',
  note: '',
};

const blouse = (): Garment => {
  const size = housePattern('blouse')?.pattern().sizes[4];
  if (!size) throw new Error('The house blouse has no fifth size');
  return size.garment;
};

const lay = async (garment: Garment, fold: 'single' | 'lengthwise', oneWay = false) => {
  const problem = layoutProblemFor(garment, cloth, { fold, gap: 2, oneWay });
  if (!problem.ok) throw new Error(JSON.stringify(problem.problem));
  const layout = await searchLayout(problem.value, { rounds: 60, seed: 1 });
  if (!layout.ok) throw new Error(JSON.stringify(layout.problem));
  return { problem: problem.value, layout: layout.value };
};

/** The true cut lines as laid, opened pieces as both halves: nothing of the layout room's own outlines. */
const trueShapes = (garment: Garment, problem: LayoutProblem, layout: Layout) =>
  layout.placed.flatMap((placement) => {
    const piece = garment.pieces.find(({ id }) => id === placement.id) as Piece;
    const item = problem.items.find(({ id }) => id === placement.id);
    const line = flattenPath(cutLine(piece), 0.001).slice(0, -1);
    const laid = (p: Point): Point => placedPoint(placement, p);
    const half = line.map(laid);
    const upright = placement.mirrored ? [...half].reverse() : half;
    if (!placement.opened || !item?.fold) return [{ id: piece.id, line: upright, stretch: placement.stretch }];
    const axis = laid(item.fold[0]).y;
    const other = upright.map(({ x, y }) => ({ x, y: 2 * axis - y })).reverse();
    return [
      { id: `${piece.id} half`, line: upright, stretch: placement.stretch },
      { id: `${piece.id} other half`, line: other, stretch: placement.stretch },
    ];
  });

describe('the layout of the house blouse', () => {
  test.each(['single', 'lengthwise'] as const)('on %s cloth lays true cut lines free of overlap', async (fold) => {
    const garment = blouse();
    const { problem, layout } = await lay(garment, fold);
    expect(verifyLayout(problem, layout)).toEqual([]);
    const shapes = trueShapes(garment, problem, layout);
    shapes.forEach((a, i) => {
      for (const b of shapes.slice(i + 1)) {
        const halves = a.id.split(' ')[0] === b.id.split(' ')[0] && a.id !== b.id;
        if (a.stretch !== b.stretch || halves) continue;
        expect([a.id, b.id, overlapDeeperThan(a.line, b.line, 1e-4)]).toEqual([a.id, b.id, false]);
      }
    });
    for (const { line, stretch } of shapes) {
      const { from, length, height } = layout.stretches[stretch] as Layout['stretches'][number];
      for (const { x, y } of line) {
        expect(x).toBeGreaterThan(from - 1e-6);
        expect(x).toBeLessThan(from + length + 1e-6);
        expect(y).toBeGreaterThan(-1e-6);
        expect(y).toBeLessThan(height + 1e-6);
      }
    }
  });

  test('cuts what the pieces ask for: pieces of the layer, halves mirrored, as many as ordered', () => {
    const garment = blouse();
    const problem = layoutProblemFor(garment, cloth, { fold: 'single', gap: 0 });
    if (!problem.ok) throw new Error(problem.problem.code);
    for (const piece of garment.pieces) {
      const orders = piece.cut.filter(({ layer }) => layer === 'shell');
      const item = problem.value.items.find(({ id }) => id === piece.id);
      const count = orders.reduce((sum, order) => sum + order.count, 0);
      expect((item?.plain ?? 0) + (item?.mirrored ?? 0)).toBe(count);
      if (item?.fold) expect(item.mirrored).toBe(0);
      else if (orders.some(({ mirrored }) => mirrored)) expect(item?.mirrored).toBe(count / 2);
    }
  });

  test('washed width, knits one way, and the fold’s half', () => {
    const garment = blouse();
    const at = (change: Partial<Cloth>) =>
      layoutProblemFor(garment, { ...cloth, ...change }, { fold: 'lengthwise', gap: 0 });
    const woven = at({});
    const washed = at({ washed: true });
    const knit = at({ structure: 'knit' });
    if (!woven.ok || !washed.ok || !knit.ok) throw new Error('The blouse has a layout problem');
    expect(woven.value.cloth.width).toBeCloseTo(1420 * 0.98, 9);
    expect(woven.value.cloth.length).toBeCloseTo(2400 * 0.95, 9);
    expect(washed.value.cloth.width).toBe(1420);
    expect(woven.value.cloth.oneWay).toBe(false);
    expect(knit.value.cloth.oneWay).toBe(true);
  });

  test('cloth narrower than a piece is refused, naming the piece and both widths', () => {
    const narrow = layoutProblemFor(blouse(), { ...cloth, width: 200 }, { fold: 'single', gap: 0 });
    expect(narrow.ok).toBe(false);
    if (narrow.ok) return;
    expect(narrow.problem.code).toBe('lay.wider-than-cloth');
    expect(narrow.problem.values?.['cloth']).toEqual({ mm: 196 });
    expect(narrow.problem.values?.['piece']).toBeTruthy();
  });
});
