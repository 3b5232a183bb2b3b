import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { housePattern } from '../../drafting/index.ts';
import { validateOutline } from '../../geometry/index.ts';
import { type Garment, outlineOf, pieceOf, walkAll, walkSeam } from '../../pattern/index.ts';
import { applyAlterations } from '../apply.ts';
import { applyOne } from '../apply-one.ts';
import { seamsAlterations } from './index.ts';
import { endsToTrue, seamsToTrue } from './seam-ends.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`seams properties: fresh seed ${fresh}`);
const always = (runs: number, property: fc.IRawProperty<unknown>): void => {
  fc.assert(property, { seed: 20261, numRuns: runs });
  fc.assert(property, { seed: fresh, numRuns: runs });
};

const blouse = housePattern('blouse')?.pattern().sizes[3]?.garment as Garment;
const [trueSeam, sewSeam, moveNotch] = ['true-seam', 'sew-seam', 'move-notch'].map((id) =>
  seamsAlterations.find((one) => one.id === id),
) as [(typeof seamsAlterations)[number], (typeof seamsAlterations)[number], (typeof seamsAlterations)[number]];

/** The blouse with its back carried on at the hem end of the side seam: one edge too long, as traced carelessly. */
const off = (by: number): Garment => {
  const seams = blouse.seams.map((seam) => (seam.id === 'side' ? { ...seam, easeMin: -50, easeMax: 50 } : seam));
  const end = endsToTrue(blouse, blouse.seams.find(({ id }) => id === 'side') as Garment['seams'][number])[0] ?? 'end';
  const made = applyOne(trueSeam, { ...blouse, seams }, { seam: 'side', end, which: 'b', amount: by });
  if (!made.ok) throw new Error(made.problem.code);
  return { ...made.value.garment, seams: blouse.seams };
};
const sideOf = (garment: Garment) => garment.seams.find(({ id }) => id === 'side') as Garment['seams'][number];

describe('a seam that does not walk', () => {
  it('is trued at its end until it does, on either side or both', () => {
    always(
      12,
      fc.property(
        fc.double({ min: 1, max: 15, noNaN: true }),
        fc.constantFrom('a', 'b', 'both'),
        fc.constantFrom(-1, 1),
        (by, which, sign) => {
          const bad = off(sign * by);
          expect(walkSeam(bad, sideOf(bad)).difference).toBeCloseTo(-sign * by, 1);
          const made = applyOne(trueSeam, bad, { seam: 'side', end: 'end', which, amount: 0 });
          if (!made.ok) throw new Error(`${made.problem.code} ${JSON.stringify(made.problem.values)}`);
          const { garment } = made.value;
          expect(walkSeam(garment, sideOf(garment)).meets).toBe(true);
          for (const piece of garment.pieces) expect(validateOutline(outlineOf(piece))).toEqual([]);
          const missed = walkAll(garment).filter(({ meets }) => !meets);
          expect(missed).toEqual([]);
          if (which === 'a') expect(pieceOf(garment, 'back')).toBe(pieceOf(bad, 'back'));
        },
      ),
    );
  });

  it('is eased, gathered or stretched on purpose', () => {
    const bad = off(8);
    for (const how of ['eased', 'gathered', 'stretched'] as const) {
      const made = applyOne(sewSeam, bad, { seam: 'side', how, amount: 10 });
      if (!made.ok) throw new Error(made.problem.code);
      const seam = sideOf(made.value.garment);
      expect(walkSeam(made.value.garment, seam).meets).toBe(true);
      expect(seam.how).toBe(how);
      // The back is the longer: it is what is eased or gathered; the front is what is stretched.
      expect(seam.a.piece).toBe(how === 'stretched' ? 'front' : 'back');
      expect(seam.notches.every(([a]) => pieceOf(bad, seam.a.piece).notches.some(({ id }) => id === a))).toBe(true);
    }
  });

  it('is not called plain while it differs, and warns of what puckers', () => {
    const eased = applyOne(sewSeam, off(40), { seam: 'side', how: 'eased', amount: 45 });
    expect(eased.ok && eased.value.warnings.map(({ code }) => code)).toEqual(['alter.ease-puckers']);
    const armhole = applyOne(sewSeam, blouse, { seam: 'armhole-front', how: 'plain', amount: 0 });
    expect(armhole.ok ? '' : armhole.problem.code).toBe('alter.seam-does-not-walk');
    const gathered = applyOne(sewSeam, off(8), { seam: 'side', how: 'gathered', amount: 10 });
    expect(gathered.ok && gathered.value.warnings.map(({ code }) => code)).toEqual(['alter.hardly-gathered']);
  });
});

