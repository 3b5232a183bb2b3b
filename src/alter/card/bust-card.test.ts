import { describe, expect, it } from 'vitest';
import { envelopeFigures, fitPattern } from '../../fit/index.ts';
import { harbourBlouse } from '../../fit/testing/envelope.ts';
import { distance, tolerance } from '../../geometry/index.ts';
import { levelWidth, pieceArea, pieceOf } from '../../pattern/index.ts';
import { applyAlterations } from '../apply.ts';
import { cardSteps, sayCard } from './index.ts';
import { byOf, cardOf, pictureOn, step } from './testing/cards.ts';

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
    const picture = pictureOn(card);
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
    const picture = pictureOn(card);
    const added = 2 * (pieceArea(pieceOf(picture.after, 'front')) - pieceArea(pieceOf(picture.before, 'front')));
    expect(card.cloth).toHaveLength(2);
    for (const row of card.cloth) {
      expect(row.now).toBeCloseTo(row.old + row.more, 9);
      expect(row.more * row.width).toBeGreaterThanOrEqual(added);
    }
  });
});
