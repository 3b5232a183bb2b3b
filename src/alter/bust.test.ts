import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import { angleOf, distance, line, type Point, subtract } from '../geometry/index.ts';
import {
  dartOf,
  edgeLength,
  finishedGirths,
  type Garment,
  landmarkOf,
  levelWidth,
  type Piece,
  pointOnEdge,
  validateGarment,
  walkAll,
} from '../pattern/index.ts';
import { applyAlterations } from './index.ts';
import { risingFront, risingGarment, setBack } from './testing/bodice.ts';
import { sharpest } from './testing/compare.ts';
import type { Altered } from './types.ts';

const at = (x: number, y: number): Point => ({ x, y });

const step = (alteration: string, amount: number) => [
  { id: 's1', alteration, version: 1, on: true, params: { amount } },
];

const front = (garment: Garment): Piece => garment.pieces.find(({ role }) => role === 'front') as Piece;

const done = (garment: Garment, alteration: string, amount: number): Altered => {
  const altered = applyAlterations(garment, step(alteration, amount));
  if (altered.refusal) throw new Error(JSON.stringify(altered.refusal));
  return altered;
};

/** The trade's closed formulas, written out again with y up. */
const formulas = (piece: Piece, a: number) => {
  const bp = landmarkOf(piece, 'bust-point') as Point;
  const h = pointOnEdge(piece, 'armhole', 2 / 3);
  const dh = h.x - bp.x;
  const dv = bp.y - h.y;
  const theta = Math.atan2(dh, dv) + Math.asin((a - dh) / Math.sqrt(dh * dh + dv * dv));
  const v = dh * Math.sin(theta) - dv * (1 - Math.cos(theta));
  return { bp, theta, v };
};

const dartAngle = (piece: Piece, from: Point): number => {
  const [a, b] = dartOf(piece, 'bust').legs;
  return Math.abs(angleOf(subtract(a, from)) - angleOf(subtract(b, from)));
};

describe('full bust', () => {
  const a = 18;
  const { garment } = done(risingGarment, 'full-bust', a);
  const after = front(garment);
  const { bp, theta, v } = formulas(risingFront, a);

  it('moves the bust point out by a and down by v', () => {
    const now = landmarkOf(after, 'bust-point') as Point;
    expect(now.x).toBeCloseTo(bp.x + a, 9);
    expect(now.y).toBeCloseTo(bp.y + v, 9);
  });

  it('opens the dart by θ at the bust point and sets its point back on the bisector, legs equal', () => {
    const now = landmarkOf(after, 'bust-point') as Point;
    expect(dartAngle(after, now)).toBeCloseTo(dartAngle(risingFront, bp) + theta, 9);
    const { point, legs, legLengths } = dartOf(after, 'bust');
    expect(distance(point, now)).toBeCloseTo(setBack, 6);
    expect(legLengths[0]).toBeCloseTo(legLengths[1], 6);
    const bisector = (angleOf(subtract(legs[0], now)) + angleOf(subtract(legs[1], now))) / 2;
    expect(angleOf(subtract(point, now))).toBeCloseTo(bisector, 6);
  });

  it('holds neck, shoulder, armhole and side, and drops the centre by v', () => {
    for (const edge of ['neck', 'shoulder', 'armhole', 'side']) {
      expect(edgeLength(after, edge)).toBeCloseTo(edgeLength(risingFront, edge), 4);
    }
    expect(edgeLength(after, 'centre-front')).toBeCloseTo(edgeLength(risingFront, 'centre-front') + v, 6);
    expect(edgeLength(after, 'hem')).toBeCloseTo(edgeLength(risingFront, 'hem') + a, 6);
  });

  it('grows every width at and below the bust by a, and the finished bust by 2a', () => {
    for (const level of ['bust', 'hip']) {
      expect(levelWidth(after, level)).toBeCloseTo(levelWidth(risingFront, level) + a, 1);
    }
    const bust = (one: Garment) => finishedGirths(one).find(({ level }) => level === 'bust')?.finished ?? 0;
    expect(bust(garment) - bust(risingGarment)).toBeCloseTo(2 * a, 1);
  });

  it('leaves a piece that can be cut, its seams walking, the other pieces untouched', () => {
    expect(validateGarment(garment)).toEqual([]);
    expect(walkAll(garment).map(({ meets }) => meets)).toEqual(walkAll(risingGarment).map(({ meets }) => meets));
    expect(garment.pieces[1]).toBe(risingGarment.pieces[1]);
  });

  it('smooths the armhole at the hinge, tangent, within a millimetre', () => {
    expect(sharpest(after, 'armhole')).toBeLessThan(1e-6);
  });

  it('reports areas that add up', () => {
    const { pieces } = done(risingGarment, 'full-bust', a);
    const [report] = pieces;
    const put = report?.puts.reduce((sum, { area }) => sum + area, 0) ?? 0;
    expect(report?.areaAfter).toBeCloseTo((report?.areaBefore ?? 0) + put + (report?.areaTrued ?? 0), 6);
    // A band of a from bust point to hem, and one of v from the centre to the bust point.
    const bands = report?.puts.filter(({ kind }) => kind === 'band').map(({ area }) => area) ?? [];
    expect(bands.sort((p, q) => p - q)).toEqual([expect.closeTo(v * bp.x, 6), expect.closeTo(a * (600 - bp.y), 6)]);
    expect(Math.abs(report?.areaTrued ?? Infinity)).toBeLessThan(40);
  });

  it('warns when the dart becomes too wide for one', () => {
    expect(done(risingGarment, 'full-bust', 40).warnings.map(({ code }) => code)).toEqual(['alter.split-dart']);
    expect(done(risingGarment, 'full-bust', 6).warnings).toEqual([]);
  });
});

