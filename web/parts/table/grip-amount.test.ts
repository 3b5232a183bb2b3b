import { describe, expect, it } from 'vitest';
import { atStop, drawnTo, keyedTo } from './grip-amount.ts';

const out = { perMillimetre: { x: 1, y: 0.5 }, least: 1, most: 60, stop: 1 };

describe('a grip', () => {
  it('stays at its stops and within its limits', () => {
    expect(atStop(out, 12.4)).toBe(12);
    expect(atStop(out, -5)).toBe(1);
    expect(atStop(out, 900)).toBe(60);
    expect(atStop({ ...out, stop: 25.4 / 16 }, 900)).toBeLessThanOrEqual(60);
  });
  it('follows the hand along the way its point goes', () => {
    expect(drawnTo(out, 10, { x: 8, y: 4 })).toBe(18);
    // Across that way the hand changes nothing.
    expect(drawnTo(out, 10, { x: -4, y: 8 })).toBe(10);
    expect(drawnTo({ ...out, perMillimetre: { x: 0, y: 0 } }, 10, { x: 8, y: 4 })).toBe(10);
  });
  it('goes the way an arrow points where its point goes that way, and else up for more', () => {
    expect(keyedTo(out, 10, 'ArrowRight', false)).toBe(11);
    expect(keyedTo({ ...out, perMillimetre: { x: -1, y: 0 } }, 10, 'ArrowRight', false)).toBe(9);
    expect(keyedTo(out, 10, 'ArrowUp', false)).toBe(11);
    expect(keyedTo({ ...out, perMillimetre: { x: 0, y: 1 } }, 10, 'ArrowDown', true)).toBe(20);
    expect(keyedTo(out, 10, 'Home', false)).toBe(1);
    expect(keyedTo(out, 10, 'End', false)).toBe(60);
    expect(keyedTo(out, 10, 'a', false)).toBeNull();
  });
});
