import { describe, expect, it } from 'vitest';
import type { Wearer } from '../../src/body/index.ts';
import { housePattern } from '../../src/drafting/index.ts';
import { newMake, newWearer } from '../app/documents.ts';
import { choiceFor, withCupTaken } from './choice.ts';

const blouse = housePattern('blouse');
const make = newMake('A blouse', 'w', 'house:blouse', null, 'a4');

/** A wearer of this bust and upper bust, mm. */
const wearer = (bustGirth: number, upperBustGirth: number): Wearer => {
  const made = newWearer('Runa', 'women', '2026-03-14');
  const readings = [
    { measure: 'bustGirth', side: 'both', mm: bustGirth },
    { measure: 'upperBustGirth', side: 'both', mm: upperBustGirth },
  ] as const;
  return { ...made, sets: made.sets.map((set) => ({ ...set, readings })) } as unknown as Wearer;
};

describe('which cup a make is cut in', () => {
  it('is the one nearest to the wearer’s until one is chosen', () => {
    expect(choiceFor(make, blouse, wearer(1000, 910)).cup).toBe(80);
    expect(choiceFor({ ...make, cup: 20 }, blouse, wearer(1000, 910)).cup).toBe(20);
    expect(choiceFor(make, undefined, wearer(1000, 910))).toEqual({});
  });
  it('stays when a size has been taken, however she measures later', () => {
    const taken = withCupTaken({ ...make, size: '5' }, { draftedCup: 80 });
    expect(taken.cup).toBe(80);
    expect(choiceFor(taken, blouse, wearer(1000, 980)).cup).toBe(80);
    expect(withCupTaken(make, { draftedCup: 80 })).toEqual(make);
    expect(withCupTaken({ ...make, size: '5', cup: 20 }, { draftedCup: 80 }).cup).toBe(20);
    expect(withCupTaken({ ...make, size: '5' }, {})).toEqual({ ...make, size: '5' });
  });
});