describe('what is sewn to the centre', () => {
  /** A button stand: a strip as long as the centre front, which runs up while the front's runs down the strip's other way. */
  const stand: Piece = {
    id: 'stand',
    name: 'Button stand',
    role: 'other',
    cut: [{ layer: 'shell', count: 2, mirrored: true }],
    runs: [
      { kind: 'edge', edge: 'top', path: [line(at(0, 0), at(40, 0))] },
      { kind: 'edge', edge: 'centre', path: [line(at(40, 0), at(40, 520))] },
      { kind: 'edge', edge: 'hem', path: [line(at(40, 520), at(0, 520))] },
      { kind: 'edge', edge: 'front', path: [line(at(0, 520), at(0, 0))] },
    ],
    edges: ['top', 'centre', 'hem', 'front'].map((id) => ({ id, finish: 'seam', allowance: 15 })),
    darts: [],
    notches: [],
    grain: { from: at(20, 20), to: at(20, 500) },
    levels: [],
    landmarks: [{ id: 'lowest-button', at: at(20, 480) }],
    lines: [],
  };
  const buttoned: Garment = {
    ...risingGarment,
    pieces: [...risingGarment.pieces, stand],
    seams: [
      ...risingGarment.seams,
      {
        id: 'stand',
        a: { piece: 'front', edge: 'centre-front', reversed: true },
        b: { piece: 'stand', edge: 'centre', reversed: false },
        easeMin: 0,
        easeMax: 0,
        how: 'plain',
        notches: [],
      },
    ],
  };

  it('drops with it, cut at the same place, and still walks', () => {
    const altered = done(buttoned, 'full-bust', 16);
    const { v } = formulas(risingFront, 16);
    const after = altered.garment.pieces[2] as Piece;
    for (const edge of ['centre', 'front']) expect(edgeLength(after, edge)).toBeCloseTo(520 + v, 6);
    expect(landmarkOf(after, 'lowest-button')?.y).toBeCloseTo(480 + v, 6);
    expect(walkAll(altered.garment).at(-1)?.meets).toBe(true);
    expect(altered.pieces[2]?.puts.map(({ kind }) => kind)).toEqual(['band']);
  });

  it('is untouched where it is not sewn there', () => {
    const short: Garment = { ...buttoned, seams: risingGarment.seams };
    expect(done(short, 'full-bust', 16).garment.pieces[2]).toBe(stand);
  });
});

