import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import { pathEnd, pathStart, pathToSvg, tolerance } from '../geometry/index.ts';
import {
  cutLine,
  edgeLength,
  finishedGirths,
  type Garment,
  outlineOf,
  type Piece,
  pieceOf,
  transformPiece,
  validateGarment,
} from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { dungarees, dungareesMen } from './dungarees.ts';
import { runOf } from './shape-garment.ts';
import { describeHousePattern, shapeComplaints } from './testing/house-harness.ts';
import { unmarkedJoins } from './testing/marked-joins.ts';
import { bent, changedPiece } from './testing/spoiled.ts';

const woman = womenChart[4]?.body as Required<Measures>;
const man = menChart[4]?.body as Required<Measures>;

const drafted = (body: Measures, ease = {}, view = 'full'): Garment => {
  const garment = dungarees.draft(body, { ease, view });
  if (!garment.ok) throw new Error(garment.problem.code);
  return garment.value;
};

// One stature: as sizes grow the crotch sinks a little towards a knee and a hem that stay.
const sinks = { 'front.inside-leg': 1, 'back.inside-leg': 1 };
describeHousePattern(dungarees, { gradedBy: 'bustGirth', shrinks: sinks });
describeHousePattern(dungareesMen, { gradedBy: 'bustGirth', shrinks: sinks });

const strapWorn = (garment: Garment): number => {
  const buckle = pieceOf(garment, 'strap').lines.find(({ id }) => id === 'buckle');
  return buckle ? pathEnd(buckle.path).y : Number.NaN;
};

