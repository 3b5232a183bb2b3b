import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import { pathLength, pathStart, pathToSvg, tolerance } from '../geometry/index.ts';
import {
  cutLine,
  edgeLength,
  finishedGirths,
  type Garment,
  levelWidth,
  notionsOf,
  outlineOf,
  type Piece,
  pieceOf,
  walkAll,
} from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { buttonHeights } from './button-stand.ts';
import { womenChart } from './chart-women.ts';
import { runOf } from './shape-garment.ts';
import { shirtDress } from './shirt-dress.ts';
import { describeHousePattern, shapeComplaints } from './testing/house-harness.ts';
import { unmarkedJoins } from './testing/marked-joins.ts';
import { bent, changedPiece } from './testing/spoiled.ts';

const middle = womenChart[4]?.body as Required<Measures>;

const drafted = (body: Measures, view = 'tiered', ease = {}): Garment => {
  const garment = shirtDress.draft(body, { view, ease });
  if (!garment.ok) throw new Error(garment.problem.code);
  return garment.value;
};

const length = (garment: Garment, piece: string, edge: string): number => edgeLength(pieceOf(garment, piece), edge);

describeHousePattern(shirtDress, {
  gradedBy: 'bustGirth',
  strays: {
    // With the arm's length the chart keeps, the seam below the cap is what is left.
    'sleeve.underarm-front': 0.5,
    'sleeve.underarm-back': 0.5,
  },
  shrinks: {
    // One stature: armholes deepen while the waist stays where it is, and caps rise while arms keep their length.
    'front.side': 3,
    'back.side': 3,
    'sleeve.underarm-front': 2.5,
    'sleeve.underarm-back': 2.5,
    // A wider hem comes up further to meet its side square.
    'skirt-front.side': 0.3,
    'skirt-back.side': 0.3,
  },
});

