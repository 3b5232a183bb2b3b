import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import { cubic, lerp, line, type Path, pathToSvg, tolerance } from '../geometry/index.ts';
import {
  cutLine,
  edgeLength,
  finishedGirths,
  type Garment,
  notionsOf,
  outlineOf,
  type Piece,
  pieceOf,
  transformPiece,
  validateGarment,
} from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { describeHousePattern, shapeComplaints } from './testing/house-harness.ts';
import { unmarkedJoins } from './testing/marked-joins.ts';
import { bent, changedPiece } from './testing/spoiled.ts';
import { trousers, trousersMen } from './trousers.ts';

const woman = womenChart[4]?.body as Required<Measures>;
const man = menChart[4]?.body as Required<Measures>;

const drafted = (body: Measures, ease = {}, view = 'straight'): Garment => {
  const garment = trousers.draft(body, { ease, view });
  if (!garment.ok) throw new Error(garment.problem.code);
  return garment.value;
};

describeHousePattern(trousers, { gradedBy: 'bustGirth' });
// A large man's waist outgrows his hip: from there the back runs out at the side, so that there is cloth to gather.
const runsOut = [
  'back.waist',
  ...['left', 'right', 'inner-left', 'inner-right'].map((edge) => `back-waistband.${edge}`),
];
describeHousePattern(trousersMen, {
  gradedBy: 'bustGirth',
  strays: Object.fromEntries(runsOut.map((edge) => [edge, 4])),
});

