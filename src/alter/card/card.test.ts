import { describe, expect, it } from 'vitest';
import { envelopeFigures, fitPattern } from '../../fit/index.ts';
import { harbourBlouse } from '../../fit/testing/envelope.ts';
import type { AlterationStep } from '../../pattern/index.ts';
import { alterWords } from '../../words/index.ts';
import { alterationCard, type Card, type CardRequest, cardCatalogue, cardSteps, sayCard } from './index.ts';
import { cardOf, step } from './testing/cards.ts';

describe('the catalogue of cards', () => {
  it('begins every card there is with what is usual', () => {
    for (const kind of cardCatalogue(harbourBlouse, '14')) {
      const params = Object.fromEntries(
        Object.entries(kind.params).map(([name, parameter]) => [
          name,
          parameter.unit === 'choice' ? parameter.usual : parameter.usual[1],
        ]),
      );
      const card = cardOf(step(kind.id, params));
      expect(card.alteration).toBe(kind.id);
      expect(alterWords.alterations).toHaveProperty([kind.id]);
    }
  });
});

describe('the cards of a way', () => {
  it('are lengths first, then the bust, then the sides, and every one can be made', () => {
    const inch = 25.4;
    const body = { bustGirth: 36 * inch + 40, upperBustGirth: 36 * inch - 50, waistGirth: 760, hipGirth: 1060 };
    const fit = fitPattern({
      measures: { ...body, backWaistLength: 16.5 * inch + 22, armLength: 590, upperArmGirth: 280 },
      pattern: envelopeFigures(harbourBlouse, 'a'),
    });
    if (!fit.ok) throw new Error(fit.problem.code);
    const [way] = fit.value.ways;
    if (!way) throw new Error('no way');
    const steps = cardSteps(way);
    expect(steps.map(({ alteration }) => alteration)).toEqual(['lengthen-shorten', 'full-bust', 'blend']);
    for (const one of steps) {
      const card = cardOf(one, { size: way.startingSize });
      const suggested = way.alterations.find(({ alteration }) => alteration === one.alteration);
      if (suggested) {
        expect(card.amounts[0]).toMatchObject({ total: suggested.total, perPiece: suggested.perPiece });
        expect(card.amounts[0]?.count).toBe(suggested.count);
      }
    }
  });
});

describe('a card after others', () => {
  it('begins where they end', () => {
    const bust = step('full-bust', { amount: 20 });
    const sides = step('blend', { hip: '16' });
    const alone = cardOf(sides);
    const after = cardOf(sides, { earlier: [bust] });
    const hip = (card: Card) => card.finished.find(({ of }) => of === 'hip');
    expect((hip(after)?.old ?? 0) - (hip(alone)?.old ?? 0)).toBeCloseTo(40, 6);
    expect(hip(after)?.by).toBe(hip(alone)?.by);
    const added = cardOf(bust).cloth[0]?.more ?? 0;
    expect((after.cloth[0]?.old ?? 0) - (alone.cloth[0]?.old ?? 0)).toBeCloseTo(added, 9);
    expect(after.picture).toEqual(alone.picture);
  });
});

describe('what cannot be put on a card', () => {
  it.each<[string, Partial<CardRequest> & { step: AlterationStep }, string]>([
    ['a size it has not', { step: step('full-bust', { amount: 20 }), size: '99' }, 'fit.size-unknown'],
    ['an alteration there is no card for', { step: step('dye', { amount: 10 }) }, 'alter.no-card'],
    ['a name every object has', { step: step('constructor', { amount: 10 }) }, 'alter.no-card'],
    ['no amount', { step: step('full-bust', {}) }, 'alter.not-an-amount'],
    ['an amount that is no number', { step: step('full-bust', { amount: Number.NaN }) }, 'alter.not-an-amount'],
    ['too much of it', { step: step('full-bust', { amount: 600 }) }, 'alter.out-of-range'],
    ['a length of nothing', { step: step('lengthen-shorten', { amount: 0 }) }, 'alter.not-an-amount'],
    ['a place there is not', { step: step('lengthen-shorten', { where: 'knee', amount: 9 }) }, 'alter.not-a-choice'],
    ['a blend to itself', { step: step('blend', { hip: '14' }) }, 'alter.card-no-blend'],
    ['a blend to no size', { step: step('blend', { hip: '15' }) }, 'fit.size-unknown'],
    [
      'a blend nobody has figures for',
      { step: step('blend', { hip: '18' }), envelope: { ...harbourBlouse, finished: [], body: [] } },
      'alter.card-no-figures',
    ],
  ])('%s', (_, request, code) => {
    expect(alterationCard({ envelope: harbourBlouse, view: 'a', size: '14', ...request })).toMatchObject({
      ok: false,
      problem: { code },
    });
  });
  it('is still said in words where nothing of ours stands for it', () => {
    const coat = cardOf(step('lengthen-shorten', { where: 'sleeve', amount: 20 }), {
      envelope: { ...harbourBlouse, kind: 'skirt' },
    });
    expect(coat.picture).toBeNull();
    expect(coat.notDrawn).not.toBeNull();
    expect(sayCard(coat, 'cm').drawing).toContain('Not drawn');
    expect(coat.amounts[0]?.total).toBe(20);
  });
});
