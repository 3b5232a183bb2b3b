import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import { pathEnd, pathStart, pathToSvg, subtract, tolerance, turnBetween } from '../geometry/index.ts';
import {
  cutLine,
  edgeLength,
  finishedGirths,
  type Garment,
  notionsOf,
  outlineOf,
  type Piece,
  pieceOf,
  validateGarment,
  walkAll,
} from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { bodyWithCup } from './chart.ts';
import { womenChart } from './chart-women.ts';
import { jacket } from './jacket.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { describeHousePattern, shapeComplaints } from './testing/house-harness.ts';
import { unmarkedJoins } from './testing/marked-joins.ts';
import { bent, changedPiece } from './testing/spoiled.ts';

const middle = womenChart[4]?.body as Required<Measures>;

const drafted = (body: Measures, view = 'collar', ease = {}): Garment => {
  const garment = jacket.draft(body, { view, ease });
  if (!garment.ok) throw new Error(garment.problem.code);
  return garment.value;
};

// One stature: armholes deepen while waist and hip stay where they are, and caps rise while arms keep their length.
const gives = { side: 2.5, sleeve: 1 } as const;

describeHousePattern(jacket, {
  gradedBy: 'bustGirth',
  shrinks: {
    'side-front.side': gives.side,
    'side-back.side': gives.side,
    'lining-side-front.side': gives.side,
    'lining-side-back.side': gives.side,
    'sleeve.front-seam': gives.sleeve,
    'under-sleeve.front-seam': gives.sleeve,
    'lining-sleeve.front-seam': gives.sleeve,
    'lining-under-sleeve.front-seam': gives.sleeve,
  },
});

