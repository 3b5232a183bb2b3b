import { describe, expect, it } from 'vitest';
import { line, type Point, pathPointAtLength } from '../geometry/index.ts';
import { dartOf, edgeLength, outlineOf, type Piece, pieceArea } from '../pattern/index.ts';
import { plainFront } from '../pattern/testing/bodice.ts';
import { type Cut, type CutPiece, type CutPlan, cut } from './cut.ts';
import { join } from './join.ts';
import { partAt, partBeside, slide, swing } from './move.ts';
import { putIn, sumOf } from './put.ts';
import { redraw } from './redraw.ts';
import { apart } from './testing/compare.ts';

const at = (x: number, y: number): Point => ({ x, y });

/** A strip 100 wide and 200 long, with marks on every quarter. */
const strip: Piece = {
  id: 'strip',
  name: 'Strip',
  role: 'other',
  cut: [{ layer: 'shell', count: 1, mirrored: false }],
  runs: [
    { kind: 'edge', edge: 'top', path: [line(at(0, 0), at(100, 0))] },
    { kind: 'edge', edge: 'right', path: [line(at(100, 0), at(100, 200))] },
    { kind: 'edge', edge: 'bottom', path: [line(at(100, 200), at(0, 200))] },
    { kind: 'edge', edge: 'left', path: [line(at(0, 200), at(0, 0))] },
  ],
  edges: ['top', 'right', 'bottom', 'left'].map((id) => ({ id, finish: 'seam', allowance: 15 })),
  darts: [],
  notches: [
    { id: 'upper', edge: 'right', at: 0.25, strokes: 1 },
    { id: 'lower', edge: 'right', at: 0.75, strokes: 1 },
  ],
  grain: { from: at(50, 40), to: at(50, 160) },
  levels: [{ id: 'low', from: at(0, 150), to: at(100, 150) }],
  landmarks: [{ id: 'corner', at: at(100, 200) }],
  lines: [{ id: 'down', kind: 'stitching', path: [line(at(20, 10), at(20, 190))] }],
};

const across: CutPlan = {
  nodes: {},
  cuts: [{ id: 'across', from: { edge: 'left', at: 0.5 }, to: { edge: 'right', at: 0.5 } }],
};

const made = (piece: Piece, plan: CutPlan): CutPiece => {
  const result = cut(piece, plan);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};

describe('cutting', () => {
  it('makes a part on either hand, each with the fragments it owns under their edge’s name', () => {
    const pieces = made(strip, across);
    expect(pieces.parts).toHaveLength(2);
    const lower = partBeside(pieces, 'across', 'right');
    const owned = (part: number) =>
      pieces.fragments
        .filter((one) => one.part === part)
        .map(({ of, from, to }) => [of.kind === 'edge' ? of.edge : of.dart, from, to]);
    expect(owned(lower)).toEqual([
      ['right', 100, 200],
      ['bottom', 0, 100],
      ['left', 0, 100],
    ]);
    expect(owned(1 - lower)).toEqual([
      ['top', 0, 100],
      ['right', 0, 100],
      ['left', 100, 200],
    ]);
    expect(partAt(pieces, at(50, 150))).toBe(lower);
    expect(partAt(pieces, at(50, 50))).toBe(1 - lower);
  });

  it('makes as many parts as cuts that meet at a point', () => {
    const spokes: Cut[] = (['top', 'right', 'bottom', 'left'] as const).map((edge) => ({
      id: edge,
      from: { node: 'middle' },
      to: { edge, at: 0.5 },
    }));
    const pieces = made(strip, { nodes: { middle: at(50, 100) }, cuts: spokes });
    expect(pieces.parts).toHaveLength(4);
    expect(pieces.meetings.find(({ onOutline }) => !onOutline)?.parts).toHaveLength(4);
    expect(new Set(pieces.fragments.map(({ part }) => part)).size).toBe(4);
    // To the right of the cut going up lies the upper right quarter.
    expect(partBeside(pieces, 'top', 'right')).toBe(partAt(pieces, at(90, 10)));
  });

  it('takes a dart’s wedge out when both its legs are cut', () => {
    const pieces = made(plainFront, {
      nodes: { bp: at(95, 285) },
      cuts: [
        { id: 'up', from: { node: 'bp' }, to: { dart: 'bust', leg: 0 } },
        { id: 'down', from: { node: 'bp' }, to: { dart: 'bust', leg: 1 } },
      ],
    });
    expect(pieces.parts.filter(({ wedge }) => wedge === 'bust')).toHaveLength(1);
    expect(pieces.parts).toHaveLength(2);
  });

  it('refuses a cut that leaves the piece or goes through a dart', () => {
    const outside = cut(plainFront, {
      nodes: {},
      cuts: [{ id: 'a', from: { edge: 'armhole', at: 0.05 }, to: { edge: 'armhole', at: 0.95 } }],
    });
    expect(outside).toMatchObject({ ok: false, problem: { code: 'alter.cut-leaves-piece' } });
    const dart = cut(plainFront, {
      nodes: {},
      cuts: [{ id: 'a', from: { edge: 'armhole', at: 0.9 }, to: { edge: 'hem', at: 0.2 } }],
    });
    expect(dart).toMatchObject({ ok: false, problem: { code: 'alter.cut-through-dart' } });
  });
});