describe('small bust', () => {
  it('is the reverse: less width, a shallower dart', () => {
    const { garment } = done(risingGarment, 'small-bust', 6);
    const { theta, v } = formulas(risingFront, -6);
    const after = front(garment);
    const now = landmarkOf(after, 'bust-point') as Point;
    expect(now.y - 285).toBeCloseTo(v, 9);
    expect(v).toBeLessThan(0);
    expect(dartAngle(after, now)).toBeCloseTo(dartAngle(risingFront, at(95, 285)) + theta, 9);
    expect(levelWidth(after, 'hip')).toBeCloseTo(levelWidth(risingFront, 'hip') - 6, 6);
    expect(validateGarment(garment)).toEqual([]);
  });

  it('stops where the dart is used up, and says how much would hold', () => {
    const { refusal } = applyAlterations(risingGarment, step('small-bust', 25));
    expect(refusal).toMatchObject({ step: 's1', problem: { code: 'alter.dart-used-up' } });
    const largest = refusal?.largest?.amount as number;
    expect(largest).toBeGreaterThan(2);
    expect(applyAlterations(risingGarment, step('small-bust', largest)).refusal).toBeNull();
    expect(applyAlterations(risingGarment, step('small-bust', largest + 0.5)).refusal).not.toBeNull();
    // Less than half a millimetre more would turn the dart inside out.
    const { theta } = formulas(risingFront, -largest - 0.5);
    expect(dartAngle(risingFront, at(95, 285)) + theta).toBeLessThan(0);
  });
});

describe('refusals of the bust alterations', () => {
  const without = (change: (piece: Piece) => Piece): Garment => ({
    ...risingGarment,
    pieces: risingGarment.pieces.map((piece) => (piece.role === 'front' ? change(piece) : piece)),
  });

  it.each([
    ['no bust point', without((piece) => ({ ...piece, landmarks: [] })), 'alter.no-landmark'],
    [
      'no dart',
      without((piece) => ({ ...piece, darts: [], runs: piece.runs.filter(({ kind }) => kind === 'edge') })),
      'alter.no-side-dart',
    ],
    ['no front', { ...risingGarment, pieces: risingGarment.pieces.slice(1), seams: [] }, 'alter.no-piece'],
  ])('%s', (_, garment, code) => {
    const { refusal } = applyAlterations(garment as Garment, step('full-bust', 12));
    expect(refusal?.problem.code).toBe(code);
    expect(refusal?.largest).toBeUndefined();
  });
});

describe('on the house blouse', () => {
  const pattern = housePattern('blouse')?.pattern();
  const sizes = pattern?.sizes ?? [];

  it('has sizes to try', () => {
    expect(sizes.length).toBeGreaterThanOrEqual(9);
  });

  it.each(sizes.map((size) => [size.id, size.garment] as const))(
    'size %s: bust + 2a, facing and sleeve untouched',
    (_, garment) => {
      for (const a of [6, 15, 30]) {
        const altered = done(garment, 'full-bust', a);
        const bust = (one: Garment) => finishedGirths(one).find(({ level }) => level === 'bust')?.finished ?? 0;
        expect(Math.abs(bust(altered.garment) - bust(garment) - 2 * a)).toBeLessThan(0.2);
        expect(validateGarment(altered.garment)).toEqual([]);
        expect(walkAll(altered.garment).every(({ meets }) => meets)).toBe(true);
        const untouched = altered.garment.pieces.filter((piece, i) => piece === garment.pieces[i]);
        expect(untouched).toHaveLength(garment.pieces.length - 1);
      }
    },
  );
});