describe('the jacket', () => {
  it('leaves room for a blouse: over the body 130 at the bust, 30 across the back', () => {
    const eased = finishedGirths(drafted(middle)).map(({ level, measure, finished }) => [
      level,
      Math.round(finished - middle[measure]),
    ]);
    expect(eased).toEqual([
      ['bust', 130],
      ['waist', 100],
      ['hip', 100],
      ['upper-arm', 92],
    ]);
    const across = pieceOf(drafted(middle), 'side-back').landmarks.find(({ id }) => id === 'across-back');
    const ease = 2 * (across?.at.x ?? 0) - middle.acrossBack;
    expect(ease).toBeGreaterThanOrEqual(25);
    expect(ease).toBeLessThanOrEqual(35);
  });

  it('is measured from the centre front, not from the edge of its stand', () => {
    const front = pieceOf(drafted(middle), 'front');
    for (const level of front.levels) {
      expect(level.stops).toBe('from');
      expect(level.from.x).toBe(0);
    }
    expect(edgeLength(front, 'neck-stand')).toBeCloseTo(22, 6);
  });

  it('gives a fuller bust its room in the side front: the centre panel keeps its seam, the side front swings', () => {
    const swing = (cup: number) => {
      const garment = drafted(bodyWithCup(middle, cup));
      const apex = landmarkIn(garment, 'front', 'apex');
      const above = subtract(pathEnd(runOf(garment, 'front', 'shoulder')), apex);
      return turnBetween(above, subtract(pathStart(runOf(garment, 'side-front', 'shoulder')), apex));
    };
    expect(swing(20)).toBeGreaterThan(0.1);
    expect(swing(80)).toBeGreaterThan(swing(50) + 0.03);
    expect(swing(110)).toBeGreaterThan(swing(80) + 0.03);
  });

  it('eases the sleeve over its head only: the under sleeve goes in flat', () => {
    const ease = Object.fromEntries(walkAll(drafted(middle)).map(({ seam, difference }) => [seam.id, difference]));
    expect((ease['armhole-front'] ?? 0) + (ease['armhole-back'] ?? 0)).toBeCloseTo(37, 4);
    expect(ease['underarm-front']).toBeCloseTo(0, 4);
    expect(ease['underarm-back']).toBeCloseTo(0, 4);
  });

  it('marks where the sleeve’s seams and the side seam meet its armholes, on cloth and lining', () => {
    for (const view of ['collar', 'collarless']) expect(unmarkedJoins(drafted(middle, view))).toEqual([]);
    const unmarked = changedPiece(drafted(middle), 'under-sleeve', (piece) => ({ ...piece, notches: [] }));
    expect(unmarkedJoins(unmarked)).toEqual(['under-sleeve: cap-front|cap-back']);
  });

  it('turns the top collar over the under collar, both alike at the neck', () => {
    const garment = drafted(middle);
    for (const edge of ['neck-front', 'neck-back']) {
      expect(edgeLength(pieceOf(garment, 'collar'), edge)).toBeCloseTo(
        edgeLength(pieceOf(garment, 'under-collar'), edge),
        6,
      );
    }
    const height = (piece: string) => edgeLength(pieceOf(garment, piece), 'centre-back');
    expect(height('collar') - height('under-collar')).toBeCloseTo(2.5, 6);
  });

  it('has no collar pieces where there is none, and a wider neck', () => {
    const [collar, without] = [drafted(middle), drafted(middle, 'collarless')];
    const ids = (garment: Garment) => garment.pieces.map(({ id }) => id);
    expect(ids(without)).toEqual(ids(collar).filter((id) => !id.includes('collar')));
    expect(edgeLength(pieceOf(without, 'front'), 'neck')).toBeGreaterThan(
      edgeLength(pieceOf(collar, 'front'), 'neck') + 15,
    );
  });

  it('is lined wherever it is not faced: every lining edge is sewn or hemmed', () => {
    const garment = drafted(middle);
    const sewn = new Set(garment.seams.flatMap(({ a, b }) => [`${a.piece}.${a.edge}`, `${b.piece}.${b.edge}`]));
    const loose = garment.pieces
      .filter(({ id }) => id.startsWith('lining-'))
      .flatMap(({ id, edges }) => edges.filter(({ finish }) => finish === 'seam').map((edge) => `${id}.${edge.id}`))
      .filter((edge) => !sewn.has(edge));
    expect(loose).toEqual([]);
    for (const piece of garment.pieces.filter(({ id }) => id.startsWith('lining-'))) {
      expect(piece.cut.map(({ layer }) => layer)).toEqual(['lining']);
    }
  });

  it('says what to buy in each view', () => {
    const bought = (view: string) =>
      notionsOf(drafted(middle, view), jacket.notions(view), middle).map(({ what, count }) => [what, count]);
    expect(bought('collar')).toContainEqual(['button', 5]);
    expect(bought('collarless')).toContainEqual(['button', 4]);
    expect(bought('collar')).toContainEqual(['shoulder-pad', 2]);
  });

  it('follows ease that is asked for', () => {
    const ease = { bust: 150, waist: 130, hip: 120, 'upper-arm': 110 };
    const garment = drafted(middle, 'collar', ease);
    for (const { level, measure, finished } of finishedGirths(garment)) {
      const wished = (ease as Record<string, number>)[level] ?? Number.NaN;
      expect(Math.abs(finished - middle[measure] - wished)).toBeLessThan(tolerance.girth);
    }
  });

  it('hangs past a waist as wide as the hip, and takes in no more than cloth is pressed to', () => {
    const ease = (body: Measures) => {
      const found = jacket.ease(body);
      if (!found.ok) throw new Error(found.problem.code);
      return found.value as Record<string, number>;
    };
    expect(ease({ ...middle, waistGirth: 1060 })['waist']).toBeGreaterThanOrEqual(80);
    expect(ease({ ...middle, waistGirth: 1060 })['hip']).toBeGreaterThan(100);
    expect(ease({ ...middle, waistGirth: 600 })['waist']).toBeGreaterThan(130);
    for (const waistGirth of [600, 1060]) expect(validateGarment(drafted({ ...middle, waistGirth }))).toEqual([]);
  });

  it('estimates what was not measured from what was', () => {
    const { bustGirth, waistGirth, hipGirth, stature } = middle;
    const garment = drafted({ bustGirth, waistGirth, hipGirth, stature });
    expect(validateGarment(garment)).toEqual([]);
    expect(finishedGirths(garment)[0]?.finished).toBeCloseTo(bustGirth + 130, 0);
  });

  it('refuses what cannot be drafted, each with a sentence', () => {
    const refused = (body: Measures, ease = {}) => {
      const result = jacket.draft(body, { ease });
      if (result.ok) throw new Error('drafted');
      expect(sentence(result.problem, 'cm').message, result.problem.code).not.toMatch(/no words for it|[{]/);
      return result.problem.code;
    };
    expect(refused({ hipGirth: 1000 })).toBe('drafting.no-measure');
    expect(refused({ ...middle, bustGirth: 95 })).toBe('body.impossible');
    expect(refused({ ...middle, backWaistLength: 260 })).toBe('drafting.levels-too-close');
    expect(refused({ ...middle, upperArmGirth: 700 })).toBe('drafting.cap-cannot-fit');
    expect(refused({ ...middle, bustSpan: 440 })).toBe('drafting.bust-points-too-far-apart');
    expect(refused({ ...middle, armLength: 300 })).toBe('drafting.arm-too-short');
    expect(refused(middle, { bust: 10 })).toBe('drafting.ease-impossible');
    expect(refused(middle, { knee: 40 })).toBe('drafting.no-such-level');
  });

  it('is drawn as it was, size 5', async () => {
    const lines = drafted(middle).pieces.flatMap((piece, i) => [
      `<g id="${piece.id}" transform="translate(${80 + (i % 6) * 380} ${200 + Math.floor(i / 6) * 900})">`,
      `<path d="${pathToSvg(cutLine(piece), 1)}"/>`,
      `<path d="${pathToSvg(outlineOf(piece), 1)}"/>`,
      '</g>',
    ]);
    const svg = [
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 2360 2800" fill="none" stroke="black">',
      ...lines,
      '</svg>',
      '',
    ].join('\n');
    await expect(svg).toMatchFileSnapshot('golden/jacket-5.svg');
  });
});

describe('the jacket’s shape checks', () => {
  const found = (garment: Garment, body: Measures = middle) => shapeComplaints(jacket, 'collar', garment, body).join();
  const changed = (id: string, change: (piece: Piece) => Piece): string =>
    found(changedPiece(drafted(middle), id, change));

  it('see a princess seam that misses the bust, and one with a stray bend', () => {
    const moved = (piece: Piece): Piece => ({
      ...piece,
      landmarks: piece.landmarks.map((mark) =>
        mark.id === 'bust-point' ? { ...mark, at: { x: mark.at.x - 30, y: mark.at.y } } : mark,
      ),
    });
    expect(changed('front', moved)).toMatch(/princess-over-bust/);
    expect(changed('front', bent('princess', 2, 'control1', 40, 0))).toMatch(/princess-bends-front|bust-ease/);
    const wavy = (piece: Piece) =>
      bent('princess', 2, 'control2', 25, 0)(bent('princess', 2, 'control1', -25, 0)(piece));
    expect(changed('back', wavy)).toMatch(/princess-bends-back/);
    expect(changed('back', bent('princess', 3, 'control1', 6, 0))).toMatch(/princess-smooth/);
    expect(changed('side-front', bent('princess', 3, 'control2', -40, 0))).toMatch(
      /bust-round|bust-ease|princess-bends-side/,
    );
  });
  it('see a neckline that comes to a point, an armhole askew at shoulder and underarm, a cap that is not level', () => {
    expect(changed('front', bent('neck', 0, 'control1', 0, 8))).toMatch(/neck-on-stand/);
    expect(changed('side-front', bent('armhole', 0, 'control1', 8, 0))).toMatch(/armhole-square-front/);
    expect(changed('side-back', bent('armhole-under', 0, 'control2', 0, 14))).toMatch(/armhole-under-arm/);
    expect(changed('sleeve', bent('cap-front', 1, 'control2', 0, 8))).toMatch(/cap-top-smooth/);
    expect(changed('under-sleeve', bent('cap-front', 0, 'control2', 0, 8))).toMatch(/under-cap-smooth/);
  });
  it('see a collar whose edge turns back, and a facing that does not run on', () => {
    expect(changed('collar', bent('outer', 0, 'control2', 0, -40))).toMatch(/collar-bends/);
    expect(changed('front-facing', bent('inner', 0, 'control1', 14, 0))).toMatch(/facing-over-shoulder/);
  });
  it('see a body the sleeve is too narrow for, or too short', () => {
    expect(found(drafted(middle), { ...middle, elbowGirth: 320 })).toMatch(/elbow-bends/);
    expect(found(drafted(middle), { ...middle, handGirth: 260 })).toMatch(/hem-passes-hand/);
    expect(found(drafted(middle), { ...middle, armLength: 620 })).toMatch(/sleeve-length/);
  });
  it('see a lining as long as the cloth, and one without its pleat', () => {
    const garment = drafted(middle);
    const shell = pieceOf(garment, 'side-front');
    const long = { ...shell, id: 'lining-side-front' };
    expect(found(changedPiece(garment, 'lining-side-front', () => long))).toMatch(
      /lining-shorter.*lining-underarm-higher/,
    );
    const flat = (piece: Piece): Piece => ({
      ...piece,
      runs: piece.runs.map((run) =>
        run.kind === 'edge' && run.edge === 'facing' ? { ...run, path: run.path.slice(1) } : run,
      ),
    });
    expect(changed('lining-back', flat)).toMatch(/lining-pleat/);
  });
});
