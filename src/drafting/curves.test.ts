import { describe, expect, it } from 'vitest';
import { endTangent, pathEnd, pathLength, pathStart, startTangent } from '../geometry/index.ts';
import { draftArmhole } from './armhole.ts';
import { draftNeckline } from './neckline.ts';
import { bulges, inflections } from './shape-measures.ts';
import { draftSide, sideAt } from './side-seam.ts';
import { fitCap, halfCap } from './sleeve-cap.ts';

const degree = Math.PI / 180;

const armhole = (hollow: number) =>
  draftArmhole({
    shoulder: { x: 205, y: 20 },
    shoulderDirection: 20 * degree,
    across: { x: 185, y: 110 },
    underarm: { x: 260, y: 200 },
    underarmDirection: -5 * degree,
    hollow,
  });

describe('an armhole', () => {
  it('leaves square to the shoulder, stands upright at the across line, arrives square to the side', () => {
    const path = armhole(0.6);
    expect(startTangent(path).x).toBeCloseTo(-Math.sin(20 * degree), 12);
    expect(startTangent(path).y).toBeCloseTo(Math.cos(20 * degree), 12);
    expect(startTangent(path.slice(1))).toEqual({ x: 0, y: 1 });
    expect(endTangent(path).y).toBeCloseTo(-Math.sin(5 * degree), 12);
    expect(Math.min(...path.map(({ to }) => to.x))).toBe(185);
  });
  it('never turns back, and a greater hollow lies deeper in its corner', () => {
    for (const hollow of [0.5, 0.58, 0.66, 0.75]) expect(inflections(armhole(hollow))).toBe(0);
    expect(bulges(armhole(0.7).slice(1)).right).toBeGreaterThan(bulges(armhole(0.55).slice(1)).right + 3);
  });
  it('does not cross its across line where the shoulder point hardly stands out', () => {
    const near = draftArmhole({
      shoulder: { x: 190, y: 20 },
      shoulderDirection: 27 * degree,
      across: { x: 185, y: 110 },
      underarm: { x: 260, y: 200 },
      underarmDirection: 0,
      hollow: 0.6,
    });
    expect(inflections(near)).toBe(0);
  });
});

describe('a neckline', () => {
  it('is square at both ends and never turns back, however steep the shoulder', () => {
    for (const slope of [5, 15, 22, 30]) {
      const path = draftNeckline({
        centre: { x: 0, y: 80 },
        neckPoint: { x: 74, y: 0 },
        shoulderDirection: slope * degree,
        fullness: 0.66,
      });
      expect(startTangent(path)).toEqual({ x: 1, y: 0 });
      expect(endTangent(path).x).toBeCloseTo(Math.sin(slope * degree), 9);
      expect(inflections(path)).toBe(0);
    }
  });
});

describe('a side seam', () => {
  const frame = {
    underarm: { x: 260, y: 205 },
    bustLevel: 250,
    waist: { x: 235, y: 400 },
    hip: { x: 275, y: 600 },
    hem: { x: 275, y: 625 },
  };
  it('passes where it should, along the grain at a drawn-in waist and at the hem', () => {
    const side = draftSide(frame);
    expect(sideAt(side, 400)).toEqual({ x: 235, y: 400 });
    expect(sideAt(side, 600).x).toBeCloseTo(275, 9);
    expect(endTangent(side.slice(0, 2)).x).toBeCloseTo(0, 12);
    expect(endTangent(side)).toEqual({ x: 0, y: 1 });
  });
  it('never bulges past the widest or the narrowest of its places', () => {
    for (const waist of [200, 235, 262, 270, 280, 300]) {
      const side = draftSide({ ...frame, waist: { x: waist, y: 400 } });
      const xs = Array.from({ length: 421 }, (_, i) => sideAt(side, 205 + i).x);
      expect(Math.max(...xs)).toBeLessThanOrEqual(Math.max(260, waist, 275) + 1e-9);
      expect(Math.min(...xs)).toBeGreaterThanOrEqual(Math.min(260, waist, 275) - 1e-9);
    }
  });
});

describe('a sleeve cap', () => {
  const front = { across: 0.46, up: 0.43, head: 0.5, hollow: 0.75 };
  const back = { across: 0.42, up: 0.43, head: 0.52, hollow: 0.7 };
  const request = { width: 350, frontLength: 232, backLength: 238, rise: 6 * degree, front, back };

  it('has the width and both lengths asked for, and is level at its top', () => {
    const cap = fitCap(request);
    if (!cap.ok) throw new Error(cap.problem.code);
    expect(cap.value.frontWidth + cap.value.backWidth).toBeCloseTo(350, 9);
    expect(pathLength(cap.value.front)).toBeCloseTo(232, 4);
    expect(pathLength(cap.value.back)).toBeCloseTo(238, 4);
    expect(pathEnd(cap.value.front)).toEqual(pathStart(cap.value.back));
    expect(endTangent(cap.value.front).y).toBeCloseTo(0, 9);
    expect(pathStart(cap.value.front).y).toBe(0);
    expect(pathEnd(cap.value.back).x).toBeCloseTo(cap.value.backWidth, 9);
  });
  it('stands higher for a longer armhole and lower for a wider arm', () => {
    const height = (change: Partial<typeof request>) => {
      const cap = fitCap({ ...request, ...change });
      return cap.ok ? cap.value.height : Number.NaN;
    };
    expect(height({ frontLength: 242, backLength: 248 })).toBeGreaterThan(height({}) + 5);
    expect(height({ width: 370 })).toBeLessThan(height({}) - 5);
  });
  it('changes its bend once in each half, at its turning point', () => {
    for (const height of [80, 120, 160]) {
      expect(inflections(halfCap(170, height, 6 * degree, front))).toBe(1);
      expect(inflections(halfCap(170, height, 6 * degree, back))).toBe(1);
    }
  });
  it('is refused where the armhole cannot reach across the arm', () => {
    expect(fitCap({ ...request, width: 480 })).toMatchObject({
      ok: false,
      problem: { code: 'drafting.cap-cannot-fit' },
    });
  });
});