describe('joining', () => {
  it('gives the piece back where nothing was moved', () => {
    const pieces = made(strip, across);
    expect(join(pieces).piece).toEqual(strip);
    const curved = made(plainFront, {
      nodes: {},
      cuts: [{ id: 'a', from: { edge: 'neck', at: 0.4 }, to: { edge: 'hem', at: 0.6 } }],
    });
    const joined = join(curved).piece;
    expect(joined.runs.map((run) => run.path.length)).toEqual(plainFront.runs.map((run) => run.path.length));
    expect(apart(outlineOf(joined), outlineOf(plainFront))).toBeLessThan(1e-6);
  });

  it('puts in a band where a part slides, and keeps edges whole', () => {
    const pieces = made(strip, across);
    const slid = slide(pieces, partBeside(pieces, 'across', 'right'), at(0, 30));
    expect(putIn(slid)).toEqual([{ kind: 'band', at: 'across', area: 3000 }]);
    const { piece } = join(slid);
    expect(pieceArea(piece)).toBeCloseTo(23_000, 9);
    expect(piece.runs).toHaveLength(4);
    // Straight stretches that go on straight are one stretch again.
    expect(piece.runs.map((run) => run.path.length)).toEqual([1, 1, 1, 1]);
    expect(edgeLength(piece, 'right')).toBeCloseTo(230, 9);
    expect(piece.notches.map((notch) => notch.at * 230)).toEqual([expect.closeTo(50, 9), expect.closeTo(180, 9)]);
    expect(piece.levels[0]).toEqual({ id: 'low', from: at(0, 180), to: at(100, 180) });
    expect(piece.landmarks[0]?.at).toEqual(at(100, 230));
    expect(piece.grain).toEqual({ from: at(50, 40), to: at(50, 190) });
    expect(piece.lines[0]?.path).toEqual([line(at(20, 10), at(20, 220))]);
  });

  it('takes a band out where parts overlap, and slides back to what was', () => {
    const slid = slide(made(strip, across), partBeside(made(strip, across), 'across', 'right'), at(0, -30));
    expect(sumOf(putIn(slid))).toBeCloseTo(-3000, 9);
    const { piece } = join(slid);
    expect(piece.runs.map((run) => run.path.length)).toEqual([1, 1, 1, 1]);
    expect(edgeLength(piece, 'left')).toBeCloseTo(170, 9);
    const again = made(piece, {
      nodes: {},
      cuts: [{ id: 'across', from: { edge: 'left', at: 70 / 170 }, to: { edge: 'right', at: 100 / 170 } }],
    });
    const back = join(slide(again, partBeside(again, 'across', 'right'), at(0, 30))).piece;
    expect(apart(outlineOf(back), outlineOf(strip))).toBeLessThan(1e-9);
  });

  it('puts in a wedge where a part swings: half the square of the cut times the sine', () => {
    const pieces = made(strip, across);
    const lower = partBeside(pieces, 'across', 'right');
    const swung = swing(pieces, lower, at(0, 100), 0.2);
    const puts = putIn(swung);
    expect(puts).toHaveLength(1);
    expect(puts[0]).toMatchObject({ kind: 'wedge', at: 'across' });
    expect(puts[0]?.area).toBeCloseTo((100 ** 2 * Math.sin(0.2)) / 2, 9);
    const { piece, formers } = join(swung);
    expect(pieceArea(piece)).toBeCloseTo(20_000 + (puts[0]?.area ?? 0), 6);
    // Hinged on the left, open on the right.
    expect(formers.map(({ edge }) => edge).sort()).toEqual(['left', 'right']);
    expect(formers.find(({ edge }) => edge === 'left')?.before).toEqual(at(0, 100));
  });

  it('closes a dart by swinging what lies above it, and the dart is gone', () => {
    const { point, angle } = dartOf(plainFront, 'bust');
    const pieces = made(plainFront, {
      nodes: { point },
      cuts: [
        { id: 'upper', from: { node: 'point' }, to: { dart: 'bust', leg: 0 } },
        { id: 'lower', from: { node: 'point' }, to: { dart: 'bust', leg: 1 } },
        { id: 'open', from: { node: 'point' }, to: { edge: 'armhole', at: 0.8 } },
      ],
    });
    const moved = swing(pieces, partBeside(pieces, 'upper', 'left'), point, angle);
    const { piece } = join(moved);
    expect(piece.darts).toEqual([]);
    expect(piece.runs.filter((run) => run.kind === 'edge' && run.edge === 'side')).toHaveLength(1);
    expect(edgeLength(piece, 'side')).toBeCloseTo(edgeLength(plainFront, 'side'), 6);
    expect(pieceArea(piece)).toBeCloseTo(pieceArea(plainFront) + sumOf(putIn(moved)), 3);
  });
});

