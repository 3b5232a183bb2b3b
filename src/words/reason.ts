import type { Problem, ProblemValue, Unit } from '../units/index.ts';
import { formatLength, lengthAsShown } from '../units/index.ts';
import { bodyWords } from './body.ts';
import { fill } from './fill.ts';
import { fitWords } from './fit.ts';

type Values = Readonly<Record<string, ProblemValue>>;

const named = (names: Readonly<Record<string, string>>, id: ProblemValue): ProblemValue =>
  typeof id === 'string' ? (names[id] ?? id) : id;

const measureNames: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(bodyWords.measures).map(([id, { name }]) => [id, name]),
);

const inSentence = (name: ProblemValue): ProblemValue =>
  typeof name === 'string' ? name.charAt(0).toLowerCase() + name.slice(1) : name;

/** Rounding of two summands may leave a sum this many units of the last figure off what was wanted. */
const markable = 2;

interface Shown {
  readonly of: (name: string) => number | null;
  readonly write: (mm: number) => string;
  /** One unit of the last figure, mm. */
  readonly step: number;
}

/** The body and its ease, what they need, and what is so put in: each as printed, so that adding up on paper gives the same. */
const bustSum = (values: Values, { of, write, step }: Shown): Values => {
  const [bust, liked, finished, perFront] = [of('bust'), of('liked'), of('finished'), of('perFront')];
  const { count } = values;
  if (bust === null || liked === null || finished === null || perFront === null || typeof count !== 'number') return {};
  const needs = bust + liked;
  const total = count * perFront;
  const gap = Math.abs(needs - finished);
  const off = Math.round(Math.abs(gap - total) / step);
  const so =
    off === 0
      ? fitWords.so.exactly
      : off <= markable
        ? fitWords.so.markable
        : fitWords.so.partly.replace('{gap}', write(gap));
  return { needs: write(needs), total: write(total), so };
};

const derived = (code: string, values: Values, shown: Shown): Values => {
  const [ease, bust, cup] = [shown.of('ease'), shown.of('bust'), shown.of('cup')];
  const border = shown.of(code === 'fit.level-snug' ? 'low' : 'least');
  return {
    ...(ease !== null && border !== null
      ? { under: ease < border ? fitWords.under.clearly : fitWords.under.just }
      : {}),
    ...(bust !== null && cup !== null ? { chart: shown.write(bust - cup) } : {}),
    ...bustSum(values, shown),
  };
};

/**
 * One reason of a fit as a sentence, its lengths in the reader's unit to what can be marked (1 mm, 1/16 inch);
 * measures and levels by their names. Sums and comparisons in it are true of the figures as they are printed.
 */
export const reasonSentence = (reason: Problem, unit: Unit, locale = 'en'): string => {
  const templates: Readonly<Record<string, string>> = fitWords.reasons;
  const template = templates[reason.code] ?? reason.code;
  const given = reason.values ?? {};
  const write = (mm: number): string => formatLength(mm, unit, { purpose: 'amount', locale });
  const shownOf = (name: string): number | null => {
    const value = given[name];
    return typeof value === 'object' ? lengthAsShown(value.mm, unit, { purpose: 'amount' }) : null;
  };
  const step = unit === 'cm' ? 1 : 25.4 / 16;
  const values: Record<string, ProblemValue> = Object.fromEntries(
    Object.entries(given).map(([name, value]) => [name, typeof value === 'object' ? write(value.mm) : value]),
  );
  if (values.level !== undefined) values.level = named(fitWords.levels, values.level);
  if (values.measure !== undefined) values.measure = named(measureNames, values.measure);
  if (values.other !== undefined) values.other = inSentence(named(measureNames, values.other));
  return fill(template, { ...values, ...derived(reason.code, given, { of: shownOf, write, step }) }, unit, locale);
};