describe('the trousers', () => {
  it('are one draft: a man gets the same pieces from either pattern', () => {
    expect(trousers.draft(man)).toEqual(trousersMen.draft(man));
  });

  it('are marked where the mouth and the zip end', () => {
    for (const view of ['straight', 'cropped']) expect(unmarkedJoins(drafted(woman, {}, view))).toEqual([]);
  });

  it('follow ease that is asked for', () => {
    for (const ease of [
      { waist: 30, hip: 90, thigh: 90, knee: 80 },
      { waist: 10, hip: 45, thigh: 50, knee: 40 },
    ]) {
      const garment = drafted(woman, ease);
      expect(validateGarment(garment)).toEqual([]);
      for (const { level, measure, finished } of finishedGirths(garment)) {
        const wished = (ease as Record<string, number>)[level] ?? Number.NaN;
        expect(Math.abs(finished - woman[measure] - wished), level).toBeLessThan(tolerance.girth);
      }
    }
  });

  it('give a longer crotch length its length, most of it behind', () => {
    const crotch = (body: Measures) => {
      const garment = drafted(body);
      return ['front', 'back'].map((id) => edgeLength(pieceOf(garment, id), 'crotch')) as [number, number];
    };
    const [front, back] = crotch(woman);
    const [longFront, longBack] = crotch({ ...woman, crotchLength: woman.crotchLength + 40 });
    expect(longFront + longBack - front - back).toBeGreaterThan(34);
    expect(longFront + longBack - front - back).toBeLessThan(40);
    expect(longBack - back).toBeGreaterThan(longFront - front);
  });

  it('narrow to the hem where cropped, which ends above the ankle', () => {
    const hem = (view: string) => edgeLength(pieceOf(drafted(woman, {}, view), 'front'), 'hem');
    expect(hem('cropped')).toBeLessThan(0.9 * hem('straight'));
    const side = (view: string) => edgeLength(pieceOf(drafted(woman, {}, view), 'front'), 'side');
    expect(side('straight') - side('cropped')).toBeCloseTo(0.15 * woman.insideLeg, -1);
  });

  it('need a zip to below the hip, and elastic shorter than the band it gathers', () => {
    const garment = drafted(woman);
    const [zip, elastic] = notionsOf(garment, trousers.notions('straight'), woman);
    expect(zip?.length).toBeGreaterThanOrEqual(woman.waistToHip + 40);
    const band = pieceOf(garment, 'back-waistband');
    const waist = finishedGirths(garment).find(({ level }) => level === 'waist')?.finished ?? Number.NaN;
    const gathered = waist - 2 * edgeLength(pieceOf(garment, 'front-waistband'), 'left');
    expect(elastic?.length).toBeGreaterThan(0.9 * gathered);
    expect(elastic?.length).toBeLessThan(gathered + 30);
    expect(gathered).toBeLessThan(2 * edgeLength(band, 'left'));
  });

  it('estimate what was not measured, after women or men as the pattern is for', () => {
    const { bustGirth, waistGirth, hipGirth, stature } = man;
    for (const house of [trousers, trousersMen]) {
      const garment = house.draft({ bustGirth, waistGirth, hipGirth, stature });
      if (!garment.ok) throw new Error(garment.problem.code);
      expect(validateGarment(garment.value)).toEqual([]);
    }
  });

  it('refuse what cannot be drafted, each with a sentence', () => {
    const refused = (body: Measures, ease = {}) => {
      const result = trousers.draft(body, { ease });
      if (result.ok) throw new Error('drafted');
      expect(sentence(result.problem, 'cm').message, result.problem.code).not.toMatch(/no words for it|[{]/);
      return result.problem.code;
    };
    expect(refused({ bustGirth: 900 })).toBe('drafting.no-measure');
    expect(refused({ ...woman, hipGirth: 95 })).toBe('body.impossible');
    expect(refused(woman, { hip: 5 })).toBe('drafting.ease-impossible');
    expect(refused(woman, { bust: 40 })).toBe('drafting.no-such-level');
    expect(refused({ ...woman, waistGirth: 480, hipGirth: 1150 }, { waist: 10 })).toBe('drafting.waist-cannot-be-had');
  });

  it.each([
    ['trousers', woman],
    ['trousers-men', man],
  ])('are drawn as they were, %s size 5', async (name, body) => {
    const lines = drafted(body).pieces.flatMap((piece, i) => [
      `<g id="${piece.id}" transform="translate(${[120, 600, 860, 40, 40][i]} ${[80, 140, 80, 1240, 1360][i]})">`,
      `<path d="${pathToSvg(cutLine(piece), 1)}"/>`,
      `<path d="${pathToSvg(outlineOf(piece), 1)}"/>`,
      '</g>',
    ]);
    const svg = [
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1220 1480" fill="none" stroke="black">',
      ...lines,
      '</svg>',
      '',
    ].join('\n');
    await expect(svg).toMatchFileSnapshot(`golden/${name}-5.svg`);
  });
});

describe('the trousers’ shape checks', () => {
  const changed = (id: string, change: (piece: Piece) => Piece): Garment => changedPiece(drafted(woman), id, change);
  const moved =
    (landmark: string, x: number, y: number) =>
    (piece: Piece): Piece => ({
      ...piece,
      landmarks: piece.landmarks.map((mark) =>
        mark.id === landmark ? { ...mark, at: { x: mark.at.x + x, y: mark.at.y + y } } : mark,
      ),
    });
  /** The crotch's curve drawn almost into its corner. */
  const sharpened = (piece: Piece): Piece => ({
    ...piece,
    runs: piece.runs.map((run) =>
      run.kind === 'edge' && run.edge === 'crotch'
        ? {
            ...run,
            path: run.path.flatMap((segment): Path => {
              if (segment.kind === 'line') return [segment];
              const { from, control1, control2, to } = segment;
              const near = lerp(from, control1, 1.5);
              const after = lerp(to, control2, 1.5);
              return [
                line(from, near),
                cubic(near, lerp(from, control1, 1.56), lerp(to, control2, 1.56), after),
                line(after, to),
              ];
            }),
          }
        : run,
    ),
  });
  const stretched =
    (x: number, y: number) =>
    (piece: Piece): Piece =>
      transformPiece(piece, { a: x, b: 0, c: 0, d: y, e: 0, f: 0 });

  it.each<[string, Garment, Measures]>([
    ['crotch-runs-on', changed('back', bent('inside-leg', 1, 'control2', -14, 0)), woman],
    ['crotch-curves', changed('back', bent('crotch', 1, 'control2', -70, -10)), woman],
    ['crotch-open', changed('front', sharpened), woman],
    ['back-fork-larger', changed('front', moved('crotch-point', -60, 0)), woman],
    ['forks', changed('back', moved('crotch-point', -200, 0)), woman],
    ['seat-slants', changed('back', moved('centre-waist', -60, 0)), woman],
    ['front-upright', changed('front', moved('centre-waist', 40, 0)), woman],
    ['back-crotch-lower', changed('back', moved('crotch-point', 0, -30)), woman],
    ['crotch-ease', drafted(woman), { ...woman, crotchLength: woman.crotchLength + 60 }],
    ['rise-ease', drafted(woman), { ...woman, bodyRise: woman.bodyRise + 30 }],
    ['thigh-ease', drafted(woman), { ...woman, thighGirth: woman.thighGirth + 60 }],
    ['inside-leg-stretched', changed('back', stretched(1, 1.05)), woman],
    ['sides-equal', changed('back', stretched(1, 1.002)), woman],
    ['crease-at-knee', changed('front', moved('knee-side', 6, 0)), woman],
    ['waist-over-side', changed('front', bent('waist', 0, 'control2', 0, 20)), woman],
    ['waist-square-back', changed('back', bent('waist', 0, 'control1', 0, 20)), woman],
    ['back-wider-at-hip', changed('back', stretched(0.9, 1)), woman],
    ['foot-passes', drafted(woman), { ...woman, heelGirth: 460 }],
    ['front-eased', changed('front-waistband', stretched(1.05, 1)), woman],
    ['waist-ease', drafted(woman), { ...woman, waistGirth: woman.waistGirth + 20 }],
    ['hip-passes', drafted(woman), { ...woman, hipGirth: woman.hipGirth + 500 }],
    ['pocket-copies-side', changed('pocket', bent('side', 0, 'control1', 4, 0)), woman],
  ])('find fault: %s', (id, garment, body) => {
    const found = shapeComplaints(trousers, 'straight', garment, body).map((complaint) => complaint.split(' ')[0]);
    expect(found).toContain(id);
  });
});
