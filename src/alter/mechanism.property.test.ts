import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insideOutline, type Outline, type Path, pathEnd, pathStart, samePoint } from '../geometry/index.ts';
import { edgeLength, outlineOf, type Piece, pieceArea } from '../pattern/index.ts';
import { type CutPiece, cut } from './cut.ts';
import { join } from './join.ts';
import { slide, swing } from './move.ts';
import { putIn, sumOf } from './put.ts';
import { risingFront } from './testing/bodice.ts';
import { apart } from './testing/compare.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`mechanism properties: fresh seed ${fresh}`);

const always = (runs: number, property: fc.IRawProperty<unknown>): void => {
  fc.assert(property, { seed: 20261, numRuns: runs });
  fc.assert(property, { seed: fresh, numRuns: runs });
};

const bare: Piece = { ...risingFront, levels: [], notches: [] };
const edges = bare.edges.map(({ id }) => id);

/** Spokes from a point inside the front to places all round it, and a motion for each part between them. */
const spokes = fc.record({
  at: fc.record({
    x: fc.double({ min: 20, max: 220, noNaN: true }),
    y: fc.double({ min: 100, max: 580, noNaN: true }),
  }),
  ends: fc.uniqueArray(fc.record({ edge: fc.constantFrom(...edges), at: fc.double({ min: 0, max: 1, noNaN: true }) }), {
    minLength: 2,
    maxLength: 5,
    selector: ({ edge, at }) => `${edge} ${Math.round(at * 20)}`,
  }),
  motions: fc.array(
    fc.record({
      // In steps of a hundred-thousandth: a part a metre long then moves by a hundredth of a millimetre or not at all.
      turn: fc.integer({ min: -40_000, max: 40_000 }).map((steps) => steps / 100_000),
      x: fc.double({ min: -40, max: 40, noNaN: true }),
      y: fc.double({ min: -40, max: 40, noNaN: true }),
    }),
    { minLength: 5, maxLength: 5 },
  ),
});

/** The front cut along the spokes, or null where one leaves the piece, goes through its dart or is too short. */
const cutAlong = ({
  at,
  ends,
}: {
  at: { x: number; y: number };
  ends: readonly { edge: string; at: number }[];
}): CutPiece | null => {
  if (!insideOutline(outlineOf(bare), at)) return null;
  const made = cut(bare, {
    nodes: { middle: at },
    cuts: ends.map((to, i) => ({ id: `${i}`, from: { node: 'middle' }, to })),
  });
  return made.ok ? made.value : null;
};

const closed = (outline: Outline): boolean =>
  outline.every((segment, i) =>
    samePoint(segment.from, pathEnd([outline[(i + outline.length - 1) % outline.length]] as Path)),
  );

describe('any cut, any motion', () => {
  it('makes parts that own all of the outline between them, and joins to the very piece when nothing moved', () => {
    let tried = 0;
    always(
      250,
      fc.property(spokes, (given) => {
        const pieces = cutAlong(given);
        if (!pieces) return;
        tried += 1;
        expect(pieces.parts).toHaveLength(given.ends.length);
        for (const id of edges) {
          const mine = pieces.fragments.filter(({ of }) => of.kind === 'edge' && of.edge === id);
          expect(mine.reduce((sum, { from, to }) => sum + to - from, 0)).toBeCloseTo(edgeLength(bare, id), 6);
        }
        const { piece, puts, formers } = join(pieces);
        expect(puts).toEqual([]);
        expect(formers).toEqual([]);
        expect(piece.runs.map((run) => run.path.length)).toEqual(bare.runs.map((run) => run.path.length));
        expect(apart(outlineOf(piece), outlineOf(bare))).toBeLessThan(1e-5);
      }),
    );
    expect(tried).toBeGreaterThan(60);
  });

  it('changes the area by exactly what wedges, bands and corners put in, edges whole and the outline closed', () => {
    let tried = 0;
    always(
      250,
      fc.property(spokes, (given) => {
        const pieces = cutAlong(given);
        if (!pieces) return;
        tried += 1;
        const moved = pieces.parts.reduce((parts, _, part) => {
          const { turn, x, y } = given.motions[part] ?? { turn: 0, x: 0, y: 0 };
          return slide(swing(parts, part, given.at, turn), part, { x, y });
        }, pieces);
        const { piece } = join(moved);
        expect(Math.abs(pieceArea(piece) - pieceArea(bare) - sumOf(putIn(moved)))).toBeLessThan(1e-3);
        expect(closed(outlineOf(piece))).toBe(true);
        expect(pathStart(outlineOf(piece))).toEqual(pathEnd(outlineOf(piece)));
        expect(new Set(piece.runs.map((run) => (run.kind === 'edge' ? run.edge : run.dart)))).toEqual(
          new Set(bare.runs.map((run) => (run.kind === 'edge' ? run.edge : run.dart))),
        );
      }),
    );
    expect(tried).toBeGreaterThan(60);
  });
});
