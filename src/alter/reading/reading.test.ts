import { describe, expect, it } from 'vitest';
import { housePattern } from '../../drafting/index.ts';
import type { Garment } from '../../pattern/index.ts';
import { fittingWords } from '../../words/index.ts';
import { alterationCatalogue } from '../catalogue.ts';
import type { Alteration } from '../types.ts';
import {
  directions,
  type FittingContext,
  fittingCauses,
  halves,
  postures,
  readFitting,
  type Sign,
  signKinds,
  zoneIds,
} from './index.ts';

const garmentOf = (id: string): Garment => {
  const garment = housePattern(id)?.pattern().sizes[2]?.garment;
  if (!garment) throw new Error(`no ${id}`);
  return garment;
};
const blouse = garmentOf('blouse');
const trousers = garmentOf('trousers');

const sign = (zone: Sign['zone'], kind: Sign['kind'], how: Partial<Sign> = {}): Sign => ({
  zone,
  kind,
  direction: null,
  posture: 'standing',
  half: 'both',
  pinned: null,
  ...how,
});

const on = (kind: string, more: Partial<FittingContext> = {}): FittingContext => ({
  kind,
  garment: kind === 'trousers' ? trousers : blouse,
  catalogue: alterationCatalogue,
  ...more,
});

const causes = (signs: readonly Sign[], context: FittingContext): readonly string[] =>
  readFitting(signs, context).suggestions.map(({ cause }) => cause);

