import { describe, expect, it } from 'vitest';
import { endTangent, pathEnd, pathLength, pathStart, startTangent, turnBetween } from '../geometry/index.ts';
import { draftTwoPieceSleeve, partAt, type TwoPieceRequest, type TwoPieceSleeve } from './two-piece-sleeve.ts';

const asked: TwoPieceRequest = {
  width: 388,
  frontLength: 262,
  backLength: 279,
  front: { across: 0.45, up: 0.48, head: 0.57, hollow: 0.72 },
  back: { across: 0.37, up: 0.46, head: 0.58, hollow: 0.82 },
  length: 596,
  elbow: 345,
  hem: 268,
};

const drafted = (change: Partial<TwoPieceRequest> = {}): TwoPieceSleeve => {
  const sleeve = draftTwoPieceSleeve({ ...asked, ...change });
  if (!sleeve.ok) throw new Error(sleeve.problem.code);
  return sleeve.value;
};

describe('a sleeve in two parts', () => {
  it('keeps the whole cap: each half of it shared between the parts, nothing lost at the seams', () => {
    for (const width of [330, 388, 470]) {
      const { top, under } = drafted({ width, hem: width * 0.7 });
      expect(pathLength(top.capFront) + pathLength(under.capFront)).toBeCloseTo(asked.frontLength, 4);
      expect(pathLength(top.capBack) + pathLength(under.capBack)).toBeCloseTo(asked.backLength, 4);
    }
  });
  it('is as wide at the upper arm as asked, and at the elbow as the bent arm needs', () => {
    const sleeve = drafted();
    const width = (level: number) =>
      [sleeve.top, sleeve.under].reduce((sum, part) => {
        const [front, back] = partAt(part, level);
        return sum + back.x - front.x;
      }, 0);
    expect(width(sleeve.armLevel)).toBeCloseTo(asked.width, 6);
    expect(width(sleeve.elbowLevel)).toBeGreaterThanOrEqual(asked.elbow - 1e-6);
    const hem = [sleeve.top, sleeve.under].reduce(
      (sum, { front, back }) => sum + pathEnd(back).x - pathEnd(front).x,
      0,
    );
    expect(hem).toBeCloseTo(asked.hem, 6);
  });
  it('runs on over its seams: both caps meet them at angles that make a straight', () => {
    const { top, under } = drafted();
    const down = { x: 0, y: 1 };
    expect(turnBetween(down, startTangent(top.capFront)) + turnBetween(down, startTangent(under.capFront))).toBeCloseTo(
      -Math.PI,
      6,
    );
    expect(turnBetween(endTangent(top.capBack), down) + turnBetween(endTangent(under.capBack), down)).toBeCloseTo(
      Math.PI,
      6,
    );
  });
  it('joins the under sleeve’s cap at one underarm, level with the cloth', () => {
    const { under } = drafted();
    expect(pathEnd(under.capFront)).toEqual(pathStart(under.capBack));
    expect(endTangent(under.capFront).y).toBeCloseTo(0, 9);
    expect(startTangent(under.capBack).y).toBeCloseTo(0, 9);
  });
  it('is bent at the elbow: the top sleeve stretched in front and eased behind', () => {
    const { top, under } = drafted();
    expect(pathLength(under.front) - pathLength(top.front)).toBeGreaterThan(2);
    expect(pathLength(under.front) - pathLength(top.front)).toBeLessThan(6);
    expect(pathLength(top.back) - pathLength(under.back)).toBeGreaterThan(1);
    expect(pathLength(top.back) - pathLength(under.back)).toBeLessThan(4);
    const [arm, bent] = [top.front[0], top.front[1]];
    expect(bent.to.x).toBeGreaterThan(arm.to.x + 5);
    expect(pathEnd(top.front).x).toBeLessThan(arm.to.x);
  });
  it('refuses an armhole the arm is too wide for, and an arm too short to bend', () => {
    const code = (change: Partial<TwoPieceRequest>) => {
      const sleeve = draftTwoPieceSleeve({ ...asked, ...change });
      return sleeve.ok ? null : sleeve.problem.code;
    };
    expect(code({ width: 700 })).toBe('drafting.cap-cannot-fit');
    expect(code({ length: 280 })).toBe('drafting.arm-too-short');
  });
});
