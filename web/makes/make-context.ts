import { createContext, useContext } from 'react';
import type { Altered } from '../../src/alter/index.ts';
import type { Measures, Wearer } from '../../src/body/index.ts';
import type { Cloth } from '../../src/cloth/index.ts';
import type { EaseCell, Fit } from '../../src/fit/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { Pattern, Size } from '../../src/pattern/index.ts';
import type { Result } from '../../src/units/index.ts';

/** Everything a make's passages work from: computed once, wherever it is shown. */
export interface MakeInHand {
  readonly id: string;
  readonly make: Make;
  readonly wearer: Wearer;
  readonly measures: Measures;
  readonly pattern: Pattern;
  readonly cloth: Cloth | null;
  readonly fit: Result<Fit>;
  /** The size the pieces are in: chosen, or else recommended. */
  readonly size: Size;
  readonly altered: Altered;
  /** Ease of the pieces as altered, level by level; none where too little is known of the body. */
  readonly alteredEase: readonly EaseCell[];
  /** Changes the make; edits under one name undo together. */
  readonly change: (change: (make: Make) => Make, name: string) => void;
}

/** Whether two differ in nothing but the alteration list and what follows from it. */
export const onlyStepsDiffer = (a: MakeInHand, b: MakeInHand): boolean => {
  const { make: makeA, altered: _alteredA, alteredEase: _easeA, ...restA } = a;
  const { make: makeB, altered: _alteredB, alteredEase: _easeB, ...restB } = b;
  const { steps: _stepsA, ...ofA } = makeA;
  const { steps: _stepsB, ...ofB } = makeB;
  return sameParts(ofA, ofB) && sameParts(restA, restB);
};

const sameParts = (a: Readonly<Record<string, unknown>>, b: Readonly<Record<string, unknown>>): boolean =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])].every((part) => Object.is(a[part], b[part]));

const MakeContext = createContext<MakeInHand | null>(null);
export const MakeProvider = MakeContext.Provider;

export const useMake = (): MakeInHand => {
  const make = useContext(MakeContext);
  if (!make) throw new Error('used outside a make');
  return make;
};
