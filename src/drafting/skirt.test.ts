import { describe, expect, it } from 'vitest';
import type { Measures } from '../body/index.ts';
import type { Garment, Piece } from '../pattern/index.ts';
import { cutLine, dartOf, edgeLength, finishedGirths, notionsOf, pieceOf, walkAll } from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { womenChart } from './chart-women.ts';
import { skirt } from './skirt.ts';
import { describeHousePattern, shapeComplaints } from './testing/house-harness.ts';
import { unmarkedJoins } from './testing/marked-joins.ts';
import { bent, changedPiece } from './testing/spoiled.ts';

const woman = womenChart[4]?.body as Required<Measures>;

const drafted = (body: Measures, view = 'knee', ease = {}): Garment => {
  const garment = skirt.draft(body, { view, ease });
  if (!garment.ok) throw new Error(garment.problem.code);
  return garment.value;
};

describeHousePattern(skirt, {
  gradedBy: 'bustGirth',
  // One stature: below the end of a pocket's mouth there is less side left, for the way over the hip grows.
  shrinks: { 'front.side': 2, 'back.side': 2 },
  // The bag is at least as wide as a hand, which the smallest waist would not make it.
  strays: { 'pocket.waist': 4, 'pocket.bag': 4 },
});

describe('the skirt', () => {
  it('is marked where a pocket’s mouth ends', () => {
    expect(unmarkedJoins(drafted(woman, 'pockets'))).toEqual([]);
  });

  it('keeps its flare in the longer view, and everything above the hem', () => {
    const [knee, midi] = [drafted(woman), drafted(woman, 'midi')];
    const hip = (garment: Garment) => finishedGirths(garment).map(({ finished }) => finished);
    expect(hip(midi)).toEqual(hip(knee).map((mm) => expect.closeTo(mm, 6)));
    expect(midi.pieces.map(({ darts }) => darts)).toEqual(knee.pieces.map(({ darts }) => darts));
    expect(edgeLength(pieceOf(midi, 'front'), 'hem')).toBeGreaterThan(edgeLength(pieceOf(knee, 'front'), 'hem') + 20);
  });

  it('gives a shapelier body deeper darts and side seams, a straight one shallower', () => {
    const darts = (waistGirth: number) => {
      const front = pieceOf(drafted({ ...woman, waistGirth }), 'front');
      return dartOf(front, 'waist').intake;
    };
    expect(darts(700)).toBeGreaterThan(darts(780) + 5);
    expect(darts(780)).toBeGreaterThan(darts(860) + 5);
  });

  it('hangs from a belly that stands out, and never narrows from waist to hip', () => {
    const ease = (body: Measures) => {
      const found = skirt.ease(body);
      if (!found.ok) throw new Error(found.problem.code);
      return found.value;
    };
    expect(ease(woman)).toEqual({ waist: 16, hip: 60 });
    expect(ease({ ...woman, abdomenGirth: woman.hipGirth + 60 }).hip).toBe(100);
    const straight = { ...woman, waistGirth: woman.hipGirth };
    expect(ease(straight).hip).toBeCloseTo(16 + 4 * 30, 6);
  });

  it('has a zip past the hip, and a band that laps over', () => {
    const garment = drafted(woman);
    const zip = notionsOf(garment, skirt.notions('knee'), woman).find(({ what }) => what === 'concealed-zip');
    expect(zip?.length).toBeGreaterThan(woman.waistToHip);
    expect(zip?.length).toBeLessThan(woman.waistToHip + 40);
    const band = pieceOf(garment, 'waistband');
    const long = ['back-right', 'front-right', 'front-left', 'back-left', 'underlap'];
    const whole = long.reduce((sum, id) => sum + edgeLength(band, id), 0);
    expect(whole).toBeCloseTo(woman.waistGirth + 16 + 30, 6);
  });

  it('cuts front and back linings 20 shorter, in lining, with a narrower hem', () => {
    const garment = drafted(woman);
    for (const which of ['front', 'back']) {
      const [shell, lining] = [pieceOf(garment, which), pieceOf(garment, `lining-${which}`)];
      expect(edgeLength(shell, 'side') - edgeLength(lining, 'side')).toBeCloseTo(20, 1);
      expect(lining.cut.map(({ layer }) => layer)).toEqual(['lining']);
      expect(lining.darts).toEqual([]);
      expect(lining.edges.find(({ id }) => id === 'hem')?.allowance).toBe(25);
    }
    expect(pieceOf(garment, 'waistband').cut.map(({ layer }) => layer)).toEqual(['shell', 'interfacing']);
    for (const piece of garment.pieces) expect(cutLine(piece).length).toBeGreaterThan(3);
  });

  it('hangs its pockets from the waist as it is once the dart is stitched', () => {
    const [plain, pocketed] = [drafted(woman), drafted(woman, 'pockets')];
    expect(pocketed.pieces.map(({ id }) => id)).toEqual([...plain.pieces.map(({ id }) => id), 'pocket']);
    const front = pieceOf(pocketed, 'front');
    expect(edgeLength(front, 'side-upper') + edgeLength(front, 'side')).toBeCloseTo(
      edgeLength(pieceOf(plain, 'front'), 'side'),
      3,
    );
    expect(edgeLength(pieceOf(pocketed, 'pocket'), 'side')).toBeCloseTo(edgeLength(front, 'side-upper'), 6);
    const waist = (id: string) =>
      pieceOf(pocketed, id).runs.filter((run) => run.kind === 'edge' && run.edge === 'waist');
    // The bag crosses the dart and still meets the side where the waist does.
    expect(waist('pocket')[0]?.path.at(-1)?.to).toEqual(waist('front').at(-1)?.path.at(-1)?.to);
  });

  it('follows ease that is asked for', () => {
    for (const ease of [
      { waist: 10, hip: 50 },
      { waist: 40, hip: 120 },
    ]) {
      for (const { level, measure, finished } of finishedGirths(drafted(woman, 'knee', ease))) {
        expect(finished - woman[measure]).toBeCloseTo((ease as Record<string, number>)[level] ?? Number.NaN, 3);
      }
    }
  });

  it('estimates what was not measured', () => {
    const { waistGirth, hipGirth, stature } = woman;
    const few = skirt.draft({ waistGirth, hipGirth, stature });
    expect(few.ok).toBe(true);
  });

  it('refuses what cannot be drafted, each with a sentence', () => {
    const refused = (body: Measures, options = {}) => {
      const result = skirt.draft(body, options);
      if (result.ok) throw new Error('drafted');
      expect(sentence(result.problem, 'cm').message, result.problem.code).not.toMatch(/no words for it|[{]/);
      return result.problem.code;
    };
    expect(refused({ waistGirth: 740 })).toBe('drafting.no-measure');
    expect(refused({ ...woman, hipGirth: 95 })).toBe('body.impossible');
    expect(refused({ ...woman, waistHeight: 700, kneeHeight: 500 })).toBe('drafting.skirt-levels');
    expect(refused({ ...woman, waistGirth: 980 }, { ease: { hip: 20 } })).toBe('drafting.waist-too-near-hip');
    expect(refused(woman, { ease: { hip: 5 } })).toBe('drafting.ease-impossible');
    expect(refused(woman, { ease: { bust: 5 } })).toBe('drafting.no-such-level');
    expect(refused(woman, { view: 'floor' })).toBe('drafting.no-such-view');
  });
});

describe('the skirt’s shape checks', () => {
  const changed = (id: string, change: (piece: Piece) => Piece): Garment => changedPiece(drafted(woman), id, change);
  const found = (garment: Garment, body: Measures = woman) => shapeComplaints(skirt, 'knee', garment, body).join();

  it.each([
    ['a waist that comes to a point at the front', 'front', 'waist', 0, 'control1', 0, 8, /waist-square-front/],
    ['a waist askew to the side', 'back', 'side', 0, 'control1', 12, 0, /waist-over-side/],
    ['a hem that comes to a point', 'back', 'hem', 0, 'control2', 0, 12, /hem-square-back/],
    ['a hem askew to the side', 'front', 'hem', 0, 'control1', 0, 12, /hem-square-side-front/],
    ['a side seam with a wave in it', 'front', 'side', 0, 'control2', 30, 0, /side-bends/],
  ] as const)('see %s', (_, piece, edge, which, handle, x, y, complaint) => {
    expect(found(changed(piece, bent(edge, which, handle, x, y)))).toMatch(complaint);
  });

  it('see darts that are askew, too long or of unequal legs', () => {
    const moved = (x: number, y: number) =>
      changed('back', (piece) => ({
        ...piece,
        darts: piece.darts.map((dart) => ({ ...dart, point: { x: dart.point.x + x, y: dart.point.y + y } })),
      }));
    expect(found(moved(8, 0))).toMatch(/dart-legs/);
    expect(found(changed('back', bent('waist', 0, 'control2', 0, 5)))).toMatch(/waist-smooth-at-dart-back/);
    expect(found(moved(0, 60))).toMatch(/darts-end-above-hip/);
    const straight = changed('front', (piece) => ({
      ...piece,
      darts: piece.darts.map((dart) => ({ ...dart, point: { ...dart.point, y: dart.point.y + 90 } })),
    }));
    expect(found(straight)).toMatch(/front-dart-shorter/);
  });

  it('see a zip that is too short, and a lining that is open no further', () => {
    const shortZip = changed('back', (piece) => ({
      ...piece,
      notches: piece.notches.map((notch) => (notch.id === 'zip-end' ? { ...notch, at: 0.9 } : notch)),
    }));
    expect(found(shortZip)).toMatch(/zip-past-hip/);
    expect(found(shortZip)).toMatch(/lining-opens-further/);
    expect(found(drafted(woman), { ...woman, hipGirth: 1300 })).toMatch(/hips-pass|hip-ease/);
  });

  it('see a pocket that does not copy the side, hangs too deep or has too short a mouth', () => {
    const pockets = (id: string, change: (piece: Piece) => Piece) =>
      shapeComplaints(skirt, 'pockets', changedPiece(drafted(woman, 'pockets'), id, change), woman).join();
    expect(pockets('pocket', bent('side', 0, 'control2', 12, 0))).toMatch(/pocket-copies-side/);
    expect(pockets('pocket', bent('bag', 0, 'control2', 0, 160))).toMatch(/pocket-deep/);
    const shortMouth = pockets('front', (piece) => ({
      ...piece,
      notches: piece.notches.map((notch) => (notch.id === 'mouth' ? { ...notch, at: 0.6 } : notch)),
    }));
    expect(shortMouth).toMatch(/pocket-mouth/);
  });

  it('see a band that is too short for the waist', () => {
    const scaled = changed('waistband', (piece) => ({
      ...piece,
      runs: piece.runs.map((run) => ({
        ...run,
        path: run.path.map((segment) => ({
          ...segment,
          from: { ...segment.from, x: segment.from.x * 0.97 },
          to: { ...segment.to, x: segment.to.x * 0.97 },
        })),
      })),
      levels: piece.levels.map((level) => ({ ...level, to: { ...level.to, x: level.to.x * 0.97 } })),
    }));
    expect(found(scaled)).toMatch(/band-fits/);
    expect(walkAll(scaled).filter(({ meets }) => !meets).length).toBeGreaterThanOrEqual(4);
  });
});
