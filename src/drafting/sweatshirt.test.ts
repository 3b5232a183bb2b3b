import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import { distance, pathLength } from '../geometry/index.ts';
import {
  dartOf,
  edgeLength,
  edgeRuns,
  finishedGirths,
  type Garment,
  type Piece,
  pieceOf,
  validateGarment,
  walkAll,
} from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { sweatshirt, sweatshirtMen } from './sweatshirt.ts';
import { tee } from './tee.ts';
import { describeHousePattern, shapeComplaints } from './testing/house-harness.ts';
import { bent, changedPiece } from './testing/spoiled.ts';

const woman = womenChart[4]?.body as Required<Measures>;
const man = menChart[4]?.body as Required<Measures>;

const drafted = (body: Measures, view = 'long', ease = {}): Garment => {
  const garment = sweatshirt.draft(body, { view, ease });
  if (!garment.ok) throw new Error(garment.problem.code);
  return garment.value;
};

// One stature: arms thicken and armholes deepen while waist, hip and wrist stay where they are.
const deepens = { 'front.side': 5, 'back.side': 5, 'sleeve.underarm-front': 11, 'sleeve.underarm-back': 11 };
describeHousePattern(sweatshirt, { gradedBy: 'bustGirth', shrinks: deepens });
describeHousePattern(sweatshirtMen, { gradedBy: 'bustGirth', shrinks: deepens });

const landmark = (garment: Garment, piece: string, id: string) => {
  const found = pieceOf(garment, piece).landmarks.find((mark) => mark.id === id);
  if (!found) throw new Error(`${piece} has no ${id}`);
  return found.at;
};

