import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { envelopeFigures, fitPattern } from '../../fit/index.ts';
import { harbourBlouse } from '../../fit/testing/envelope.ts';
import { distance, pathBounds, tolerance } from '../../geometry/index.ts';
import {
  type AlterationStep,
  edgeLength,
  levelWidth,
  outlineOf,
  type Piece,
  pieceArea,
  pieceOf,
  pointOnEdge,
  validateGarment,
  walkAll,
} from '../../pattern/index.ts';
import { alterWords, cardWords } from '../../words/index.ts';
import { applyAlterations } from '../apply.ts';
import { alterationCard, type Card, type CardRequest, cardCatalogue, cardSteps, sayCard } from './index.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`card seed ${fresh}`);

const step = (alteration: string, params: AlterationStep['params']): AlterationStep => ({
  id: alteration,
  alteration,
  version: 1,
  on: true,
  params,
});
const cardOf = (wanted: AlterationStep, request: Partial<CardRequest> = {}): Card => {
  const card = alterationCard({ envelope: harbourBlouse, view: 'a', size: '14', step: wanted, ...request });
  if (!card.ok) throw new Error(card.problem.code);
  return card.value;
};
const byOf = (card: Card) => Object.fromEntries(card.finished.map(({ of, by }) => [of, by]));

describe('the hem of a bust card', () => {
  const hem = { of: 'hem-width' as const, label: 'hem', view: null, figures: harbourBlouse.sizes.map(() => 1130) };
  const envelope = { ...harbourBlouse, finished: [...harbourBlouse.finished, hem] };
  it.each([
    ['full-bust', 10, 20],
    ['small-bust', 8, -16],
  ])('of a %s goes with the hip, for the cut runs through it', (kind, amount, by) => {
    const card = cardOf(step(kind, { amount }), { envelope });
    expect(byOf(card)).toMatchObject({ hip: by, 'hem-width': by });
    expect(card.finished.find(({ of }) => of === 'hem-width')?.now).toBeCloseTo(1130 + by, 9);
  });
});

describe('a small bust as the fit advises it', () => {
  it.each(['8', '14', '22'])('is drawn in size %s', (size) => {
    const bust = Number(harbourBlouse.body[0]?.figures[harbourBlouse.sizes.indexOf(size)]);
    const measures = { bustGirth: bust - 70, upperBustGirth: bust - 50, waistGirth: 760, hipGirth: 960 };
    const fit = fitPattern({ measures, pattern: envelopeFigures(harbourBlouse, 'a'), size });
    const way = fit.ok ? fit.value.ways[0] : undefined;
    const advised = way && cardSteps(way).find(({ alteration }) => alteration === 'small-bust');
    if (!advised) throw new Error('no small bust');
    const card = cardOf(advised, { size });
    expect(card.notDrawn).toBeNull();
    expect(card.amounts[1]?.total).toBeLessThan(0);
  });
});

