import { describe, expect, it } from 'vitest';
import { distance, line, mirrorX, rotation } from '../geometry/index.ts';
import {
  dartOf,
  edgeLength,
  edgeRuns,
  finishedGirths,
  levelWidth,
  type Piece,
  pieceArea,
  pointOnEdge,
  transformPiece,
  validateGarment,
  validatePiece,
  walkAll,
} from './index.ts';
import { plainFront, plainGarment } from './testing/bodice.ts';

describe('a piece', () => {
  it('steps over a dart when an edge is measured', () => {
    expect(edgeRuns(plainFront, 'side')).toHaveLength(2);
    expect(edgeLength(plainFront, 'side')).toBeCloseTo(350, 6);
    expect(pointOnEdge(plainFront, 'side', 60 / 350)).toEqual({ x: 240, y: 310 });
  });

  it('is told by the same edges wherever its outline begins', () => {
    const turned: Piece = { ...plainFront, runs: [...plainFront.runs.slice(5), ...plainFront.runs.slice(0, 5)] };
    expect(edgeRuns(turned, 'side')).toEqual(edgeRuns(plainFront, 'side'));
    expect(pieceArea(turned)).toBeCloseTo(pieceArea(plainFront), 6);
  });

  it('knows its dart', () => {
    const dart = dartOf(plainFront, 'bust');
    expect(dart.intake).toBe(30);
    expect(dart.legLengths[0]).toBeCloseTo(dart.legLengths[1], 9);
    expect(dart.angle).toBeCloseTo(2 * Math.atan2(15, 120), 9);
  });

  it('keeps area, lengths and widths when turned or mirrored', () => {
    for (const by of [rotation(0.7, { x: 3, y: 9 }), mirrorX(11)]) {
      const moved = transformPiece(plainFront, by);
      expect(validatePiece(moved).filter((problem) => problem.code !== 'pattern.fold-not-on-grain')).toEqual([]);
      expect(pieceArea(moved)).toBeCloseTo(pieceArea(plainFront), 6);
      expect(edgeLength(moved, 'armhole')).toBeCloseTo(edgeLength(plainFront, 'armhole'), 6);
      expect(levelWidth(moved, 'in-dart')).toBeCloseTo(levelWidth(plainFront, 'in-dart'), 6);
      const notch = (piece: Piece) => pointOnEdge(piece, 'armhole', piece.notches[0]?.at ?? Number.NaN);
      expect(distance(notch(moved), { x: 0, y: 0 })).toBeGreaterThan(0);
    }
  });
});

describe('a level', () => {
  it('is as wide as the piece where it crosses no dart', () => {
    expect(levelWidth(plainFront, 'bust')).toBeCloseTo(240, 6);
    const bust = plainFront.levels.find(({ id }) => id === 'bust');
    if (!bust) throw new Error('no bust level');
    const width = (from: number, to: number, stops: 'from' | 'to' | 'both') =>
      levelWidth(
        {
          ...plainFront,
          levels: [{ id: 'bust', from: { ...bust.from, x: from }, to: { ...bust.to, x: to }, stops }],
        },
        'bust',
      );
    // From a centre line inside the piece, and to a pleat's fold.
    expect(width(20, 180, 'from')).toBeCloseTo(220, 6);
    expect(width(20, 180, 'to')).toBeCloseTo(180, 6);
    expect(width(20, 180, 'both')).toBeCloseTo(160, 6);
  });

  it('is carried from leg to leg where it crosses one', () => {
    // 5 mm above the dart's point the level meets the upper leg 160 mm out; from the same place on the lower leg
    // it goes on turned down by the dart's angle, and reaches the side 80 / cos(angle) further.
    const width = levelWidth(plainFront, 'in-dart');
    expect(width).toBeCloseTo(160 + 80 / Math.cos(dartOf(plainFront, 'bust').angle), 6);
  });

  it('adds up to finished girths', () => {
    expect(finishedGirths(plainGarment)).toEqual([
      { level: 'bust', measure: 'bustGirth', around: 'body', finished: expect.closeTo(960, 6) },
    ]);
  });
});

describe('walking', () => {
  it('finds that seams meet, their notches with them, and runs smoothly across the ends', () => {
    const [shoulder, side] = walkAll(plainGarment);
    expect(shoulder?.meets).toBe(true);
    expect(side?.difference).toBeCloseTo(0, 6);
    expect(side?.notches[0]?.apart).toBeCloseTo(0, 6);
    // Both hems leave the side square: across the seam they run straight on.
    expect(side?.ends[1].turn).toBeCloseTo(0, 9);
  });

  it('says by how much a seam does not meet', () => {
    const longer = {
      ...plainGarment,
      seams: plainGarment.seams.map((seam) => ({ ...seam, easeMin: 2, easeMax: 4 })),
    };
    const [shoulder] = walkAll(longer);
    expect(shoulder?.meets).toBe(false);
    expect(shoulder?.excess).toBeCloseTo(-2, 6);
  });
});

describe('validating', () => {
  it('finds nothing wrong with a sound garment', () => {
    expect(validateGarment(plainGarment)).toEqual([]);
  });

  const broken = (change: Partial<Piece>): readonly string[] =>
    validatePiece({ ...plainFront, ...change }).map((problem) => problem.code);

  it('finds an open outline, one that crosses itself, one the wrong way round', () => {
    expect(broken({ runs: plainFront.runs.filter((_, index) => index !== 6) })).toContain('pattern.open-edges');
    const crossed = plainFront.runs.map((run) =>
      run.kind === 'edge' && run.edge === 'shoulder'
        ? { ...run, path: [line({ x: 70, y: 0 }, { x: -40, y: 300 }), line({ x: -40, y: 300 }, { x: 180, y: 40 })] }
        : run,
    );
    expect(broken({ runs: crossed })).toContain('pattern.crosses-itself');
    const backwards = plainFront.runs.toReversed().map((run) => ({
      ...run,
      path: run.path.toReversed().map((segment) =>
        segment.kind === 'line'
          ? line(segment.to, segment.from)
          : {
              ...segment,
              from: segment.to,
              control1: segment.control2,
              control2: segment.control1,
              to: segment.from,
            },
      ),
    }));
    expect(broken({ runs: backwards })).toContain('pattern.wrong-way-round');
  });

  it('finds uneven legs, a stray notch, a lost landmark and an edge nobody has', () => {
    expect(broken({ darts: [{ id: 'bust', point: { x: 120, y: 270 }, pressed: 'after' }] })).toContain(
      'pattern.dart-legs',
    );
    expect(broken({ notches: [{ id: 'stray', edge: 'armhole', at: 1.4, strokes: 1 }] })).toContain(
      'pattern.notch-off-edge',
    );
    expect(broken({ landmarks: [{ id: 'lost', at: { x: 900, y: 0 } }] })).toContain('pattern.landmark-outside');
    expect(broken({ edges: plainFront.edges.slice(1) })).toContain('pattern.edge-unknown');
    expect(validateGarment({ ...plainGarment, pieces: [plainFront] }).map((problem) => problem.code)).toContain(
      'pattern.mate-missing',
    );
  });
});
