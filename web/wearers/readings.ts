import type { MeasureId, MeasureSet, Reading } from '../../src/body/index.ts';

type Side = Reading['side'];

/** The readings of one measure and side, in the order they were taken. */
export const readingsOf = (set: MeasureSet, measure: MeasureId, side: Side): readonly Reading[] =>
  set.readings.filter((reading) => reading.measure === measure && reading.side === side);

/** True when left and right of a measure are entered apart. */
export const readApart = (set: MeasureSet, measure: MeasureId): boolean =>
  set.readings.some((reading) => reading.measure === measure && reading.side !== 'both');

/**
 * The set with the reading number `place` (0 the first, 1 the second) of a measure and side put, or taken
 * away with null. What was read for both sides gives way to what is read for one.
 */
export const withReading = (
  set: MeasureSet,
  measure: MeasureId,
  side: Side,
  place: number,
  read: { readonly mm: number; readonly written: string } | null,
): MeasureSet => {
  let seen = -1;
  let put = false;
  const readings = set.readings.flatMap((reading): Reading[] => {
    if (reading.measure !== measure) return [reading];
    if (reading.side !== side) return side === 'both' || reading.side !== 'both' ? [reading] : [];
    seen += 1;
    if (seen !== place) return [reading];
    put = true;
    return read ? [{ ...reading, ...read }] : [];
  });
  if (read && !put) readings.push({ measure, side, ...read });
  return { ...set, readings };
};

/** The same tape on the same day comes back to within this, mm, or within this share of the length; under `trifling` nothing is asked. */
const steady = 15;
const steadyShare = 0.015;
const trifling = 5;

/** Two readings of one day so far apart that one of them must be a slip: the two lengths, else null. */
export const readingsApart = (
  set: MeasureSet,
  measure: MeasureId,
  side: Side,
): { readonly first: number; readonly second: number } | null => {
  const [first, second] = readingsOf(set, measure, side).map((reading) => reading.mm);
  if (first === undefined || second === undefined) return null;
  const apart = Math.abs(first - second);
  return apart > steady || apart > Math.max(trifling, steadyShare * Math.max(first, second)) ? { first, second } : null;
};

/** The set with the two sides of a measure taken as one: the larger of what was read apart, or what is given. */
export const together = (set: MeasureSet, measure: MeasureId, chosen: 'larger' | 'smaller'): MeasureSet => {
  const apart = set.readings.filter((reading) => reading.measure === measure && reading.side !== 'both');
  const kept = apart.toSorted((a, b) => (chosen === 'larger' ? b.mm - a.mm : a.mm - b.mm))[0];
  const others = set.readings.filter((reading) => reading.measure !== measure || reading.side === 'both');
  return { ...set, readings: kept ? [...others, { ...kept, side: 'both' }] : others };
};