describe('what the trade says of a fitting', () => {
  it.each([
    [
      'taut from the bust point to the side, the hem riding at the front',
      'dress',
      [sign('bust', 'taut', { direction: 'to-point' }), sign('hem-front', 'rides-up')],
      'full-bust',
    ],
    ['slack along over the bust', 'top', [sign('bust', 'slack', { direction: 'along' })], 'small-bust'],
    [
      'slack across above the back waist',
      'dress',
      [sign('above-back-waist', 'slack', { direction: 'across' })],
      'sway-back',
    ],
    ['taut across the upper arm', 'top', [sign('upper-arm', 'taut', { direction: 'across' })], 'full-upper-arm'],
    [
      'taut lines rising from the crotch',
      'trousers',
      [sign('crotch-front', 'taut', { direction: 'rising' })],
      'front-crotch-short',
    ],
    [
      'taut lines falling from the crotch',
      'trousers',
      [sign('crotch-front', 'taut', { direction: 'falling' })],
      'front-point-short',
    ],
    ['slack below the seat', 'trousers', [sign('below-seat', 'slack', { direction: 'across' })], 'back-crotch-long'],
    ['taut below the seat', 'trousers', [sign('below-seat', 'taut', { direction: 'across' })], 'back-crotch-short'],
    [
      'slack over and below the seat, the hem dropping behind',
      'trousers',
      [
        sign('seat', 'slack', { direction: 'along' }),
        sign('below-seat', 'slack', { direction: 'across' }),
        sign('hem-back', 'drops'),
      ],
      'seat-flat',
    ],
    ['the neck gaping in front', 'top', [sign('neck-front', 'gapes')], 'neck-gapes-front'],
    ['the neck gaping behind', 'top', [sign('neck-back', 'gapes')], 'neck-gapes-back'],
    ['the armhole gaping', 'top', [sign('armhole-front', 'gapes')], 'armhole-gapes'],
    [
      'folds from the neck point to the armhole',
      'top',
      [sign('shoulder', 'slack', { direction: 'falling' })],
      'sloping-shoulder',
    ],
    ['taut at the shoulder point', 'top', [sign('shoulder-point', 'taut', { direction: 'across' })], 'square-shoulder'],
    ['the sleeve swinging forward', 'top', [sign('sleeve', 'swings-forward')], 'sleeve-turns-back'],
    [
      'the side seam swinging forward, the hem riding in front below a taut abdomen',
      'skirt',
      [sign('side-seam', 'swings-forward'), sign('abdomen', 'taut', { direction: 'across' })],
      'abdomen-full',
    ],
    ['the side seam swinging back', 'skirt', [sign('side-seam', 'swings-back')], 'seat-full'],
    [
      'taut across the back when reaching',
      'top',
      [sign('across-back', 'taut', { direction: 'across', posture: 'reaching' })],
      'broad-back',
    ],
    [
      'the back hem riding and the collar standing off',
      'jacket',
      [sign('hem-back', 'rides-up'), sign('neck-back', 'stands-off')],
      'round-back',
    ],
    ['the shoulder seam lying behind the ridge', 'top', [sign('shoulder', 'swings-back')], 'forward-shoulder'],
    ['the armhole seam falling on to the arm', 'top', [sign('shoulder-point', 'drops')], 'narrow-shoulder'],
    ['the dart pointing below the bust', 'top', [sign('dart-point', 'drops')], 'dart-below'],
    ['the waist taut', 'skirt', [sign('waist', 'taut', { direction: 'across' })], 'waist-tight'],
    ['the thigh taut', 'trousers', [sign('thigh', 'taut', { direction: 'across', posture: 'sitting' })], 'thigh-tight'],
    [
      'the knee taut sitting',
      'trousers',
      [sign('knee', 'taut', { direction: 'across', posture: 'sitting' })],
      'knee-tight',
    ],
    ['the sleeve too short', 'top', [sign('sleeve-hem', 'rides-up')], 'sleeve-too-short'],
    [
      'the garment lifted by a raised arm',
      'top',
      [sign('underarm', 'rides-up', { posture: 'reaching' })],
      'armhole-too-low',
    ],
    ['the hem up on one side only', 'skirt', [sign('hem-side', 'rides-up', { half: 'right' })], 'high-hip'],
  ] as const)('%s on a %s: %4$s', (_, kind, signs, first) => {
    expect(causes(signs, on(kind, { garment: null }))[0]).toBe(first);
  });

  it('looks at tight hips before a sway back, and puts them first where the finished hip is tight', () => {
    const seen = [sign('above-back-waist', 'slack', { direction: 'across', pinned: 12 })];
    const plain = readFitting(seen, on('dress')).suggestions;
    expect(plain.map(({ cause }) => cause).slice(0, 2)).toEqual(['sway-back', 'hip-tight']);
    expect(plain[0]?.ruleOut[0]).toEqual({ cause: 'hip-tight', measure: null });
    const tight = readFitting(seen, on('dress', { measures: { hipGirth: 1000 }, finished: { hipGirth: 1020 } }));
    expect(tight.suggestions[0]?.cause).toBe('hip-tight');
    const easy = readFitting(seen, on('dress', { measures: { hipGirth: 1000 }, finished: { hipGirth: 1060 } }));
    expect(easy.suggestions[0]?.cause).toBe('sway-back');
    expect(easy.suggestions[0]?.ruleOut[0]?.measure).toEqual({ measure: 'hipGirth', ease: 60, says: 'against' });
  });

  it('puts one cause of two signs before two causes of one', () => {
    const seen = [
      sign('neck-back', 'gapes'),
      sign('hem-back', 'rides-up'),
      sign('upper-back', 'taut', { direction: 'across' }),
    ];
    const first = readFitting(seen, on('top')).suggestions[0];
    expect([first?.cause, first?.supporting.length]).toEqual(['round-back', 3]);
  });

  it('lowers what another sign contradicts', () => {
    const taut = sign('bust', 'taut', { direction: 'to-point' });
    const [alone, both] = [[taut], [taut, sign('bust', 'slack', { direction: 'along' })]].map(
      (signs) =>
        readFitting(signs, on('top')).suggestions.find(({ cause }) => cause === 'full-bust') as { score: number },
    );
    expect(both?.score).toBeLessThan(alone?.score ?? 0);
  });
});

