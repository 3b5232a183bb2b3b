import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import type { AlterationStep, Garment } from '../pattern/index.ts';
import { alterProblems, alterWords } from '../words/index.ts';
import { alterationCatalogue, applyAlterations, createAlterationCache } from './index.ts';
import type { Alteration } from './types.ts';

const blouse = housePattern('blouse')?.pattern().sizes[3]?.garment as Garment;

const step = (id: string, alteration: string, params: AlterationStep['params'], on = true): AlterationStep => ({
  id,
  alteration,
  version: 1,
  on,
  params,
});

const list = [
  step('a', 'lengthen-shorten', { where: 'above-waist', amount: 20 }),
  step('b', 'full-bust', { amount: 12 }),
  step('c', 'lengthen-shorten', { where: 'sleeve', amount: -15 }),
];

describe('an alteration list', () => {
  it('does its steps in order, and passes over those switched off', () => {
    const all = applyAlterations(blouse, list);
    expect(all.refusal).toBeNull();
    expect(all.outcomes.map((outcome) => outcome.step.id)).toEqual(['a', 'b', 'c']);
    const without = applyAlterations(
      blouse,
      list.map((one) => (one.id === 'b' ? { ...one, on: false } : one)),
    );
    expect(without.garment).toEqual(
      applyAlterations(
        blouse,
        list.filter(({ id }) => id !== 'b'),
      ).garment,
    );
    expect(
      applyAlterations(
        blouse,
        list.map((one) => ({ ...one, on: false })),
      ).garment,
    ).toBe(blouse);
  });

  it('reports every piece from before the first step to after the last', () => {
    const { pieces } = applyAlterations(blouse, list);
    expect(pieces.map(({ piece }) => piece)).toEqual(blouse.pieces.map(({ id }) => id));
    for (const report of pieces) {
      const put = report.puts.reduce((sum, { area }) => sum + area, 0);
      expect(report.areaAfter).toBeCloseTo(report.areaBefore + put + report.areaTrued, 4);
    }
    expect(pieces.find(({ piece }) => piece === 'back-facing')?.areaTrued).toBe(0);
  });

  it('stops at the first step refused, with the garment the steps before made', () => {
    const stopped = applyAlterations(blouse, [
      list[0] as AlterationStep,
      step('b', 'small-bust', { amount: 39 }),
      list[2] as AlterationStep,
    ]);
    expect(stopped.refusal).toMatchObject({ step: 'b', alteration: 'small-bust' });
    expect(stopped.garment).toEqual(applyAlterations(blouse, list.slice(0, 1)).garment);
    expect(stopped.outcomes).toHaveLength(1);
  });

  it.each([
    [step('x', 'no-such', {}), 'alter.unknown'],
    [{ ...step('x', 'full-bust', { amount: 10 }), version: 9 }, 'alter.unknown-version'],
    [step('x', 'full-bust', {}), 'alter.not-an-amount'],
    [step('x', 'full-bust', { amount: Number.NaN }), 'alter.not-an-amount'],
    [step('x', 'full-bust', { amount: 'much' }), 'alter.not-an-amount'],
    [step('x', 'lengthen-shorten', { where: 'at the moon', amount: 10 }), 'alter.not-a-choice'],
    [step('x', 'full-bust', { amount: 500 }), 'alter.out-of-range'],
  ])('refuses %j', (wrong, code) => {
    const { refusal, garment } = applyAlterations(blouse, [wrong]);
    expect(refusal?.problem.code).toBe(code);
    expect(garment).toBe(blouse);
  });

  it('names the largest amount that would hold, when too much was asked for', () => {
    const { refusal } = applyAlterations(blouse, [step('x', 'full-bust', { amount: 500 })]);
    const amount = refusal?.largest?.amount as number;
    expect(amount).toBeGreaterThan(30);
    expect(applyAlterations(blouse, [step('x', 'full-bust', { amount })]).refusal).toBeNull();
  });
});

describe('the cache', () => {
  it('does again only what follows a changed step', () => {
    let done = 0;
    const counted: Alteration[] = alterationCatalogue.map((one) => ({
      ...one,
      apply: (garment, params) => {
        done += 1;
        return one.apply(garment, params);
      },
    }));
    const cache = createAlterationCache();
    const run = (steps: readonly AlterationStep[]) => applyAlterations(blouse, steps, cache, counted);
    run(list);
    expect(done).toBe(3);
    run(list);
    expect(done).toBe(3);
    run([list[0] as AlterationStep, step('b', 'full-bust', { amount: 13 }), list[2] as AlterationStep]);
    expect(done).toBe(5);
  });

  it('answers as no cache would, refusals too, and forgets what is long past', () => {
    const cache = createAlterationCache();
    for (let i = 0; i < 80; i += 1) {
      applyAlterations(blouse, [step('b', 'full-bust', { amount: 1 + i / 10 })], cache);
    }
    for (const steps of [list, [step('x', 'small-bust', { amount: 35 })], [step('x', 'small-bust', { amount: 30 })]]) {
      const fresh = applyAlterations(blouse, steps);
      expect(applyAlterations(blouse, steps, cache)).toEqual(fresh);
      expect(applyAlterations(blouse, steps, cache)).toEqual(fresh);
    }
  });
});

describe('the catalogue', () => {
  it.each(alterationCatalogue.map((one) => [one.id, one] as const))(
    '%s has words for all a person reads',
    (id, one) => {
      expect(alterWords.alterations).toHaveProperty([id]);
      expect(alterWords.alterations[id]?.source, 'where its construction comes from').toMatch(/^[A-Z].+\.$/);
      for (const hold of one.holds) expect(alterWords.holds).toHaveProperty([hold]);
      for (const follow of one.follows) expect(alterWords.follows).toHaveProperty([follow]);
      for (const [name, parameter] of Object.entries(one.params)) {
        expect(alterWords.parameters).toHaveProperty([name]);
        if (parameter.unit === 'choice') {
          for (const choice of parameter.choices) expect(alterWords.choices).toHaveProperty([choice]);
        }
      }
      if (one.amount !== null) expect(one.params[one.amount]?.unit).toMatch(/^(mm|share)$/);
    },
  );

  it('has words for everything held and changed', () => {
    const { held, outcomes } = applyAlterations(blouse, list);
    for (const { what } of held) expect(alterWords.held).toHaveProperty([what]);
    for (const { what } of outcomes.flatMap(({ applied }) => applied.changes)) {
      expect(alterWords.changed).toHaveProperty([what]);
    }
    expect(Object.keys(alterProblems).length).toBeGreaterThan(20);
  });

  it('takes another alteration without any change elsewhere', () => {
    const nothing: Alteration = {
      id: 'nothing',
      version: 1,
      family: 'length',
      inAll: 1,
      needs: () => null,
      params: { amount: { unit: 'mm', min: 0, max: 1, usual: [0, 1] } },
      amount: 'amount',
      holds: [],
      follows: [],
      apply: (garment) => ({
        ok: true,
        value: { garment, untrued: garment, held: [], changes: [], warnings: [], pieces: [], cuts: [] },
      }),
    };
    const altered = applyAlterations(blouse, [step('n', 'nothing', { amount: 0 }), ...list], undefined, [
      nothing,
      ...alterationCatalogue,
    ]);
    expect(altered.refusal).toBeNull();
    expect(altered.garment).toEqual(applyAlterations(blouse, list).garment);
  });
});
