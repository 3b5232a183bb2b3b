import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import { pathToSvg, tolerance } from '../geometry/index.ts';
import {
  cutLine,
  edgeLength,
  finishedGirths,
  type Garment,
  outlineOf,
  type Piece,
  pieceOf,
  validateGarment,
} from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { blouse } from './blouse.ts';
import { womenChart } from './chart-women.ts';
import { housePattern, housePatterns } from './house.ts';
import { describeHousePattern, shapeComplaints } from './testing/house-harness.ts';
import { bent, changedPiece } from './testing/spoiled.ts';

const middle = womenChart[4]?.body as Measures;

const drafted = (body: Measures, ease = {}): Garment => {
  const garment = blouse.draft(body, { ease });
  if (!garment.ok) throw new Error(garment.problem.code);
  return garment.value;
};

const complaints = (garment: Garment, body: Measures): readonly string[] =>
  shapeComplaints(blouse, 'long', garment, body);

describe('the women’s chart', () => {
  it('runs from 800 to 1220 of bust in ten sizes, every measure known and none shrinking', () => {
    expect(womenChart.map(({ id }) => id)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '9', '10']);
    expect(womenChart[0]?.body.bustGirth).toBe(800);
    expect(womenChart.at(-1)?.body.bustGirth).toBe(1220);
    womenChart.slice(1).forEach(({ body }, i) => {
      const smaller = womenChart[i]?.body as Required<Measures>;
      for (const [measure, mm] of Object.entries(body)) {
        expect(mm, measure).toBeGreaterThanOrEqual(smaller[measure as keyof Measures]);
      }
    });
  });
  it('has a cup of 50 in every size', () => {
    for (const { body } of womenChart) expect((body.bustGirth ?? 0) - (body.upperBustGirth ?? 0)).toBe(50);
  });
});

describeHousePattern(blouse, {
  gradedBy: 'bustGirth',
  strays: {
    // The hem is the widest of three: what the hand passes, what the elbow needs, what keeps the sleeve from a funnel.
    'sleeve.hem': 4,
    // With the arm's length the chart keeps, a cap grows as a larger cup's armhole is lowered to the arm, and the seam below it is what is left.
    'sleeve.underarm-front': 4,
    'sleeve.underarm-back': 4,
  },
  // One stature: armholes deepen while waist and hip stay where they are, and caps rise while arms keep their length.
  shrinks: { 'front.side': 3, 'back.side': 3, 'sleeve.underarm-front': 4.5, 'sleeve.underarm-back': 4.5 },
});

