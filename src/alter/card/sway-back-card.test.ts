import { describe, expect, it } from 'vitest';
import { harbourBlouse } from '../../fit/testing/envelope.ts';
import { nearestOnPath, pathBounds } from '../../geometry/index.ts';
import { edgeLength, edgeRuns, levelWidth, outlineOf, pieceOf, validateGarment } from '../../pattern/index.ts';
import { applyAlterations } from '../apply.ts';
import { byOf, cardOf, pictureOn, step } from './testing/cards.ts';

/** How much nearer the side the waist's centre comes by turning: R (1 − cos φ). */
const reachIn = (reach: number, w: number): number => reach * (1 - Math.cos(2 * Math.asin(w / (2 * reach))));

describe('a card for a sway back', () => {
  const card = cardOf(step('sway-back', { amount: 18 }));
  const picture = pictureOn(card);
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
  it('is the alteration of the list, folded from the waist up to a line that meets it at the side', () => {
    expect(picture.after).toEqual(applyAlterations(picture.before, [step('sway-back', { amount: 18 })]).garment);
    const [cut, fold] = picture.cuts;
    expect([cut?.id, fold?.id, picture.cuts.length]).toEqual(['waist', 'fold', 2]);
    const above = [0, 1].map((i) => (cut?.points[i]?.y ?? 0) - (fold?.points[i]?.y ?? 0));
    expect(above[0]).toBeCloseTo(18, 9);
    expect(above[1]).toBeCloseTo(0, 9);
    expect(picture.dimensions).toMatchObject([{ piece: 'back', on: 'before', mm: 18 }]);
  });
  it('is drawn on a piece with a seam, not on a fold', () => {
    const knit = { ...harbourBlouse, cloth: { ...harbourBlouse.cloth, structure: 'knit' as const, stretch: 0.3 } };
    expect(cardOf(step('sway-back', { amount: 18 }), { envelope: knit }).picture?.house).toBe('blouse');
  });
});

describe('a sway back through a side back', () => {
  const finished = harbourBlouse.finished.map((row) => ({
    ...row,
    figures: row.figures.map((figure) => (typeof figure === 'number' ? figure + 50 : figure)),
  }));
  const picture = pictureOn(
    cardOf(step('sway-back', { amount: 18 }), { envelope: { ...harbourBlouse, kind: 'jacket', finished }, view: null }),
  );
  it('folds out at each seam what is left of it there', () => {
    expect(picture.house).toBe('jacket');
    const aboveOf = (piece: string): readonly number[] => {
      const [cut, fold] = picture.cuts.filter((one) => one.piece === piece);
      return [0, 1].map((i) => (cut?.points[i]?.y ?? 0) - (fold?.points[i]?.y ?? 0));
    };
    const [back, side] = [aboveOf('back'), aboveOf('side-back')];
    expect(back[0]).toBeCloseTo(18, 9);
    expect(back[1]).toBeCloseTo(side[0] ?? 0, 9);
    expect(side[1]).toBeCloseTo(0, 9);
    expect(back[1]).toBeGreaterThan(5);
    // Cloth and lining alike: the amount stands at each centre and nowhere else.
    expect(picture.dimensions.every(({ mm, from, to }) => mm === 18 && to.y - from.y === 18)).toBe(true);
    expect(picture.dimensions.map(({ piece }) => piece)).not.toContain('side-back');
  });
});

describe.each(['skirt', 'trousers'] as const)('a sway back of a %s', (kind) => {
  const card = cardOf(step('sway-back', { amount: 12 }), { envelope: { ...harbourBlouse, kind }, view: null });
  it('lowers the waist it hangs from at the centre back, and cuts nothing', () => {
    const picture = pictureOn(card);
    expect(picture.house).toBe(kind);
    expect(picture.cuts).toEqual([]);
    const [before, after] = [pieceOf(picture.before, 'back'), pieceOf(picture.after, 'back')];
    const centre = kind === 'skirt' ? 'centre-back' : 'crotch';
    expect(edgeLength(after, centre) - edgeLength(before, centre)).toBeCloseTo(-12, 0);
    const mark = picture.dimensions.find(({ piece }) => piece === 'back');
    expect(mark).toMatchObject({ on: 'after', mm: 12 });
    const waist = edgeRuns(after, 'waist');
    expect(Math.min(...waist.map((path) => nearestOnPath(path, mark?.to ?? { x: 0, y: 0 }).distance))).toBeLessThan(
      0.1,
    );
    expect(pictureOn(card).held.every(({ ok }) => ok)).toBe(true);
  });
  it('says so', () => {
    const codes = [...card.where, ...card.steps].map(({ code }) => code);
    expect(codes).toContain('card.sway-back-where-hung');
    expect(codes).toContain('card.sway-back-line-hung');
    expect(codes).not.toContain('card.sway-back-fold');
    expect(card.cautions.map(({ code }) => code)).not.toContain('card.sway-back-out');
  });
});
