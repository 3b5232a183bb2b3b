import { describe, expect, it } from 'vitest';
import { mostRoundArm } from '../../fit/index.ts';
import { harbourBlouse } from '../../fit/testing/envelope.ts';
import { distance, nearestOnPath, pathBounds, tolerance } from '../../geometry/index.ts';
import {
  edgeLength,
  edgeRuns,
  landmarkOf,
  levelWidth,
  outlineOf,
  pieceOf,
  pointOnEdge,
  validateGarment,
} from '../../pattern/index.ts';
import { applyAlterations } from '../apply.ts';
import { cardCatalogue } from './index.ts';
import { byOf, cardOf, pictureOn, step } from './testing/cards.ts';

describe('a card for a full upper arm', () => {
  const card = cardOf(step('full-upper-arm', { amount: 20 }));
  const picture = pictureOn(card);
  const [before, after] = [pieceOf(picture.before, 'sleeve'), pieceOf(picture.after, 'sleeve')];
  it('is wider round the arm by the amount, its underarms, cap and wrist as long as they were', () => {
    expect(levelWidth(after, 'upper-arm') - levelWidth(before, 'upper-arm')).toBeCloseTo(20, 1);
    for (const edge of ['cap-front', 'cap-back', 'underarm-front', 'underarm-back', 'hem']) {
      expect(Math.abs(edgeLength(after, edge) - edgeLength(before, edge)), edge).toBeLessThanOrEqual(tolerance.holds);
    }
    expect(picture.held.every(({ ok }) => ok)).toBe(true);
    expect(validateGarment(picture.after)).toEqual([]);
    const said = picture.dimensions.reduce((sum, { mm }) => sum + mm, 0);
    expect(said).toBeCloseTo(20, 1);
  });
  it('is the alteration of the list, its cuts straight down and straight across as they are made by hand', () => {
    const altered = applyAlterations(picture.before, [step('full-upper-arm', { amount: 20 })]);
    expect(picture.after).toEqual(altered.garment);
    expect(picture.cuts.map(({ id }) => id).sort()).toEqual(['left', 'right', 'top', 'wrist']);
    const corners = [pointOnEdge(before, 'cap-front', 0), pointOnEdge(before, 'underarm-back', 0)] as const;
    const crossing = { x: landmarkOf(before, 'cap-top')?.x ?? 0, y: corners[0].y };
    for (const { points } of picture.cuts) expect(distance(points[0] ?? corners[0], crossing)).toBeLessThan(0.1);
    const ends = (id: string) => picture.cuts.find((cut) => cut.id === id)?.points.at(-1);
    expect([ends('left'), ends('right')]).toEqual(corners);
  });
  it('comes out shorter down its middle by what the quarters turn, and says so', () => {
    const middle = (piece: typeof before): number => {
      const top = landmarkOf(piece, 'cap-top') ?? { x: 0, y: 0 };
      const [hem] = edgeRuns(piece, 'hem');
      return nearestOnPath(hem ?? [], { x: top.x, y: pathBounds(outlineOf(piece)).maxY }).point.y - top.y;
    };
    expect(card.amounts[1]?.total).toBeCloseTo(middle(after) - middle(before), 1);
    expect(card.amounts[1]?.total).toBeLessThan(-5);
    expect(byOf(card)['sleeve-length']).toBeCloseTo(card.amounts[1]?.total ?? 0, 9);
    expect(byOf(card)['upper-arm']).toBe(20);
    const corner = (piece: typeof before) =>
      pointOnEdge(piece, 'underarm-back', 0).y - (landmarkOf(piece, 'cap-top')?.y ?? 0);
    const falls = card.amounts[1]?.said.values?.falls;
    expect(typeof falls === 'object' && falls.mm).toBeCloseTo(corner(before) - corner(after), 0);
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
  it('is written as far as the fit advises one, drawn or not', () => {
    const most = cardOf(step('full-upper-arm', { amount: mostRoundArm }));
    expect(most.notDrawn).not.toBeNull();
    expect(most.amounts[0]).toMatchObject({ total: mostRoundArm });
    const asked = cardCatalogue(harbourBlouse, '14').find(({ id }) => id === 'full-upper-arm')?.params.amount;
    expect(asked).toMatchObject({ unit: 'mm', min: 1, max: mostRoundArm });
  });
});
