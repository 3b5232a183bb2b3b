import type { LengthUnit } from '../../src/units/index.ts';
import { webWords } from '../../src/words/index.ts';

export type { LengthPurpose } from '../../src/units/index.ts';

const short: Readonly<Record<LengthUnit, string>> = {
  mm: 'mm',
  ft: 'ft',
  in: webWords.field.in,
  cm: webWords.field.cm,
  m: webWords.field.m,
  yd: webWords.field.yd,
};

/** The unit that stands beside a field. */
export const plainUnitWords = (unit: LengthUnit): string => short[unit];
