import type { MeasureSet, Wearer } from '../../src/body/index.ts';
import type { Cloth } from '../../src/cloth/index.ts';
import type { Make } from '../../src/make/index.ts';

/** Today where she is, `2026-03-14`. */
export const today = (now: Date = new Date()): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');

/** A name nothing else in its document has. */
export const freshId = (prefix: string, taken: readonly string[]): string => {
  let number = taken.length + 1;
  while (taken.includes(`${prefix}${number}`)) number += 1;
  return `${prefix}${number}`;
};

export const newSet = (id: string, date: string, waistAt: MeasureSet['waistAt'] = 'waistband'): MeasureSet => ({
  id,
  date,
  waistAt,
  readings: [],
  note: '',
});

export const newWearer = (name: string, comparedWith: Wearer['comparedWith'], date: string): Wearer => ({
  format: 'easewright-wearer/1',
  name,
  comparedWith,
  sets: [newSet('m1', date)],
  note: '',
});

export const newCloth = (name: string): Cloth => ({
  format: 'easewright-cloth/1',
  name,
  structure: 'woven',
  fibres: '',
  weight: null,
  width: 1400,
  length: null,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0,
  shrinkAcross: 0,
  washed: false,
  colour: '#8d9db0',
  terms: 'unknown',
  from: '',
  note: '',
});

export const newMake = (
  name: string,
  wearer: string,
  pattern: string,
  cloth: string | null,
  paper: Make['paper'],
  view?: string,
): Make => ({
  format: 'easewright-make/1',
  name,
  wearer,
  pattern,
  ...(view ? { view } : {}),
  cloth,
  size: null,
  steps: [],
  fold: 'lengthwise',
  gap: 2,
  paper,
  state: 'planned',
  note: '',
});
