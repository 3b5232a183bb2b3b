import { describe, expect, it } from 'vitest';
import { housePattern, housePatterns } from '../drafting/index.ts';
import { pathBounds, pathLength, tolerance } from '../geometry/index.ts';
import {
  dartsOf,
  edgeLength,
  finishedGirths,
  type Garment,
  levelWidth,
  type Piece,
  validateGarment,
  walkAll,
} from '../pattern/index.ts';
import { applyAlterations } from './index.ts';
import { sharpest } from './testing/compare.ts';
import type { Altered } from './types.ts';

const blouse = housePattern('blouse')?.pattern().sizes[4]?.garment as Garment;

const step = (where: string, amount: number) => [
  { id: 's1', alteration: 'lengthen-shorten', version: 1, on: true, params: { where, amount } },
];

const done = (garment: Garment, where: string, amount: number): Altered => {
  const altered = applyAlterations(garment, step(where, amount));
  if (altered.refusal) throw new Error(JSON.stringify(altered.refusal));
  return altered;
};

const piece = (garment: Garment, id: string): Piece => garment.pieces.find((one) => one.id === id) as Piece;

describe('lengthening and shortening', () => {
  it.each([
    ['above-waist', 40],
    ['above-waist', -30],
    ['below-waist', 60],
    ['below-waist', -40],
  ])('%s by %d: front and back alike, seams walk, end widths stay', (where, amount) => {
    const { garment, outcomes } = done(blouse, where, amount);
    for (const [id, centre] of [
      ['front', 'centre-front'],
      ['back', 'centre-back'],
    ] as const) {
      expect(edgeLength(piece(garment, id), centre)).toBeCloseTo(edgeLength(piece(blouse, id), centre) + amount, 6);
      // The side seams are walked, which may move the corner at the hem by a hair.
      for (const edge of ['neck', 'shoulder', 'armhole', 'hem']) {
        expect(edgeLength(piece(garment, id), edge)).toBeCloseTo(edgeLength(piece(blouse, id), edge), 3);
      }
      for (const level of ['bust', 'hip']) {
        expect(levelWidth(piece(garment, id), level)).toBeCloseTo(levelWidth(piece(blouse, id), level), 1);
      }
      expect(sharpest(piece(garment, id), 'side')).toBeLessThan(0.01);
    }
    expect(validateGarment(garment)).toEqual([]);
    expect(walkAll(garment).every(({ meets }) => meets)).toBe(true);
    expect(piece(garment, 'sleeve')).toBe(piece(blouse, 'sleeve'));
    const zip = outcomes[0]?.applied.changes.find(({ what }) => what === 'zip-length');
    expect(zip?.by).toBeCloseTo(amount, 6);
  });

  it.each(['above-waist', 'below-waist', 'leg'])(
    'moves the places of pockets whole: %s, for every pattern that has one',
    (where) => {
      const places = (garment: Garment) =>
        garment.pieces.flatMap(({ id, lines }) =>
          lines
            .filter((inner) => inner.kind === 'placement' && /pocket/.test(inner.id))
            .map((inner) => ({ of: `${id} ${inner.id}`, ...pathBounds(inner.path), length: pathLength(inner.path) })),
        );
      const sewn = housePatterns.flatMap((house) =>
        house.views.map((view) => house.pattern({ view: view.id }).sizes[3]?.garment as Garment),
      );
      const moved = sewn.flatMap((garment) => {
        const altered = applyAlterations(garment, step(where, 30));
        if (altered.refusal) return [];
        const after = places(altered.garment);
        return places(garment).map((before, i) => {
          expect(after[i]?.length, before.of).toBeCloseTo(before.length, 6);
          return (after[i]?.minY ?? 0) - before.minY;
        });
      });
      for (const by of moved) expect(Math.abs(by) < 1e-6 || Math.abs(by - 30) < 1e-6).toBe(true);
      expect(moved.length).toBeGreaterThan(0);
    },
  );

  it('moves what lies below and leaves what lies above', () => {
    const { garment } = done(blouse, 'above-waist', 25);
    const level = (one: Garment, id: string) =>
      piece(one, 'front').levels.find((candidate) => candidate.id === id)?.from.y ?? 0;
    expect(level(garment, 'bust')).toBeCloseTo(level(blouse, 'bust'), 9);
    expect(level(garment, 'waist')).toBeCloseTo(level(blouse, 'waist') + 25, 9);
    expect(level(garment, 'hip')).toBeCloseTo(level(blouse, 'hip') + 25, 9);
    expect(piece(garment, 'front').darts).toEqual(piece(blouse, 'front').darts);
  });

  it('keeps notches of the side seam meeting', () => {
    const { garment } = done(blouse, 'above-waist', 35);
    for (const walk of walkAll(garment)) {
      for (const notch of walk.notches) expect(notch.meets, `${walk.seam.id} ${notch.a}`).toBe(true);
    }
  });

  it('lengthens the sleeve alone, its underarm seams alike', () => {
    const { garment } = done(blouse, 'sleeve', 30);
    const [before, after] = [piece(blouse, 'sleeve'), piece(garment, 'sleeve')];
    expect(edgeLength(after, 'hem')).toBeCloseTo(edgeLength(before, 'hem'), 6);
    expect(edgeLength(after, 'cap-front')).toBeCloseTo(edgeLength(before, 'cap-front'), 6);
    expect(piece(garment, 'front')).toBe(piece(blouse, 'front'));
    expect(walkAll(garment).every(({ meets }) => meets)).toBe(true);
  });

  it('takes the usual place where none is named', () => {
    const named = done(blouse, 'above-waist', 20).garment;
    const { garment } = applyAlterations(blouse, [
      { id: 's1', alteration: 'lengthen-shorten', version: 1, on: true, params: { amount: 20 } },
    ]);
    expect(garment).toEqual(named);
  });

  it('cuts a piece without a line of its own as far from its waist as its mate', () => {
    const bare: Garment = {
      ...blouse,
      pieces: blouse.pieces.map((one) => (one.role === 'back' ? { ...one, lines: [] } : one)),
    };
    const { garment } = done(bare, 'above-waist', 30);
    expect(walkAll(garment).every(({ meets }) => meets)).toBe(true);
    expect(edgeLength(piece(garment, 'back'), 'centre-back')).toBeCloseTo(
      edgeLength(piece(blouse, 'back'), 'centre-back') + 30,
      6,
    );
  });

  it('refuses when a mate cannot follow, and when a dart lies in the way', () => {
    const noWaist: Garment = {
      ...blouse,
      pieces: blouse.pieces.map((one) => (one.role === 'back' ? { ...one, levels: [], lines: [] } : one)),
      girths: [],
    };
    expect(applyAlterations(noWaist, step('above-waist', 30)).refusal?.problem.code).toBe('alter.seam-does-not-walk');
    const { refusal } = applyAlterations(blouse, step('above-waist', -80));
    expect(refusal?.problem.code).toBe('alter.width-changes');
    const largest = refusal?.largest?.amount as number;
    expect(largest).toBeLessThan(-20);
    expect(applyAlterations(blouse, step('above-waist', largest)).refusal).toBeNull();
    expect(applyAlterations(blouse, step('above-waist', largest - 0.5)).refusal).not.toBeNull();
  });

  it('leaves room between dart and waist, and says the largest amount that does', () => {
    const large = housePattern('blouse')?.pattern().sizes.at(-1)?.garment as Garment;
    const { refusal } = applyAlterations(large, step('above-waist', -80));
    expect(refusal?.problem.code).toBe('alter.no-room');
    const largest = refusal?.largest?.amount as number;
    expect(largest).toBeLessThan(-20);
    expect(largest).toBeGreaterThan(-80);
    const foot = (one: Garment) =>
      Math.max(...dartsOf(piece(one, 'front')).flatMap(({ legs }) => legs.map((p) => p.y)));
    const waist = (one: Garment) => piece(one, 'front').levels.find(({ id }) => id === 'waist')?.from.y ?? 0;
    const { garment } = done(large, 'above-waist', largest);
    expect(waist(garment) - foot(garment)).toBeGreaterThanOrEqual(40);
  });

  it('refuses four inches off the bodice: more than any usual pattern has there', () => {
    for (const amount of [-100, -125]) {
      const { refusal } = applyAlterations(blouse, step('above-waist', amount));
      expect(refusal?.problem.code).toMatch(/alter\.(no-room|out-of-range)/);
      expect(refusal?.largest?.amount).toBeGreaterThan(-85);
    }
  });

  it('keeps finished girths at every level to its tolerance in whatever size and by whatever amount is not refused', () => {
    for (const { garment } of housePattern('blouse')?.pattern().sizes ?? []) {
      for (const where of ['above-waist', 'below-waist']) {
        for (const amount of [-80, -60, -40, -20, 60, 150]) {
          const altered = applyAlterations(garment, step(where, amount));
          if (altered.refusal) continue;
          const before = finishedGirths(garment);
          finishedGirths(altered.garment).forEach((girth, index) => {
            expect(
              Math.abs(girth.finished - (before[index]?.finished ?? 0)),
              `${where} ${amount} ${girth.level}`,
            ).toBeLessThan(tolerance.girthKept + tolerance.length);
          });
        }
      }
    }
  });

  it('refuses where there is nothing to lengthen', () => {
    const bodice: Garment = { pieces: [piece(blouse, 'front-facing')], seams: [], girths: [] };
    expect(applyAlterations(bodice, step('sleeve', 10)).refusal?.problem.code).toBe('alter.no-lengthen-line');
  });
});