describe('the dungarees', () => {
  it('are one draft: a man gets the same pieces from either pattern', () => {
    expect(dungarees.draft(man)).toEqual(dungareesMen.draft(man));
  });

  it('are marked where the opening ends and a strap begins', () => {
    for (const view of ['full', 'short']) expect(unmarkedJoins(drafted(woman, {}, view))).toEqual([]);
  });

  it('follow ease that is asked for', () => {
    for (const ease of [
      { waist: 120, hip: 120, thigh: 110, knee: 180 },
      { waist: 90, hip: 70, thigh: 80, knee: 120 },
    ]) {
      const garment = drafted(woman, ease);
      expect(validateGarment(garment)).toEqual([]);
      for (const { level, measure, finished } of finishedGirths(garment)) {
        const wished = (ease as Record<string, number>)[level] ?? Number.NaN;
        expect(Math.abs(finished - woman[measure] - wished), level).toBeLessThan(tolerance.girth);
      }
    }
  });

  it('lengthen the straps with the torso, front or back', () => {
    const worn = strapWorn(drafted(woman));
    expect(strapWorn(drafted({ ...woman, backWaistLength: woman.backWaistLength + 30 }))).toBeGreaterThan(worn + 12);
    expect(strapWorn(drafted({ ...woman, shoulderDrop: woman.shoulderDrop + 20 }))).toBeLessThan(worn - 12);
    expect(strapWorn(drafted({ ...woman, frontWaistLength: woman.frontWaistLength + 30 }))).toBeGreaterThan(worn + 8);
  });

  it('have the same upper pieces in either length, but for the short one’s legs above the knee', () => {
    const [full, short] = [drafted(woman), drafted(woman, {}, 'short')];
    expect(short.pieces.map(({ id }) => id)).toEqual(full.pieces.map(({ id }) => id));
    expect(pieceOf(short, 'front').levels.map(({ id }) => id)).toEqual(['hip', 'thigh']);
    expect(edgeLength(pieceOf(short, 'front'), 'side')).toBeLessThan(0.5 * edgeLength(pieceOf(full, 'front'), 'side'));
  });

  it('open at both sides for hips of any width', () => {
    for (const hip of [900, 1200]) {
      const garment = drafted({ ...woman, hipGirth: hip, waistGirth: 680 });
      const shown = dungarees.shape('full').find(({ id }) => id === 'hip-passes');
      expect(shown?.value(garment, { ...woman, hipGirth: hip })).toBeGreaterThan(200);
    }
  });

  it('close with the front’s edge on the back’s seam: each button is sewn where its hole’s outer end comes to lie', () => {
    const garment = drafted(woman);
    const middle = (piece: string, id: string) => {
      const path = pieceOf(garment, piece).lines.find((one) => one.id === id)?.path;
      if (!path) throw new Error(id);
      return (pathStart(path).x + pathEnd(path).x) / 2;
    };
    const seam = pieceOf(garment, 'bib').landmarks.find(({ id }) => id === 'waist-side')?.at.x ?? Number.NaN;
    const hole = pieceOf(garment, 'bib').lines.find(({ id }) => id === 'buttonhole-1')?.path;
    if (!hole) throw new Error('no buttonhole');
    const outerEnd = seam - Math.max(pathStart(hole).x, pathEnd(hole).x);
    const underlap = Math.max(...runOf(garment, 'side-underlap', 'leg').map(({ to }) => to.x));
    for (const id of ['button-1', 'button-2', 'button-3']) {
      const inside = underlap - middle('side-underlap', id) - outerEnd;
      expect(inside, id).toBeGreaterThanOrEqual(2);
      expect(inside, id).toBeLessThanOrEqual(4);
    }
  });

  it('refuse what cannot be drafted, each with a sentence', () => {
    const refused = (body: Measures, ease = {}) => {
      const result = dungarees.draft(body, { ease });
      if (result.ok) throw new Error('drafted');
      expect(sentence(result.problem, 'cm').message, result.problem.code).not.toMatch(/no words for it|[{]/);
      return result.problem.code;
    };
    expect(refused({ bustGirth: 900 })).toBe('drafting.no-measure');
    expect(refused({ ...woman, hipGirth: 95 })).toBe('body.impossible');
    expect(refused({ ...woman, frontWaistLength: 280, bustDepth: 390 })).toBe('drafting.measures-contradict');
    expect(refused(woman, { hip: 5 })).toBe('drafting.ease-impossible');
    expect(refused(woman, { bust: 40 })).toBe('drafting.no-such-level');
    expect(refused({ ...woman, waistGirth: 560, hipGirth: 1150 }, { waist: 40 })).toBe('drafting.waist-cannot-be-had');
  });

  it.each([
    ['dungarees', woman],
    ['dungarees-men', man],
  ])('are drawn as they were, %s size 5', async (name, body) => {
    const lines = drafted(body).pieces.flatMap((piece, i) => [
      `<g id="${piece.id}" transform="translate(${[120, 600, 960, 960, 1320, 1020, 1440, 1320, 1560, 1560][i]} ${[80, 140, 340, 640, 80, 760, 80, 900, 400, 700][i]})">`,
      `<path d="${pathToSvg(cutLine(piece), 1)}"/>`,
      `<path d="${pathToSvg(outlineOf(piece), 1)}"/>`,
      '</g>',
    ]);
    const svg = [
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1800 1300" fill="none" stroke="black">',
      ...lines,
      '</svg>',
      '',
    ].join('\n');
    await expect(svg).toMatchFileSnapshot(`golden/${name}-5.svg`);
  });
});

describe('the dungarees’ shape checks', () => {
  const changed = (id: string, change: (piece: Piece) => Piece, view = 'full'): Garment =>
    changedPiece(drafted(woman, {}, view), id, change);
  const moved =
    (landmark: string, x: number, y: number) =>
    (piece: Piece): Piece => ({
      ...piece,
      landmarks: piece.landmarks.map((mark) =>
        mark.id === landmark ? { ...mark, at: { x: mark.at.x + x, y: mark.at.y + y } } : mark,
      ),
    });
  const stretched =
    (x: number, y: number) =>
    (piece: Piece): Piece =>
      transformPiece(piece, { a: x, b: 0, c: 0, d: y, e: 0, f: 0 });

  it.each<[string, Garment, Measures]>([
    ['leg-bows', changed('front', moved('knee-side', -60, 0)), woman],
    ['waist-ease', drafted(woman), { ...woman, waistGirth: woman.waistGirth + 80 }],
    ['hip-passes', drafted(woman), { ...woman, hipGirth: woman.hipGirth + 900 }],
    ['bib-above-bust', drafted(woman), { ...woman, bustDepth: woman.bustDepth - 60 }],
    ['bib-between-arms', changed('bib', moved('bib-corner', 60, 0)), woman],
    ['back-bib-lower', changed('back-bib', moved('centre-top', 0, -90)), woman],
    ['bib-curves', changed('bib', bent('curve', 0, 'control1', 90, 90)), woman],
    [
      'bib-side-square',
      changed('bib', (piece) => transformPiece(piece, { a: 1, b: 0, c: 0.1, d: 1, e: 0, f: 0 })),
      woman,
    ],
    ['strap-meets-bib', changed('back-bib', stretched(1.1, 1)), woman],
    ['torso-ease', drafted(woman), { ...woman, crotchLength: woman.crotchLength + 90 }],
    ['facing-copies-side', changed('side-facing', bent('side', 0, 'control1', 4, 0)), woman],
    ['mouth-wide', changed('hip-pocket', stretched(0.6, 1)), woman],
    ['mouth-slants', changed('hip-pocket', stretched(1, 0.3)), woman],
    ['underlap-as-long', changed('side-underlap', stretched(1, 1.01)), woman],
    ['crotch-ease', drafted(woman), { ...woman, crotchLength: woman.crotchLength + 40 }],
  ])('find fault: %s', (id, garment, body) => {
    const found = shapeComplaints(dungarees, 'full', garment, body).map((complaint) => complaint.split(' ')[0]);
    expect(found).toContain(id);
  });

  it('find fault with a short leg that reaches the knee', () => {
    const found = shapeComplaints(dungarees, 'short', changed('front', moved('hem-centre', 0, 260), 'short'), woman);
    expect(found.join()).toMatch(/above-the-knee/);
  });
});
