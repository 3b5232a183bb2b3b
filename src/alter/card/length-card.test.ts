import { describe, expect, it } from 'vitest';
import { harbourBlouse } from '../../fit/testing/envelope.ts';
import { sayCard } from './index.ts';
import { byOf, cardOf, step } from './testing/cards.ts';

describe('a card for a shorter body', () => {
  it('says how deep the pleat is', () => {
    const card = cardOf(step('lengthen-shorten', { where: 'above-waist', amount: -0.75 * 25.4 }));
    const [fold] = sayCard(card, 'in').steps.filter((one) => one.includes('pleat'));
    expect(fold?.replaceAll('\u00a0', ' ')).toMatch(/a pleat ⅜[″"] deep, half the amount,/);
  });
});

describe('a card for a length', () => {
  it('puts all of it on every piece and nothing on the widths', () => {
    const card = cardOf(step('lengthen-shorten', { where: 'above-waist', amount: 25 }));
    expect(card.amounts).toMatchObject([{ at: 'above-waist', total: 25, perPiece: 25, count: 4 }]);
    expect(byOf(card)).toMatchObject({ 'back-length': 25, 'front-length': 25, bust: 0, hip: 0 });
    expect(card.picture?.cuts.map(({ piece }) => piece)).toEqual(['front', 'back']);
    expect(card.clothSaid.code).toBe('card.cloth-more');
  });
  it('begins from the larger end where the envelope prints a range of cloth', () => {
    const ranged = {
      ...harbourBlouse,
      clothNeeded: harbourBlouse.clothNeeded.map((row) => ({
        ...row,
        figures: row.figures.map((figure) => (typeof figure === 'number' ? ([figure - 150, figure] as const) : figure)),
      })),
    };
    const longer = step('lengthen-shorten', { where: 'below-waist', amount: 40 });
    expect(cardOf(longer, { envelope: ranged }).cloth).toEqual(cardOf(longer).cloth);
  });
  it('folds out between two lines when it shortens, and promises no cloth for it', () => {
    const card = cardOf(step('lengthen-shorten', { where: 'sleeve', amount: -25 }));
    expect(card.amounts).toMatchObject([{ total: -25, perPiece: -25, count: 2 }]);
    const [cut, fold] = card.picture?.cuts ?? [];
    expect([cut?.id, fold?.id]).toEqual(['across', 'fold']);
    expect((cut?.points[0]?.y ?? 0) - (fold?.points[0]?.y ?? 0)).toBeCloseTo(25, 9);
    expect(card.cloth.every(({ more }) => more === 0)).toBe(true);
    expect(card.clothSaid.code).toBe('card.cloth-same');
  });
});
