import { describe, expect, it } from 'vitest';
import { housePattern, housePatterns } from '../../drafting/index.ts';
import { mirrorX, outlineArea, selfIntersections } from '../../geometry/index.ts';
import {
  type AlterationStep,
  cutLine,
  finishedGirths,
  type Garment,
  outlineOf,
  pieceOf,
  transformPiece,
  validateGarment,
  walkAll,
} from '../../pattern/index.ts';
import { alterationCatalogue, applyAlterations, createAlterationCache } from '../index.ts';
import { garmentsApart } from '../testing/compare.ts';
import type { Alteration } from '../types.ts';

const step = (
  alteration: Pick<Alteration, 'id' | 'version'>,
  params: AlterationStep['params'],
  id = 's',
): AlterationStep => ({
  id,
  alteration: alteration.id,
  version: alteration.version,
  on: true,
  params,
});

/** The middle of what is usual, towards the end furthest from nothing; the first of what can be chosen or named. */
const usualParams = (alteration: Alteration, garment: Garment): AlterationStep['params'] =>
  Object.fromEntries(
    Object.entries(alteration.params).flatMap(([name, parameter]): [string, string | number][] => {
      if (name === 'side') return [];
      if (parameter.unit === 'mm') return [[name, Math.round((parameter.usual[0] + 2 * parameter.usual[1]) / 3)]];
      if (parameter.unit === 'share') return [[name, (parameter.usual[0] + parameter.usual[1]) / 2]];
      if (parameter.unit === 'choice') return [[name, parameter.usual]];
      const [first] = alteration.options?.(garment, name) ?? [];
      return first === undefined ? [] : [[name, first]];
    }),
  );

const garments = housePatterns.flatMap((house) =>
  house.views.map((view) => {
    const { sizes } = house.pattern({ view: view.id });
    const middle = sizes[Math.floor(sizes.length / 2)];
    if (!middle) throw new Error(`${house.id} has no sizes`);
    return { name: `${house.id} ${view.id}`, garment: middle.garment };
  }),
);

const oneSided = alterationCatalogue.filter(({ params }) => 'side' in params);

describe('an alteration on one half of the body', () => {
  it.each(oneSided.map((alteration) => [alteration.id, alteration] as const))(
    '%s leaves a garment that can be cut, wherever both halves take it',
    (_, alteration) => {
      let [tried, refused] = [0, 0];
      for (const { name, garment } of garments) {
        if (alteration.needs(garment)) continue;
        const params = usualParams(alteration, garment);
        if (applyAlterations(garment, [step(alteration, params)]).refusal) continue;
        for (const side of ['right', 'left']) {
          tried += 1;
          const altered = applyAlterations(garment, [step(alteration, { ...params, side })]);
          if (altered.refusal) {
            refused += 1;
            continue;
          }
          const where = `${name}, ${side}`;
          expect(validateGarment(altered.garment), where).toEqual(validateGarment(garment));
          const off = (one: Garment) => walkAll(one).filter(({ meets }) => !meets).length;
          expect(off(altered.garment), where).toBeLessThanOrEqual(2 * off(garment));
          for (const piece of altered.garment.pieces) {
            expect(selfIntersections(cutLine(piece)), `${where}: ${piece.id}`).toEqual([]);
            expect(outlineArea(outlineOf(piece))).toBeGreaterThan(0);
          }
          for (const report of altered.pieces) {
            const put = report.puts.reduce((sum, { area }) => sum + area, 0);
            expect(report.areaBefore + put + report.areaTrued, where).toBeCloseTo(report.areaAfter, 2);
          }
        }
      }
      // A hood joined to the neck in one piece cannot take a gape closed on one half: that is the most that is refused.
      if (tried > 0) expect(refused / tried, `${refused} of ${tried} refused`).toBeLessThanOrEqual(0.15);
    },
  );

  it.each(oneSided.map((alteration) => [alteration.id, alteration] as const))(
    '%s on the right and then as much on the left is the same as on both',
    (_, alteration) => {
      for (const { garment } of garments) {
        if (alteration.needs(garment)) continue;
        const params = usualParams(alteration, garment);
        const whole = applyAlterations(garment, [step(alteration, params)]);
        const apart = applyAlterations(garment, [
          step(alteration, { ...params, side: 'right' }, 'r'),
          step(alteration, { ...params, side: 'left' }, 'l'),
        ]);
        // Where the first of the two is refused, or levelled at the centre, there is nothing to compare.
        if (whole.refusal || apart.refusal || apart.garment.pieces.length !== whole.garment.pieces.length) continue;
        const parted = apart.garment.pieces.some(
          ({ id, edges }, i) =>
            id !== whole.garment.pieces[i]?.id || edges.length !== whole.garment.pieces[i]?.edges.length,
        );
        if (parted) continue;
        // What makes the centre longer is levelled there in between.
        if (alteration.family === 'bust' || alteration.id === 'neck-gape') continue;
        expect(garmentsApart(apart.garment, whole.garment)).toBeLessThan(1e-3);
      }
    },
  );
});

