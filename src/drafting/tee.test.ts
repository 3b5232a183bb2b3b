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
  walkAll,
} from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { tee, teeMen } from './tee.ts';
import { describeHousePattern, shapeComplaints } from './testing/house-harness.ts';
import { bent, changedPiece } from './testing/spoiled.ts';
import type { HousePattern } from './types.ts';

const both: readonly HousePattern[] = [tee, teeMen];
const woman = womenChart[4]?.body as Required<Measures>;
const man = menChart[4]?.body as Required<Measures>;

const drafted = (body: Measures, ease = {}): Garment => {
  const garment = tee.draft(body, { ease });
  if (!garment.ok) throw new Error(garment.problem.code);
  return garment.value;
};

const complaints = (garment: Garment, body: Measures): readonly string[] =>
  shapeComplaints(tee, 'short', garment, body);

describe('the men’s chart', () => {
  it('runs from 880 to 1300 of chest in ten sizes, every measure known and none shrinking', () => {
    expect(menChart.map(({ id }) => id)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '9', '10']);
    expect(menChart[0]?.body.bustGirth).toBe(880);
    expect(menChart.at(-1)?.body.bustGirth).toBe(1300);
    expect(Object.keys(man).toSorted()).toEqual(Object.keys(woman).toSorted());
    menChart.slice(1).forEach(({ body }, i) => {
      const smaller = menChart[i]?.body as Required<Measures>;
      for (const [measure, mm] of Object.entries(body)) {
        expect(mm, measure).toBeGreaterThanOrEqual(smaller[measure as keyof Measures]);
      }
    });
  });
});

// One stature: armholes deepen while waist and hip stay where they are.
const deepens = { 'front.side': 3, 'back.side': 3 };
describeHousePattern(tee, { gradedBy: 'bustGirth', shrinks: deepens });
describeHousePattern(teeMen, {
  gradedBy: 'bustGirth',
  shrinks: deepens,
  strays: {
    // A man's shoulder hardly grows with his chest but his across lines do: up to where the shoulder stands out enough it grows with them.
    'front.shoulder': 4,
    'back.shoulder': 4,
    // The smallest and the largest armhole are raised or lowered to the arm.
    'front.armhole': 4,
    'back.armhole': 4,
    'sleeve.cap-front': 4,
    'sleeve.cap-back': 4,
  },
});