describe('the sweatshirt', () => {
  it('is one draft: a man gets the same pieces from either pattern', () => {
    expect(sweatshirt.draft(man)).toEqual(sweatshirtMen.draft(man));
  });

  it('has the same raglan on body and sleeve from the neck to the notch, and as long a one below', () => {
    for (const view of ['long', 'three-quarter']) {
      const garment = drafted(woman, view);
      for (const which of ['front', 'back'] as const) {
        const body = edgeRuns(pieceOf(garment, which), 'raglan')[0] ?? [];
        const onSleeve = edgeRuns(pieceOf(garment, 'sleeve'), `raglan-${which}`)[0] ?? [];
        const sleeve = which === 'front' ? onSleeve.toReversed() : onSleeve;
        expect(body.map((part) => pathLength([part]))).toEqual(
          sleeve.map((part) => expect.closeTo(pathLength([part]), 4)),
        );
        const straight = (path: typeof body) => path.map(({ from, to }) => distance(from, to));
        expect(straight(body)[0]).toBeCloseTo(straight(sleeve)[0] ?? 0, 6);
      }
    }
  });

  it('is roomier than the tee, its underarm lower', () => {
    const other = tee.draft(woman);
    if (!other.ok) throw new Error('no tee');
    const garment = drafted(woman);
    const deep = (of: Garment) => landmark(of, 'back', 'underarm').y - landmark(of, 'back', 'nape').y;
    expect(deep(garment)).toBeGreaterThan(deep(other.value) + 15);
    const bust = (of: Garment) => finishedGirths(of).find(({ level }) => level === 'bust')?.finished ?? 0;
    expect(bust(garment) - bust(other.value)).toBeCloseTo(75, 0);
  });

  it('gives a steeper shoulder a shallower dart, for the sleeve hangs as the arm does', () => {
    const dart = (shoulderDrop: number) => dartOf(pieceOf(drafted({ ...woman, shoulderDrop }), 'sleeve'), 'shoulder');
    const neckSlope = (shoulderDrop: number) => {
      const garment = drafted({ ...woman, shoulderDrop });
      return landmark(garment, 'back', 'underarm').y;
    };
    for (const drop of [35, 45, 55]) expect(dart(drop).legLengths[0]).toBeCloseTo(dart(drop).legLengths[1], 6);
    expect(neckSlope(55)).toBeGreaterThan(neckSlope(35));
  });

  it('gives a thick arm a lower underarm and a thin one a roomier sleeve', () => {
    const with_ = (upperArmGirth: number) => {
      const body = { ...woman, upperArmGirth };
      const ease = sweatshirt.ease(body);
      if (!ease.ok) throw new Error(ease.problem.code);
      return { low: landmark(drafted(body), 'back', 'underarm').y, ease: ease.value['upper-arm'] ?? 0 };
    };
    const [thin, usual, thick] = [with_(250), with_(296), with_(350)];
    expect(thick.low).toBeGreaterThan(usual.low + 3);
    expect(usual.low).toBeGreaterThan(thin.low + 3);
    expect(thin.ease).toBeGreaterThan(usual.ease);
    expect(usual.ease).toBeGreaterThan(thick.ease);
    expect(thick.ease).toBeGreaterThan(60);
  });

  it('lets head, hand and hip through its bands by the stretch of the cloth', () => {
    const garment = drafted(woman);
    const band = (piece: string, edges: readonly string[]) =>
      edges.reduce((sum, edge) => sum + edgeLength(pieceOf(garment, piece), edge), 0);
    expect(2 * band('neck-band', ['neck-front', 'neck-sleeve', 'neck-back']) * 1.2).toBeGreaterThanOrEqual(
      woman.headGirth,
    );
    expect(band('cuff', ['sleeve']) * 1.2).toBeGreaterThanOrEqual(woman.handGirth);
    expect(2 * band('hem-band', ['hem-front', 'hem-back']) * 1.06).toBeGreaterThanOrEqual(woman.hipGirth);
    const head = drafted({ ...woman, headGirth: 620 });
    expect(edgeLength(pieceOf(head, 'front'), 'neck')).toBeGreaterThan(edgeLength(pieceOf(garment, 'front'), 'neck'));
  });

  it('has its own pieces in each view', () => {
    const pieces = (view: string) => drafted(woman, view).pieces.map(({ id }) => id);
    expect(pieces('long')).toEqual(['front', 'back', 'sleeve', 'neck-band', 'hem-band', 'cuff']);
    expect(pieces('pocket')).toEqual([...pieces('long'), 'pocket']);
    expect(pieces('three-quarter')).toEqual(['front', 'back', 'sleeve', 'neck-band', 'hem-band']);
    const hem = (view: string) => pieceOf(drafted(woman, view), 'sleeve').edges.find(({ id }) => id === 'hem')?.finish;
    expect([hem('long'), hem('three-quarter')]).toEqual(['seam', 'hem']);
  });

  it('follows ease that is asked for', () => {
    for (const ease of [
      { bust: 100, waist: 160, hip: 60, 'upper-arm': 80 },
      { bust: 160, waist: 220, hip: 140, 'upper-arm': 120 },
    ]) {
      const garment = drafted(woman, 'long', ease);
      expect(validateGarment(garment)).toEqual([]);
      for (const { level, measure, finished } of finishedGirths(garment)) {
        expect(finished - woman[measure], level).toBeCloseTo((ease as Record<string, number>)[level] ?? Number.NaN, 1);
      }
    }
  });

  it('estimates what was not measured', () => {
    const { bustGirth, waistGirth, hipGirth, stature } = man;
    for (const house of [sweatshirt, sweatshirtMen]) {
      const garment = house.draft({ bustGirth, waistGirth, hipGirth, stature });
      if (!garment.ok) throw new Error(garment.problem.code);
      expect(validateGarment(garment.value)).toEqual([]);
    }
  });

  it('refuses what cannot be drafted, each with a sentence', () => {
    const refused = (body: Measures, options = {}) => {
      const result = sweatshirt.draft(body, options);
      if (result.ok) throw new Error('drafted');
      expect(sentence(result.problem, 'cm').message, result.problem.code).not.toMatch(/no words for it|[{]/);
      return result.problem.code;
    };
    expect(refused({ hipGirth: 1000 })).toBe('drafting.no-measure');
    expect(refused({ ...woman, bustGirth: 95 })).toBe('body.impossible');
    expect(refused({ ...woman, backWaistLength: 255 })).toBe('drafting.levels-too-close');
    expect(refused({ ...woman, upperArmGirth: 690 })).toBe('drafting.raglan-cannot-fit');
    expect(refused(woman, { ease: { bust: -100 } })).toBe('drafting.ease-impossible');
    expect(refused(woman, { ease: { knee: 40 } })).toBe('drafting.no-such-level');
    expect(refused(woman, { view: 'hooded' })).toBe('drafting.no-such-view');
  });
});

describe('the sweatshirt’s shape checks', () => {
  const changed = (id: string, change: (piece: Piece) => Piece, view = 'long'): Garment =>
    changedPiece(drafted(woman, view), id, change);
  const found = (garment: Garment, body: Measures = woman, view = 'long') =>
    shapeComplaints(sweatshirt, view, garment, body).join();

  it.each([
    ['a neckline that comes to a point', 'front', 'neck', 0, 'control1', 0, 8, /neck-square-front/],
    ['necklines that do not run on over the raglan', 'back', 'neck', 0, 'control2', 0, 10, /neck-over-raglan-back/],
    ['a body longer than its sleeve along the raglan', 'front', 'raglan', 0, 'control1', 30, -30, /raglan-front-alike/],
    ['a raglan that is a hook', 'back', 'raglan', 0, 'control2', 40, -40, /raglan-slightly-round/],
    ['raglans that do not run on under the arm', 'back', 'raglan', 1, 'control2', 0, 14, /raglan-under-arm/],
    ['a sleeve with a wave in its raglan', 'sleeve', 'raglan-back', 1, 'control1', 40, -40, /sleeve-raglan-bends/],
    ['underarm seams that differ', 'sleeve', 'underarm-front', 0, 'control1', 14, 0, /underarm-seams/],
    ['a side seam that is drawn in', 'front', 'side', 1, 'control2', -60, 0, /side-bends/],
  ] as const)('see %s', (_, piece, edge, which, handle, x, y, complaint) => {
    expect(found(changed(piece, bent(edge, which, handle, x, y)))).toMatch(complaint);
  });

  it('see a shoulder dart that is askew, or ends on the arm', () => {
    const moved = (x: number, y: number) =>
      changed('sleeve', (piece) => ({
        ...piece,
        darts: piece.darts.map((dart) => ({ ...dart, point: { x: dart.point.x + x, y: dart.point.y + y } })),
      }));
    expect(found(moved(10, 0))).toMatch(/dart-legs/);
    expect(found(moved(0, 40))).toMatch(/dart-over-shoulder/);
    expect(found(moved(0, -80))).toMatch(/dart-long/);
  });

  it('see a body the sweatshirt does not go over', () => {
    const garment = drafted(woman);
    expect(found(garment, { ...woman, headGirth: 600 })).toMatch(/head-passes/);
    expect(found(garment, { ...woman, handGirth: 250 })).toMatch(/hand-passes/);
    expect(found(garment, { ...woman, wristGirth: 200 })).toMatch(/cuff-round-wrist/);
    expect(found(garment, { ...woman, hipGirth: 1100 })).toMatch(/hem-band-at-hip/);
    expect(found(garment, { ...woman, upperArmGirth: 360 })).toMatch(/arm-clears/);
    expect(found(garment, { ...woman, bustGirth: 1020 })).toMatch(/roomy/);
    expect(found(drafted(woman, 'pocket'), { ...woman, handGirth: 260 }, 'pocket')).toMatch(/pocket-opening/);
    expect(found(drafted(woman, 'three-quarter'), { ...woman, armLength: 760 }, 'three-quarter')).toMatch(
      /sleeve-length/,
    );
  });

  it('see a neck band that is as long as the neckline', () => {
    const longer = changed('neck-band', (piece) => ({
      ...piece,
      runs: piece.runs.map((run) => ({
        ...run,
        path: run.path.map((segment) => ({
          ...segment,
          from: { ...segment.from, x: segment.from.x / 0.88 },
          to: { ...segment.to, x: segment.to.x / 0.88 },
        })),
      })),
    }));
    expect(found(longer)).toMatch(/band-share/);
    expect(
      walkAll(longer)
        .filter(({ meets }) => !meets)
        .map(({ seam }) => seam.id),
    ).toEqual(['band-front', 'band-sleeve', 'band-back']);
  });
});
