import { describe, expect, it } from 'vitest';
import { type Alteration, alterationCatalogue, type Sign } from '../../../src/alter/index.ts';
import { type Make, makeSchema } from '../../../src/make/index.ts';
import { addSign, beginRound, removeSign, roundsOf, takeSuggestion } from './rounds.ts';

const make: Make = {
  format: 'easewright-make/1',
  name: 'Rain jacket for the quay',
  wearer: 'w1',
  pattern: 'house:jacket',
  cloth: null,
  size: '12',
  steps: [{ id: 's1', alteration: 'lengthen-shorten', version: 1, on: true, params: { where: 'sleeve', amount: 10 } }],
  fold: 'lengthwise',
  gap: 2,
  paper: 'a4',
  state: 'planned',
  note: '',
};
const taut: Sign = { zone: 'bust', kind: 'taut', direction: 'across', posture: 'standing', half: 'both', pinned: 9 };
const fullBust = alterationCatalogue.find(({ id }) => id === 'full-bust') as Alteration;

describe('rounds of fitting', () => {
  it('are none in a make from before', () => {
    expect(roundsOf(make)).toEqual([]);
  });

  it('keep what was seen and taken, and the next starts from the alterations of the one before', () => {
    const first = addSign(beginRound(make, 'toile', '2026-03-02'), 'f1', taut);
    const taken = takeSuggestion(first, 'f1', fullBust, { amount: 9 });
    expect(taken.steps.map(({ alteration }) => alteration)).toEqual(['lengthen-shorten', 'full-bust']);
    const second = beginRound(taken, 'make', '2026-03-09');
    expect(
      roundsOf(second).map(({ id, garment, steps, signs, taken: of }) => [id, garment, steps.length, signs.length, of]),
    ).toEqual([
      ['f1', 'toile', 1, 1, [taken.steps[1]?.id]],
      ['f2', 'make', 2, 0, []],
    ]);
    expect(makeSchema.parse(second)).toEqual(second);
  });

  it('lose a sign that is taken away, and no other', () => {
    const both = addSign(addSign(beginRound(make, 'toile', '2026-03-02'), 'f1', taut), 'f1', {
      ...taut,
      zone: 'waist',
    });
    expect(roundsOf(removeSign(both, 'f1', 0))[0]?.signs.map(({ zone }) => zone)).toEqual(['waist']);
  });
});
