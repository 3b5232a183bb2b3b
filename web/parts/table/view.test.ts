import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hasRoom, rule } from './ticks.ts';
import { fitView, leaves, outgrown, panBy, pinch, resized, toScreen, toTable, type View, zoomAt } from './view.ts';

const view: View = { scale: 0.8, left: -120, top: 40 };
const near = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y) < 1e-6;

describe('the view of the table', () => {
  it('shows all of a drawing, in the middle of what is free', () => {
    const screen = { width: 900, height: 600 };
    const bounds = { minX: -50, minY: 100, maxX: 550, maxY: 900 };
    const seen = fitView(bounds, screen, { left: 60, top: 50, right: 20, bottom: 10 });
    const from = toScreen(seen, { x: bounds.minX, y: bounds.minY });
    const to = toScreen(seen, { x: bounds.maxX, y: bounds.maxY });
    expect(from.y).toBeCloseTo(50, 6);
    expect(to.y).toBeCloseTo(590, 6);
    expect(from.x).toBeGreaterThanOrEqual(60);
    expect((from.x + to.x) / 2).toBeCloseTo(470, 6);
  });

  it('shows nothing larger than life', () => {
    const insets = { left: 0, top: 0, right: 0, bottom: 0 };
    const small = fitView({ minX: 0, minY: 0, maxX: 20, maxY: 20 }, { width: 900, height: 600 }, insets);
    expect(small.scale).toBeCloseTo(96 / 25.4, 9);
  });

  it('keeps the point under the hand while zooming', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), fc.integer({ min: 0, max: 900 }), (factor, x) => {
        const at = { x, y: 300 };
        return near(toTable(zoomAt(view, factor, at), at), toTable(view, at));
      }),
      { seed: 20261 },
    );
  });

  it('keeps both points under two fingers', () => {
    const before = [
      { x: 100, y: 200 },
      { x: 300, y: 200 },
    ] as const;
    const after = [
      { x: 80, y: 260 },
      { x: 480, y: 260 },
    ] as const;
    const seen = pinch(view, before, after);
    expect(near(toTable(seen, after[0]), toTable(view, before[0]))).toBe(true);
    expect(near(toTable(seen, after[1]), toTable(view, before[1]))).toBe(true);
  });

  it('moves with the hand, and keeps the middle when the screen changes', () => {
    expect(near(toScreen(panBy(view, 30, -10), { x: 0, y: 0 }), { x: 126, y: -42 })).toBe(true);
    const before = { width: 400, height: 300 };
    const after = { width: 800, height: 500 };
    const middle = toTable(view, { x: 200, y: 150 });
    expect(near(toTable(resized(view, before, after), { x: 400, y: 250 }), middle)).toBe(true);
  });
});

describe('a drawing that changed', () => {
  const before = { minX: 0, minY: 0, maxX: 200, maxY: 100 };
  it('keeps its view while it stays about as large and where it was', () => {
    expect(outgrown(before, before)).toBe(false);
    expect(outgrown(before, { minX: -15, minY: 0, maxX: 215, maxY: 108 })).toBe(false);
  });
  it('has outgrown its view when it grew, shrank or went elsewhere by more than a tenth', () => {
    expect(outgrown(before, { ...before, maxX: 225 })).toBe(true);
    expect(outgrown(before, { ...before, maxY: 85 })).toBe(true);
    expect(outgrown(before, { minX: 30, minY: 0, maxX: 230, maxY: 100 })).toBe(true);
  });
});

describe('what leaves the screen', () => {
  const screen = { width: 400, height: 300 };
  const bounds = { minX: 0, minY: 0, maxX: 200, maxY: 100 };
  const seen = fitView(bounds, screen, { left: 50, top: 50, right: 20, bottom: 20 });
  it('is not a drawing the view was fitted to', () => {
    expect(leaves(seen, bounds, screen, 30)).toBe(false);
  });
  it('is one that grew past an edge, or under the rule', () => {
    expect(leaves(seen, { ...bounds, maxX: 240 }, screen, 30)).toBe(true);
    expect(leaves(seen, { ...bounds, minX: -20 }, screen, 30)).toBe(true);
    expect(leaves(seen, { ...bounds, minX: -5 }, screen, 30)).toBe(false);
  });
});

describe('the rule', () => {
  it('leaves out a number that would run into the corner or off the end', () => {
    const tick = { mm: 0, reach: 1, number: '−100' };
    expect(hasRoom(tick, 30, 30, 400)).toBe(false);
    expect(hasRoom(tick, 60, 30, 400)).toBe(true);
    expect(hasRoom(tick, 395, 30, 400)).toBe(false);
    expect(hasRoom({ ...tick, number: null }, 200, 30, 400)).toBe(false);
  });

  it('numbers centimetres and strokes millimetres close to', () => {
    const ticks = rule(0, 20, 10, 'cm');
    expect(ticks.filter((tick) => tick.number !== null).map((tick) => tick.number)).toEqual(['0', '1', '2']);
    expect(ticks).toHaveLength(21);
    expect(ticks[5]?.reach).toBe(0.6);
  });

  it('numbers inches with true fractions, and yards by the inch from afar', () => {
    expect(rule(0, 25.4, 8, 'in').flatMap((tick) => tick.number ?? [])).toEqual(['0', '½', '1']);
    expect(rule(-1000, 1000, 0.1, 'in').flatMap((tick) => tick.number ?? [])).toEqual(['−36', '0', '36']);
  });

  it('never crowds its numbers', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 50, noNaN: true }), fc.constantFrom('in', 'cm'), (scale, unit) => {
        const numbered = rule(0, 900 / scale, scale, unit).filter((tick) => tick.number !== null);
        return numbered.every(
          (tick, index) => index === 0 || (tick.mm - (numbered[index - 1]?.mm ?? 0)) * scale >= 63.9,
        );
      }),
      { seed: 20261 },
    );
  });
});