describe('the tee', () => {
  it('carries the allowances of a knit, and its folds none', () => {
    const edges = drafted(woman).pieces.flatMap((piece) => piece.edges);
    for (const { finish, allowance } of edges) {
      if (finish === 'seam') expect(allowance).toBe(8);
      else if (finish === 'hem') expect(allowance).toBe(22);
      else expect([finish, allowance]).toEqual(['fold', 0]);
    }
    const folds = drafted(woman).pieces.map((piece) => piece.edges.filter(({ finish }) => finish === 'fold').length);
    expect(folds).toEqual([1, 1, 0, 1]);
  });

  it('is one draft: a man gets the same pieces from either pattern', () => {
    expect(tee.draft(man)).toEqual(teeMen.draft(man));
  });

  it('hangs straighter on a man than on a woman, without bust shaping', () => {
    const drawnIn = (garment: Garment): number => {
      const at = (id: string) => pieceOf(garment, 'front').landmarks.find((mark) => mark.id === id)?.at;
      const [underarm, waist, hip] = [at('underarm'), at('waist-side'), at('hip-side')];
      if (!underarm || !waist || !hip) throw new Error('a landmark is missing');
      return underarm.x + ((hip.x - underarm.x) * (waist.y - underarm.y)) / (hip.y - underarm.y) - waist.x;
    };
    expect(drawnIn(drafted(woman))).toBeGreaterThan(12);
    expect(drawnIn(drafted(man))).toBeLessThan(8);
    const hems = (garment: Garment) => ['front', 'back'].map((id) => edgeLength(pieceOf(garment, id), 'hem'));
    const [front = 0, back = 0] = hems(drafted(man));
    expect(front).toBeCloseTo(back, 6);
    const [fuller = 0, flatter = 0] = hems(drafted(woman));
    expect(fuller - flatter).toBeCloseTo(3.6, 6);
  });

  it('widens its neck for a larger head, and only as far as the band needs', () => {
    const neck = (headGirth: number) => {
      const garment = drafted({ ...woman, headGirth });
      return ['front', 'back'].reduce((sum, id) => sum + 2 * edgeLength(pieceOf(garment, id), 'neck'), 0);
    };
    for (const head of [560, 600, 640]) expect(neck(head)).toBeCloseTo((head + 5) / 1.25 / 0.86, 3);
    // Under what the neck itself takes, a smaller head changes nothing.
    expect(neck(450)).toBeCloseTo(neck(440), 6);
  });

  it('sets the sleeve in flat: below the notches cap and armhole are as long', () => {
    const garment = drafted(woman);
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

  it('follows ease that is asked for, also less than none as far as the cloth stretches', () => {
    for (const ease of [
      { bust: 20, waist: 120, hip: 60, 'upper-arm': 30 },
      { bust: -40, waist: 0, hip: -20, 'upper-arm': -10 },
      { bust: 120, waist: 200, hip: 100, 'upper-arm': 110 },
    ]) {
      const garment = drafted(woman, ease);
      expect(tee.ease(woman, { ease })).toMatchObject({ ok: true });
      expect(validateGarment(garment)).toEqual([]);
      for (const { level, measure, finished } of finishedGirths(garment)) {
        const wished = (ease as Record<string, number>)[level] ?? Number.NaN;
        expect(Math.abs(finished - woman[measure] - wished), level).toBeLessThan(tolerance.girth);
      }
    }
  });

  it('estimates what was not measured, after women or men as the pattern is for', () => {
    const { bustGirth, waistGirth, hipGirth, stature } = man;
    const few = { bustGirth, waistGirth, hipGirth, stature };
    for (const house of both) {
      const garment = house.draft(few);
      if (!garment.ok) throw new Error(garment.problem.code);
      expect(validateGarment(garment.value)).toEqual([]);
      expect(finishedGirths(garment.value)[0]?.finished).toBeCloseTo(bustGirth + 45, 0);
    }
    const shoulder = (survey: 'women' | 'men') => {
      const garment = (survey === 'women' ? tee : teeMen).draft(few);
      return garment.ok ? edgeLength(pieceOf(garment.value, 'front'), 'shoulder') : Number.NaN;
    };
    expect(shoulder('men')).toBeGreaterThan(shoulder('women'));
  });

  it('refuses what cannot be drafted, each with a sentence', () => {
    const refused = (body: Measures, ease = {}) => {
      const result = tee.draft(body, { ease });
      if (result.ok) throw new Error('drafted');
      expect(sentence(result.problem, 'cm').message, result.problem.code).not.toMatch(/no words for it|[{]/);
      return result.problem.code;
    };
    expect(refused({ hipGirth: 1000 })).toBe('drafting.no-measure');
    expect(refused({ ...woman, bustGirth: 95 })).toBe('body.impossible');
    expect(refused({ ...woman, bustGirth: Number.NaN })).toBe('body.impossible');
    expect(refused({ ...woman, backWaistLength: 255 })).toBe('drafting.levels-too-close');
    expect(refused({ ...woman, upperArmGirth: 690 })).toBe('drafting.cap-cannot-fit');
    expect(refused({ ...woman, headGirth: 700, neckBaseGirth: 260, shoulderLength: 80 })).toBe(
      'drafting.head-cannot-pass',
    );
    expect(refused(woman, { bust: -100 })).toBe('drafting.ease-impossible');
    expect(refused(woman, { knee: 40 })).toBe('drafting.no-such-level');
  });

  it.each([
    ['tee', woman],
    ['tee-men', man],
  ])('is drawn as it was, %s size 5', async (name, body) => {
    const lines = drafted(body).pieces.flatMap((piece, i) => [
      `<g id="${piece.id}" transform="translate(${[20, 360, 960, 740][i]} ${[100, 100, 200, 440][i]})">`,
      `<path d="${pathToSvg(cutLine(piece), 1)}"/>`,
      `<path d="${pathToSvg(outlineOf(piece), 1)}"/>`,
      '</g>',
    ]);
    const svg = [
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1220 900" fill="none" stroke="black">',
      ...lines,
      '</svg>',
      '',
    ].join('\n');
    await expect(svg).toMatchFileSnapshot(`golden/${name}-5.svg`);
  });
});

describe('the tee’s shape checks', () => {
  const changed = (id: string, change: (piece: Piece) => Piece): Garment => changedPiece(drafted(woman), id, change);
  const found = (garment: Garment, body: Measures = woman) => complaints(garment, body).join();

  it.each([
    ['a neckline that comes to a point', 'front', 'neck', 0, 'control1', 0, 8, /neck-square-front/],
    ['necklines that do not run on', 'back', 'neck', 0, 'control2', 12, 0, /neck-over-shoulder/],
    ['an armhole askew to the shoulder', 'front', 'armhole', 0, 'control1', 8, 0, /armhole-square-front/],
    ['armholes that do not run on under the arm', 'back', 'armhole', 1, 'control2', 0, 12, /armhole-under-arm/],
    ['a front armhole no hollower than the back', 'front', 'armhole', 1, 'control2', 24, -24, /front-armhole-hollower/],
    ['a cap that is not level at its top', 'sleeve', 'cap-front', 1, 'control2', 0, 6, /cap-top-smooth/],
    ['a cap with a wave in it', 'sleeve', 'cap-back', 0, 'control1', 0, 120, /cap-bends/],
    ['a neckline with a wave in it', 'front', 'neck', 0, 'control2', 60, 60, /neck-bends/],
    ['a side seam with a wave in it', 'front', 'side', 1, 'control1', 40, 0, /side-bends/],
    ['underarm seams that differ', 'sleeve', 'underarm-front', 0, 'control1', 8, 0, /underarm-seams/],
  ] as const)('see %s', (_, piece, edge, which, handle, x, y, complaint) => {
    expect(found(changed(piece, bent(edge, which, handle, x, y)))).toMatch(complaint);
  });

  it('see a body the tee does not go over', () => {
    expect(found(drafted(woman), { ...woman, headGirth: 600 })).toMatch(/head-passes/);
    expect(found(drafted(woman), { ...woman, upperArmGirth: 330 })).toMatch(/sleeve-hem-clears/);
    expect(found(drafted(woman), { ...woman, neckBaseGirth: 460 })).toMatch(/band-round-neck/);
  });

  it('see a band that is as long as the neckline', () => {
    const longer = changed('neck-band', (piece) => ({
      ...piece,
      runs: piece.runs.map((run) => ({
        ...run,
        path: run.path.map((segment) => ({
          ...segment,
          from: { ...segment.from, x: segment.from.x / 0.86 },
          to: { ...segment.to, x: segment.to.x / 0.86 },
        })),
      })),
    }));
    expect(found(longer)).toMatch(/band-share/);
    expect(
      walkAll(longer)
        .filter(({ meets }) => !meets)
        .map(({ seam }) => seam.id),
    ).toEqual(['band-front', 'band-back']);
  });
});