describe('a card for a shorter body', () => {
  it('says how deep the pleat is', () => {
    const card = cardOf(step('lengthen-shorten', { where: 'above-waist', amount: -0.75 * 25.4 }));
    const [fold] = sayCard(card, 'in').steps.filter((one) => one.includes('pleat'));
    expect(fold?.replaceAll('\u00a0', ' ')).toMatch(/a pleat ⅜[″"] deep, half the amount,/);
  });
});

describe('a small bust the dart does not hold', () => {
  const card = cardOf(step('small-bust', { amount: 30 }));
  it('says why it is not drawn, and of no drop that it is nothing', () => {
    expect(card.picture).toBeNull();
    const said = sayCard(card, 'in');
    expect(said.drawing).toMatch(/does not hold/);
    const all = [...said.steps, ...said.follows, ...said.amounts].join(' ').replaceAll('\u00a0', ' ');
    expect(all).not.toMatch(/(^|[ (])0["″ ]/);
    expect(said.steps.join(' ')).toMatch(/take the lower centre up until the hem is level\./);
  });
});

describe('a card for a full bust', () => {
  const card = cardOf(step('full-bust', { amount: 20 }));
  it('gives the amount in all and on each half', () => {
    expect(card.amounts[0]).toMatchObject({ at: 'bust', total: 40, perPiece: 20, count: 2 });
    expect(sayCard(card, 'cm').amounts[0]?.replaceAll('\u00a0', ' ')).toBe(
      '4.0 cm more in all round the bust: 2.0 cm on each half of the front (2 halves). The back stays as it is.',
    );
  });
  it('is of the pattern, its size and the view as she names it', () => {
    const views = harbourBlouse.views.map((view) => ({ ...view, name: `View ${view.name}` }));
    const named = cardOf(step('full-bust', { amount: 20 }), { envelope: { ...harbourBlouse, views } });
    expect(sayCard(named, 'cm').of).toBe(
      `${harbourBlouse.name}, ${harbourBlouse.house} ${harbourBlouse.number}. Size 14, View A`,
    );
  });
  it('names a pattern known by its house and number once', () => {
    const name = `${harbourBlouse.house} ${harbourBlouse.number}`;
    const named = cardOf(step('full-bust', { amount: 20 }), { envelope: { ...harbourBlouse, name } });
    expect(sayCard(named, 'cm').of).toBe(`${name}. Size 14, A`);
  });
  it('is drawn by the alteration itself on the house blouse for the chart’s own body', () => {
    const picture = card.picture;
    if (!picture) throw new Error('not drawn');
    expect(picture).toMatchObject({ house: 'blouse', draftedFor: 'chart-body' });
    const altered = applyAlterations(picture.before, [step('full-bust', { amount: 20 })]);
    expect(picture.after).toEqual(altered.garment);
    expect(picture.held.every(({ ok }) => ok)).toBe(true);
    // Its girths are the envelope's printed ones.
    const front = pieceOf(picture.before, 'front');
    const back = pieceOf(picture.before, 'back');
    const bust = 2 * (levelWidth(front, 'bust') + levelWidth(back, 'bust'));
    expect(Math.abs(bust - 39.25 * 25.4)).toBeLessThanOrEqual(tolerance.girth);
    // Five cuts meet in the bust point; the amount is drawn as far as the bust point moves.
    expect(picture.cuts.map(({ id }) => id).sort()).toEqual(['centre', 'hem', 'hinge', 'lower-leg', 'upper-leg']);
    for (const { points } of picture.cuts) {
      expect(
        points.some((p) => distance(p, front.landmarks.find(({ id }) => id === 'bust-point')?.at ?? p) < 0.01),
      ).toBe(true);
    }
    expect(picture.dimensions[0]?.mm).toBeCloseTo(20, 6);
  });
  it('tells finished measurements old and new, and those it cannot know', () => {
    const of = (name: string) => card.finished.find((row) => row.of === name);
    expect(of('bust')).toMatchObject({ from: 'printed' });
    expect(of('bust')?.old).toBeCloseTo(39.25 * 25.4, 9);
    expect(of('bust')?.by).toBeCloseTo(40, 6);
    expect(of('waist')).toMatchObject({ old: null, now: null });
    expect(of('waist')?.by).toBeCloseTo(40, 6);
    expect(of('upper-arm')?.by).toBe(0);
    expect(of('front-length')?.by).toBeGreaterThan(5);
  });
  it('needs more cloth, never less than the area put in', () => {
    const picture = card.picture;
    if (!picture) throw new Error('not drawn');
    const added = 2 * (pieceArea(pieceOf(picture.after, 'front')) - pieceArea(pieceOf(picture.before, 'front')));
    expect(card.cloth).toHaveLength(2);
    for (const row of card.cloth) {
      expect(row.now).toBeCloseTo(row.old + row.more, 9);
      expect(row.more * row.width).toBeGreaterThanOrEqual(added);
    }
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

describe('a card for running the sides into other sizes', () => {
  const card = cardOf(step('blend', { waist: '16', hip: '18' }));
  const picture = card.picture;
  if (!picture) throw new Error('not drawn');
  it('shares what is between the sizes over four side edges', () => {
    // The waist has no finished figures, so the body chart stands for them: 30 − 28 inches; the hip 45 − 41 finished.
    expect(card.amounts.map(({ at, total, perPiece, count, said }) => [at, total, perPiece, count, said.code])).toEqual(
      [
        ['waist', expect.closeTo(50.8, 9), expect.closeTo(12.7, 9), 4, 'card.blend-out-amount-by-body'],
        ['hip', expect.closeTo(101.6, 9), expect.closeTo(25.4, 9), 4, 'card.blend-out-amount'],
      ],
    );
  });
  it('is drawn with every level as wide as asked, and the side seams walk', () => {
    for (const [level, each] of [
      ['waist', 12.7],
      ['hip', 25.4],
      ['bust', 0],
    ] as const) {
      for (const piece of ['front', 'back']) {
        const by = levelWidth(pieceOf(picture.after, piece), level) - levelWidth(pieceOf(picture.before, piece), level);
        expect(Math.abs(by - each), `${piece} ${level} ${by}`).toBeLessThanOrEqual(0.3);
      }
    }
    expect(picture.held.every(({ ok }) => ok)).toBe(true);
    expect(walkAll(picture.after).every(({ meets }) => meets)).toBe(true);
    expect(validateGarment(picture.after)).toEqual(validateGarment(picture.before));
    expect(picture.nested.map(({ size }) => size)).toEqual(['16', '18']);
  });
  it('comes back to the starting size below a waist that alone runs out', () => {
    const waist = cardOf(step('blend', { waist: '18' }));
    expect(byOf(waist).waist).toBeCloseTo(101.6, 9);
    expect(byOf(waist).hip).toBe(0);
  });
});

describe('a card for a full upper arm', () => {
  const card = cardOf(step('full-upper-arm', { amount: 20 }));
  const picture = card.picture;
  if (!picture) throw new Error('not drawn');
  const [before, after] = [pieceOf(picture.before, 'sleeve'), pieceOf(picture.after, 'sleeve')];
  const corner = (piece: typeof before, edge: string) => pointOnEdge(piece, edge, 0);
  it('is wider between the underarms by the amount, its underarms and cap as long as they were', () => {
    const across = (piece: typeof before) => corner(piece, 'underarm-back').x - corner(piece, 'cap-front').x;
    expect(across(after) - across(before)).toBeCloseTo(20, 6);
    for (const edge of ['underarm-front', 'underarm-back']) {
      expect(edgeLength(after, edge)).toBeCloseTo(edgeLength(before, edge), 6);
    }
    // Redrawing the cap over its top takes a little of its ease, and no more.
    for (const edge of ['cap-front', 'cap-back']) {
      expect(Math.abs(edgeLength(after, edge) - edgeLength(before, edge))).toBeLessThan(0.5);
    }
    expect(Math.abs(edgeLength(after, 'hem') - edgeLength(before, 'hem'))).toBeLessThan(0.5);
    expect(picture.held.every(({ ok }) => ok)).toBe(true);
    expect(validateGarment(picture.after)).toEqual([]);
    expect(picture.cuts.map(({ id }) => id).sort()).toEqual(['back', 'front', 'top', 'wrist']);
  });
  it('comes out shorter by what the quarters turn, and says so', () => {
    const shorter = boundsOf(before) - boundsOf(after);
    expect(card.amounts[1]?.total).toBeCloseTo(-shorter, 0);
    expect(byOf(card)['sleeve-length']).toBeCloseTo(card.amounts[1]?.total ?? 0, 9);
    expect(byOf(card)['upper-arm']).toBe(20);
  });
  it('is not drawn where the cap would lose a quarter of its height, and says what it bears', () => {
    const much = cardOf(step('full-upper-arm', { amount: 60 }));
    expect(much.picture).toBeNull();
    expect(much.notDrawn?.code).toBe('alter.cap-too-flat');
    const most = much.notDrawn?.values?.most;
    if (typeof most !== 'object') throw new Error('it does not say what it bears');
    expect(cardOf(step('full-upper-arm', { amount: most.mm })).picture).not.toBeNull();
    expect(cardOf(step('full-upper-arm', { amount: most.mm + 1 })).picture).toBeNull();
  });
  it('promises no cloth for what could not be drawn, nor after it', () => {
    const much = step('full-upper-arm', { amount: 60 });
    expect(cardOf(much).clothSaid.code).toBe('card.cloth-not-drawn');
    const shorter = step('lengthen-shorten', { where: 'sleeve', amount: -25 });
    expect(cardOf(shorter).clothSaid.code).toBe('card.cloth-same');
    expect(cardOf(shorter, { earlier: [much] }).clothSaid.code).toBe('card.cloth-not-drawn');
  });
});

describe('a card for a sway back', () => {
  const card = cardOf(step('sway-back', { amount: 18 }));
  const picture = card.picture;
  if (!picture) throw new Error('not drawn');
  const [before, after] = [pieceOf(picture.before, 'back'), pieceOf(picture.after, 'back')];
  it('is shorter at the centre back by the amount, and nowhere else', () => {
    expect(edgeLength(after, 'centre-back') - edgeLength(before, 'centre-back')).toBeCloseTo(-18, 0);
    for (const edge of ['neck', 'shoulder', 'armhole', 'side']) {
      expect(edgeLength(after, edge)).toBeCloseTo(edgeLength(before, edge), 6);
    }
    expect(Math.abs(edgeLength(after, 'hem') - edgeLength(before, 'hem'))).toBeLessThan(0.5);
    expect(picture.held.every(({ ok }) => ok)).toBe(true);
    expect(validateGarment(picture.after)).toEqual([]);
    expect(levelWidth(after, 'bust')).toBeCloseTo(levelWidth(before, 'bust'), 6);
    expect(byOf(card)['back-length']).toBe(-18);
  });
  it('swings the centre back out by D sin 2 asin(w / 2R) at its end', () => {
    const waist = before.levels.find(({ id }) => id === 'waist');
    const reach = Math.abs((waist?.to.x ?? 0) - (waist?.from.x ?? 0));
    const hem = pathBounds(outlineOf(before)).maxY;
    const out = (hem - (waist?.from.y ?? 0)) * Math.sin(2 * Math.asin(18 / (2 * reach)));
    expect(pathBounds(outlineOf(before)).minX - pathBounds(outlineOf(after)).minX).toBeCloseTo(
      out - reachIn(reach, 18),
      1,
    );
    const said = card.cautions.find(({ code }) => code === 'card.sway-back-out')?.values?.out;
    expect(typeof said === 'object' && said.mm).toBeCloseTo(out, 6);
  });
  it('is refused on a fold', () => {
    const knit = { ...harbourBlouse, cloth: { ...harbourBlouse.cloth, structure: 'knit' as const, stretch: 0.3 } };
    expect(cardOf(step('sway-back', { amount: 18 }), { envelope: knit }).picture?.house).not.toBe('tee');
  });
});

/** How much nearer the side the waist's centre comes by turning: R (1 − cos φ). */
const reachIn = (reach: number, w: number): number => reach * (1 - Math.cos(2 * Math.asin(w / (2 * reach))));

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

const boundsOf = (piece: Piece): number => {
  const { minY, maxY } = pathBounds(outlineOf(piece));
  return maxY - minY;
};

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
