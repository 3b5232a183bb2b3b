import { describe, expect, it } from 'vitest';
import type { UsualAlteration, Wearer } from '../../src/body/index.ts';
import { housePattern } from '../../src/drafting/index.ts';
import { forgetUsual, keepUsual, usualHere } from './usual.ts';

const wearer: Wearer = {
  format: 'easewright-wearer/1',
  name: 'Maren Tolk',
  comparedWith: 'women',
  sets: [],
  note: '',
};
const bust: Omit<UsualAlteration, 'id'> = {
  alteration: 'full-bust',
  version: 1,
  params: { amount: 15 },
  reason: 'Drag lines from the bust',
  madeAs: 'Concert blouse',
  make: 'make-1',
  kind: 'top',
  date: '2026-03-14',
};
const garmentOf = (id: 'blouse' | 'skirt') => {
  const garment = housePattern(id)?.pattern().sizes[0]?.garment;
  if (!garment) throw new Error(`no ${id}`);
  return garment;
};

describe('alterations kept for a wearer', () => {
  const kept = keepUsual(wearer, bust);
  it('are offered on the next garment of a like kind that bears them', () => {
    const blouse = garmentOf('blouse');
    expect(usualHere(kept, 'make-2', 'top', blouse, []).map((one) => one.reason)).toEqual([bust.reason]);
    expect(usualHere(kept, 'make-2', 'dress', blouse, [])).toHaveLength(1);
    expect(usualHere(kept, 'make-2', 'skirt', garmentOf('skirt'), [])).toEqual([]);
  });
  it('are not offered where they came from, nor where the list has them', () => {
    const blouse = garmentOf('blouse');
    expect(usualHere(kept, 'make-1', 'top', blouse, [])).toEqual([]);
    const step = { id: 's1', alteration: 'full-bust', version: 1, on: true, params: { amount: 3 } };
    expect(usualHere(kept, 'make-2', 'top', blouse, [step])).toEqual([]);
  });
  it('are kept once a make, the later for the former, and can be forgotten', () => {
    const again = keepUsual(kept, { ...bust, params: { amount: 20 } });
    expect(again.usual?.map(({ params }) => params['amount'])).toEqual([20]);
    const id = again.usual?.[0]?.id ?? '';
    expect(forgetUsual(again, id).usual).toEqual([]);
  });
});
