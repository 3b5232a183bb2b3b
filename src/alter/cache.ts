import type { Garment } from '../pattern/index.ts';
import type { Result } from '../units/index.ts';
import type { Combined } from './halves/combine.ts';
import type { Alteration, Applied, Params } from './types.ts';

/**
 * Remembers what alterations made of which garment, so that dragging one step does only that step and those after it
 * again. Passed in by the caller and kept by it. Each result is known by the very garment it was made from, the
 * alteration with its version, and its parameters; since a step's garment is itself a remembered value, a
 * chain of steps is known by the garment it began with and all that was done since.
 */
export interface AlterationCache {
  readonly applied: (
    garment: Garment,
    alteration: Alteration,
    params: Params,
    make: () => Result<Applied>,
  ) => Result<Applied>;
  /** The largest amount that would hold, in the direction asked for. */
  readonly largest: (
    garment: Garment,
    alteration: Alteration,
    params: Params,
    make: () => number | null,
  ) => number | null;
  /** The one garment two halves make. */
  readonly combined: (right: Garment, left: Garment, before: Garment, make: () => Result<Combined>) => Result<Combined>;
}

/** Results kept for each garment: enough for a slider's way back and forth, few enough to forget old drags. */
const keptEach = 64;

const recall = <T>(known: Map<string, T>, key: string, make: () => T): T => {
  const found = known.get(key);
  if (found !== undefined) {
    // Moved to the end: what was used last is forgotten last.
    known.delete(key);
    known.set(key, found);
    return found;
  }
  const made = make();
  known.set(key, made);
  const oldest = known.size > keptEach ? known.keys().next() : null;
  if (oldest && !oldest.done) known.delete(oldest.value);
  return made;
};

const keyOf = ({ id, version, params: specs }: Alteration, params: Params): string =>
  JSON.stringify([id, version, ...Object.keys(specs).map((name) => params[name] ?? null)]);

/** As `keyOf`, but of an amount only its direction: the largest that would hold is the same for all of them. */
const boundKey = (alteration: Alteration, params: Params): string =>
  alteration.amount === null
    ? keyOf(alteration, params)
    : keyOf(alteration, { ...params, [alteration.amount]: Number(params[alteration.amount]) < 0 ? -1 : 1 });

export const createAlterationCache = (): AlterationCache => {
  const results = new WeakMap<Garment, Map<string, Result<Applied>>>();
  const bounds = new WeakMap<Garment, Map<string, number | null>>();
  const joined = new WeakMap<
    Garment,
    { readonly left: Garment; readonly before: Garment; readonly made: Result<Combined> }
  >();
  const of = <T>(kept: WeakMap<Garment, Map<string, T>>, garment: Garment): Map<string, T> => {
    const known = kept.get(garment) ?? new Map<string, T>();
    kept.set(garment, known);
    return known;
  };
  return {
    applied: (garment, alteration, params, make) => recall(of(results, garment), keyOf(alteration, params), make),
    largest: (garment, alteration, params, make) => recall(of(bounds, garment), boundKey(alteration, params), make),
    combined: (right, left, before, make) => {
      const known = joined.get(right);
      if (known?.left === left && known.before === before) return known.made;
      const made = make();
      joined.set(right, { left, before, made });
      return made;
    },
  };
};