const blouse = housePattern('blouse')?.pattern().sizes[4]?.garment as Garment;
const skirt = housePattern('skirt')?.pattern().sizes[4]?.garment as Garment;
const sides = alterationCatalogue.find(({ id }) => id === 'run-sides') as Alteration;

describe('a garment whose halves differ', () => {
  const right = applyAlterations(blouse, [step(sides, { where: 'waist', amount: 8, side: 'right' })]);

  it('opens what was cut on the fold, and tells a pair apart as two pieces cut once each', () => {
    expect(right.garment.pieces.map(({ id }) => id)).toEqual([
      'front',
      'back',
      'back-left',
      'sleeve',
      'front-facing',
      'back-facing',
    ]);
    const front = pieceOf(right.garment, 'front');
    expect(front.edges.some(({ finish }) => finish === 'fold')).toBe(false);
    expect(front.edges.map(({ id }) => id)).toContain('side-left');
    for (const id of ['back', 'back-left']) {
      expect(pieceOf(right.garment, id).cut).toEqual([{ layer: 'shell', count: 1, mirrored: false }]);
    }
    expect(pieceOf(right.garment, 'back').name).toBe('Back, right');
    expect(right.before.pieces.map(({ id }) => id)).toEqual(right.garment.pieces.map(({ id }) => id));
  });

  it('grows round the body by what the one half gets', () => {
    const girth = (garment: Garment, level: string) =>
      finishedGirths(garment).find((one) => one.level === level)?.finished ?? 0;
    expect(girth(right.garment, 'waist') - girth(blouse, 'waist')).toBeCloseTo(16, 0);
    expect(girth(right.garment, 'hip') - girth(blouse, 'hip')).toBeCloseTo(0, 1);
  });

  it('is the mirror image of the same done on the other half', () => {
    const left = applyAlterations(blouse, [step(sides, { where: 'waist', amount: 8, side: 'left' })]);
    const area = (garment: Garment, id: string) => outlineArea(outlineOf(pieceOf(garment, id)));
    expect(area(left.garment, 'back-left')).toBeCloseTo(area(right.garment, 'back'), 6);
    expect(area(left.garment, 'back')).toBeCloseTo(area(right.garment, 'back-left'), 6);
    expect(area(left.garment, 'front')).toBeCloseTo(area(right.garment, 'front'), 6);
    const over = transformPiece(pieceOf(right.garment, 'back'), mirrorX());
    expect(outlineArea(outlineOf(over))).toBeCloseTo(area(left.garment, 'back-left'), 6);
  });

  it('splices a waistband, longer on the right half only', () => {
    const altered = applyAlterations(skirt, [step(sides, { where: 'waist', amount: 10, side: 'right' })]);
    expect(altered.refusal).toBeNull();
    const long = (garment: Garment, edge: string) =>
      walkAll(garment).find(({ seam }) => seam.b.piece === 'waistband' && seam.b.edge === edge)?.lengthB ?? 0;
    expect(long(altered.garment, 'front-right') - long(skirt, 'front-right')).toBeGreaterThan(8);
    expect(long(altered.garment, 'front-left') - long(skirt, 'front-left')).toBeCloseTo(0, 3);
  });

  it('survives a change of size and is the same with a cache as without', () => {
    const list = [
      step(sides, { where: 'hip', amount: 6, side: 'left' }, 'a'),
      { ...step(sides, { where: 'below-waist', amount: 20 }, 'b'), alteration: 'lengthen-shorten' },
    ];
    const cache = createAlterationCache();
    for (const { garment } of housePattern('blouse')?.pattern().sizes ?? []) {
      const plain = applyAlterations(garment, list);
      expect(plain.refusal).toBeNull();
      expect(applyAlterations(garment, list, cache)).toEqual(plain);
      expect(applyAlterations(garment, list, cache)).toEqual(plain);
      expect(applyAlterations(garment, list, cache).garment).toBe(applyAlterations(garment, list, cache).garment);
    }
  });

  it('does nothing twice while both halves are alike', () => {
    const both = applyAlterations(blouse, [step(sides, { where: 'hip', amount: 6 })]);
    expect(both.before).toBe(blouse);
    expect(both.garment.pieces.map(({ id }) => id)).toEqual(blouse.pieces.map(({ id }) => id));
  });

  it('refuses a half where an alteration is for the whole body', () => {
    const seat = alterationCatalogue.find(({ id }) => id === 'seat') as Alteration;
    const refused = applyAlterations(skirt, [step(seat, { amount: 8, side: 'right' })]);
    expect(refused.refusal?.problem.code).toBe('alter.not-one-sided');
    const odd = applyAlterations(skirt, [step(sides, { where: 'hip', amount: 8, side: 'upper' })]);
    expect(odd.refusal?.problem.code).toBe('alter.not-a-choice');
  });
});
