import { describe, expect, it } from 'vitest';
import { harbourBlouse } from '../../src/fit/testing/envelope.ts';
import { sentence } from '../../src/words/index.ts';
import { clothSaid } from './cloth-said.ts';

const asked = {
  envelope: harbourBlouse,
  view: 'a',
  size: '14',
  width: 1400,
  laid: 'lengthwise',
  buy: 2000,
  inHand: null,
} as const;
const codes = (part: Partial<Parameters<typeof clothSaid>[0]>) =>
  clothSaid({ ...asked, ...part }).map(({ code }) => code);

describe('what stands against a cloth', () => {
  it('is nothing of a usual width with enough of it', () => {
    expect(codes({})).toEqual([]);
    expect(codes({ inHand: 2000 })).toEqual([]);
  });
  it('is by how much there is too little of it', () => {
    const [said] = clothSaid({ ...asked, inHand: 1800 });
    expect(said?.code).toBe('web.cloth-too-short');
    expect(said && sentence(said, 'cm').message.replaceAll('\u00a0', ' ')).toBe(
      'There is 1.8 m of this cloth, and the estimate is 2.0 m: 20.0 cm too little.',
    );
  });
  it('is a front wider than the cloth, which a fold halves', () => {
    // A quarter of the hip of 41 inches, and twice 15: 290.
    expect(codes({ width: 560 })).toEqual(['web.cloth-under-piece']);
    expect(codes({ width: 560, laid: 'single' })).toEqual(['web.cloth-narrow']);
    expect(codes({ width: 280, laid: 'single' })).toEqual(['web.cloth-under-piece']);
  });
  it('is that cloth is hardly so narrow, where no girth is known', () => {
    const envelope = { ...harbourBlouse, finished: [] };
    expect(codes({ envelope, width: 600 })).toEqual(['web.cloth-narrow']);
    expect(codes({ envelope, width: 700 })).toEqual([]);
  });
});
