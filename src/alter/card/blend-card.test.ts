import { describe, expect, it } from 'vitest';
import { harbourBlouse } from '../../fit/testing/envelope.ts';
import { edgeLength, levelWidth, pieceOf, validateGarment, walkAll } from '../../pattern/index.ts';
import { applyAlterations } from '../apply.ts';
import { byOf, cardOf, pictureOn, step } from './testing/cards.ts';

describe('a card for running the sides into other sizes', () => {
  const card = cardOf(step('blend', { waist: '16', hip: '18' }));
  const picture = pictureOn(card);
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
  it('is the alteration of the list at waist and hip, one after the other', () => {
    const run = (where: string, total: number) => step('run-sides', { where, amount: total / 4 });
    const [waist, hip] = card.amounts.map(({ total }) => total);
    const altered = applyAlterations(picture.before, [run('waist', waist ?? 0), run('hip', hip ?? 0)]);
    expect(picture.after).toEqual(altered.garment);
  });
  it('says why it is not drawn where it is further than sides can be run', () => {
    const far = cardOf(step('blend', { hip: '8' }), { size: '22' });
    expect(far.picture).toBeNull();
    expect(far.notDrawn?.code).toBe('alter.out-of-range');
    expect(far.steps.length).toBeGreaterThan(3);
  });
  it('draws nothing between sizes that are alike there', () => {
    const alike = harbourBlouse.finished.map((row) => ({ ...row, figures: harbourBlouse.sizes.map(() => 1100) }));
    const same = cardOf(step('blend', { hip: '16' }), { envelope: { ...harbourBlouse, finished: alike } });
    expect(same.picture).toBeNull();
    expect(same.notDrawn?.code).toBe('alter.changes-nothing');
  });
});

describe('running the sides of trousers', () => {
  const card = cardOf(step('blend', { hip: '16' }), { envelope: { ...harbourBlouse, kind: 'trousers' }, view: null });
  const picture = pictureOn(card);
  it('is drawn on trousers, over the opening of their pockets', () => {
    expect(picture.house).toBe('trousers');
    expect(picture.held.every(({ ok }) => ok)).toBe(true);
    for (const id of ['front', 'back']) {
      const [before, after] = [pieceOf(picture.before, id), pieceOf(picture.after, id)];
      const by = levelWidth(after, 'hip') - levelWidth(before, 'hip');
      expect(Math.abs(by - (card.amounts[0]?.perPiece ?? 0))).toBeLessThanOrEqual(0.3);
    }
  });
  it('comes back at the hem, as its words say', () => {
    expect(card.steps.map(({ code }) => code)).toContain('card.blend-below-leg');
    for (const id of ['front', 'back']) {
      const [before, after] = [pieceOf(picture.before, id), pieceOf(picture.after, id)];
      expect(Math.abs(edgeLength(after, 'hem') - edgeLength(before, 'hem'))).toBeLessThan(0.5);
      expect(levelWidth(after, 'knee') - levelWidth(before, 'knee')).toBeGreaterThan(2);
    }
    const { hip = 0, thigh = 0, knee = 0 } = byOf(card);
    // Thigh and knee are of one leg, which has half of the side edges.
    expect([hip / 2 > thigh, thigh > knee, knee > 0]).toEqual([true, true, true]);
  });
});
