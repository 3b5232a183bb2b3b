import {
  type Alteration,
  type AmountParameter,
  alterationCatalogue,
  cardSteps,
  type Parameter,
} from '../../src/alter/index.ts';
import type { Way } from '../../src/fit/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { AlterationStep, Garment } from '../../src/pattern/index.ts';
import { millimetresPer, type Unit } from '../../src/units/index.ts';
import { freshId } from '../app/documents.ts';

/** The alteration a step names; undefined for one this program does not know. */
export const alterationOf = (step: AlterationStep): Alteration | undefined =>
  alterationCatalogue.find(({ id, version }) => id === step.alteration && version === step.version);

/** Where a new step's amount begins: the middle of what is usual, in whole millimetres; at nothing where it may go either way. */
const usualAmount = ({ usual, min }: AmountParameter): number => (min < 0 ? 0 : Math.round((usual[0] + usual[1]) / 2));

/** What a parameter is begun with; undefined where it is left to the garment, which is then what is usual there. */
const begunWith = (parameter: Parameter): number | string | undefined => {
  if (parameter.unit === 'mm') return usualAmount(parameter);
  if (parameter.unit === 'choice') return parameter.usual;
  return parameter.unit === 'share' ? (parameter.usual[0] + parameter.usual[1]) / 2 : undefined;
};

/**
 * What a step is begun with on a garment: as usual, of places to choose from one the garment has, and of what it names the
 * first that fits. That is written down, so that the step means the same dart or seam when others come before it.
 */
export const begunIn = (alteration: Alteration, garment: Garment): AlterationStep['params'] => {
  let begun: AlterationStep['params'] = {};
  for (const [name, parameter] of Object.entries(alteration.params)) {
    const chosen = parameter.unit === 'choice' || parameter.unit === 'named';
    const here = chosen ? (alteration.options?.(garment, name, begun) ?? []) : [];
    const usual = begunWith(parameter);
    const value = here.length > 0 && !here.includes(String(usual)) ? here[0] : usual;
    if (value !== undefined) begun = { ...begun, [name]: value };
  }
  return begun;
};

/** A new step of an alteration, as the fit suggests it or else as it is usually begun. */
export const newStep = (
  alteration: Pick<Alteration, 'id' | 'version' | 'params'>,
  taken: readonly string[],
  suggested?: AlterationStep['params'],
): AlterationStep => ({
  id: freshId('s', taken),
  alteration: alteration.id,
  version: alteration.version,
  on: true,
  params:
    suggested ??
    Object.fromEntries(
      Object.entries(alteration.params).flatMap(([name, parameter]) => {
        const value = begunWith(parameter);
        return value === undefined ? [] : [[name, value] as const];
      }),
    ),
});

const withSteps = (make: Make, change: (steps: readonly AlterationStep[]) => readonly AlterationStep[]): Make => ({
  ...make,
  steps: change(make.steps),
});

/** What a way suggests of an alteration and the list does not hold yet. */
export const suggestionFor = (
  make: Make,
  way: Way | undefined,
  alteration: Alteration,
): AlterationStep['params'] | undefined =>
  way?.alterations.find((one) => one.alteration === alteration.id && !make.steps.some((step) => step.id === one.id))
    ?.params;

export const addStep = (
  make: Make,
  alteration: Pick<Alteration, 'id' | 'version' | 'params'>,
  suggested?: AlterationStep['params'],
): Make =>
  withSteps(make, (steps) => [
    ...steps,
    newStep(
      alteration,
      steps.map((step) => step.id),
      suggested,
    ),
  ]);

export const removeStep = (make: Make, id: string): Make =>
  withSteps(make, (steps) => steps.filter((step) => step.id !== id));

export const changeStep = (make: Make, id: string, part: Partial<AlterationStep>): Make =>
  withSteps(make, (steps) => steps.map((step) => (step.id === id ? { ...step, ...part } : step)));

export const setParam = (make: Make, id: string, name: string, value: number | string): Make =>
  withSteps(make, (steps) =>
    steps.map((step) => (step.id === id ? { ...step, params: { ...step.params, [name]: value } } : step)),
  );

/** A second step like it, right after it. */
export const copyStep = (make: Make, id: string): Make =>
  withSteps(make, (steps) => {
    const taken = steps.map((step) => step.id);
    return steps.flatMap((step) => (step.id === id ? [step, { ...step, id: freshId('s', taken) }] : [step]));
  });

/** A step put back as it was: in place of itself where it still stands, or else at the place it was taken from. */
export const putBack = (make: Make, step: AlterationStep, place: number): Make =>
  withSteps(make, (steps) =>
    steps.some(({ id }) => id === step.id)
      ? steps.map((one) => (one.id === step.id ? step : one))
      : [...steps.slice(0, place), step, ...steps.slice(place)],
  );

/** The step moved one place earlier (−1) or later (+1) in the list. */
export const moveStep = (make: Make, id: string, by: -1 | 1): Make =>
  withSteps(make, (steps) => {
    const from = steps.findIndex((step) => step.id === id);
    const to = from + by;
    const moved = steps[from];
    if (!moved || to < 0 || to >= steps.length) return steps;
    const rest = steps.filter((step) => step.id !== id);
    return [...rest.slice(0, to), moved, ...rest.slice(to)];
  });

/**
 * The make in a way's size, its suggested alterations first and in place of what any of the ways suggested before;
 * what she added herself stays.
 */
export const withWay = (make: Make, way: Way, ways: readonly Way[]): Make => {
  const suggested = way.alterations.map(
    ({ id, alteration, version, params }): AlterationStep => ({ id, alteration, version, on: true, params }),
  );
  const ofWays = new Set(ways.flatMap((one) => one.alterations.map(({ id }) => id)));
  return {
    ...make,
    size: way.startingSize,
    steps: [...suggested, ...make.steps.filter((step) => !ofWays.has(step.id))],
  };
};

/** The same for a pattern known by its envelope: lengths first, the bust, and running into other sizes last, as on the tissue. */
export const withCards = (make: Make, way: Way, ways: readonly Way[]): Make => {
  const ofWays = new Set(ways.flatMap((one) => cardSteps(one).map(({ id }) => id)));
  return {
    ...make,
    size: way.startingSize,
    steps: [...cardSteps(way), ...make.steps.filter((step) => !ofWays.has(step.id))],
  };
};

/** One stop of a slider, mm: a millimetre, or a sixteenth of an inch. */
export const sliderStop = (unit: Unit): number => (unit === 'cm' ? 1 : millimetresPer.in / 16);

export interface SliderRange {
  readonly stop: number;
  readonly least: number;
  readonly most: number;
}

/** The stops of a slider that lie within a parameter's limits, counted from nothing. */
export const sliderRange = (parameter: AmountParameter, unit: Unit): SliderRange => {
  const stop = sliderStop(unit);
  return { stop, least: Math.ceil(parameter.min / stop), most: Math.floor(parameter.max / stop) };
};
