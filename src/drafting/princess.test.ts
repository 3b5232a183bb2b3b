import { describe, expect, it } from 'vitest';
import {
  applyToPath,
  distance,
  maximumTurn,
  mirrorX,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  rotate,
} from '../geometry/index.ts';
import { backPrincess, fallAt, frontPrincess, shortened } from './princess.ts';

const levels = { waist: 403, hip: 606, hem: 651, openAtWaist: 30, openAtHip: -8 } as const;
const shoulder: Point = { x: 128, y: 2 };
const apex: Point = { x: 108, y: 230 };

describe('the front’s princess seam', () => {
  it('leaves the centre panel its line and swings the side front’s about the apex', () => {
    const swing = 0.25;
    const { front, sideFront, notch } = frontPrincess(shoulder, apex, swing, levels);
    expect(pathStart(front)).toEqual(shoulder);
    expect(distance(pathStart(sideFront), rotate(shoulder, swing, apex))).toBeLessThan(1e-9);
    expect(distance(notch[1], rotate(notch[0], swing, apex))).toBeLessThan(1e-9);
    expect(front[1]?.to).toEqual(apex);
  });
  it('opens by what it is asked to at waist and hip, and meets the hem upright', () => {
    const { front, sideFront } = frontPrincess(shoulder, apex, 0.2, levels);
    expect(fallAt(sideFront, levels.waist).x - fallAt(front, levels.waist).x).toBeCloseTo(levels.openAtWaist, 9);
    expect(fallAt(sideFront, levels.hip).x - fallAt(front, levels.hip).x).toBeCloseTo(levels.openAtHip, 9);
    expect(pathEnd(front).x).toBe(fallAt(front, levels.hip).x);
  });
  it('is eased by a few mm over the bust, by more the fuller it is, and is smooth', () => {
    const ease = (swing: number) => {
      const { front, sideFront } = frontPrincess(shoulder, apex, swing, levels);
      expect(Math.abs(maximumTurn(front).angle)).toBeLessThan(1e-6);
      expect(Math.abs(maximumTurn(sideFront).angle)).toBeLessThan(1e-6);
      return pathLength(sideFront) - pathLength(front);
    };
    expect(ease(0.15)).toBeGreaterThan(0.5);
    expect(ease(0.3)).toBeGreaterThan(ease(0.15));
    expect(ease(0.45)).toBeLessThan(5);
  });
  it('is shortened level for a lining', () => {
    const { front } = frontPrincess(shoulder, apex, 0.2, levels);
    expect(pathEnd(shortened(front, 631))).toEqual({ x: pathEnd(front).x, y: 631 });
    expect(pathLength(front) - pathLength(shortened(front, 631))).toBeCloseTo(20, 9);
  });
});

describe('the back’s princess seam', () => {
  it('is one curve and its mirror image, taking in the shoulder’s dart and the waist’s', () => {
    const { back, sideBack, blade } = backPrincess(shoulder, 14, 92, levels);
    expect(sideBack).toEqual(applyToPath(mirrorX(blade.x), back));
    expect(pathStart(sideBack).x - pathStart(back).x).toBeCloseTo(14, 9);
    expect(fallAt(back, blade.y)).toEqual(fallAt(sideBack, blade.y));
    expect(fallAt(sideBack, levels.waist).x - fallAt(back, levels.waist).x).toBeCloseTo(30, 9);
    expect(Math.abs(maximumTurn(back).angle)).toBeLessThan(1e-6);
  });
});
