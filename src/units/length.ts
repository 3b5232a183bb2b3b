/** The unit a person reads and writes lengths in. */
export type Unit = 'cm' | 'in';

/** Units a length may be written in. */
export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft' | 'yd';

/** Millimetres in one of each; the inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
export const millimetresPer: Readonly<Record<LengthUnit, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  ft: 304.8,
  yd: 914.4,
};

/** Nothing a dressmaker handles is longer than this: a whole roll of cloth is some 100 m. */
export const longestLength = 1_000_000;
