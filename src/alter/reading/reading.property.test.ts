import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alterationCatalogue } from '../catalogue.ts';
import {
  directions,
  directionsAt,
  fittingCauses,
  type Half,
  halves,
  kindsAt,
  postures,
  type Reading,
  readFitting,
  type Sign,
  signKinds,
  zoneIds,
} from './index.ts';

const fresh = Number(process.env['EASEWRIGHT_SEED'] ?? Date.now());
console.info(`readings are tried with seed ${fresh}`);
const seeds = [20261, fresh];

const anySign: fc.Arbitrary<Sign> = fc.record({
  zone: fc.constantFrom(...zoneIds),
  kind: fc.constantFrom(...signKinds),
  direction: fc.option(fc.constantFrom(...directions)),
  posture: fc.constantFrom(...postures),
  half: fc.constantFrom(...halves),
  pinned: fc.option(fc.integer({ min: 1, max: 60 })),
});
/** A sign the table speaks of. */
const knownSign = fc
  .constantFrom(...fittingCauses.flatMap(({ evidence }) => evidence.filter((one) => one.weight > 0)))
  .chain(
    ({ zone, kind, along, posture }): fc.Arbitrary<Sign> =>
      fc.record({
        zone: fc.constant(zone),
        kind: fc.constant(kind),
        direction: along ? fc.constantFrom(...along) : fc.constant(null),
        posture: posture ? fc.constantFrom(...posture) : fc.constantFrom(...postures),
        half: fc.constantFrom(...halves),
        pinned: fc.option(fc.integer({ min: 1, max: 60 })),
      }),
  );
const signs = fc.array(fc.oneof(knownSign, anySign), { minLength: 1, maxLength: 6 });
const kinds = fc.constantFrom('top', 'dress', 'jacket', 'trousers', 'skirt');

const read = (seen: readonly Sign[], kind: string): Reading =>
  readFitting(seen, { kind, garment: null, catalogue: alterationCatalogue });
const mirroredHalf = (half: Half): Half => (half === 'right' ? 'left' : half === 'left' ? 'right' : half);

describe.each(seeds)('readings (seed %i)', (seed) => {
  const check = (property: fc.IProperty<never> | fc.IRawProperty<unknown>) =>
    fc.assert(property as fc.IProperty<unknown>, { seed, numRuns: 300 });

  it('answer every sign with a suggestion or a reason', () =>
    check(
      fc.property(signs, kinds, (seen, kind) => {
        const { suggestions, unread } = read(seen, kind);
        const answered = suggestions.flatMap(({ supporting }) => supporting.map(({ sign }) => sign));
        expect([...new Set([...answered, ...unread.map(({ sign }) => sign)])].toSorted()).toEqual(
          seen.map((_, at) => at),
        );
      }),
    ));

  it('scale with the pins', () =>
    check(
      fc.property(signs, kinds, fc.integer({ min: 2, max: 5 }), (seen, kind, times) => {
        const larger = read(
          seen.map((one) => ({ ...one, pinned: one.pinned === null ? null : one.pinned * times })),
          kind,
        );
        const plain = read(seen, kind);
        expect(larger.suggestions.map(({ cause, side }) => [cause, side])).toEqual(
          plain.suggestions.map(({ cause, side }) => [cause, side]),
        );
        plain.suggestions.forEach(({ amount }, at) => {
          const by = amount.from === 'guess' ? 1 : times;
          expect(larger.suggestions[at]?.amount.asked).toBeCloseTo(amount.asked * by, 9);
        });
      }),
    ));

  it('are mirrored with the signs', () =>
    check(
      fc.property(signs, kinds, (seen, kind) => {
        const mirrored = read(
          seen.map((one) => ({ ...one, half: mirroredHalf(one.half) })),
          kind,
        );
        const key = (of: Reading, half: (half: Half) => Half) =>
          of.suggestions
            .map(({ cause, side, score, amount }) => JSON.stringify([cause, half(side), score, amount.asked]))
            .toSorted();
        expect(key(mirrored, (half) => half)).toEqual(key(read(seen, kind), mirroredHalf));
      }),
    ));

  it('never put a cause lower for a sign that supports it, but below what that sign supports more', () =>
    check(
      fc.property(signs, knownSign, kinds, (seen, more, kind) => {
        const before = read(seen, kind).suggestions;
        const after = read([...seen, more], kind).suggestions;
        const says = (cause: string) =>
          after.find((one) => one.cause === cause)?.supporting.find(({ sign }) => sign === seen.length)?.weight ?? 0;
        for (const { cause, score } of before) {
          const now = after.find((one) => one.cause === cause);
          if (!now || says(cause) === 0) continue;
          expect(now.score).toBeGreaterThan(score);
          // Whatever stood below it and gains no more from the sign still stands below it.
          const above = after.slice(0, after.indexOf(now)).map((one) => one.cause);
          const below = before.filter((one) => one.score < score && says(one.cause) <= says(cause));
          expect(below.filter((one) => above.includes(one.cause))).toEqual([]);
        }
      }),
    ));

  it('are the same each time', () =>
    check(
      fc.property(signs, kinds, (seen, kind) => {
        expect(read(structuredClone(seen), kind)).toEqual(read(seen, kind));
      }),
    ));
});

describe('the table', () => {
  it('has an answer for whatever can be marked', () => {
    for (const zone of zoneIds) {
      expect(kindsAt(zone).length, zone).toBeGreaterThan(0);
      for (const kind of kindsAt(zone)) {
        const ways = directionsAt(zone, kind);
        expect(new Set(ways).size).toBe(ways.length);
        for (const direction of ways.length > 0 ? ways : [null]) {
          const answered = postures.some((posture) =>
            ['dress', 'trousers'].some(
              (on) => read([{ zone, kind, direction, posture, half: 'both', pinned: null }], on).suggestions.length > 0,
            ),
          );
          // A cause that is on one half only answers no sign that is on both.
          const oneSided =
            read([{ zone, kind, direction, posture: 'standing', half: 'right', pinned: null }], 'dress').suggestions
              .length > 0;
          expect(answered || oneSided, `${zone} ${kind} ${direction}`).toBe(true);
        }
      }
    }
  });
  it('names each cause once, rules out only causes it has, and says what it goes back to', () => {
    const ids = fittingCauses.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { ruleOut, source, evidence } of fittingCauses) {
      expect(ids).toEqual(expect.arrayContaining([...(ruleOut ?? [])]));
      expect(source).toMatch(/\.$/);
      expect(evidence.some(({ weight }) => weight >= 2)).toBe(true);
    }
  });
});
