import { describe, expect, it } from 'vitest';
import {
  doubtsStanding,
  type Envelope,
  envelopeDoubts,
  type Figure,
  keepDoubt,
  turnUnit,
  unitAfterAll,
} from './index.ts';
import { choirBlouse, withBody } from './testing/envelopes.ts';

const inch = 25.4;
const by = (factor: number) => (figure: Figure) => (typeof figure === 'number' ? figure * factor : figure);
const bodyTimes = (factor: number): Envelope => ({
  ...choirBlouse,
  body: choirBlouse.body.map((row, index) => (index === 0 ? { ...row, figures: row.figures.map(by(factor)) } : row)),
});
const only = (envelope: Envelope, code?: string) => {
  const [doubt, ...others] = envelopeDoubts(envelope).filter((one) => code === undefined || one.code === code);
  if (!doubt || others.length > 0) throw new Error('not one doubt');
  return doubt;
};

describe('a row typed in the other unit', () => {
  it.each([
    ['in inches for cm', 2.54, 'cm'],
    ['in cm for inches', 1 / 2.54, 'inches'],
  ] as const)('%s is turned whole by one answer, and doubted no more', (_, factor, unit) => {
    const wrong = bodyTimes(factor);
    const doubt = only(wrong, 'envelope.doubt-unit-row');
    expect(unitAfterAll(doubt)).toBe(unit);
    const turned = turnUnit(wrong, doubt);
    expect(envelopeDoubts(turned)).toEqual([]);
    for (const [at, figure] of (turned.body[0]?.figures ?? []).entries()) {
      expect(figure).toBeCloseTo(Number(choirBlouse.body[0]?.figures[at]), 2);
    }
    expect(turned.body.slice(1)).toEqual(wrong.body.slice(1));
  });
  it('of finished measurements too, ranges with it', () => {
    const finished = choirBlouse.finished.map((row, index) =>
      index === 0
        ? { ...row, figures: row.figures.map((figure): Figure => [Number(figure) * 2.54, Number(figure) * 2.54 + 5]) }
        : row,
    );
    const doubt = envelopeDoubts({ ...choirBlouse, finished })[0];
    if (!doubt) throw new Error('no doubt');
    const turned = turnUnit({ ...choirBlouse, finished }, doubt).finished[0]?.figures[0] as readonly [number, number];
    expect(turned[0]).toBeCloseTo(Number(choirBlouse.finished[0]?.figures[0]), 2);
    expect(turned[1] - turned[0]).toBeCloseTo(5 / 2.54, 2);
  });
  it('of one figure turns that alone, and of another doubt nothing', () => {
    const wrong = withBody(0, 4, 96 * inch);
    const turned = turnUnit(wrong, only(wrong));
    expect(turned.body[0]?.figures[4]).toBeCloseTo(960, 6);
    expect(turned.body[0]?.figures.slice(0, 4)).toEqual(wrong.body[0]?.figures.slice(0, 4));
    const uneven = withBody(3, 2, 63 * inch);
    expect(unitAfterAll(only(uneven))).toBeNull();
    expect(turnUnit(uneven, only(uneven))).toBe(uneven);
  });
});

describe('doubts that stand', () => {
  const before = withBody(3, 2, 63 * inch);
  const doubts = envelopeDoubts(before);
  it('do so while nothing they are about is changed', () => {
    expect(doubts).toHaveLength(1);
    expect(doubtsStanding(doubts, before, { ...before, name: 'Another' })).toEqual(doubts);
    expect(doubtsStanding(doubts, before, { ...before, finished: [] })).toEqual(doubts);
  });
  it('are gone as soon as their figure is changed or they are answered', () => {
    expect(doubtsStanding(doubts, before, choirBlouse)).toEqual([]);
    expect(doubtsStanding(doubts, before, keepDoubt(before, doubts[0]?.id ?? ''))).toEqual([]);
    expect(doubtsStanding(doubts, before, { ...before, body: [] })).toEqual([]);
  });
  it('of a whole row are gone with any figure of it, and of the sheet with its figure', () => {
    const row = bodyTimes(2.54);
    const first = row.body[0]?.figures.map((figure, at) => (at === 1 ? 900 : figure)) ?? [];
    const mended = { ...row, body: row.body.map((one, at) => (at === 0 ? { ...one, figures: first } : one)) };
    expect(doubtsStanding([only(row, 'envelope.doubt-unit-row')], row, mended)).toEqual([]);
    const cup = { ...choirBlouse, draftedCup: 200 };
    expect(envelopeDoubts(cup).map(({ code }) => code)).toContain('envelope.doubt-drafted-cup');
    expect(
      doubtsStanding(envelopeDoubts(cup), cup, { ...cup, draftedCup: 50 }).map(({ where }) => where.chart),
    ).not.toContain('drafting');
  });
});
