import type { Problem, Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { checkMeasure, describeMeasure } from './describe.ts';
import type { MeasureId, Measures } from './types.ts';
import { measureIds } from './types.ts';
import type { Reading, Wearer } from './wearer.ts';

/** A reading and the day it was taken on. */
export interface DatedReading {
  readonly reading: Reading;
  readonly date: string;
}

/**
 * The readings in use on `date` (ISO; all of them when left out): of each measure those of the latest set
 * that has it, and within it the later reading of each side. A newer set that leaves a measure out does
 * not take the older reading away.
 */
export const latestReadings = (wearer: Wearer, date?: string): ReadonlyMap<MeasureId, readonly DatedReading[]> => {
  const inOrder = wearer.sets
    .filter((set) => date === undefined || set.date <= date)
    .toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const latest = new Map<MeasureId, readonly DatedReading[]>();
  for (const set of inOrder) {
    for (const measure of new Set(set.readings.map((reading) => reading.measure))) {
      const sides = new Map<Reading['side'], Reading>();
      for (const reading of set.readings) {
        if (reading.measure !== measure) continue;
        // Both sides read as one again: what was read apart before it no longer stands.
        if (reading.side === 'both') sides.clear();
        else sides.delete('both');
        sides.set(reading.side, reading);
      }
      latest.set(
        measure,
        [...sides.values()].map((reading) => ({ reading, date: set.date })),
      );
    }
  }
  return latest;
};

/**
 * Her measures in use on `date`, mm. Where left and right were read apart, the one cloth is cut for: the
 * larger girth or length, the smaller shoulder drop (the higher shoulder); taking in is easier than letting out.
 */
export const latestMeasures = (wearer: Wearer, date?: string): Measures => {
  const entries = [...latestReadings(wearer, date)].map(([measure, readings]) => {
    const lengths = readings.map(({ reading }) => reading.mm);
    const chosen = describeMeasure(measure).sides === 'smaller' ? Math.min(...lengths) : Math.max(...lengths);
    return [measure, chosen] as const;
  });
  return Object.fromEntries(entries);
};

/** Every measure that nobody has, as problems; empty when all could be somebody's. */
export const impossibleMeasures = (
  measures: Measures,
  of: 'adult' | 'child' | 'anyone' = 'anyone',
): readonly Problem[] =>
  measureIds.flatMap((id) => {
    const mm = measures[id];
    if (mm === undefined) return [];
    const checked = checkMeasure(id, mm, of);
    return checked.ok ? [] : [checked.problem];
  });

/** Whether the value names a measure. */
export const readMeasureId = (name: string): Result<MeasureId> =>
  (measureIds as readonly string[]).includes(name)
    ? good(name as MeasureId)
    : bad('body.unknown-measure', { measure: name });