describe('the shirt dress', () => {
  it('has its own pieces in each view, all else alike', () => {
    const ids = (view: string) => drafted(middle, view).pieces.map(({ id }) => id);
    const only = (view: string, other: string) => ids(view).filter((id) => !ids(other).includes(id));
    expect(only('tiered', 'knee')).toEqual(['cuff', 'slit-binding', 'tier-front', 'tier-back']);
    expect(only('knee', 'tiered')).toEqual(['collar']);
    for (const view of ['tiered', 'knee']) {
      for (const { id, name } of drafted(middle, view).pieces) expect(name, id).not.toBe(id);
    }
  });

  it('measures bust and waist from centre to centre with the pleat closed', () => {
    const garment = drafted(middle);
    const back = pieceOf(garment, 'back');
    const level = back.levels.find(({ id }) => id === 'bust');
    const fold = pathStart(runOf(garment, 'back', 'yoke')).x;
    expect(fold).toBe(-60);
    expect(levelWidth(back, 'bust')).toBeCloseTo((level?.to.x ?? 0) - 0, 6);
    expect(levelWidth(pieceOf(garment, 'button-stand'), 'bust')).toBeCloseTo(17, 6);
    const waist = 2 * (length(garment, 'waist-front', 'top') + length(garment, 'waist-back', 'top')) + 34;
    expect(waist).toBeCloseTo(middle.waistGirth + 110, 6);
    expect(finishedGirths(garment).find(({ level: id }) => id === 'waist')?.finished).toBeCloseTo(waist, 6);
  });

  it('keeps every seam that is sewn plain equal to the micrometre: they are the same curves', () => {
    for (const view of ['tiered', 'knee']) {
      for (const { seam, difference } of walkAll(drafted(middle, view))) {
        if (seam.how === 'plain') expect(Math.abs(difference), seam.id).toBeLessThan(1e-3);
      }
    }
  });

  it('marks on the button stand where bodice, waistband, skirt and tier begin', () => {
    for (const view of ['tiered', 'knee']) {
      expect(unmarkedJoins(drafted(middle, view)).filter((join) => join.startsWith('button-stand'))).toEqual([]);
    }
  });

  it('sews every edge of every piece to something, or folds or hems it', () => {
    for (const view of ['tiered', 'knee']) {
      const garment = drafted(middle, view);
      const sewn = new Set(garment.seams.flatMap(({ a, b }) => [`${a.piece}.${a.edge}`, `${b.piece}.${b.edge}`]));
      const left = garment.pieces.flatMap(({ id, edges }) =>
        edges
          .filter(({ finish, id: edge }) => finish === 'seam' && !sewn.has(`${id}.${edge}`))
          .map((one) => `${id}.${one.id}`),
      );
      // The binding's ends vanish in the sleeve's seam allowance and the cuff.
      expect(left).toEqual(view === 'tiered' ? ['slit-binding.end-2', 'slit-binding.end-1'] : []);
    }
  });

  it('moves the shoulder seam to the front and keeps the whole armhole and neck as they were', () => {
    const garment = drafted(middle);
    const strip = pathLength(runOf(garment, 'yoke', 'armhole').slice(0, 1));
    expect(strip).toBeGreaterThan(19);
    expect(strip).toBeLessThan(26);
    expect(length(garment, 'collar-stand', 'neck-back')).toBeCloseTo(length(garment, 'yoke', 'neck'), 6);
  });

  it('places a button at the bust, the rest evenly, clear of the seams across', () => {
    const row = { collar: -16, bust: 180, hem: 1090, clear: [350, 386, 770], below: 9 };
    const heights = buttonHeights(row);
    expect(heights).toHaveLength(11);
    expect(heights[1]).toBe(180);
    expect(heights[0]).toBe(82);
    const apart = heights.slice(2).map((at, i) => at - (heights[i + 1] ?? 0));
    for (const one of apart) expect(one).toBeCloseTo(apart[0] ?? 0, 6);
    for (const at of heights) for (const seam of row.clear) expect(Math.abs(at - seam)).toBeGreaterThan(12);
    expect(1090 - (heights.at(-1) ?? 0)).toBeGreaterThanOrEqual(80);
  });

  it('asks for as many buttons as are marked on its pieces', () => {
    for (const view of ['tiered', 'knee']) {
      const garment = drafted(middle, view);
      const marks = garment.pieces.flatMap(({ id, lines }) =>
        lines.filter((one) => /^button(-\d+)?$/.test(one.id)).map(() => (id === 'cuff' ? 2 : 1)),
      );
      const buttons = notionsOf(garment, shirtDress.notions(view), middle).find(({ what }) => what === 'button');
      expect(buttons?.count).toBe(marks.reduce((sum, one) => sum + one, 0));
    }
  });

  it('gives way in the skirt, the sleeve and the bodice where a body needs it', () => {
    const ease = (body: Measures) => {
      const found = shirtDress.ease(body);
      if (!found.ok) throw new Error(found.problem.code);
      return found.value;
    };
    // Wide hips over a small waist are given a fuller skirt, never less ease than stated.
    expect(ease({ ...middle, hipGirth: 1240 }).hip).toBeCloseTo(110, 6);
    expect(ease(middle).hip).toBeGreaterThan(110);
    // A slim arm in a wide armhole gets a wider sleeve.
    expect(ease({ ...middle, upperArmGirth: 240 })['upper-arm']).toBeGreaterThan(120);
    // A waist as wide as the bust still leaves the bodice something to gather.
    const straight = drafted({ ...middle, waistGirth: 960 });
    expect(length(straight, 'front', 'waist')).toBeGreaterThan(1.02 * length(straight, 'waist-front', 'top'));
  });

  it('follows ease that is asked for', () => {
    const ease = { bust: 140, waist: 90, hip: 320, 'upper-arm': 125 };
    expect(shirtDress.ease(middle, { ease })).toMatchObject({ ok: true, value: { bust: 140, waist: 90 } });
    for (const { level, measure, finished } of finishedGirths(drafted(middle, 'tiered', ease))) {
      const wished = (ease as Record<string, number>)[level] ?? Number.NaN;
      expect(Math.abs(finished - middle[measure] - wished), level).toBeLessThan(tolerance.girth);
    }
  });

  it('refuses what cannot be drafted, each with a sentence', () => {
    const refused = (body: Measures, ease = {}) => {
      const result = shirtDress.draft(body, { ease });
      if (result.ok) throw new Error('drafted');
      expect(sentence(result.problem, 'cm').message, result.problem.code).not.toMatch(/no words for it|[{]/);
      return result.problem.code;
    };
    expect(refused({ hipGirth: 1000 })).toBe('drafting.no-measure');
    expect(refused({ ...middle, bustGirth: 95 })).toBe('body.impossible');
    expect(refused({ ...middle, backWaistLength: 260 })).toBe('drafting.levels-too-close');
    expect(refused({ ...middle, bustSpan: 440 })).toBe('drafting.bust-points-too-far-apart');
    expect(refused({ ...middle, armLength: 260, upperArmGirth: 380 })).toBe('drafting.cap-cannot-fit');
    expect(refused(middle, { bust: 20 })).toBe('drafting.ease-impossible');
    expect(refused(middle, { waist: 260, hip: 100 })).toBe('drafting.ease-impossible');
    expect(refused(middle, { knee: 40 })).toBe('drafting.no-such-level');
  });

  it('is drawn as it was, size 5', async () => {
    const wide = [300, 340, 220, 460, 260, 260, 220, 260, 260, 360, 360, 180, 560, 560, 120];
    const lines = drafted(middle).pieces.flatMap((piece, i) => [
      `<g id="${piece.id}" transform="translate(${80 + wide.slice(0, i).reduce((sum, one) => sum + one, 0)} 200)">`,
      `<path d="${pathToSvg(cutLine(piece), 1)}"/>`,
      `<path d="${pathToSvg(outlineOf(piece), 1)}"/>`,
      '</g>',
    ]);
    const svg = [
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4900 1400" fill="none" stroke="black">',
      ...lines,
      '</svg>',
      '',
    ].join('\n');
    await expect(svg).toMatchFileSnapshot('golden/shirt-dress-5.svg');
  });
});

describe('the shape checks', () => {
  const spoiled = (id: string, change: (piece: Piece) => Piece, view = 'tiered'): string =>
    shapeComplaints(shirtDress, view, changedPiece(drafted(middle, view), id, change), middle).join();

  const moved =
    (edge: string, x: number, y: number) =>
    (piece: Piece): Piece => ({
      ...piece,
      runs: piece.runs.map((run) =>
        run.kind === 'edge' && run.edge === edge
          ? {
              ...run,
              path: run.path.map((one) => ({
                ...one,
                from: { x: one.from.x + x, y: one.from.y + y },
                to: { x: one.to.x + x, y: one.to.y + y },
              })),
            }
          : run,
      ),
    });

  it('see a yoke askew, a neck that comes to a point, an armhole that does not run on', () => {
    expect(spoiled('yoke', bent('neck', 0, 'control1', 0, 8))).toMatch(/yoke-square-neck/);
    expect(spoiled('yoke', bent('neck', 1, 'control2', 6, 0))).toMatch(/neck-over-yoke/);
    expect(spoiled('yoke', bent('armhole', 0, 'control1', 6, 0))).toMatch(/armhole-over-yoke-front/);
    expect(spoiled('back', bent('armhole', 0, 'control1', 6, 0))).toMatch(/armhole-over-yoke-back/);
    expect(spoiled('yoke', moved('front', 4, -12))).toMatch(/shoulder-forward/);
  });

  it('see a cap that is too high, bent where it should be smooth, or no hollower in front', () => {
    expect(spoiled('sleeve', bent('cap-front', 0, 'control2', -14, -30))).toMatch(/cap-/);
    expect(spoiled('sleeve', bent('cap-yoke', 0, 'control1', 10, 20))).toMatch(/cap-smooth/);
    const high = (piece: Piece): Piece => ({
      ...piece,
      landmarks: piece.landmarks.map((one) =>
        one.id === 'cap-top' ? { ...one, at: { ...one.at, y: one.at.y - 60 } } : one,
      ),
    });
    expect(spoiled('sleeve', high)).toMatch(/cap-low/);
  });

  it('see a stand that is straight, a collar too shallow to cover it', () => {
    const flat = (piece: Piece): Piece => ({
      ...piece,
      runs: piece.runs.map((run) =>
        run.kind === 'edge' && run.edge === 'neck-stand'
          ? { ...run, path: [{ kind: 'line', from: { x: 220, y: 0 }, to: { x: 186, y: 0 } }] }
          : run,
      ),
    });
    expect(spoiled('collar-stand', flat)).toMatch(/stand-leans/);
    expect(spoiled('collar', moved('centre-back', 0, 0), 'knee')).toBe('');
    const shallow = (piece: Piece): Piece => ({
      ...piece,
      runs: piece.runs.map((run) =>
        run.kind === 'edge' && run.edge === 'centre-back'
          ? { ...run, path: [{ kind: 'line', from: { x: 0, y: -10 }, to: { x: 0, y: -40 } }] }
          : run,
      ),
    });
    expect(spoiled('collar', shallow, 'knee')).toMatch(/collar-covers-stand/);
  });

  it('see buttons off the bust, on a seam, or unevenly set', () => {
    const shifted =
      (which: (at: number) => number) =>
      (piece: Piece): Piece => ({
        ...piece,
        lines: piece.lines.map((one) =>
          /^button-/.test(one.id)
            ? {
                ...one,
                path: one.path.map((segment) => ({
                  ...segment,
                  from: { ...segment.from, y: which(segment.from.y) },
                  to: { ...segment.to, y: which(segment.to.y) },
                })),
              }
            : one,
        ),
      });
    expect(
      spoiled(
        'button-stand',
        shifted((y) => y + 20),
      ),
    ).toMatch(/button-at-bust/);
    expect(
      spoiled(
        'button-stand',
        shifted((y) => y * 1.02),
      ),
    ).toMatch(/button/);
    expect(
      spoiled(
        'button-stand',
        shifted((y) => (y > 600 ? y + 12 : y)),
      ),
    ).toMatch(/buttons-even/);
  });

  it('see gathers that are too scant or too full, a hem that pokes out at the side, and a pleat that is not one', () => {
    const stretched =
      (edge: string, by: number) =>
      (piece: Piece): Piece => ({
        ...piece,
        runs: piece.runs.map((run) =>
          run.kind === 'edge' && run.edge === edge
            ? { ...run, path: run.path.map((one) => ({ ...one, to: { ...one.to, x: one.to.x + by } })) }
            : run,
        ),
      });
    const stretchedDown =
      (edge: string, by: number) =>
      (piece: Piece): Piece => ({
        ...piece,
        runs: piece.runs.map((run) =>
          run.kind === 'edge' && run.edge === edge
            ? { ...run, path: run.path.map((one) => ({ ...one, to: { ...one.to, y: one.to.y + by } })) }
            : run,
        ),
      });
    expect(spoiled('tier-front', stretched('top', 60))).toMatch(/tier-gathers/);
    expect(spoiled('skirt-front', stretched('waist', 220))).toMatch(/skirt-gathers/);
    expect(spoiled('skirt-back', bent('tier', 0, 'control1', 0, 10))).toMatch(/hem-over-side/);
    expect(spoiled('skirt-front', bent('waist', 1, 'control2', 0, 8), 'knee')).toMatch(/skirt-waist-over-side/);
    expect(spoiled('skirt-front', stretchedDown('side', 5), 'knee')).toMatch(/skirt-side-length/);
    expect(spoiled('back', stretched('yoke', -40))).toMatch(/pleat-taken|blade-shaped/);
    expect(
      spoiled('waist-back', (piece) => ({
        ...piece,
        landmarks: piece.landmarks.map((one) => ({ ...one, at: { ...one.at, x: one.at.x + 30 } })),
      })),
    ).toMatch(/waist-shared/);
  });

  it('see a body the dress does not go round', () => {
    const on = (body: Measures, view = 'tiered') =>
      shapeComplaints(shirtDress, view, drafted(middle, view), body).join();
    expect(on({ ...middle, elbowGirth: 340 })).toMatch(/elbow-bends/);
    expect(on({ ...middle, wristGirth: 190 })).toMatch(/cuff-closes/);
    expect(on({ ...middle, handGirth: 400 })).toMatch(/cuff-passes-hand/);
    expect(on({ ...middle, neckBaseGirth: 400 })).toMatch(/collar-round/);
    expect(on({ ...middle, kneeHeight: 300 })).toMatch(/hem-below-knee/);
    expect(on({ ...middle, kneeHeight: 380 }, 'knee')).toMatch(/hem-at-knee/);
    expect(on({ ...middle, upperArmGirth: 360 }, 'knee')).toMatch(/short-hem-wide/);
  });
});
