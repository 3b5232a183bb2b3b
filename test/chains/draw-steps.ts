import { type Alteration, alterationCatalogue, type Parameter, type Params } from '../../src/alter/index.ts';
import type { AlterationStep, Garment } from '../../src/pattern/index.ts';

/** Random numbers from a seed, 0 to 1, the same on every machine. */
export type Random = () => number;

/** Mulberry32: 32 bits of state, good enough to choose cases and quick. */
export const randomFrom = (seed: number): Random => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

export const oneOf = <T>(random: Random, among: readonly T[]): T => {
  const chosen = among[Math.floor(random() * among.length)];
  if (chosen === undefined) throw new Error('nothing to choose from');
  return chosen;
};

/** Amounts in the range most alterations fall in, or anywhere within what is allowed. */
export type Range = 'usual' | 'full';

/** To a tenth of a millimetre, as hands give them, a share to a hundredth. */
const between = (random: Random, [low, high]: readonly [number, number], grain: number): number => {
  const value = Math.round((low + random() * (high - low)) * grain) / grain;
  return Math.min(Math.max(value, low), high);
};

const drawn = (
  random: Random,
  alteration: Alteration,
  garment: Garment,
  [name, parameter]: readonly [string, Parameter],
  range: Range,
  before: Params,
): number | string | null => {
  if (parameter.unit === 'choice') {
    // Where an alteration says which of its choices this garment has, only those are asked.
    const here = alteration.options?.(garment, name, before) ?? [];
    return oneOf(random, here.length > 0 ? here : parameter.choices);
  }
  if (parameter.unit === 'named') {
    const options = alteration.options?.(garment, name, before) ?? [];
    return options.length === 0 ? null : oneOf(random, options);
  }
  const limits = range === 'usual' ? parameter.usual : ([parameter.min, parameter.max] as const);
  const value = between(random, limits, parameter.unit === 'share' ? 100 : 10);
  // Nothing at all is no alteration.
  return parameter.unit === 'mm' && value === 0 ? Math.min(1, limits[1]) : value;
};

/** Values for every parameter an alteration declares, as its own declaration says. */
export const drawParams = (random: Random, alteration: Alteration, garment: Garment, range: Range): Params => {
  const params: Record<string, number | string> = {};
  // What there is to choose from may depend on what was chosen before it.
  for (const entry of Object.entries(alteration.params)) {
    const value = drawn(random, alteration, garment, entry, range, params);
    if (value !== null) params[entry[0]] = value;
  }
  return params;
};

/** What can be asked of a garment as it is: alterations it lacks nothing for. */
export const askable = (
  garment: Garment,
  catalogue: readonly Alteration[] = alterationCatalogue,
): readonly Alteration[] => catalogue.filter((one) => one.needs(garment) === null);

/** One step for a garment as it is at that moment; null where nothing can be asked of it. */
export const drawStep = (
  random: Random,
  id: string,
  garment: Garment,
  range: Range,
  catalogue: readonly Alteration[] = alterationCatalogue,
): AlterationStep | null => {
  const among = askable(garment, catalogue);
  if (among.length === 0) return null;
  const alteration = oneOf(random, among);
  const params = drawParams(random, alteration, garment, range);
  return { id, alteration: alteration.id, version: alteration.version, on: true, params };
};
