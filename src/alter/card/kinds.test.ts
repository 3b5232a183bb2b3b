import { describe, expect, it } from 'vitest';
import { harbourBlouse } from '../../fit/testing/envelope.ts';
import {
  type AlterationStep,
  type Envelope,
  edgeLength,
  type Figure,
  pieceOf,
  validateGarment,
} from '../../pattern/index.ts';
import { alterationCard, sayCard } from './index.ts';
import { step } from './testing/cards.ts';

const grown = (figures: readonly Figure[], by: number): readonly Figure[] =>
  figures.map((figure) => (typeof figure === 'number' ? figure + by : figure));

const woman = harbourBlouse;
const man: Envelope = {
  ...woman,
  for: 'men',
  cloth: { ...woman.cloth, structure: 'knit', stretch: 0.2 },
  body: woman.body
    .filter(({ measure }) => measure !== 'backWaistLength')
    .map((row) => ({ ...row, figures: grown(row.figures, 100) })),
  finished: [],
};
const envelopes: Readonly<Record<string, Envelope>> = {
  blouse: woman,
  dress: { ...woman, kind: 'dress' },
  jacket: {
    ...woman,
    kind: 'jacket',
    finished: woman.finished.map((row) => ({ ...row, figures: grown(row.figures, 50) })),
  },
  skirt: { ...woman, kind: 'skirt' },
  trousers: { ...woman, kind: 'trousers' },
  'knit top': { ...woman, cloth: { ...woman.cloth, structure: 'knit', stretch: 0.3 } },
  'man’s knit top': man,
  'child’s coat': {
    ...man,
    for: 'child',
    kind: 'coat',
    body: [
      { measure: 'stature', figures: [1040, 1100, 1160, 1220, 1280, 1340, 1400, 1460] },
      { measure: 'bustGirth', figures: [560, 580, 600, 620, 640, 660, 680, 700] },
      { measure: 'waistGirth', figures: [540, 550, 560, 570, 580, 590, 600, 610] },
      { measure: 'hipGirth', figures: [600, 620, 640, 660, 680, 700, 720, 740] },
    ],
  },
};
const steps = [
  step('full-bust', { amount: 15 }),
  step('lengthen-shorten', { where: 'above-waist', amount: 20 }),
  step('lengthen-shorten', { where: 'below-waist', amount: -15 }),
  step('lengthen-shorten', { where: 'sleeve', amount: 20 }),
  step('lengthen-shorten', { where: 'rise', amount: 15 }),
  step('lengthen-shorten', { where: 'leg', amount: -20 }),
  step('full-upper-arm', { amount: 12 }),
  step('sway-back', { amount: 12 }),
  step('blend', { waist: '16' }),
  step('blend', { hip: '16' }),
  step('blend', { waist: '12', hip: '18' }),
];

describe.each(Object.entries(envelopes))('cards for a %s', (_, envelope) => {
  it('are drawn on a piece of its own kind and wearer, whole and walking, or say why not', () => {
    for (const wanted of steps) {
      const card = alterationCard({ envelope, view: null, size: '14', step: wanted });
      if (!card.ok) throw new Error(`${wanted.id}: ${card.problem.code}`);
      const { picture, notDrawn } = card.value;
      expect(sayCard(card.value, 'in').steps.length).toBeGreaterThan(3);
      if (!picture) {
        expect(notDrawn, wanted.id).not.toBeNull();
        continue;
      }
      const what = `${wanted.id} ${JSON.stringify(wanted.params)} on ${picture.house}`;
      expect(validateGarment(picture.after), what).toEqual(validateGarment(picture.before));
      expect(
        picture.held.filter(({ ok }) => !ok),
        what,
      ).toEqual([]);
    }
  });
});

describe('what stands for what', () => {
  const houseOf = (kind: string, wanted: AlterationStep): string | null => {
    const envelope = envelopes[kind];
    const card = envelope && alterationCard({ envelope, view: null, size: '14', step: wanted });
    return card?.ok ? (card.value.picture?.house ?? null) : null;
  };
  it('a skirt for a skirt, also at the waist it hangs from', () => {
    expect(houseOf('skirt', step('blend', { waist: '16', hip: '18' }))).toBe('skirt');
    expect(houseOf('skirt', step('lengthen-shorten', { where: 'below-waist', amount: 30 }))).toBe('skirt');
  });
  it('trousers for trousers, their rise without its pockets', () => {
    for (const where of ['rise', 'leg']) {
      expect(houseOf('trousers', step('lengthen-shorten', { where, amount: 15 }))).toBe('trousers');
    }
    const envelope = envelopes['trousers'] as Envelope;
    const wanted = step('lengthen-shorten', { where: 'rise', amount: 15 });
    const card = alterationCard({ envelope, view: null, size: '14', step: wanted });
    if (!card.ok || !card.value.picture) throw new Error('not drawn');
    const { before, after } = card.value.picture;
    expect(card.value.amounts[1]).toMatchObject({ at: 'crotch', total: 30, perPiece: 15, count: 2 });
    for (const piece of ['front', 'back']) {
      const by = edgeLength(pieceOf(after, piece), 'crotch') - edgeLength(pieceOf(before, piece), 'crotch');
      expect(Math.abs(by - 15)).toBeLessThan(1);
    }
  });
  it('a man’s for a man, and no woman’s front for his bust', () => {
    expect(houseOf('man’s knit top', step('blend', { hip: '16' }))).toBe('tee-men');
    expect(houseOf('man’s knit top', step('full-bust', { amount: 15 }))).toBeNull();
  });
});
