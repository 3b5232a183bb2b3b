import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { harbourBlouse } from '../../fit/testing/envelope.ts';
import { cardWords } from '../../words/index.ts';
import { alterationCard, sayCard } from './index.ts';
import { step } from './testing/cards.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`card seed ${fresh}`);

const requests = fc.record({
  size: fc.constantFrom(...harbourBlouse.sizes),
  view: fc.constantFrom('a', 'b', null),
  wanted: fc.oneof(
    fc.integer({ min: 3, max: 45 }).map((amount) => step('full-bust', { amount })),
    fc.integer({ min: 3, max: 12 }).map((amount) => step('small-bust', { amount })),
    fc
      .record({
        where: fc.constantFrom('above-waist', 'below-waist', 'sleeve'),
        amount: fc.integer({ min: -30, max: 80 }),
      })
      .filter(({ amount }) => amount !== 0)
      .map((params) => step('lengthen-shorten', params)),
    fc.integer({ min: 3, max: 40 }).map((amount) => step('full-upper-arm', { amount })),
    fc.integer({ min: 3, max: 40 }).map((amount) => step('sway-back', { amount })),
    fc
      .record({ waist: fc.constantFrom(...harbourBlouse.sizes), hip: fc.constantFrom(...harbourBlouse.sizes) })
      .map((params) => step('blend', params)),
  ),
});

describe('any card', () => {
  it.each([20261, fresh])('adds up, holds, and says everything in both units (seed %d)', (seed) => {
    fc.assert(
      fc.property(requests, ({ size, view, wanted }) => {
        const made = alterationCard({ envelope: harbourBlouse, view, size, step: wanted });
        if (!made.ok) {
          expect(made.problem.code).toBe('alter.card-no-blend');
          return;
        }
        const card = made.value;
        for (const { total, perPiece, count } of card.amounts) {
          const shared = Math.abs(total - perPiece * count) < 1e-9;
          expect(shared || total === perPiece).toBe(true);
        }
        for (const { old, by, now } of card.finished) {
          if (old === null) expect(now).toBeNull();
          else expect(now).toBeCloseTo(old + by, 9);
        }
        for (const { old, more, now } of card.cloth) {
          expect(more).toBeGreaterThanOrEqual(0);
          expect(now).toBeCloseTo(old + more, 9);
        }
        if (card.picture) {
          expect(card.picture.held.filter(({ ok }) => !ok)).toEqual([]);
          expect(card.notDrawn).toBeNull();
        } else expect(card.notDrawn).not.toBeNull();
        for (const unit of ['cm', 'in'] as const) {
          const { finished, ...rest } = sayCard(card, unit);
          for (const text of Object.values(rest).flat()) expect(text).not.toMatch(/[{}]|card\.|undefined/);
          expect(finished.length).toBe(card.finished.length);
        }
        const codes = [card.title, card.purpose, ...card.where, ...card.steps, ...card.follows, ...card.holds];
        for (const { code } of codes) expect(Object.keys(cardWords.sayings)).toContain(code);
      }),
      { seed, numRuns: 25 },
    );
  });
});
