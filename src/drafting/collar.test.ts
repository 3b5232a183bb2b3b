import { describe, expect, it } from 'vitest';
import { nearestPlace, pathEnd, pathLength, pathPointAtLength, pathStart, startTangent } from '../geometry/index.ts';
import { type CollarFrame, draftCollar } from './collar.ts';
import { inflections } from './shape-measures.ts';

const frame: CollarFrame = {
  backNeck: 82,
  frontNeck: 128,
  stand: 30,
  fall: 46,
  point: 72,
  lean: 0.2,
  raise: 20,
  turn: 2.5,
};

describe('a turn-down collar', () => {
  it('is as long at its neck edge as the neck, parted where the shoulder is', () => {
    for (const [backNeck, frontNeck] of [
      [60, 90],
      [82, 128],
      [110, 170],
    ] as const) {
      const { top, under } = draftCollar({ ...frame, backNeck, frontNeck });
      for (const layer of [top, under]) {
        expect(pathLength(layer.neckBack)).toBeCloseTo(backNeck, 5);
        expect(pathLength(layer.neckFront)).toBeCloseTo(frontNeck, 5);
      }
    }
  });
  it('opens without a point at the centre back, its edge one bow', () => {
    const { top, under } = draftCollar(frame);
    for (const layer of [top, under]) {
      expect(startTangent(layer.outer).y).toBeCloseTo(0, 9);
      expect(startTangent(layer.neckBack).y).toBeCloseTo(0, 9);
      expect(inflections(layer.outer)).toBe(0);
      expect(pathEnd(layer.outer)).toEqual(pathStart(layer.end));
      expect(pathEnd(layer.end)).toEqual(pathEnd(layer.neckFront));
    }
  });
  it('has its top collar outside the under collar by the turn of the cloth, all along its edge', () => {
    const { top, under } = draftCollar(frame);
    const length = pathLength(top.outer);
    for (let i = 0; i <= 20; i++) {
      const off = nearestPlace(under.outer, pathPointAtLength(top.outer, (i / 20) * length)).distance;
      expect(off).toBeGreaterThan(1.9);
      expect(off).toBeLessThan(4.2);
    }
  });
  it('lies flatter the more it is raised: its edge grows longer over the same neck', () => {
    const edge = (raise: number) => pathLength(draftCollar({ ...frame, raise }).under.outer);
    expect(edge(30)).toBeGreaterThan(edge(20) + 3);
    expect(edge(20)).toBeGreaterThan(edge(10) + 3);
  });
});