describe('the blouse', () => {
  it('carries the allowances of the house', () => {
    const of = (piece: string, edge: string) =>
      pieceOf(drafted(middle), piece).edges.find(({ id }) => id === edge) ?? null;
    expect(of('front', 'side')).toEqual({ id: 'side', finish: 'seam', allowance: 15 });
    expect(of('front', 'neck')).toEqual({ id: 'neck', finish: 'seam', allowance: 10 });
    expect(of('back', 'hem')).toEqual({ id: 'hem', finish: 'hem', allowance: 30 });
    expect(of('sleeve', 'hem')).toEqual({ id: 'hem', finish: 'hem', allowance: 25 });
    expect(of('front', 'centre-front')).toEqual({ id: 'centre-front', finish: 'fold', allowance: 0 });
    expect(of('back', 'centre-back')).toEqual({ id: 'centre-back', finish: 'seam', allowance: 15 });
  });

  it('eases the sleeve only over the head: below the notches cap and armhole are as long', () => {
    const garment = drafted(middle);
    const below = (piece: string, edge: string, notch: string, fromStart: boolean) => {
      const found = pieceOf(garment, piece);
      const at = found.notches.find(({ id }) => id === notch)?.at ?? Number.NaN;
      return edgeLength(found, edge) * (fromStart ? at : 1 - at);
    };
    expect(below('sleeve', 'cap-front', 'cap-front', true)).toBeCloseTo(
      below('front', 'armhole', 'armhole-front', false),
      6,
    );
    expect(below('sleeve', 'cap-back', 'cap-back', false)).toBeCloseTo(
      below('back', 'armhole', 'armhole-back', false),
      6,
    );
  });

  it('follows ease that is asked for', () => {
    const ease = { bust: 60, waist: 120, hip: 90, 'upper-arm': 80 };
    const garment = drafted(middle, ease);
    expect(blouse.ease(middle, { ease })).toMatchObject({ ok: true, value: ease });
    for (const { level, measure, finished } of finishedGirths(garment)) {
      const wished = (ease as Record<string, number>)[level] ?? Number.NaN;
      expect(Math.abs(finished - (middle[measure] ?? 0) - wished)).toBeLessThan(tolerance.girth);
    }
  });

  it('estimates what was not measured from what was', () => {
    const { bustGirth, waistGirth, hipGirth, stature } = middle as Required<Measures>;
    const few = { bustGirth, waistGirth, hipGirth, stature };
    const garment = drafted(few);
    expect(validateGarment(garment)).toEqual([]);
    expect(finishedGirths(garment)[0]?.finished).toBeCloseTo(bustGirth + 90, 0);
  });

  it('refuses what cannot be drafted, each with a sentence', () => {
    const refused = (body: Measures, ease = {}) => {
      const result = blouse.draft(body, { ease });
      if (result.ok) throw new Error('drafted');
      expect(sentence(result.problem, 'cm').message, result.problem.code).not.toMatch(/no words for it|[{]/);
      return result.problem.code;
    };
    expect(refused({ hipGirth: 1000 })).toBe('drafting.no-measure');
    expect(refused({ ...middle, bustGirth: 95 })).toBe('body.impossible');
    expect(refused({ ...middle, bustGirth: Number.NaN })).toBe('body.impossible');
    expect(refused({ ...middle, backWaistLength: 260 })).toBe('drafting.levels-too-close');
    expect(refused({ ...middle, upperArmGirth: 700 })).toBe('drafting.cap-cannot-fit');
    expect(refused({ ...middle, bustSpan: 440 })).toBe('drafting.bust-points-too-far-apart');
    expect(refused({ ...middle, armLength: 300 })).toBe('drafting.arm-too-short');
    expect(refused(middle, { bust: -40 })).toBe('drafting.ease-impossible');
    expect(refused(middle, { knee: 40 })).toBe('drafting.no-such-level');
  });

  it('is a house pattern', () => {
    expect(housePattern('blouse')).toBe(blouse);
    expect(housePattern('nothing')).toBeUndefined();
    expect(new Set(housePatterns.map(({ id }) => id)).size).toBe(housePatterns.length);
  });

  it('is drawn as it was, size 5', async () => {
    const lines = drafted(middle).pieces.flatMap((piece, i) => [
      `<g id="${piece.id}" transform="translate(${[20, 360, 900, 1220, 1400][i]} 200)">`,
      `<path d="${pathToSvg(cutLine(piece), 1)}"/>`,
      `<path d="${pathToSvg(outlineOf(piece), 1)}"/>`,
      '</g>',
    ]);
    const svg = [
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1560 900" fill="none" stroke="black">',
      ...lines,
      '</svg>',
      '',
    ].join('\n');
    await expect(svg).toMatchFileSnapshot('golden/blouse-5.svg');
  });
});

describe('the shape checks', () => {
  const changed = (change: (piece: Piece) => Piece, id: string): Garment => changedPiece(drafted(middle), id, change);
  const found = (garment: Garment) => complaints(garment, middle).join();

  it('see a neckline that comes to a point, an armhole that meets the shoulder askew, a cap that is not level', () => {
    expect(found(changed(bent('neck', 0, 'control1', 0, 8), 'front'))).toMatch(/neck-square-front/);
    expect(found(changed(bent('armhole', 0, 'control1', 8, 0), 'front'))).toMatch(/armhole-square-front/);
    expect(found(changed(bent('armhole', 1, 'control2', 0, 12), 'back'))).toMatch(/armhole-under-arm/);
    expect(found(changed(bent('cap-front', 1, 'control2', 0, 6), 'sleeve'))).toMatch(/cap-top-smooth/);
  });
  it('see stray bends', () => {
    expect(found(changed(bent('neck', 0, 'control2', 60, 60), 'front'))).toMatch(/neck-bends/);
    expect(found(changed(bent('cap-back', 0, 'control1', 0, 120), 'sleeve'))).toMatch(/cap-bends/);
  });
  it('see a dart that reaches the bust point, and one that aims past it', () => {
    const dart = (x: number, y: number) => (piece: Piece) => ({
      ...piece,
      darts: piece.darts.map((one) => ({ ...one, point: { x: one.point.x + x, y: one.point.y + y } })),
    });
    expect(found(changed(dart(-15, -4), 'front'))).toMatch(/dart-short/);
    expect(found(changed(dart(0, 10), 'front'))).toMatch(/dart-legs|dart-aims/);
  });
  it('see an armhole hooked at the shoulder, a neckline hooked behind it, and a side seam pushed to the back', () => {
    expect(found(changed(bent('armhole', 0, 'control1', 0.5, -24), 'back'))).toMatch(/armhole-bend-even/);
    expect(found(changed(bent('neck', 0, 'control2', 4, -8), 'back'))).toMatch(/neck-bend-even/);
    const wide = drafted({ ...middle, bustGirth: 1060, upperBustGirth: 1010 });
    const front = pieceOf(wide, 'front');
    expect(found(changed(() => front, 'front'))).toMatch(/bust-shared/);
  });
  it('see a body the sleeve is too narrow for', () => {
    expect(complaints(drafted(middle), { ...middle, elbowGirth: 330 }).join()).toMatch(/elbow-bends/);
    expect(complaints(drafted(middle), { ...middle, handGirth: 290 }).join()).toMatch(/hem-passes-hand/);
  });
});