describe('the starting amount', () => {
  const bust = (how: Partial<Sign>) =>
    readFitting([sign('bust', 'taut', { direction: 'to-point', ...how })], on('top')).suggestions[0];

  it('is what was pinned on each half, and twice that in all', () => {
    expect(bust({ pinned: 14 })?.amount).toEqual({ each: 14, asked: 14, inAll: 28, from: { how: 'each', pinned: 14 } });
    expect(bust({ pinned: 14 })?.params).toMatchObject({ amount: 14 });
  });
  it('is a guess where nothing was pinned', () => {
    expect(bust({ pinned: null })?.amount.from).toBe('guess');
  });
  it('is kept to what the alteration can do, and what was asked stays known', () => {
    const amount = bust({ pinned: 400 })?.amount;
    expect(amount?.asked).toBe(400);
    expect(amount?.each).toBeLessThan(400);
  });
  it('is half of a fold pinned in a seam, for each of the two pieces', () => {
    const found = readFitting(
      [sign('waist', 'slack', { direction: 'along', pinned: 20 })],
      on('skirt', { garment: null }),
    );
    expect(found.suggestions[0]?.amount.asked).toBe(-10);
  });
  it('differs between the halves where they were pinned differently', () => {
    const seen = [
      sign('upper-arm', 'taut', { direction: 'across', half: 'right', pinned: 20 }),
      sign('upper-arm', 'taut', { direction: 'across', half: 'left', pinned: 12 }),
    ];
    const arms = readFitting(seen, on('top')).suggestions.filter(({ cause }) => cause === 'full-upper-arm');
    expect(arms.map(({ side, amount }) => [side, amount.asked])).toEqual([
      ['right', 20],
      ['left', 12],
    ]);
  });
  it('makes steps whole: every length of the alteration has a value, and the half where it has one', () => {
    const sides: Alteration = {
      ...(alterationCatalogue[0] as Alteration),
      id: 'run-sides',
      params: {
        waist: { unit: 'mm', min: -40, max: 40, usual: [3, 20] },
        hip: { unit: 'mm', min: -40, max: 40, usual: [3, 20] },
        side: { unit: 'choice', choices: ['both', 'right', 'left'], usual: 'both' },
      },
      needs: () => null,
    };
    const seen = [sign('hip', 'taut', { direction: 'across', half: 'left', pinned: 16 })];
    const first = readFitting(seen, on('dress', { catalogue: [sides] })).suggestions[0];
    expect(first?.params).toEqual({ waist: 0, hip: 8, side: 'left' });
  });
});

describe('what cannot be', () => {
  it('is told of a garment nobody knows', () => {
    expect(readFitting([sign('bust', 'taut')], on('tent'))).toEqual({
      suggestions: [],
      unread: [{ sign: 0, why: 'unknown-garment' }],
    });
  });
  it('is told of a place the garment does not cover', () => {
    expect(readFitting([sign('crotch-front', 'taut')], on('top')).unread).toEqual([{ sign: 0, why: 'not-on-garment' }]);
  });
  it('is told of a sign nobody reads', () => {
    expect(readFitting([sign('knee', 'gapes')], on('trousers')).unread).toEqual([{ sign: 0, why: 'no-rule' }]);
  });
  it('is told of an alteration that is not in the catalogue, that the garment lacks what it needs, or is known by its envelope only', () => {
    const seen = [sign('bust', 'taut', { direction: 'to-point' })];
    const why = (more: Partial<FittingContext>) => readFitting(seen, on('top', more)).suggestions[0]?.impossible;
    expect(why({})).toBe(null);
    expect(why({ catalogue: [] })).toEqual({ why: 'not-in-catalogue' });
    expect(why({ garment: null })).toEqual({ why: 'no-pieces' });
    const bare = { ...blouse, pieces: blouse.pieces.filter(({ role }) => role === 'sleeve') };
    expect(why({ garment: bare })?.why).toBe('garment');
  });
});

describe('the words of a fitting', () => {
  it('name every place, sign, posture, half and cause, and nothing else', () => {
    const { zones, kinds, directions: ways, postures: ofPostures, halves: ofHalves, causes: ofCauses } = fittingWords;
    const keys = [zones, kinds, ways, ofPostures, ofHalves, ofCauses].map((list) => Object.keys(list).toSorted());
    const ids = [zoneIds, signKinds, directions, postures, halves, fittingCauses.map(({ id }) => id)];
    expect(keys).toEqual(ids.map((list) => [...list].toSorted()));
  });
  it('say how to look at every cause that is to be ruled out, and what to do where no alteration answers', () => {
    for (const { id, alteration, ruleOut } of fittingCauses) {
      for (const other of ruleOut ?? []) expect(fittingWords.causes[other]?.look, other).toBeDefined();
      if (alteration === null) expect(fittingWords.causes[id]?.instead, id).toBeDefined();
    }
  });
});