describe('a notch', () => {
  it('moves with its mates and still meets them; there and back is where it was', () => {
    const names = moveNotch.options?.(blouse, 'notch', {}) ?? [];
    always(
      40,
      fc.property(fc.constantFrom(...names), fc.double({ min: -15, max: 15, noNaN: true }), (notch, by) => {
        const there = applyOne(moveNotch, blouse, { notch, amount: by, with: 'with-mate' });
        if (!there.ok) {
          expect(['alter.notch-off-edge', 'alter.does-not-hold', 'alter.changes-nothing']).toContain(
            there.problem.code,
          );
          return;
        }
        const back = applyOne(moveNotch, there.value.garment, { notch, amount: -by, with: 'with-mate' });
        if (!back.ok) throw new Error(back.problem.code);
        for (const piece of blouse.pieces) {
          const now = pieceOf(back.value.garment, piece.id).notches;
          piece.notches.forEach((mark, i) => {
            expect(now[i]?.at).toBeCloseTo(mark.at, 9);
          });
        }
      }),
    );
  });

  it('is refused where it would miss its mate', () => {
    const made = applyOne(moveNotch, blouse, { notch: 'front/waist', amount: 9, with: 'alone' });
    expect(made.ok).toBe(false);
  });
});

describe('a list with mended seams', () => {
  it('is done alike in every size', () => {
    const step = (id: string, alteration: string, params: Readonly<Record<string, number | string>>) => ({
      id,
      alteration,
      version: 1,
      on: true,
      params,
    });
    const list = [
      step('a', 'sew-seam', { seam: 'shoulder', how: 'eased', amount: 8 }),
      step('b', 'move-notch', { notch: 'front/waist', amount: 12, with: 'with-mate' }),
      step('c', 'true-seam', { seam: 'side', end: 'end', which: 'both', amount: 4 }),
    ];
    for (const { garment } of housePattern('blouse')?.pattern().sizes ?? []) {
      const altered = applyAlterations(garment, list);
      expect(altered.refusal).toBeNull();
      expect(walkAll(altered.garment).filter(({ meets }) => !meets)).toEqual([]);
      expect(altered.garment.seams.find(({ id }) => id === 'shoulder')?.easeMax).toBe(8);
    }
  });
});

describe('on every house pattern', () => {
  const patterns = ['blouse', 'shirt-dress', 'trousers'].flatMap((id) => {
    const garment = housePattern(id)?.pattern().sizes[2]?.garment;
    return garment ? [{ id, garment }] : [];
  });
  it.each(patterns)('$id: most seams can be made a little longer on both sides', ({ garment }) => {
    const told = seamsToTrue(garment).map((seam) => {
      const [end] = endsToTrue(garment, seam);
      const made = applyOne(trueSeam, garment, { seam: seam.id, end: end as string, which: 'both', amount: 3 });
      return made.ok ? '' : `${seam.id} ${made.problem.code} ${JSON.stringify(made.problem.values)}`;
    });
    const refused = told.filter((one) => one !== '');
    // Where a longer seam would part another, as a stand from its own fold, it is refused and nothing else.
    for (const one of refused) expect(one).toMatch(/seam-does-not-walk|edge-used-up/);
    expect(refused.length).toBeLessThanOrEqual(told.length / 2);
  });
});