describe('redrawing', () => {
  const sloped: Piece = {
    ...strip,
    runs: strip.runs.map((run) =>
      run.kind === 'edge' && run.edge === 'right'
        ? { ...run, path: [line(at(100, 0), at(140, 200))] }
        : run.kind === 'edge' && run.edge === 'bottom'
          ? { ...run, path: [line(at(140, 200), at(0, 200))] }
          : run,
    ),
    landmarks: [],
    levels: [],
  };

  it('draws what was straight straight again, from corner to corner', () => {
    const pieces = made(sloped, across);
    const { piece, formers } = join(slide(pieces, partBeside(pieces, 'across', 'right'), at(0, 40)));
    const right = formers.find(({ edge }) => edge === 'right');
    if (!right) throw new Error('The right edge was not cut');
    const drawn = redraw(piece, right);
    expect(drawn.piece.runs[1]?.path).toEqual([line(at(100, 0), at(140, 240))]);
    expect(drawn.strayed).toBeGreaterThan(0);
    expect(pieceArea(drawn.piece)).toBeCloseTo(pieceArea(piece) + drawn.area, 6);
  });

  it('leaves what is smooth as it is', () => {
    const pieces = made(strip, across);
    const { piece, formers } = join(slide(pieces, partBeside(pieces, 'across', 'right'), at(0, 40)));
    for (const former of formers) expect(redraw(piece, former).piece).toBe(piece);
  });

  it('keeps notches where they were beyond a blend', () => {
    const pieces = made(plainFront, {
      nodes: {},
      cuts: [{ id: 'a', from: { edge: 'centre-front', at: 0.9 }, to: { edge: 'armhole', at: 0.7 } }],
    });
    const { piece, formers } = join(slide(pieces, partBeside(pieces, 'a', 'right'), at(0, 20)));
    const former = formers.find(({ edge }) => edge === 'armhole');
    if (!former) throw new Error('The armhole was not cut');
    const before = piece.notches.find(({ id }) => id === 'armhole-front');
    const drawn = redraw(piece, former).piece;
    const after = drawn.notches.find(({ id }) => id === 'armhole-front');
    const along = (one: Piece, share = 0) =>
      pathPointAtLength((one.runs[2] as Piece['runs'][number]).path, share * edgeLength(one, 'armhole'));
    expect(along(drawn, after?.at).y).toBeCloseTo(along(piece, before?.at).y, 0);
  });
});
